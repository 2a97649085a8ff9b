import type { sendWords as EN } from '../../en/keep/send.ts';
import type { Translated } from '../../translation.ts';

/** An orchard as a file, by the share sheet, or as a link; and one that comes by a link. */
export const sendWords: Translated<typeof EN> = {
  title: (name) => `Enviar ${name}`,
  file: 'Como ficheiro',
  fileNote: 'Tudo, com os registos. Quem o abrir recebe um pomar próprio.',
  share: 'Partilhar ficheiro',
  save: 'Guardar ficheiro',
  shareFailed: 'Não foi possível abrir a partilha: guarde antes o ficheiro.',
  link: 'Como ligação',
  linkNote: 'A ligação contém o próprio pomar, depois do sinal #: nenhum servidor o chega a ver. Quem tiver a ligação pode lê-lo, e uma ligação não se pode retirar.',
  records: (n) => (n === 1 ? 'com o registo e os nomes que contém' : `com os ${n} registos e os nomes que contêm`),
  copy: 'Copiar ligação',
  copied: 'Copiada.',
  copyByHand: 'Copie à mão o texto selecionado.',
  linkName: 'Ligação',
  characters: (n) => `${n} caracteres. Alguns programas de correio cortam ligações com mais de 2 000; envie então o ficheiro.`,
  close: 'Fechar',
  faults: {
    'other-version': 'Esta ligação foi feita por outra versão deste programa e não pode ser lida aqui. Recarregue a página para ter uma versão mais recente, ou peça um ficheiro.',
    'too-long': 'Este pomar é demasiado grande para uma ligação: envie-o como ficheiro.',
    damaged: 'Esta ligação está danificada, muito provavelmente cortada pelo caminho. Peça-a de novo, ou peça um ficheiro.',
    'unfolds-too-far': 'Esta ligação desdobra-se em mais do que um pomar pode conter e não foi lida até ao fim.',
    'no-means': 'Este navegador não tem meios para ler ou fazer estas ligações: use um ficheiro.'
  },
  tooLongToRead: 'Esta ligação é mais longa do que qualquer uma que este programa faz e não foi lida.',
  offer: 'Um pomar de uma ligação',
  offerNote: 'Abre como um pomar próprio. Nada do que está aqui guardado é substituído.',
  holds: (blocks, machines, records) => `Parcelas: ${blocks}. Máquinas: ${machines}. Registos: ${records}.`,
  more: (n) => `e mais ${n}`,
  take: 'Abrir',
  leave: 'Deixar',
  refused: 'A ligação não foi aberta; o que estava aberto mantém-se.'
};

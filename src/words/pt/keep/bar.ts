import type { keepBar as EN } from '../../en/keep/bar.ts';
import type { Translated } from '../../translation.ts';

/** How the open document is kept, and what stands in the way. */
export const keepBar: Translated<typeof EN> = {
  status: {
    fresh: '',
    saving: '',
    kept: 'guardado neste dispositivo',
    full: 'Já não há espaço neste dispositivo: guarde o documento como ficheiro.',
    blocked: 'Não foi possível guardar o documento neste dispositivo: guarde-o como ficheiro.',
    failed: 'Não foi possível guardar o documento neste dispositivo: guarde-o como ficheiro.',
    newer: 'Outra página guardou este pomar.',
    gone: 'Este pomar já não está guardado neste dispositivo.'
  },
  full: 'As últimas alterações estão só nesta página. Guarde-as como ficheiro, ou liberte espaço apagando pomares definitivamente; volta a tentar-se por si.',
  blocked: 'Este navegador não deixa nenhuma página guardar dados, como numa janela privada ou por uma definição. O trabalho está só nesta página e desaparece quando for fechada.',
  failed: 'As últimas alterações estão só nesta página. Volta a tentar-se por si.',
  newer: (at) => `Está guardada uma versão mais recente, de ${at}. Nada foi substituído.`,
  newerUnkept: 'O que desde então alterou aqui está só nesta página.',
  takeNewer: 'Usar a mais recente',
  dropMine: 'Usar a mais recente, deixar a minha',
  keepCopy: 'Guardar a minha como cópia',
  gone: 'Foi apagado noutra página, ou os dados deste sítio foram limpos, enquanto estava aqui aberto. O trabalho está só nesta página.',
  keepAnew: 'Guardar de novo',
  saveFile: 'Guardar como ficheiro',
  orchards: 'Pomares guardados aqui',
  clock: (span) => `O relógio deste dispositivo está ${span} atrasado em relação à última vez que se guardou. As horas do que foi guardado e dos registos podem estar fora de ordem; nada se perdeu. Um cronómetro que estivesse a contar está errado: cronometre de novo o percurso.`,
  rescued: (names) => `O trabalho que não ficou guardado ao fechar uma página está num pomar próprio: ${names}.`,
  version: 'Há uma nova versão desta página. É carregada quando recarregar.',
  reload: 'Recarregar',
  close: 'Fechar',
  later: 'Mais tarde',
  fault: 'Algo correu mal nesta página.',
  faultKept: 'O seu trabalho continua aqui e está guardado neste dispositivo.',
  faultUnkept: 'O seu trabalho continua aqui, mas as últimas alterações não estão guardadas neste dispositivo: guarde-o como ficheiro antes de recarregar.',
  faultMore: (n) => `Mais ${n} a seguir.`,
  faultDetails: 'O que diz o navegador',
  faultNote: 'Nada foi enviado para lado nenhum. Copie este texto se o quiser comunicar.',
  goOn: 'Continuar',
  broken: 'Esta parte da página não pode ser desenhada.',
  stepBack: 'Anular a última alteração',
  drawAgain: 'Desenhar de novo'
};

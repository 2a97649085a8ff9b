import type { sendWords as EN } from '../../en/keep/send.ts';
import type { Translated } from '../../translation.ts';

/** An orchard as a file, by the share sheet, or as a link; and one that comes by a link. */
export const sendWords: Translated<typeof EN> = {
  title: (name) => `Inviare ${name}`,
  file: 'Come file',
  fileNote: 'Tutto, con le registrazioni. Chi lo apre ottiene un frutteto proprio.',
  share: 'Condividi file',
  save: 'Salva file',
  shareFailed: 'Impossibile aprire la condivisione: salvare invece il file.',
  link: 'Come link',
  linkNote: 'Il link contiene il frutteto stesso, dopo il segno #: nessun server arriva a vederlo. Chi ha il link può leggerlo, e un link non si può richiamare.',
  records: (n) => (n === 1 ? 'con la registrazione e i nomi che contiene' : `con le ${n} registrazioni e i nomi che contengono`),
  copy: 'Copia link',
  copied: 'Copiato.',
  copyByHand: 'Copiare a mano il testo selezionato.',
  linkName: 'Link',
  characters: (n) => `${n} caratteri. Alcuni programmi di posta tagliano i link oltre 2 000; in tal caso inviare il file.`,
  close: 'Chiudi',
  faults: {
    'other-version': 'Questo link è stato fatto da un’altra versione di questo programma e qui non si può leggere. Ricaricare la pagina per una versione più nuova, o chiedere un file.',
    'too-long': 'Questo frutteto è troppo grande per un link: inviarlo come file.',
    damaged: 'Questo link è danneggiato, molto probabilmente tagliato lungo il percorso. Chiederlo di nuovo, o chiedere un file.',
    'unfolds-too-far': 'Questo link si espande a più di quanto un frutteto può contenere e non è stato letto oltre.',
    'no-means': 'Questo browser non ha modo di leggere o fare tali link: usare un file.'
  },
  tooLongToRead: 'Questo link è più lungo di quelli che questo programma fa e non è stato letto.',
  offer: 'Un frutteto da un link',
  offerNote: 'Si apre come frutteto a parte. Nulla di ciò che è conservato qui viene sostituito.',
  holds: (blocks, machines, records) => `Appezzamenti: ${blocks}. Macchine: ${machines}. Registrazioni: ${records}.`,
  more: (n) => (n === 1 ? 'e un altro' : `e altri ${n}`),
  take: 'Aprilo',
  leave: 'Lascialo',
  refused: 'Il link non è stato aperto; resta ciò che era aperto.'
};

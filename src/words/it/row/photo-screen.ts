import type { photoScreen as EN } from '../../en/row/photo-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the photograph on the screen. */
export const photoScreen: Translated<typeof EN> = {
  how: 'Stare nell’interfila, all’altezza del centro della chioma, con il cielo o un telo bianco dietro un filare. Meglio con cielo coperto. L’immagine si legge su questo dispositivo e non va altrove.',
  choose: 'Scegli un’immagine',
  other: 'Scegli un’altra immagine',
  reading: (done) => `Lettura dell’immagine: ${done}`,
  stop: 'Ferma',
  failed: 'Lettura non riuscita. Riprovare, o salvare l’immagine più piccola.',
  picture: 'Fotografia con il riquadro della chioma; tratteggiato ciò che conta come foglia',
  size: (width, height) => `${width} × ${height} pixel`,

  frame: 'Riquadro della chioma',
  frameNote: 'Trascinare le quattro maniglie, o spostarle con i tasti freccia: il bordo superiore alla cima, quello inferiore alle foglie più basse, i lati sulla chioma di un solo filare.',
  edge: { top: 'Cima della chioma', bottom: 'Foglie più basse', left: 'Lato sinistro', right: 'Lato destro' },
  at: { top: (p) => `${p} dal bordo superiore dell’immagine`, bottom: (p) => `${p} dal bordo superiore dell’immagine`, left: (p) => `${p} da sinistra`, right: (p) => `${p} da sinistra` },
  topHeight: 'Il bordo superiore vale',
  skirtHeight: 'Il bordo inferiore vale',
  upsideDown: 'Il bordo inferiore non sta sotto quello superiore. Correggere una delle altezze.',
  band: 'Altezza di una fascia',

  threshold: 'Soglia sul blu',
  thresholdSays: (level) => `I pixel con blu ${level} o più contano come vuoto.`,
  proposal: (level, part) => `Proposta: ${level}, che separa meglio lo scuro dal chiaro (Otsu 1979, a memoria; ${part} della varianza sta tra i due).`,
  takeProposal: 'Prendi la proposta',
  poor: 'Scuro e chiaro si separano male. Guardare il tratteggio prima di farvi affidamento.',
  mask: 'Tratteggia ciò che conta come foglia',

  says: 'Che cosa dice la fotografia',
  density: 'Densità di area fogliare',
  atLeast: (value) => `almeno ${value}`,
  working: 'come si calcola',
  bands: 'Per altezza, la cima per prima',
  columns: { height: 'Altezza', gaps: 'Vuoti', density: 'Densità di area fogliare', width: 'Larghezza' },
  doubt: (lower, higher, by) => `Con la soglia più bassa di ${by} ${lower}, più alta di ${by} ${higher}.`,
  none: 'non indicato',
  saturated: (share) => `In ${share} della sezione i vuoti sono troppo pochi per dirlo; entra nella media con il minimo che ha.`,
  assumptions: 'Che cosa si assume delle foglie',
  assumptionsNote: 'Entrambi entrano in ogni valore qui e si possono cambiare.',
  limits: 'Che cosa non può dire',
  limit: [
    'Legno e frutti contano come foglia: togliere ciò che si vede nella pianta spoglia.',
    'Una vista di un tratto di filare: farne diverse, e di più di una pianta.',
    'Si assume che ogni vuoto mostri il cielo o il telo. Dove vi sta il filare dietro, si contano foglie che non ci sono. Appendere il telo dietro il filare.',
    'Il cielo accanto a una chioma o tra due piante, dentro il riquadro, conta come vuoto: la densità è allora quella del filare così com’è, non delle sole chiome.',
    'I riflessi sulle foglie contano come vuoto, un cielo scuro come foglia: guardare il tratteggio.',
    'Si assume che la vista sia orizzontale e che il percorso attraverso la chioma sia la larghezza disegnata. Dal basso, o con una larghezza sbagliata, la densità è sbagliata altrettanto.',
    'Foglie a gruppi lasciano più vuoti di foglie disposte a caso, quindi il valore vero è più alto; lo è anche quello di una fascia i cui vuoti stanno insieme.',
    'I pixel al bordo di una foglia sono misti; i vuoti piccoli in un’immagine grossolana si perdono.'
  ],
  byHeight: 'Con densità per altezza',
  byHeightDrawn: 'Non sono state misurate larghezze per altezza: si scriverebbe il contorno come disegnato, che poi conta come misurato.',
  use: 'Usa per questa tappa',
  used: 'La densità di area fogliare di questa tappa viene ora dalla fotografia.',
  kept: (bands, threshold) => `Con questa tappa si conservano i conteggi di una fotografia: ${bands === 1 ? '1 fascia' : `${bands} fasce`}, soglia ${threshold}.`,
  forget: 'Dimentica i conteggi',
  keptSays: (value) => `Con le ipotesi attuali dicono ${value}.`
};

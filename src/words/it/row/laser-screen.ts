import type { laserScreen as EN } from '../../en/row/laser-screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of laser points on the screen. */
export const laserScreen: Translated<typeof EN> = {
  how: 'Punti di uno scanner laser fermo o in movimento in un’interfila, come LAS, LAZ o CSV (lateral_m, height_m, along_m). Si leggono su questo dispositivo e non vanno altrove.',
  choose: 'Scegli un file di punti',
  other: 'Scegli un altro file',
  reading: (done) => `Lettura dei punti: ${done}`,
  stop: 'Ferma',
  failed: 'Lettura non riuscita. Riprovare, o ridurre il file a una sola interfila.',
  judging: 'Valutazione dei punti …',
  refused: (lines) => `Righe del file non usate: ${lines}. Le prime:`,

  file: (kind, points) => `${kind}: ${points} punti.`,
  kinds: { table: 'Tabella', las: (version, format) => `LAS ${version}, formato dei punti ${format}`, laz: (version, format) => `LAZ ${version}, formato dei punti ${format}` },
  everyOf: (every) => `Per risparmiare memoria è stato letto un punto ogni ${every} del file.`,
  marked: (n) => `Punti che il file segna come esclusi o rumore, saltati: ${n}.`,
  tooFar: (n) => `Punti troppo lontani: ${n}; oltre 100 m di lato, 20 m sotto o 60 m sopra il terreno.`,

  place: 'Dove sta l’interfila nel file',
  placeNote: 'Ricavato dai punti. Se i due filari qui sotto appaiono sfumati, correggere prima la direzione dei filari.',
  unit: 'Il file è in',
  units: { m: 'metri', ft: 'piedi' },
  bearing: 'Direzione dei filari, gradi da y verso x',
  originX: 'Centro dell’interfila, x',
  originY: 'Centro dell’interfila, y',
  ground: 'Terreno, z',

  rules: 'Quali punti contano',
  platform: 'Escludi il supporto o il veicolo dello scanner',
  half: 'Più vicino alla traccia di',
  from: 'Sopra',
  to: 'Sotto',
  groundRule: 'Terreno ed erba sotto',
  side: 'Filari presi',
  sides: { both: 'entrambi', left: 'sinistro', right: 'destro' },
  skirt: 'Foglie più basse',
  scanner: 'Altezza dello scanner',
  spacing: 'Ricava dai punti la distanza tra i filari',
  spacingNote: (spacing) => `Altrimenti è quella dell’appezzamento, ${spacing}.`,

  plot: (points, height, width) => `Sezione di ${points} punti con terreno, linee dei filari e contorno che ne risulta: alta ${height}, larga ${width}`,
  legend: { used: 'conta', out: 'escluso', outline: 'contorno', face: 'faccia vista', row: 'linea del filare', platform: 'escluso come supporto o veicolo' },

  says: 'Che cosa dicono i punti',
  used: (used, all) => `Contano ${used} di ${all} punti.`,
  leftOut: {
    platform: 'il supporto o il veicolo',
    ground: 'terreno ed erba',
    'other-side': 'filare non preso',
    beyond: 'filari più lontani',
    'below-skirt': 'sotto le foglie più basse',
    'above-top': 'sopra la cima'
  },
  leftOutTitle: 'Esclusi',
  figures: { height: 'Altezza', skirt: 'Foglie più basse', width: 'Larghezza massima', spacing: 'Distanza tra i filari', filled: 'Parte piena del filare', box: 'Parallelepipedo', outline: 'Dentro il contorno', occupied: 'Occupato' },
  seen: 'ricavata dal filare dietro',
  given: 'dell’appezzamento',
  ofBox: (share) => `${share} del parallelepipedo`,
  box: 'dalle foglie più basse alla cima, largo quanto la fascia più larga, per lunghezza di filare',
  noGaps: 'troppo pochi punti, o un tratto troppo corto, per dire i vuoti della faccia',
  noFilled: (stretch) => `${stretch} di filare sono troppo pochi per mostrare vuoti tra le piante`,
  noAlong: 'i punti non dicono dove sono lungo il filare',
  none: 'non indicato',
  spacingDiffers: (seen, block) => `I punti mostrano filari a ${seen}, l’appezzamento ha ${block}. Verificare quale è giusto: ne dipende la larghezza.`,

  bands: 'Per altezza, la cima per prima',
  columns: { height: 'Altezza', points: 'Punti', width: 'Larghezza', gaps: 'Vuoti', density: 'Densità' },
  limits: 'Che cosa non può dire',
  limit: [
    'Lo scanner vede la faccia vicina. Si assume che la linea del filare stia a mezza distanza tra i filari dal centro dell’interfila, e che il lato lontano sia come quello vicino.',
    'La densità è il rapporto tra i punti e la loro media: un segno incerto delle foglie. Punti e area fogliare andavano insieme con una correlazione di 0,88, volume e area fogliare con 0,80, su 20 meli in otto parti ciascuno (Berk et al. 2020). L’area fogliare stessa non è misurata.',
    'I raggi sono tanto più radi quanto più sono ripidi, così la cima appare meno densa di quanto è, salvo che si indichi l’altezza dello scanner.',
    'I vuoti della faccia sono celle di 0,1 m lungo il filare senza un punto. Il volume occupato assume che ciascuno attraversi tutto, il che può non essere.',
    'In pendenza le altezze devono essere sopra il terreno sottostante; piante inclinate rendono il contorno riflesso troppo largo o troppo stretto. Misurare alcune piante a mano.'
  ],
  use: 'Usa per questa tappa',
  taken: 'La chioma di questa tappa ha ora il contorno dei punti.',
  useNote: 'Si sostituiscono altezza, larghezza, foglie più basse, larghezze e densità per altezza; anche la parte piena, dove è indicata. «Annulla» le riporta.'
};

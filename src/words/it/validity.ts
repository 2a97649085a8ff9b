import type { Language } from '../words.ts';

export const VALIDITY: Language['validity'] = {
  'blind-to-canopy': 'Non tiene conto della chioma.',
  'blind-to-height-and-width': 'Non tiene conto di altezza e larghezza.',
  'blind-to-row-spacing': 'Non tiene conto di distanza tra i filari e larghezza.',
  'retired-for-new-labels': 'Solo etichette più vecchie; le nuove usano la parete fogliare.',
  'blind-to-width-and-density': 'Non tiene conto di larghezza e densità.',
  'suits-narrow-walls': 'Fatta per pareti strette, non per piante tonde o larghe.',
  'under-doses-small-trees': 'In proporzione al volume, nelle prove le piante più piccole hanno ricevuto troppo poco.',
  'box-volume': 'Un parallelepipedo contiene più della chioma al suo interno; non inserire volumi reali.',
  'early-rate-disputed': 'Le fonti non concordano su dosi più basse a inizio stagione.',
  'memory-law': 'La retta è citata a memoria: verificarla nel registro attuale.',
  'swiss-labels-only': 'Solo per etichette svizzere.',
  'volume-by-crop': 'I litri per filare unitario cambiano con la coltura, da 9 a 50.',
  'run-off-judged-in-field': 'Giudicare in campo il punto di gocciolamento.',
  'measured-in-citrus': 'Misurata su agrumi.',
  'outline-volume': 'Per il volume dentro il contorno reale, mai per il parallelepipedo.',
  'sensor-coefficient': 'Fatta per un’irroratrice che rileva i vuoti.',
  'leaf-density-rarely-known': 'La densità fogliare si misura di rado; il valore predefinito è una supposizione.',
  'recovery-uncertain': 'La parte che resta varia molto.'
};

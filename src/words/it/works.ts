/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'pratica comune: nessuna fonte citabile',
  arithmetic: 'aritmetica: definizione',
  geometry: 'geometria: trigonometria piana',
  'fan-laws': 'tecnica generale dei ventilatori: leggi di similitudine'
};

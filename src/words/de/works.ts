/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'gängige Praxis: keine zitierbare Quelle',
  arithmetic: 'Arithmetik: Definition',
  geometry: 'Geometrie: ebene Trigonometrie',
  'fan-laws': 'allgemeine Ventilatortechnik: Ähnlichkeitsgesetze'
};

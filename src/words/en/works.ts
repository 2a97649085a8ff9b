/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'common practice: no citable source',
  arithmetic: 'arithmetic: definition',
  geometry: 'geometry: plane trigonometry',
  'fan-laws': 'general fan engineering: Affinity laws'
};

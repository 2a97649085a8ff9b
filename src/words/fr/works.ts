/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'pratique courante : pas de source citable',
  arithmetic: 'arithmétique : définition',
  geometry: 'géométrie : trigonométrie plane',
  'fan-laws': 'technique générale des ventilateurs : lois de similitude'
};

/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'práctica común: sin fuente citable',
  arithmetic: 'aritmética: definición',
  geometry: 'geometría: trigonometría plana',
  'fan-laws': 'técnica general de ventiladores: leyes de semejanza'
};

/** What a value rests on that is no work, as a line among the sources. */
export const NO_WORKS: Readonly<Record<string, string>> = {
  habit: 'prática comum: sem fonte citável',
  arithmetic: 'aritmética: definição',
  geometry: 'geometria: trigonometria plana',
  'fan-laws': 'técnica geral de ventiladores: leis de semelhança'
};

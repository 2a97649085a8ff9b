import type { LanguageCode } from './spoken.ts';

/** What the page is for, said while it comes: all languages in one place, since none is fetched yet. */
export const PURPOSE: Readonly<Record<LanguageCode, string>> = {
  en: 'Fits the dose, the nozzles and the air of an orchard sprayer to the row.',
  de: 'Stimmt Dosis, Düsen und Luft des Sprühgeräts auf die Baumreihe ab.',
  es: 'Ajusta la dosis, las boquillas y el aire del pulverizador a la fila de árboles.',
  fr: 'Ajuste la dose, les buses et l’air du pulvérisateur au rang d’arbres.',
  it: 'Adatta la dose, gli ugelli e l’aria dell’irroratrice al filare.',
  pt: 'Ajusta a dose, os bicos e o ar do pulverizador à linha de árvores.'
};

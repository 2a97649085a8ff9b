import type { licenceWords as EN } from '../../en/guide/licences.ts';
import type { Translated } from '../../translation.ts';

/** Palavras em volta das licenças, que ficam como foram escritas. */
export const licenceWords: Translated<typeof EN> = {
  title: 'Licenças',
  intro: 'Rowtailor é software livre com licença MIT. Contém trabalho de outros, cujas licenças se seguem.',
  noText: 'O pacote não trazia texto de licença.',
  notBuilt: 'Só se vê na página construída.',
  close: 'Fechar'
};

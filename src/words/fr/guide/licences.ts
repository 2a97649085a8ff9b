import type { licenceWords as EN } from '../../en/guide/licences.ts';
import type { Translated } from '../../translation.ts';

/** Paroles autour des licences, qui restent telles qu’elles furent écrites. */
export const licenceWords: Translated<typeof EN> = {
  title: 'Licences',
  intro: 'Rowtailor est un logiciel libre sous licence MIT. Il contient le travail d’autres, dont voici les licences.',
  noText: 'Le paquet n’avait pas de texte de licence.',
  notBuilt: 'Ne se voit que dans la page construite.',
  close: 'Fermer'
};

import type { headlandScreen as EN } from '../../en/headland/screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Headland station's frame. Each step brings its own. */
export const headlandScreen: Translated<typeof EN> = {
  steps: {
    before: 'Avant de commencer',
    speed: 'Vitesse',
    output: 'Débit',
    result: 'Résultat',
    fitting: 'Choix des buses',
    loads: 'Remplissages',
    record: 'Enregistrement',
    card: 'Fiche de cabine'
  },
  step: 'Étape',
  place: (n, all) => `étape ${n} sur ${all}`,
  option: (n, name) => `${n}  ${name}`,
  back: 'Précédent',
  next: 'Suivant',
  loading: 'Chargement …',
  failed: 'Cette étape n’a pas pu être chargée. Rechargez la page.'
};

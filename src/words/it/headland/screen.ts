import type { headlandScreen as EN } from '../../en/headland/screen.ts';
import type { Translated } from '../../translation.ts';

/** Labels of the Headland station's frame. Each step brings its own. */
export const headlandScreen: Translated<typeof EN> = {
  steps: {
    before: 'Prima di iniziare',
    speed: 'Velocità',
    output: 'Portata',
    result: 'Risultato',
    fitting: 'Scelta degli ugelli',
    loads: 'Carichi',
    record: 'Registrazione',
    card: 'Scheda di cabina'
  },
  step: 'Passo',
  place: (n, all) => `passo ${n} di ${all}`,
  option: (n, name) => `${n}  ${name}`,
  back: 'Indietro',
  next: 'Avanti',
  loading: 'Caricamento …',
  failed: 'Impossibile caricare questo passo. Ricaricare la pagina.'
};

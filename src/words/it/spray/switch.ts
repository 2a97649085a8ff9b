import type { spraySwitch as EN } from '../../en/spray/switch.ts';
import type { Translated } from '../../translation.ts';

/** The switch beside the season ladder: all that the first screen says of the spray model. */
export const spraySwitch: Translated<typeof EN> = {
  label: 'Irrorazione',
  failed: 'Impossibile caricare il modello di irrorazione. Ricaricare la pagina.'
};

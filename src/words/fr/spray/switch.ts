import type { spraySwitch as EN } from '../../en/spray/switch.ts';
import type { Translated } from '../../translation.ts';

export const spraySwitch: Translated<typeof EN> = {
  label: 'Pulvérisation',
  failed: 'Le modèle de pulvérisation n’a pas pu être chargé. Rechargez la page.'
};

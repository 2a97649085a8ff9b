import type { spraySwitch as EN } from '../../en/spray/switch.ts';
import type { Translated } from '../../translation.ts';

export const spraySwitch: Translated<typeof EN> = {
  label: 'Pulverización',
  failed: 'No se pudo cargar el modelo de pulverización. Vuelva a cargar la página.'
};

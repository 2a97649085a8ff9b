import type { spraySwitch as EN } from '../../en/spray/switch.ts';
import type { Translated } from '../../translation.ts';

/** Der Schalter neben den Saisonstufen. */
export const spraySwitch: Translated<typeof EN> = {
  label: 'Sprühnebel',
  failed: 'Das Sprühmodell konnte nicht geladen werden. Die Seite neu laden.'
};

import type { Language } from '../words.ts';

/** Vor dem Schlusspunkt, wo ein Prozentsatz etwas sagt. */
export const DIFFERENCE_CHANGE = ', {change} {direction}';

export const DIFFERENCES: Language['differences'] = {
  'row-volume': 'Baumreihenvolumen {from} → {to}.',
  'leaf-area': 'Blattflächenindex {from} → {to}.',
  water: 'Soll-Wasseraufwand {from} → {to}.',
  volume: 'Brüheaufwand {from} → {to}.',
  product: 'Mittel {from} → {to}.',
  air: 'Luftbedarf {from} → {to}.',
  speed: 'Geschwindigkeit {from} → {to}.',
  pressure: 'Druck {from} → {to}.',
  'nozzles-gain-leaf': '{nozzles} {nozzles#trifft|treffen} jetzt Laub.',
  'nozzles-lose-leaf': '{nozzles} {nozzles#trifft|treffen} kein Laub mehr.'
};

import { entered, type Unit } from '#core/quantity/units.ts';
import type { Call } from '../../support/published.ts';

export const units: Record<string, Call> = {
  /** A value typed in US units, in the engine's unit. */
  metric: (i) => entered(i.us as number, i.unit as Unit, 'us')
};

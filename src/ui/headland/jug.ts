import { IMPERIAL_FLUID_OUNCE_L, US_FLUID_OUNCE_L } from '#core/quantity/constants.ts';
import { converted, type UnitSystem } from '#core/quantity/units.ts';

/** How a jug is read: shown = litres / per. */
export interface JugUnit {
  readonly id: 'mL' | 'L' | 'fl oz' | 'imp fl oz';
  readonly per: number;
  readonly decimals: number;
}

const ML: JugUnit = { id: 'mL', per: 0.001, decimals: 0 };
const L: JugUnit = { id: 'L', per: 1, decimals: 3 };
const FL_OZ: JugUnit = { id: 'fl oz', per: US_FLUID_OUNCE_L, decimals: 1 };
const IMP_FL_OZ: JugUnit = { id: 'imp fl oz', per: IMPERIAL_FLUID_OUNCE_L, decimals: 1 };

/** The scales that jugs of this system have. */
export const jugUnits = (system: UnitSystem): readonly JugUnit[] => (!converted('L', system) ? [ML, L] : [system === 'imperial' ? IMP_FL_OZ : FL_OZ]);

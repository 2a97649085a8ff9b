import type { Family } from '#section/plots/curves.ts';
import type { Unit } from '#core/quantity/units.ts';
import type { Axis, Curve, StrategyFamily } from '#workspace/strategies.svelte.ts';

/** What stands along the plot: tree-row volume, leaf wall, tree height, or the measure that is moved. */
export type Against = 'trv' | 'lwa' | 'tall' | 'self';

const AXIS_UNIT: Readonly<Record<Axis, Unit>> = { height: 'm', width: 'm', spacing: 'm', skirt: 'm', density: 'm2/m3', 'us-density': 'L/m3' };
export const unitAlong = (against: Against, axis: Axis): Unit => ({ trv: 'm3/ha' as const, lwa: 'm2/ha' as const, tall: 'm' as const, self: AXIS_UNIT[axis] })[against];
export const along = (p: Curve['points'][number], against: Against): number => ({ trv: p.trv, lwa: p.lwa, tall: p.height, self: p.x })[against];

export const strokeOf = (family: StrategyFamily): Family => (family === 'other' ? 'none' : family);

import { AIR_ASSUMPTIONS } from '../air/air.ts';
import { CANOPY_ASSUMPTIONS } from '../canopy/assumptions.ts';
import { CHECK_ASSUMPTIONS } from '../check/assumptions.ts';
import { STRATEGIES } from '../dose/strategies.ts';
import { WATER_ASSUMPTIONS } from '../dose/water.ts';
import { MIX_ASSUMPTIONS } from '../mix/assumptions.ts';
import { FITTING_ASSUMPTIONS } from '../fitting/assumptions.ts';
import { AIM_ASSUMPTIONS } from '../sprayer/aim.ts';
import { FLOW_ASSUMPTIONS } from '../sprayer/flow.ts';
import type { Assumption } from '../working/assumption.ts';

const strategies = [...STRATEGIES.values()].flatMap((s) => [...Object.values(s.constants), ...(s.choices ?? [])]);

/** Every assumption of the engine, by id. */
export const ASSUMPTIONS: ReadonlyMap<string, Assumption> = new Map(
  [...CANOPY_ASSUMPTIONS, ...strategies, ...WATER_ASSUMPTIONS, ...AIM_ASSUMPTIONS, ...FLOW_ASSUMPTIONS, ...AIR_ASSUMPTIONS, ...CHECK_ASSUMPTIONS, ...MIX_ASSUMPTIONS, ...FITTING_ASSUMPTIONS].map((a) => [a.id, a])
);

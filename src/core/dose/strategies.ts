import type { Strategy } from './strategy.ts';
import type { StrategyId } from './types.ts';
import { CROWN_HEIGHT } from './strategies/crown-height.ts';
import { GROUND_AREA } from './strategies/ground-area.ts';
import { LEAF_AREA } from './strategies/leaf-area.ts';
import { LEAF_WALL } from './strategies/leaf-wall.ts';
import { METRIC_MULTIPLIER } from './strategies/metric-multiplier.ts';
import { OCCUPIED_VOLUME } from './strategies/occupied-volume.ts';
import { ROW_DISTANCE } from './strategies/row-distance.ts';
import { ROW_LENGTH } from './strategies/row-length.ts';
import { ROW_VOLUME } from './strategies/row-volume.ts';
import { STAGE_VOLUME } from './strategies/stage-volume.ts';
import { SWISS_AFFINE } from './strategies/swiss-affine.ts';
import { UNIT_CANOPY_ROW } from './strategies/unit-canopy-row.ts';
import { US_ROW_VOLUME } from './strategies/us-row-volume.ts';

/** Every strategy, in the order of the strategy table: a new one is a file and a line here. */
const ALL = [
  GROUND_AREA,
  ROW_LENGTH,
  CROWN_HEIGHT,
  LEAF_WALL,
  ROW_VOLUME,
  US_ROW_VOLUME,
  METRIC_MULTIPLIER,
  SWISS_AFFINE,
  UNIT_CANOPY_ROW,
  ROW_DISTANCE,
  STAGE_VOLUME,
  OCCUPIED_VOLUME,
  LEAF_AREA
] as const satisfies readonly Strategy[];

export const STRATEGIES: ReadonlyMap<StrategyId, Strategy> = new Map<StrategyId, Strategy>(ALL.map((s) => [s.id as StrategyId, s]));

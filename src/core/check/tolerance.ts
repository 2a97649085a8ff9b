import type { Assumptions } from '../working/assumption.ts';
import type { Tolerance } from './state.ts';
import type { ToleranceId } from './types.ts';

/** The limits of one tolerance set, with the user's own values before the sources'. */
export const toleranceOf = (id: ToleranceId, assumptions: Assumptions): Tolerance => ({
  id,
  mean: assumptions.take(`check.mean-${id}`),
  nominal: assumptions.take(`check.nominal-${id}`),
  sides: assumptions.take('check.sides')
});

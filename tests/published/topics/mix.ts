import { productFromActive } from '#core/mix/active.ts';
import { loadsState } from '#core/mix/loads.ts';
import type { LoadsState } from '#core/mix/state.ts';
import type { Mix } from '#core/mix/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Block } from '#core/setting/document.ts';
import { given, refused, type Answer } from '#core/working/answer.ts';
import { inUnit, need, partsOf, read, type Call, type Inputs } from '../../support/published.ts';
import { defined, document } from '../../support/sample.ts';

const none = refused('absent', '');

/** The loads of a case: its block, machine and mix in a document of their own. */
function loads(i: Inputs): LoadsState {
  const parts = partsOf(i);
  const written = document({
    ...parts,
    machine: defined({ ...parts.machine, residualL: read(i, 'residual') }),
    block: { ...parts.block, ...defined({ areaHa: read(i, 'area'), rows: i.rows as number | undefined, rowLengthM: read(i, 'row_length') }) } as Partial<Block>,
    rung: { ...parts.rung, mix: (i.mix ?? {}) as Mix }
  });
  const result = evaluate(written, 'block', 'now');
  if ('kind' in result) throw new Error(result.code);
  return loadsState(written, result);
}

const first = (i: Inputs) => loads(i).loads[0];
const last = (i: Inputs) => loads(i).loads.at(-1);
const partner = (i: Inputs) => loads(i).partners[0];
/** A weighed amount is a bare number; here it is read in the case's unit. */
const weighed = (i: Inputs, value: number): Answer => given(value, partner(i)?.label.unit === 'L' ? 'Lprod' : 'kg');

export const mix: Record<string, Call> = {
  usable: (i) => loads(i).usable,
  area_per_tank: (i) => loads(i).areaPerTank,
  area: (i) => loads(i).area,
  sprayed: (i) => loads(i).sprayed,
  prepared: (i) => loads(i).prepared,
  over_ordered: (i) => loads(i).overOrdered,
  count: (i) => loads(i).count,
  full_loads: (i) => loads(i).loads.filter((l) => Math.abs(inUnit(l.mix, 'L') - inUnit(loads(i).usable, 'L')) < 1e-9).length,
  load: (i) => first(i)?.mix ?? none,
  first_fill: (i) => first(i)?.fill ?? none,
  last_load: (i) => last(i)?.mix ?? none,
  load_area: (i) => first(i)?.area ?? none,
  per_ha: (i) => partner(i)?.perHa ?? none,
  strength: (i) => partner(i)?.strength ?? none,
  concentration: (i) => partner(i)?.concentration ?? none,
  total: (i) => partner(i)?.exact ?? none,
  total_weighed: (i) => weighed(i, partner(i)?.forArea ?? NaN),
  load_product: (i) => first(i)?.products[0]?.exact ?? none,
  load_weighed: (i) => weighed(i, first(i)?.products[0]?.amount ?? NaN),
  for_residual: (i) => weighed(i, partner(i)?.forResidual ?? NaN),
  left: (i) => partner(i)?.left ?? none,
  from_active: (i) => productFromActive(given(need(i, 'active'), 'kg/ha'), given(need(i, 'active_in_product'), '%')),
  theoretical: (i) => loads(i).work.theoretical,
  time_spraying: (i) => loads(i).work.spraying,
  time_outer: (i) => loads(i).work.outer,
  time_turning: (i) => loads(i).work.turning,
  time_filling: (i) => loads(i).work.filling,
  time_in_all: (i) => loads(i).work.total,
  effective: (i) => loads(i).work.effective,
  efficiency: (i) => loads(i).work.efficiency,
  passes: (i) => loads(i).rows?.passes.passes ?? NaN,
  way: (i) => loads(i).rows?.way ?? none,
  face_flow: (i) => loads(i).rows?.faceFlow ?? none,
  faces_mix: (i) => loads(i).rows?.mix ?? none,
  spare: (i) => loads(i).rows?.spare ?? none,
  spare_share: (i) => loads(i).rows?.spareShare ?? none,
  rinse_tenfold: (i) => loads(i).rinse.tenfold,
  rinse_tenth: (i) => loads(i).rinse.tenth,
  rinse_once: (i) => loads(i).rinse.once,
  rinse_thrice: (i) => loads(i).rinse.thrice
};

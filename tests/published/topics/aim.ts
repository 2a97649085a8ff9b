import { sharesOf, sightOf } from '#core/sprayer/aim.ts';
import type { SprayPattern } from '#core/sprayer/types.ts';
import { given, refused } from '#core/working/answer.ts';
import { need, partsOf, read, type Call, type Inputs } from '../../support/published.ts';
import { arcNozzles, onlyOpen, result } from '../../support/sample.ts';

const none = refused('absent', '');
const front = (i: Inputs) => {
  const parts = partsOf(i);
  const cone = read(i, 'cone');
  const open = i.open as string[] | undefined;
  return result({
    ...parts,
    machine: { ...parts.machine, nozzles: arcNozzles(cone === undefined ? {} : { coneAngleDeg: cone }) },
    setting: { ...parts.setting, ...(open ? { nozzles: onlyOpen(...open) } : {}) }
  }).sprayer;
};
const nozzle = (i: Inputs) => {
  const n = front(i).nozzles.find((each) => each.position.id === i.nozzle);
  if (!n) throw new Error(`no nozzle ${String(i.nozzle)}`);
  return n;
};

export const aim: Record<string, Call> = {
  /** Angle at which a leaf of no size is seen from a nozzle. */
  sight_angle: (i) => {
    const z = need(i, 'leaf_height');
    return sightOf(need(i, 'x'), need(i, 'z'), need(i, 'leaf_at'), [{ heightM: z - 1e-9, widthM: 0 }, { heightM: z, widthM: 0 }], 0)?.highDeg ?? none;
  },
  offset: (i) => nozzle(i).position.offsetM,
  height: (i) => nozzle(i).position.heightM,
  angle: (i) => nozzle(i).angle,
  is_over_top: (i) => Number(nozzle(i).verdict === 'over-top'),
  over_top: (i) => nozzle(i).shares.overTop,
  share_between: (i) => {
    const sight = { lowDeg: need(i, 'from'), highDeg: need(i, 'to'), allowedDeg: need(i, 'to'), inside: false, clearanceM: 1 };
    return sharesOf(i.pattern_of_spray as SprayPattern, given(need(i, 'centre'), 'deg'), given(need(i, 'cone'), 'deg'), sight).inLeaf;
  },
  in_leaf: (i) => front(i).inLeaf,
  over_top_flow: (i) => front(i).overTop,
  under_skirt_flow: (i) => front(i).underSkirt
};

import { sectionArea } from '../canopy/outline.ts';
import type { CanopyState } from '../canopy/canopy.ts';
import type { NozzleState } from '../sprayer/sprayer.ts';
import type { Fitting } from './types.ts';

const RAD = Math.PI / 180;

/**
 * How much each open nozzle should give, in order, any scale.
 *
 * `canopy`: the leaf section that stands before the nozzle. Each centre line is followed to the middle of the near half row (a quarter of the
 * width inside the trunk line, where the drawing compares flow and leaf too); on each side of the machine the heights half-way between
 * neighbouring crossings bound the bands, the lowest reaches down to the skirt, the highest up to the top, and a band weighs as much as the
 * canopy's section inside it. A nozzle that does not meet leaf weighs nothing and bounds no band. Straight lines: what air does to spray is not in it.
 */
export function weightsOf(fitting: Fitting, nozzles: readonly NozzleState[], canopy: CanopyState): number[] {
  switch (fitting.weighting ?? 'canopy') {
    case 'uniform':
      return nozzles.map(() => 1);
    case 'own': {
      const own = new Map(fitting.weights?.map((w) => [w.position, w.weight]));
      return nozzles.map((n) => own.get(n.position.id) ?? 0);
    }
    case 'canopy':
      return canopyWeights(nozzles, canopy);
  }
}

function canopyWeights(nozzles: readonly NozzleState[], canopy: CanopyState): number[] {
  const planeX = canopy.figures.R.value / 2 - canopy.figures.W.value / 4;
  const crossing = (n: NozzleState): number => {
    const angle = n.angle.value;
    if (Math.abs(angle) >= 90) return angle > 0 ? Infinity : -Infinity;
    return n.position.heightM + Math.max(planeX - n.position.offsetM, 0) * Math.tan(angle * RAD);
  };
  const weights = nozzles.map(() => 0);
  for (const side of ['left', 'right'] as const) {
    const met = nozzles
      .map((n, i) => ({ i, z: crossing(n), would: n.would, side: n.position.side }))
      .filter((n) => n.side === side && n.would === 'in-leaf')
      .sort((a, b) => a.z - b.z);
    met.forEach(({ i, z }, k) => {
      const below = met[k - 1];
      const above = met[k + 1];
      weights[i] = sectionArea(canopy.outline, below ? (below.z + z) / 2 : -Infinity, above ? (z + above.z) / 2 : Infinity);
    });
  }
  return weights;
}

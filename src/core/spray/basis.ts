import type { Document } from '../setting/document.ts';
import type { Result } from '../setting/result.ts';
import { isRefused, type Quantity } from '../working/answer.ts';
import { Assumptions } from '../working/assumption.ts';
import { SPRAY_CONSTANTS, VMD_OF, VMD_UNKNOWN } from './assumptions.ts';
import { SPRAY_REGISTRY } from './case.ts';
import type { BandRun, SprayBand, SprayCase } from './types.ts';

/** Leaf area density comes from the canopy; its assumption stands for it in the band. */
export const LEAF_DENSITY = 'canopy.full-leaf-density';

const { entrainment, roundEntrainment, windMPerS, windDecay, ...always } = SPRAY_CONSTANTS;

/** Ids of the assumptions that a case rests on; wind last. */
export function restsOn(c: SprayCase): readonly string[] {
  const drops = c.nozzles.map((n) => (n.droplets ? VMD_OF[n.droplets] : VMD_UNKNOWN).id);
  const jet = c.outlet.kind === 'spouts' ? roundEntrainment : entrainment;
  return [...new Set([LEAF_DENSITY, ...Object.values(always).map((a) => a.id), jet.id, ...drops, windMPerS.id, windDecay.id])];
}

/** The same with their values as the case has them: the user's own, what was measured on the day, or the assumption's. */
export function basisOf(document: Document, { weather }: Result, c: SprayCase): ReadonlyMap<string, Quantity> {
  const assumptions = new Assumptions(SPRAY_REGISTRY, document.assumptions);
  const basis = new Map<string, Quantity>(restsOn(c).map((id) => [id, assumptions.take(id)]));
  const { id } = SPRAY_CONSTANTS.deltaTK;
  const ofDay = weather?.deltaT;
  if (ofDay && !isRefused(ofDay) && basis.get(id)!.value !== c.constants.deltaTK) basis.set(id, ofDay);
  return basis;
}

/** What wind does to deposit is not shown: published trials found a large loss, and the model does not have it. */
const UNSHOWN: ReadonlySet<string> = new Set([windMPerS.id, windDecay.id]);

/** The runs of a band that may be shown, those that move the share on the trees most first. */
export const shownRuns = ({ runs }: SprayBand): readonly BandRun[] => runs.filter((r) => !UNSHOWN.has(r.assumption));

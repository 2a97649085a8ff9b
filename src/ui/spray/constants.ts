import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { SPRAY_ASSUMPTIONS, SPRAY_CONSTANTS, VMD_OF, VMD_UNKNOWN } from '#core/spray/assumptions.ts';
import type { BandRun, SprayBand, SprayCase } from '#core/spray/types.ts';
import type { Assumption } from '#core/working/assumption.ts';

/** Leaf area density comes from the canopy; its assumption stands for it in the band. */
export const LEAF_DENSITY = 'canopy.full-leaf-density';

/** Everything that the user may change of the model and of the rule for air. */
export const REGISTRY: ReadonlyMap<string, Assumption> = new Map([...ASSUMPTIONS, ...SPRAY_ASSUMPTIONS.map((a) => [a.id, a] as const)]);

const { entrainment, roundEntrainment, windMPerS, windDecay, ...always } = SPRAY_CONSTANTS;

/** What a case rests on, and what the rule for its air does. */
export function restsOn(c: SprayCase, airRule: string | undefined): readonly string[] {
  const drops = c.nozzles.map((n) => (n.droplets ? VMD_OF[n.droplets] : VMD_UNKNOWN).id);
  const jet = c.outlet.kind === 'spouts' ? roundEntrainment : entrainment;
  return [...new Set([LEAF_DENSITY, ...Object.values(always).map((a) => a.id), jet.id, ...drops, windMPerS.id, windDecay.id, ...(airRule ? [airRule] : [])])];
}

/** What wind does to deposit is not shown: published trials found a large loss, and the model does not have it. */
const UNSHOWN: ReadonlySet<string> = new Set([windMPerS.id, windDecay.id]);

/** The runs of the band that may be shown, those that move the share on the trees most first. */
export const shownRuns = (band: SprayBand | null): readonly BandRun[] => band?.runs.filter((r) => !UNSHOWN.has(r.assumption)) ?? [];

import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import type { Assumption } from '#core/working/assumption.ts';

/** Everything that the user may change of the model and of the rule for air. */
export const REGISTRY: ReadonlyMap<string, Assumption> = new Map([...ASSUMPTIONS, ...SPRAY_ASSUMPTIONS.map((a) => [a.id, a] as const)]);

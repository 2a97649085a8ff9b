import { PHOTO_ASSUMPTIONS } from '#core/canopy/photo/assumptions.ts';
import { SEASON_ASSUMPTIONS } from '#core/season/assumptions.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import type { Assumption } from '#core/working/assumption.ts';

/**
 * Every assumption that a document may hold a value for, by id: the engine's, and those of the spray model, of growth and of photographs, which stand apart there
 * so that the first screen does not load them. Reading is loaded when it is asked for.
 */
export const KNOWN_ASSUMPTIONS: ReadonlyMap<string, Assumption> = new Map([...ASSUMPTIONS, ...[...SPRAY_ASSUMPTIONS, ...SEASON_ASSUMPTIONS, ...PHOTO_ASSUMPTIONS].map((a) => [a.id, a] as const)]);

import type { Assumption } from '../../working/assumption.ts';

export const PHOTO_ASSUMPTIONS: readonly Assumption[] = [
  // Leaves that face every way alike, seen level across the row.
  { id: 'photo.projection', value: 0.5, unit: '1', least: 0.1, most: 1, certainty: 'assumed', sources: ['ross-1981'] },
  // 1 is leaves at random; those of a tree stand in clumps, which makes it less.
  { id: 'photo.clumping', value: 1, unit: '1', least: 0.2, most: 1.5, certainty: 'assumed', sources: ['nilson-1971'] }
];
export const PHOTO_REGISTRY: ReadonlyMap<string, Assumption> = new Map(PHOTO_ASSUMPTIONS.map((a) => [a.id, a]));

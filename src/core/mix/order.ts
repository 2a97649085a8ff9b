import type { SourceId } from '../sources/bibliography.ts';
import type { Label } from '../dose/types.ts';
import type { Formulation } from './types.ts';

/** Kinds of product that go into the tank together, in the order of mixing. */
export const MIX_GROUPS = ['conditioners', 'soluble-powders', 'dry-powders', 'liquid-flowables', 'emulsifiables', 'solutions', 'adjuvants', 'unknown'] as const;
export type MixGroup = (typeof MIX_GROUPS)[number];

/**
 * Where each kind has its place: soluble powders, dry powders, liquid flowables, emulsifiables, solutions (North Dakota State University 2021);
 * conditioners first is common practice, and capsules with the flowables and adjuvants last are from memory.
 */
const GROUP: Readonly<Record<Formulation, MixGroup>> = {
  conditioner: 'conditioners',
  SG: 'soluble-powders',
  SP: 'soluble-powders',
  WP: 'dry-powders',
  WG: 'dry-powders',
  DF: 'dry-powders',
  SC: 'liquid-flowables',
  SE: 'liquid-flowables',
  F: 'liquid-flowables',
  ME: 'liquid-flowables',
  CS: 'liquid-flowables',
  EC: 'emulsifiables',
  EW: 'emulsifiables',
  OD: 'emulsifiables',
  SL: 'solutions',
  adjuvant: 'adjuvants',
  other: 'unknown'
};
const FROM: Readonly<Partial<Record<MixGroup, readonly SourceId[]>>> = { conditioners: ['habit'], adjuvants: ['habit'], unknown: [] };

export const groupOf = (label: Label): MixGroup => (label.formulation ? GROUP[label.formulation] : 'unknown');

/** One step at the filling station. Water and agitation come first, the rest of the water last. */
export type OrderStep =
  | { readonly kind: 'water' | 'agitate' | 'fill-up' }
  | { readonly kind: 'product'; readonly label: Label; readonly group: MixGroup; readonly sources: readonly SourceId[] };

/** Order in which the products go in, by their kind; those of one kind as they stand in the list. The label's own order rules over it. */
export function orderOfMixing(labels: readonly Label[]): readonly OrderStep[] {
  const products = MIX_GROUPS.flatMap((group) =>
    labels.filter((l) => groupOf(l) === group).map((label): OrderStep => ({ kind: 'product', label, group, sources: FROM[group] ?? ['ndsu-weed-guide'] }))
  );
  return [{ kind: 'water' }, { kind: 'agitate' }, ...products, { kind: 'fill-up' }];
}

import { threads } from './thread.ts';
import type { AnyFields, RecordKind, WorkRecord } from './types.ts';

/** What stays the same from one record to the next, by what it hangs on. */
const OF_THE_FARM = ['operator', 'certifiedApplicator', 'certificateNumber', 'tractor', 'tractorGear', 'engineRpm', 'tyre', 'fanBlade'];
const OF_THE_BLOCK = ['customerName', 'customerAddress', 'location', 'geoUnit', 'variety', 'cropEppo', 'typeOfUse'];
const OF_THE_PRODUCT = ['authorisationNumber', 'epaRegNumber', 'activeIngredients', 'preHarvestIntervalDays', 'reEntryHours'];

/**
 * A draft with what the last records of the same kind say of the same people and machine, the same block, the same product. What the draft
 * itself says stands. To be looked through like all of a draft.
 */
export function carriedOver(draft: AnyFields, kind: RecordKind, block: string, records: readonly WorkRecord[]): AnyFields {
  const out: Record<string, string | number> = { ...draft };
  const newest = threads(records)
    .map((t) => t.standing)
    .filter((r) => r.kind === kind && r.fields.madeInError === undefined);
  const take = (names: readonly string[], from: readonly WorkRecord[]) => {
    for (const f of names) {
      const told = from.find((r) => (r.fields as AnyFields)[f] !== undefined);
      if (out[f] === undefined && told) out[f] = (told.fields as AnyFields)[f]!;
    }
  };
  take(OF_THE_FARM, newest);
  take(OF_THE_BLOCK, newest.filter((r) => r.block === block));
  const name = draft['productName'];
  if (name !== undefined) take(OF_THE_PRODUCT, newest.filter((r) => (r.fields as AnyFields)['productName'] === name));
  return out;
}

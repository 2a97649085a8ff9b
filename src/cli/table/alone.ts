import type { CanopyBatch } from '#job/csv/batch.ts';
import { QUANTITIES } from '#job/csv/columns.ts';
import type { Canopies } from './columns.ts';

/** One canopy of a batch as a batch of its own. */
export const alone = (batch: CanopyBatch, i: number): Canopies => ({
  count: 1,
  block: [batch.block[i]!],
  ...(Object.fromEntries(QUANTITIES.map((q) => [q, batch[q].subarray(i, i + 1)])) as Omit<Canopies, 'count' | 'block'>)
});

import type { AnyFields, WorkRecord } from './types.ts';

/** One field as it stands now, and every other value that it had before, oldest first; `undefined` where nothing was said then. */
export interface Row {
  readonly field: string;
  readonly now: string | number | undefined;
  readonly earlier: readonly (string | number | undefined)[];
}

/** A record with all that was put in its place. */
export interface Thread {
  /** As it was first made. */
  readonly first: WorkRecord;
  /** What stands now: the amendment written last. */
  readonly standing: WorkRecord;
  /** From the first to the standing one. */
  readonly steps: readonly WorkRecord[];
  /** Amendments that were written beside those, on another device: they stand in nobody's place and are shown. */
  readonly beside: readonly WorkRecord[];
}

const instant = (r: WorkRecord): number => Date.parse(r.at);
/** Day and time of the work where they were told, else of the writing. */
const workedAt = ({ fields, at }: WorkRecord): string => `${fields.date ?? at.slice(0, 10)} ${fields.startTime ?? ''}`;

/**
 * Records with their amendments, the newest work first. The records must have come through the reader: every amendment leads to a record
 * of its kind, and none in a circle.
 */
export function threads(records: readonly WorkRecord[]): readonly Thread[] {
  const byId = new Map(records.map((r) => [r.id, r]));
  const followers = new Map<string, WorkRecord[]>();
  for (const r of records) if (r.amends !== undefined) followers.set(r.amends, [...(followers.get(r.amends) ?? []), r]);

  // Of two that were written at once the later in the list is the newer.
  const made = [...records]
    .reverse()
    .filter((r) => r.amends === undefined)
    .map((first): Thread => {
      const all: WorkRecord[] = [first];
      // Grows while it is walked.
      for (const r of all) all.push(...(followers.get(r.id) ?? []));
      const ends = all.filter((r) => !followers.has(r.id));
      const standing = ends.reduce((last, r) => (instant(r) >= instant(last) ? r : last));
      const steps: WorkRecord[] = [standing];
      while (steps[0]!.amends !== undefined) steps.unshift(byId.get(steps[0]!.amends)!);
      const on = new Set(steps);
      return { first, standing, steps, beside: all.filter((r) => !on.has(r)) };
    });
  return made.sort((a, b) => workedAt(b.standing).localeCompare(workedAt(a.standing)) || instant(b.first) - instant(a.first));
}

/** Every field that was ever told in a thread, in the order of `order`. */
export function rowsOf({ steps }: Thread, order: readonly string[]): readonly Row[] {
  const values = steps.map((s) => s.fields as AnyFields);
  return order.flatMap((field) => {
    if (!values.some((v) => v[field] !== undefined)) return [];
    const told = values.map((v) => v[field]);
    const now = told.at(-1);
    // One entry for each change, none for an amendment that left the field as it was.
    const earlier = told.slice(0, -1).filter((v, i) => v !== told[i + 1]);
    return [{ field, now, earlier }];
  });
}

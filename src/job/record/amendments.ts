import { nearest } from '../nearest.ts';
import { problem, type Problem } from '../problem.ts';

/** A raw record and where it stands. */
interface Item {
  readonly raw: Readonly<Record<string, unknown>>;
  readonly steps: readonly (string | number)[];
}

const textOf = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);

/**
 * Refuses an amendment that leads nowhere, to itself, in a circle or to another kind of record; one without a reason, and a reason without
 * an amendment. A record has one first version, and every other leads back to it.
 */
export function amendmentProblems(records: readonly Item[]): Problem[] {
  const byId = new Map<string, Item>();
  for (const item of records) {
    const id = textOf(item.raw['id']);
    if (id !== undefined && !byId.has(id)) byId.set(id, item);
  }
  const inCircle = circles(byId);
  return records.flatMap((item) => {
    const { raw, steps } = item;
    const amends = textOf(raw['amends']);
    if (raw['amends'] === undefined) return raw['reason'] === undefined ? [] : [problem([...steps, 'reason'], 'reason-without-amendment', raw['reason'])];
    if (amends === undefined) return [];
    const at = [...steps, 'amends'];
    const amended = byId.get(amends);
    const found: Problem[] = raw['reason'] === undefined ? [problem([...steps, 'reason'], 'amendment-without-reason', undefined, { amends })] : [];
    if (amends === raw['id']) found.push(problem(at, 'amends-itself', amends));
    else if (!amended) found.push(problem(at, 'no-such-reference', amends, { kind: 'record', id: amends, within: '', choices: told(byId.keys()), nearest: nearest(amends, byId.keys()) }));
    else if (amended.raw['kind'] !== raw['kind']) found.push(problem(at, 'amends-other-kind', amends, { kind: String(raw['kind']), other: String(amended.raw['kind']) }));
    else if (inCircle.has(item)) found.push(problem(at, 'amends-in-circle', amends));
    return found;
  });
}

const TOLD = 10;
const told = (ids: Iterable<string>): string => {
  const all = [...ids];
  return all.slice(0, TOLD).join(', ') + (all.length > TOLD ? ', …' : '');
};

/** Records that come back to themselves by what they amend. */
function circles(byId: ReadonlyMap<string, Item>): ReadonlySet<Item> {
  const done = new Set<Item>();
  const inCircle = new Set<Item>();
  for (const start of byId.values()) {
    const path: Item[] = [];
    const on = new Set<Item>();
    let here: Item | undefined = start;
    while (here && !done.has(here) && !on.has(here)) {
      path.push(here);
      on.add(here);
      here = byId.get(textOf(here.raw['amends']) ?? '');
    }
    if (here && on.has(here)) for (const item of path.slice(path.indexOf(here))) inCircle.add(item);
    for (const item of path) done.add(item);
  }
  return inCircle;
}

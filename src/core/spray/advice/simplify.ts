import type { Goods } from './front.ts';
import { judge, type Archive, type Candidate, type Ground } from './walk.ts';

/** What a change may be worth at most to be left out: shares, CV. Nothing of the work rate is given away. */
const LEFT_OUT: Goods = [0.01, 0.01, 0.02, 1e-9];

const asGood = (a: Goods, b: Goods): boolean => a.every((v, i) => v >= b[i]! - LEFT_OUT[i]!);

/**
 * The setting without the changes that hardly matter: drops, air and places go back to today's, one by one, as long as nothing gets worse than the first by
 * more than what is told apart. Walks end with such changes where a later one has made an earlier one idle.
 * @param groundOf where a candidate's nozzles stand with another air or drops; null where those are not tried
 */
export function simplified(first: Candidate, present: Ground, groundOf: (air: Candidate['air'], drops: Candidate['drops']) => Ground | null, archive: Archive): Candidate {
  let best = first;
  const attempt = (ground: Ground | null, choices: readonly number[]): void => {
    if (!ground) return;
    const found = judge(ground, choices, archive).filter((c) => c.changes < best.changes && asGood(c.goods, first.goods));
    if (found.length > 0) best = found.reduce((a, b) => (b.changes < a.changes ? b : a));
  };
  attempt(groundOf(present.air, best.drops), best.choices);
  attempt(groundOf(best.air, present.drops), best.choices);
  first.choices.forEach((choice, i) => {
    const today = present.places[i]!.present;
    if (choice !== today) attempt(groundOf(best.air, best.drops), best.choices.with(i, today));
  });
  return best;
}

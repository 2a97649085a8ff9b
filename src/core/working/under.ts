import type { Answer, Given, Quantity } from './answer.ts';

/** The assumptions that some answers rest on, by id, in the order met. Refused answers rest on none. */
export function assumptionsUnder(answers: readonly (Answer | null | undefined)[]): ReadonlyMap<string, Given> {
  const found = new Map<string, Given>();
  const seen = new Set<Quantity>();
  const visit = (q: Quantity): void => {
    if (seen.has(q)) return;
    seen.add(q);
    if (q.kind === 'given') {
      if (q.assumption !== undefined) found.set(q.assumption, q);
    } else for (const symbol in q.inputs) visit(q.inputs[symbol]!);
  };
  for (const a of answers) if (a && a.kind !== 'refused') visit(a);
  return found;
}

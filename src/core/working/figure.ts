import { isRefused, refused, weaker, type Answer, type Certainty, type Formula, type Quantity } from './answer.ts';

/**
 * Applies a formula to its inputs. A refused input is handed on as it is; an input outside the formula's range, and a
 * result that is no finite number, are refused by name. Nothing but a finite number ever leaves.
 */
export function derive<K extends string>(formula: Formula<K>, inputs: Readonly<Record<K, Answer>>): Answer {
  const values = {} as Record<K, number>;
  let certainty: Certainty = formula.certainty;
  let extrapolated = false;
  for (const symbol in inputs) {
    const input: Answer = inputs[symbol];
    if (isRefused(input)) return input;
    const v = input.value;
    const range = formula.range?.[symbol];
    if (!(v >= (range?.[0] ?? -Infinity) && v <= (range?.[1] ?? Infinity)) || !Number.isFinite(v))
      return refused('input-out-of-range', input.kind === 'given' ? (input.path ?? symbol) : symbol, {
        formula: formula.id,
        symbol,
        value: v,
        least: range?.[0] ?? -Infinity,
        most: range?.[1] ?? Infinity,
        unit: input.unit
      });
    const published = formula.published?.[symbol];
    if (published && !(v >= published[0] && v <= published[1])) extrapolated = true;
    if (input.kind === 'figure' && input.extrapolated) extrapolated = true;
    certainty = weaker(certainty, input.certainty);
    values[symbol] = v;
  }
  const value = formula.compute(values);
  if (!Number.isFinite(value)) return refused('not-a-number', formula.id, { formula: formula.id });
  return { kind: 'figure', value, unit: formula.unit, formula, inputs: inputs as Record<K, Quantity>, certainty, extrapolated };
}

/** Above zero and finite: the range of a length, a flow, a speed. */
export const POSITIVE = [Number.MIN_VALUE, Number.MAX_VALUE] as const;
/** Zero or above. */
export const NOT_NEGATIVE = [0, Number.MAX_VALUE] as const;

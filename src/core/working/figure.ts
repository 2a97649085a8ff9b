import { refused, weaker, type Answer, type Certainty, type Formula, type Quantity } from './answer.ts';

/**
 * Applies a formula to its inputs. A refused input is handed on as it is; an input outside the formula's range, and a
 * result that is no finite number, are refused by name. Nothing but a finite number ever leaves.
 */
export function derive<K extends string>(formula: Formula<K>, inputs: Readonly<Record<K, Answer>>): Answer {
  const values = {} as Record<K, number>;
  const { range, published } = formula;
  let certainty: Certainty = formula.certainty;
  let extrapolated = false;
  for (const symbol in inputs) {
    const input: Answer = inputs[symbol];
    if (input.kind === 'refused') return input;
    const v = input.value;
    const allowed = range?.[symbol];
    // Written so that NaN fails.
    if (!(allowed ? v >= allowed[0] && v <= allowed[1] : Number.isFinite(v)))
      return refused('input-out-of-range', input.kind === 'given' ? (input.path ?? symbol) : symbol, {
        formula: formula.id,
        symbol,
        value: v,
        least: allowed?.[0] ?? -Infinity,
        most: allowed?.[1] ?? Infinity,
        unit: input.unit
      });
    if (published) {
      const known = published[symbol];
      if (known && !(v >= known[0] && v <= known[1])) extrapolated = true;
    }
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

import type { Formula } from './answer.ts';

/** A quantity of many things at once: one value for each, or one for all. NaN stands where it is refused. */
export type Column = Float64Array<ArrayBuffer> | number;

/** A column, and what works it out anew for the first `count`; null where it is one value for all. */
export interface Derived {
  readonly column: Column;
  readonly work: ((count: number) => void) | null;
}

/** What a formula without a range accepts of an input: any finite number. */
const ANY = [-Number.MAX_VALUE, Number.MAX_VALUE] as const;

/**
 * `derive` for many at once: the same refusals, as NaN, and no working kept. An input column that is filled anew is read where it stands.
 * @param inputs a column for every symbol of the formula
 * @param room how many the columns have room for
 * @param ranges false for a step aside, as a slope takes it: then no input is out of range
 */
export function deriveColumn(formula: Formula, inputs: Readonly<Record<string, Column>>, room: number, ranges = true): Derived {
  const symbols = Object.keys(formula.inputs);
  const at = { i: 0 };
  // The formula reads its inputs from here: getters of one shape for each formula are as fast as fields, and nothing is copied.
  const values: Record<string, number> = {};
  const checks: { readonly input: Float64Array; readonly least: number; readonly most: number }[] = [];
  let refused = false;
  for (const symbol of symbols) {
    const input = inputs[symbol];
    if (input === undefined) throw new Error(`${formula.id} is not told ${symbol}`);
    const [least, most] = (ranges ? formula.range?.[symbol] : undefined) ?? ANY;
    if (typeof input === 'number') {
      values[symbol] = input;
      if (!(input >= least && input <= most)) refused = true;
    } else {
      Object.defineProperty(values, symbol, { get: () => input[at.i], enumerable: true });
      checks.push({ input, least, most });
    }
  }
  if (refused) return { column: NaN, work: null };
  if (checks.length === 0) return { column: finite(formula.compute(values)), work: null };

  const column = new Float64Array(room);
  return {
    column,
    work(count) {
      for (let i = 0; i < count; i++) {
        at.i = i;
        column[i] = finite(formula.compute(values));
      }
      for (const { input, least, most } of checks)
        for (let i = 0; i < count; i++) {
          const v = input[i]!;
          if (!(v >= least && v <= most)) column[i] = NaN;
        }
    }
  };
}

const finite = (v: number): number => (Number.isFinite(v) ? v : NaN);

import type { Canopies } from '#core/dose/table/columns.ts';

/** What a column comes to over some rows; NaN where there is nothing. */
export interface Summary {
  readonly mean: number;
  readonly deviation: number;
}

/** Rows whose block name holds a text, whatever its case, and whose figure is on the right side of a limit. */
export function keptRows(canopies: Pick<Canopies, 'count' | 'block'>, text: string, limit: { readonly values: Float64Array; readonly way: 'least' | 'most'; readonly value: number } | null): Uint32Array {
  const wanted = text.trim().toLowerCase();
  const rows = new Uint32Array(canopies.count);
  let n = 0;
  for (let i = 0; i < canopies.count; i++) {
    if (wanted !== '' && !canopies.block[i]!.toLowerCase().includes(wanted)) continue;
    if (limit) {
      const v = limit.values[i]!;
      // Written so that NaN fails.
      if (!(limit.way === 'least' ? v >= limit.value : v <= limit.value)) continue;
    }
    rows[n++] = i;
  }
  return rows.subarray(0, n);
}

/** Rows in the order of a column, those without a figure last, equal ones as they were. */
export function sortRows(rows: Uint32Array, down: boolean, by: Float64Array | readonly string[] | null): Uint32Array {
  if (!by) return rows;
  const way = down ? -1 : 1;
  if (by instanceof Float64Array)
    return rows.toSorted((a, b) => {
      const [x, y] = [by[a]!, by[b]!];
      if (x === x && y === y) return way * (x - y) || a - b;
      return Number(x !== x) - Number(y !== y) || a - b;
    });
  const order = new Intl.Collator(undefined, { numeric: true }).compare;
  return rows.toSorted((a, b) => way * order(by[a]!, by[b]!) || a - b);
}

/** Mean and standard deviation (over n − 1) of the rows that have a figure, in one pass (Welford 1962). */
export function summary(values: Float64Array, rows: Uint32Array): Summary {
  let n = 0;
  let mean = 0;
  let squares = 0;
  for (const i of rows) {
    const v = values[i]!;
    if (Number.isNaN(v)) continue;
    n++;
    const away = v - mean;
    mean += away / n;
    squares += away * (v - mean);
  }
  return { mean: n > 0 ? mean : NaN, deviation: n > 1 ? Math.sqrt(squares / (n - 1)) : NaN };
}

/** Quantile of ascending values, straight between them; NaN of none. @param p 0…1 */
export function quantile(sorted: ArrayLike<number>, p: number): number {
  const at = p * (sorted.length - 1);
  const i = Math.floor(at);
  const low = sorted[i] ?? NaN;
  return low + (at - i) * ((sorted[i + 1] ?? low) - low);
}

export const median = (values: readonly number[]): number => quantile(values.toSorted((a, b) => a - b), 0.5);
export const mean = (values: readonly number[]): number => values.reduce((s, v) => s + v, 0) / values.length;

/** Values gathered by whole-number keys: all of one key in one array, however many keys there are. */
export function gathered(count: number, keyOf: (i: number) => number, valueOf: (i: number) => number): ReadonlyMap<number, Float64Array> {
  const sizes = new Map<number, number>();
  for (let i = 0; i < count; i++) {
    const key = keyOf(i);
    sizes.set(key, (sizes.get(key) ?? 0) + 1);
  }
  const groups = new Map<number, Float64Array>();
  for (const [key, size] of sizes) groups.set(key, new Float64Array(size));
  for (let i = count - 1; i >= 0; i--) {
    const key = keyOf(i);
    const left = sizes.get(key)! - 1;
    groups.get(key)![left] = valueOf(i);
    sizes.set(key, left);
  }
  return groups;
}

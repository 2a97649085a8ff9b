export interface Percentiles {
  readonly p50: number;
  readonly p95: number;
  readonly max: number;
}

export function percentiles(values: readonly number[]): Percentiles {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (p: number) => sorted[Math.min(Math.floor(p * sorted.length), sorted.length - 1)] ?? NaN;
  return { p50: at(0.5), p95: at(0.95), max: at(1) };
}

export const report = (what: string, p: Percentiles, unit: string): void =>
  console.log(`${what.padEnd(44)} p50 ${p.p50.toFixed(3)} ${unit}, p95 ${p.p95.toFixed(3)} ${unit}`);

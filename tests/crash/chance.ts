/** Numbers from a seed (mulberry32): the same run can be had again. */
export class Chance {
  constructor(private seed: number) {}

  /** From 0 up to, and without, 1. */
  next(): number {
    this.seed = (this.seed + 0x6d2b79f5) | 0;
    let t = Math.imul(this.seed ^ (this.seed >>> 15), 1 | this.seed);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296;
  }
  between(least: number, most: number): number {
    return least + (most - least) * this.next();
  }
  one<T>(of: readonly T[]): T {
    return of[Math.floor(this.next() * of.length)]!;
  }
}

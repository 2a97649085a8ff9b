/**
 * The best assignment of sizes for each number of nozzles changed, exactly, among all combinations.
 *
 * Flows are whole numbers of grid steps. With the square-root law the shares of the total do not depend on the pressure, so a
 * combination is judged by its flows alone: mismatch = ½ Σ |fᵢ/F − wᵢ| with F = Σ fᵢ, which is 1 − Σ min(fᵢ/F, wᵢ). For one total F the
 * mismatch is a sum over places, and F gives the pressure and so the sizes that may be used. For each F a dynamic programme runs
 * over (place, sum so far, changes so far) and keeps the least mismatch. What cannot beat the best known is dropped by the bound
 *
 *     Σ |dᵢ| = Σ (|dᵢ| + λ dᵢ)   for every λ, as the deviations dᵢ = fᵢ − wᵢF add up to nothing,
 *
 * whose least value over the places still open, with at most so many changes, is cheap: the sum is left free and pays λ instead.
 * Nothing is dropped that could have been better, so the answer is that of trying everything.
 */

export interface SlotChoice {
  /** Index of the size, to ask whether it may be used. */
  readonly size: number;
  /** Flow of one nozzle, grid steps. */
  readonly units: number;
  /** Nozzles changed by it. */
  readonly changes: number;
}

/** One position, or a pair that is kept alike. */
export interface Slot {
  /** Wanted share of the total at each of its positions. */
  readonly shares: readonly number[];
  readonly choices: readonly SlotChoice[];
}

/** A total that is allowed, with the sets of sizes that may make it: one for each pressure at which it can be sprayed. */
export interface Total {
  readonly units: number;
  /** How far from the present setting, any scale: of equal matches the nearer one is taken. */
  readonly distance: number;
  readonly allowed: readonly Uint8Array[];
}

export interface Best {
  readonly mismatch: number;
  readonly changes: number;
  readonly units: number;
  readonly distance: number;
  /** Choice of each slot. */
  readonly choices: readonly number[];
}

export interface Watch {
  /** Share of the work done, 0 to 1. */
  readonly progress?: ((done: number) => void) | undefined;
  readonly cancelled?: (() => boolean) | undefined;
}

/** Mismatches closer than this are alike. */
const ALIKE = 1e-9;
const PRICES = [0, 1, -1, 0.5, -0.5] as const;

/**
 * @param totals allowed totals @param most nozzles that may be changed @param known what has been reached by other means, by changes: only better is looked for
 * @returns by number of changes 0…most the best with at most so many, null where there is none; or 'cancelled'
 */
export function search(slots: readonly Slot[], totals: readonly Total[], most: number, known: readonly (Best | null)[], watch: Watch = {}): readonly (Best | null)[] | 'cancelled' {
  const run = new Search(slots, totals, most, known);
  run.guess();
  const order = run.order();
  for (let i = 0; i < order.length; i++) {
    if (i % 64 === 0) {
      if (watch.cancelled?.()) return 'cancelled';
      watch.progress?.(i / order.length);
    }
    const total = order[i]!;
    for (const allowed of total.allowed) run.settle(total, allowed);
  }
  watch.progress?.(1);
  return run.best;
}

class Search {
  readonly best: (Best | null)[];
  /** Slots by falling share: the large decide early. `at` is their place in the caller's list. */
  private readonly slots: readonly { readonly at: number; readonly slot: Slot; readonly count: number; readonly share: number }[];
  private readonly totals: ReadonlyMap<number, Total>;
  private readonly largest: number;
  /** By slot: sums that the slots from there on can make. */
  private readonly reach: readonly Uint8Array[];
  /** Wanted share of the slots before each. */
  private readonly before: readonly number[];

  /** States of the programme, layer after layer. */
  private sums = new Int32Array(1 << 14);
  private costs = new Float64Array(1 << 14);
  private spent = new Int16Array(1 << 14);
  private parents = new Int32Array(1 << 14);
  private taken = new Int16Array(1 << 14);
  /** State of the running layer by changes and sum, valid where the stamp is the running one. */
  private readonly stateAt: Int32Array;
  private readonly stamps: Int32Array;
  private stamp = 0;
  private readonly bounds: readonly Float64Array[];
  private readonly gates: readonly Float64Array[];
  private readonly limits: Float64Array;
  /** Choices that may be used at the running total, slot after slot. */
  private readonly starts: readonly number[];
  private readonly ends: number[];
  private readonly indices: Int16Array;
  private readonly steps: Int32Array;
  private readonly shifts: Int16Array;
  private readonly prices: Float64Array;
  private readonly offs: Float64Array;

  constructor(slots: readonly Slot[], totals: readonly Total[], private readonly most: number, known: readonly (Best | null)[]) {
    this.best = Array.from({ length: most + 1 }, (_, c) => known[c] ?? null);
    this.slots = slots
      .map((slot, at) => ({ at, slot, count: slot.shares.length, share: slot.shares.reduce((s, w) => s + w, 0) }))
      .sort((a, b) => b.share - a.share);
    this.totals = new Map(totals.map((t) => [t.units, t]));
    this.largest = Math.max(0, ...totals.map((t) => t.units));
    this.reach = this.reachable();
    const before = [0];
    for (const s of this.slots) before.push(before.at(-1)! + s.share);
    this.before = before;
    this.stateAt = new Int32Array((most + 1) * (this.largest + 1));
    this.stamps = new Int32Array((most + 1) * (this.largest + 1));
    const size = (slots.length + 1) * (most + 1);
    this.bounds = PRICES.map(() => new Float64Array(size));
    this.gates = PRICES.map(() => new Float64Array(size));
    this.limits = new Float64Array(most + 1);
    const starts = [0];
    for (const { slot } of this.slots) starts.push(starts.at(-1)! + slot.choices.length);
    const choices = starts.pop()!;
    this.starts = starts;
    this.ends = [...starts];
    this.indices = new Int16Array(choices);
    this.steps = new Int32Array(choices);
    this.shifts = new Int16Array(choices);
    this.prices = new Float64Array(choices);
    this.offs = new Float64Array(choices);
  }

  private reachable(): Uint8Array[] {
    const reach = [Uint8Array.of(1)];
    for (const { slot, count } of [...this.slots].reverse()) {
      const next = reach[0]!;
      const steps = [...new Set(slot.choices.map((c) => c.units * count))];
      const here = new Uint8Array(Math.min(next.length + Math.max(...steps), this.largest + 1));
      for (let s = 0; s < next.length; s++) if (next[s]) for (const step of steps) if (s + step < here.length) here[s + step] = 1;
      reach.unshift(here);
    }
    return reach;
  }

  /** Totals that some combination makes, those nearest to the wanted shares first: a good answer early saves the most work. */
  order(): Total[] {
    const every = this.reach[0]!;
    return [...this.totals.values()]
      .filter((t) => every[t.units] === 1)
      .map((total) => {
        let cost = 0;
        for (const { slot } of this.slots) cost += Math.min(...slot.choices.map((c) => deviation(slot, c.units, total.units)));
        return { total, cost: cost / total.units };
      })
      .sort((a, b) => a.cost - b.cost)
      .map((t) => t.total);
  }

  /** Keeps a combination for every number of changes for which it is the best so far. */
  private offer(mismatch: number, changes: number, total: Total, choicesOf: () => number[]): void {
    let kept: Best | null = null;
    for (let c = changes; c <= this.most; c++) {
      const b = this.best[c];
      if (b && !(mismatch < b.mismatch - ALIKE || (mismatch < b.mismatch + ALIKE && (changes < b.changes || (changes === b.changes && total.distance < b.distance))))) continue;
      kept ??= { mismatch, changes, units: total.units, distance: total.distance, choices: choicesOf() };
      this.best[c] = kept;
    }
  }

  /** A first answer for each number of changes, by improving one place at a time: it only has to be good, the rest of the search proves or beats it. */
  guess(): void {
    const n = this.slots.length;
    const now = this.slots.map(({ slot }) => slot.choices.findIndex((c) => c.changes === 0));
    const look = (choices: readonly number[]): number => {
      let units = 0;
      let changes = 0;
      for (let j = 0; j < n; j++) {
        const c = this.slots[j]!.slot.choices[choices[j]!]!;
        units += c.units * this.slots[j]!.count;
        changes += c.changes;
      }
      let cost = 0;
      for (let j = 0; j < n; j++) cost += deviation(this.slots[j]!.slot, this.slots[j]!.slot.choices[choices[j]!]!.units, units);
      const mismatch = cost / 2 / units;
      const total = this.totals.get(units);
      if (!total || changes > this.most) return mismatch + 1;
      const sizes = choices.map((c, j) => this.slots[j]!.slot.choices[c]!.size);
      if (!total.allowed.some((a) => sizes.every((s) => a[s] === 1))) return mismatch + 1;
      this.offer(mismatch, changes, total, () => this.inOrder(choices));
      return mismatch;
    };
    type Stand = { readonly to: readonly number[]; readonly score: number };
    /** The best of the single steps from here, through the given choices of each place. */
    const step = (from: Stand, free: (j: number) => Iterable<number>): Stand | null => {
      let found: Stand | null = null;
      for (let j = 0; j < n; j++)
        for (const k of free(j)) {
          if (k === from.to[j]) continue;
          const to = from.to.with(j, k);
          const score = look(to);
          if (!found || score < found.score) found = { to, score };
        }
      return found;
    };
    const climb = (from: Stand): Stand => {
      for (let at = from; ; ) {
        const next = step(at, (j) => this.slots[j]!.slot.choices.keys());
        if (!next || next.score >= at.score) return at;
        at = next;
      }
    };
    const known = !now.includes(-1);
    if (known) climb({ to: now, score: look(now) });
    // The nearest sizes for every total; the best of them improved, then led back to the present sizes one place at a time.
    let top: Stand | null = null;
    for (const total of this.totals.values()) {
      const to = this.slots.map(({ slot }) => {
        let least = 0;
        for (let k = 1; k < slot.choices.length; k++)
          if (deviation(slot, slot.choices[k]!.units, total.units) < deviation(slot, slot.choices[least]!.units, total.units)) least = k;
        return least;
      });
      const score = look(to);
      if (!top || score < top.score) top = { to, score };
    }
    if (!top) return;
    const back = (at: Stand) => (j: number) => (now[j] === at.to[j] ? [] : [now[j]!]);
    for (let at: Stand | null = climb(top); known && at; at = step(at, back(at)));
  }

  /** All combinations of one total with one set of sizes. */
  settle(total: Total, allowed: Uint8Array): void {
    const { slots, most } = this;
    const n = slots.length;
    const F = total.units;
    const width = most + 1;

    for (let j = 0; j < n; j++) if (!this.lay(j, F, allowed)) return;

    // What a combination must stay under to be worth keeping, in grid steps, by changes.
    const limits = this.limits;
    for (let c = 0; c < width; c++) {
      const b = this.best[c];
      limits[c] = b ? 2 * F * (b.mismatch + (total.distance < b.distance ? ALIKE : -ALIKE)) : Infinity;
    }
    for (let l = 0; l < PRICES.length; l++) {
      const bound = this.bounds[l]!;
      this.boundAt(PRICES[l]!, bound);
      let open = false;
      for (let c = 0; c < width && !open; c++) open = limits[c]! > bound[c]!;
      if (!open) return;
    }
    for (let l = 0; l < PRICES.length; l++) this.gateAt(this.bounds[l]!, this.gates[l]!);

    const [g0, g1, g2, g3, g4] = this.gates as [Float64Array, Float64Array, Float64Array, Float64Array, Float64Array];
    this.sums[0] = 0;
    this.costs[0] = 0;
    this.spent[0] = 0;
    this.parents[0] = -1;
    let from = 0;
    let count = 1;
    for (let j = 0; j < n; j++) {
      const to = count;
      const reach = this.reach[j + 1]!;
      const expected = this.before[j + 1]! * F;
      this.stamp++;
      for (let s = from; s < to; s++) {
        for (let k = this.starts[j]!; k < this.ends[j]!; k++) {
          const sum = this.sums[s]! + this.steps[k]!;
          const rest = F - sum;
          if (rest < 0 || reach[rest] !== 1) continue;
          const changes = this.spent[s]! + this.shifts[k]!;
          if (changes > most) continue;
          const cost = this.costs[s]! + this.prices[k]!;
          const at = (j + 1) * width + changes;
          const off = sum - expected;
          if (cost >= g0[at]! || cost + off >= g1[at]! || cost - off >= g2[at]! || cost + 0.5 * off >= g3[at]! || cost - 0.5 * off >= g4[at]!) continue;
          const key = changes * (this.largest + 1) + sum;
          let state = this.stateAt[key]!;
          if (this.stamps[key] !== this.stamp) {
            if (count === this.sums.length) this.grow();
            state = count++;
            this.stamps[key] = this.stamp;
            this.stateAt[key] = state;
            this.sums[state] = sum;
            this.spent[state] = changes;
          } else if (cost >= this.costs[state]!) continue;
          this.costs[state] = cost;
          this.parents[state] = s;
          this.taken[state] = this.indices[k]!;
        }
      }
      from = to;
      if (from === count) return;
    }
    for (let s = from; s < count; s++) this.offer(this.costs[s]! / 2 / F, this.spent[s]!, total, () => this.inOrder(this.path(s)));
  }

  /** Lays out the choices of a slot that may be used, each with its cost and its deviation at this total; false where none may. */
  private lay(j: number, F: number, allowed: Uint8Array): boolean {
    const { slot, count, share } = this.slots[j]!;
    let k = this.starts[j]!;
    for (let i = 0; i < slot.choices.length; i++) {
      const c = slot.choices[i]!;
      if (allowed[c.size] !== 1) continue;
      this.indices[k] = i;
      this.steps[k] = c.units * count;
      this.shifts[k] = c.changes;
      this.prices[k] = deviation(slot, c.units, F);
      this.offs[k] = c.units * count - share * F;
      k++;
    }
    this.ends[j] = k;
    return k > this.starts[j]!;
  }

  /** Least of Σ (|d| + λd) over the slots from each on, by changes still allowed. */
  private boundAt(price: number, bound: Float64Array): void {
    const width = this.most + 1;
    for (let j = this.slots.length - 1; j >= 0; j--) {
      let none = Infinity;
      let one = Infinity;
      let two = Infinity;
      for (let k = this.starts[j]!; k < this.ends[j]!; k++) {
        const cost = this.prices[k]! + price * this.offs[k]!;
        const changes = this.shifts[k]!;
        if (changes === 0) none = Math.min(none, cost);
        else if (changes === 1) one = Math.min(one, cost);
        else two = Math.min(two, cost);
      }
      const here = j * width;
      const next = here + width;
      for (let r = 0; r < width; r++) {
        let b = none + bound[next + r]!;
        if (r >= 1) b = Math.min(b, one + bound[next + r - 1]!);
        if (r >= 2) b = Math.min(b, two + bound[next + r - 2]!);
        bound[here + r] = b;
      }
    }
  }

  /** Cost that a state may have reached before each slot, with so many changes made, if it is still to beat something. */
  private gateAt(bound: Float64Array, gate: Float64Array): void {
    const width = this.most + 1;
    for (let j = 0; j <= this.slots.length; j++)
      for (let c = 0; c < width; c++) {
        let g = -Infinity;
        for (let end = c; end < width; end++) g = Math.max(g, this.limits[end]! - bound[j * width + end - c]!);
        gate[j * width + c] = g;
      }
  }

  private path(state: number): number[] {
    const choices: number[] = [];
    for (let s = state; this.parents[s]! >= 0; s = this.parents[s]!) choices.unshift(this.taken[s]!);
    return choices;
  }

  /** From the order of the search to the caller's. */
  private inOrder(choices: readonly number[]): number[] {
    const out: number[] = [];
    this.slots.forEach(({ at }, j) => (out[at] = choices[j]!));
    return out;
  }

  private grow(): void {
    const more = <T extends Int32Array | Float64Array | Int16Array>(a: T): T => {
      const b = new (a.constructor as new (n: number) => T)(a.length * 2);
      b.set(a);
      return b;
    };
    this.sums = more(this.sums);
    this.costs = more(this.costs);
    this.spent = more(this.spent);
    this.parents = more(this.parents);
    this.taken = more(this.taken);
  }
}

/** Σ |f − wF| over the positions of a slot, grid steps. */
function deviation(slot: Slot, units: number, total: number): number {
  let d = 0;
  for (const w of slot.shares) d += Math.abs(units - w * total);
  return d;
}

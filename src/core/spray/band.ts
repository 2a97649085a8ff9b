import { SPRAY_CONSTANTS, VMD_OF, VMD_UNKNOWN } from './assumptions.ts';
import { balance } from './balance.ts';
import { transport, type Transport } from './transport.ts';
import { FATES, LEAST_BAND, LEAST_LOSS_BAND, type BandRun, type Fate, type Range, type SprayBalance, type SprayBand, type SprayCase, type SprayConstants } from './types.ts';

/** One thing that may be otherwise: the case at both ends of its plausible range, and whether the drops must fly anew. */
export interface Variation {
  readonly assumption: string;
  readonly values: Range;
  readonly ends: readonly [SprayCase, SprayCase];
  readonly flies: boolean;
}

/** Constants that weigh parcels but leave their flight as it is. */
const WEIGHTS_ALONE: ReadonlySet<keyof SprayConstants> = new Set(['plumeSpread', 'finePart']);

/** Everything that may plausibly be otherwise in a case: what the user stated, and what the case does not ask for, is left out. */
export function variations(c: SprayCase): readonly Variation[] {
  const out: Variation[] = [];
  const woodShows = c.canopy.ladM2PerM3 < c.constants.fullLeafM2PerM3;
  const asked = (name: keyof SprayConstants): boolean =>
    name.startsWith('wood') ? woodShows : name.startsWith('leaf') || name === 'coreRatio' ? c.canopy.ladM2PerM3 > 0 : name === 'roundEntrainment' ? c.outlet.kind === 'spouts' : name !== 'entrainment' || c.outlet.kind !== 'spouts';
  for (const [key, a] of Object.entries(SPRAY_CONSTANTS)) {
    const name = key as keyof typeof SPRAY_CONSTANTS;
    const [low, high] = a.plausible;
    if (low === high || c.stated.includes(a.id) || !asked(name)) continue;
    const at = (value: number): SprayCase => ({ ...c, constants: { ...c.constants, [name]: value } });
    out.push({ assumption: a.id, values: a.plausible, ends: [at(low), at(high)], flies: !WEIGHTS_ALONE.has(name) });
  }
  if (c.canopy.ladM2PerM3 > 0) {
    const at = (ladM2PerM3: number): SprayCase => ({ ...c, canopy: { ...c.canopy, ladM2PerM3 } });
    out.push({ assumption: 'canopy.full-leaf-density', values: c.ladRange, ends: [at(c.ladRange[0]), at(c.ladRange[1])], flies: true });
  }
  const sizes = [0, 1].map((end): SprayCase => ({
    ...c,
    nozzles: c.nozzles.map((n) => {
      const a = n.droplets ? VMD_OF[n.droplets] : VMD_UNKNOWN;
      return c.stated.includes(a.id) ? n : { ...n, vmdUm: a.plausible[end]! };
    })
  }));
  const [first] = c.nozzles;
  if (first) {
    const a = first.droplets ? VMD_OF[first.droplets] : VMD_UNKNOWN;
    out.push({ assumption: a.id, values: a.plausible, ends: [sizes[0]!, sizes[1]!], flies: false });
  }
  return out;
}

/** Differences of one figure at the ends of all ranges, gathered: root of the sum of squares, up and down apart. */
class Spread {
  private up = 0;
  private down = 0;
  constructor(
    private readonly middle: number,
    private readonly least: number
  ) {}
  add(low: number, high: number): void {
    const up = Math.max(low, high, this.middle) - this.middle;
    const down = this.middle - Math.min(low, high, this.middle);
    this.up += up * up;
    this.down += down * down;
  }
  range(most: number): Range {
    return [Math.max(0, this.middle - Math.max(Math.sqrt(this.down), this.least)), Math.min(most, this.middle + Math.max(Math.sqrt(this.up), this.least))];
  }
}

/**
 * The band of a balance: each plausible range run alone, at both ends, differences joined as if independent. On the trees it is never
 * narrower than ±15 points, the model's error against published balances. Step by step, so that a worker can hear something else
 * in between: yields the share done, returns the band.
 */
export function* bandSteps(c: SprayCase, known: { readonly transport: Transport; readonly balance: SprayBalance } | null = null): Generator<number, SprayBand> {
  const t = known?.transport ?? transport(c);
  const middle = known?.balance ?? balance(c, t);
  const all = variations(c);
  const shares = Object.fromEntries(FATES.map((f) => [f, new Spread(middle.shares[f], 0)])) as Record<Fate, Spread>;
  const onTrees = new Spread(middle.onTrees, LEAST_BAND);
  const lost = new Spread(middle.lost, LEAST_LOSS_BAND);
  const cv = new Spread(middle.cv ?? 0, 0);
  const deposit = new Spread(middle.depositUlPerCm2 ?? 0, 0);
  const runs: BandRun[] = [];
  for (let i = 0; i < all.length; i++) {
    const { assumption, values, ends, flies } = all[i]!;
    const [low, high] = ends.map((end) => balance(end, flies ? transport(end) : t)) as [SprayBalance, SprayBalance];
    for (const f of FATES) shares[f].add(low.shares[f], high.shares[f]);
    onTrees.add(low.onTrees, high.onTrees);
    lost.add(low.lost, high.lost);
    cv.add(low.cv ?? 0, high.cv ?? 0);
    deposit.add(low.depositUlPerCm2 ?? 0, high.depositUlPerCm2 ?? 0);
    runs.push({ assumption, values, onTrees: [low.onTrees, high.onTrees] });
    yield (i + 1) / all.length;
  }
  const moved = ({ onTrees: [low, high] }: BandRun) => Math.max(Math.abs(low - middle.onTrees), Math.abs(high - middle.onTrees));
  // The deposit's own error is at least that of the share that makes it.
  const depositRange = deposit.range(Infinity);
  const least = middle.onTrees > 0 ? LEAST_BAND / middle.onTrees : 0;
  const mean = middle.depositUlPerCm2;
  return {
    shares: Object.fromEntries(FATES.map((f) => [f, shares[f].range(1)])) as Record<Fate, Range>,
    onTrees: onTrees.range(1),
    lost: lost.range(1),
    cv: middle.cv === null ? null : cv.range(Infinity),
    depositUlPerCm2: mean === null ? null : [Math.max(0, Math.min(depositRange[0], mean * (1 - least))), Math.max(depositRange[1], mean * (1 + least))],
    runs: runs.toSorted((a, b) => moved(b) - moved(a))
  };
}

/** The whole band at once. @param progress hears the share done */
export function band(c: SprayCase, { progress }: { readonly progress?: (done: number) => void } = {}): SprayBand {
  const steps = bandSteps(c);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
    progress?.(value);
  }
}

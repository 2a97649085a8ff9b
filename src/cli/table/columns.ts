import * as F from '#core/canopy/formulas.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import type { Strategy } from '#core/dose/strategy.ts';
import { GAL_PER_1000FT3_L_PER_M3 } from '#core/quantity/constants.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import type { Quantity } from '#job/csv/columns.ts';
import { constantsOf, FACES, FILL, FULL_LEAF, HEADER, MULTIPLIER, OUTPUTS, US_DENSITY, type Output } from './plan.ts';

export { HEADER };

/** Figures of one canopy by the symbols of the formulas; one object is filled again and again. */
type Symbols = Record<string, number>;

/** A strategy with its own constants under its symbols, ready to be given canopies. */
interface Prepared {
  readonly strategy: Strategy;
  readonly symbols: Symbols;
  /** Hands over the canopy figures that its formulas use. */
  readonly take: readonly ((to: Symbols, v: Symbols) => void)[];
}

const CANOPY = ['H', 'Hs', 'h', 'W', 'R', 'f', 'n', 's', 'A', 'TRVg', 'TRVc', 'TRVs', 'LWA', 'RL', 'UCR', 'LAD', 'LAI', 'k', 'm'];

function prepare(): readonly Prepared[] {
  const strategies = [...STRATEGIES.values()];
  const constants = strategies.map(constantsOf);
  const names = new Set(constants.flatMap(Object.keys));
  return strategies.map((strategy, i) => {
    // All alike in shape and order, so that the formulas stay fast.
    const symbols: Symbols = {};
    for (const name of CANOPY) symbols[name] = 0.5;
    for (const name of names) symbols[name] = constants[i]![name]?.value ?? 0.5;
    if (strategy.reference) symbols[strategy.reference.symbol] = strategy.reference.compute(symbols);
    const used = new Set([strategy.water, strategy.index].flatMap((formula) => Object.keys(formula?.inputs ?? {})));
    const take = CANOPY.filter((name) => used.has(name) && !(name in constants[i]!)).map((name) => HAND_OVER[name]!);
    return { strategy, symbols, take };
  });
}

/** What the lines are written from: a batch, or as much of one. */
export type Canopies = Readonly<Pick<CanopyBatch, 'count' | 'block' | Quantity>>;

/** Canopy `i` of a batch into the symbols. */
function fill(v: Symbols, b: Canopies, i: number): void {
  v.H = b.treeHeightM[i]!;
  v.Hs = b.skirtHeightM[i]!;
  v.W = b.canopyWidthM[i]!;
  v.R = b.rowSpacingM[i]!;
  v.f = b.filledFraction[i]!;
  v.n = FACES;
  v.s = FILL;
  const k = b.usDensityGalPer1000Ft3[i]!;
  v.k = k === k ? k * GAL_PER_1000FT3_L_PER_M3 : DENSITY;
  const lad = b.ladM2PerM3[i]!;
  v.LAD = lad === lad ? lad : LEAF;
  v.m = CLASS;
  v.h = F.CROWN_HEIGHT.compute(v as Record<'H' | 'Hs', number>);
  v.TRVg = F.TRV_GROUND.compute(v as never);
  v.TRVc = F.TRV_CROWN.compute(v as never);
  v.A = F.SECTION_AREA.compute(v as never);
  v.TRVs = F.TRV_OUTLINE.compute(v as never);
  v.LWA = F.LEAF_WALL.compute(v as never);
  v.RL = F.ROW_LENGTH.compute(v as never);
  v.UCR = F.CANOPY_ROWS.compute(v as never);
  v.LAI = F.LEAF_AREA_INDEX.compute(v as never);
}
const DENSITY = US_DENSITY.value;
const LEAF = FULL_LEAF.value;
const CLASS = MULTIPLIER.value;

/** Hands one canopy figure over: a fixed property each, which is many times faster than one by name. */
const HAND_OVER: Readonly<Record<string, (to: Symbols, v: Symbols) => void>> = {
  H: (to, v) => (to.H = v.H!),
  h: (to, v) => (to.h = v.h!),
  W: (to, v) => (to.W = v.W!),
  R: (to, v) => (to.R = v.R!),
  f: (to, v) => (to.f = v.f!),
  TRVg: (to, v) => (to.TRVg = v.TRVg!),
  TRVc: (to, v) => (to.TRVc = v.TRVc!),
  TRVs: (to, v) => (to.TRVs = v.TRVs!),
  LWA: (to, v) => (to.LWA = v.LWA!),
  RL: (to, v) => (to.RL = v.RL!),
  UCR: (to, v) => (to.UCR = v.UCR!),
  LAD: (to, v) => (to.LAD = v.LAD!),
  LAI: (to, v) => (to.LAI = v.LAI!),
  k: (to, v) => (to.k = v.k!),
  m: (to, v) => (to.m = v.m!)
};

/** An output, ready to be computed. */
interface Column {
  /** Strategy whose symbols it is computed from; the bare canopy where there is none. */
  readonly from: Prepared | undefined;
  readonly value: (v: Symbols) => number;
}

const PREPARED = prepare();
const COLUMNS = OUTPUTS.map((o): Column => ({ from: PREPARED.find((p) => p.strategy === o.strategy), value: computed(o) }));

function computed({ formula, times, per }: Output): (v: Symbols) => number {
  if (times !== undefined) return (v) => formula.compute(v) * times;
  return per === undefined ? (v) => formula.compute(v) : (v) => formula.compute(v) / per;
}

/** Strategies that some column asks. */
const USED = PREPARED.filter((p) => COLUMNS.some((c) => c.from === p));

/** Room for one line: a name as long as the reader lets it be, and every number at its longest. */
const LONGEST_LINE = 1024 + 26 * COLUMNS.length;
const NEWLINE = 10;
const COMMA = 44;

/** Lines of figures as UTF-8, one per canopy, numbers in the shortest form that reads back the same. */
export class Lines {
  private length = 0;
  /** A plain list: the language writes one as JSON in three quarters of the time of joining it, every number in the same shortest form. */
  private readonly row: number[] = COLUMNS.map(() => 0.5);
  private readonly canopy: Symbols = Object.fromEntries(CANOPY.map((name) => [name, 0.5]));

  private bytes: Buffer<ArrayBuffer>;

  /** @param room bytes to begin with */
  constructor(room: number) {
    this.bytes = Buffer.allocUnsafe(Math.max(room, LONGEST_LINE));
  }

  add(batch: Canopies): void {
    const { canopy, row } = this;
    for (let i = 0; i < batch.count; i++) {
      fill(canopy, batch, i);
      for (const { symbols, take } of USED) for (const hand of take) hand(symbols, canopy);
      for (let o = 0; o < COLUMNS.length; o++) {
        const { from, value } = COLUMNS[o]!;
        row[o] = value(from ? from.symbols : canopy);
      }
      if (this.length + LONGEST_LINE > this.bytes.length) this.grow();
      const figures = this.length + this.bytes.write(quoted(batch.block[i]!), this.length);
      this.length = figures + this.bytes.write(JSON.stringify(row), figures, 'latin1');
      // The list's brackets stand where a comma and the line's end belong.
      this.bytes[figures] = COMMA;
      this.bytes[this.length - 1] = NEWLINE;
    }
  }

  clear(): void {
    this.length = 0;
  }

  /** What was written, as a copy of its own. */
  take(): Uint8Array<ArrayBuffer> {
    return new Uint8Array(this.bytes.subarray(0, this.length));
  }

  private grow(): void {
    const larger = Buffer.allocUnsafe(2 * this.bytes.length);
    this.bytes.copy(larger, 0, 0, this.length);
    this.bytes = larger;
  }
}

/** A name as a CSV field that reads back the same. */
const quoted = (name: string): string => (/[",\r\n]|^\s|\s$/.test(name) ? `"${name.replaceAll('"', '""')}"` : name);

/** Names of the columns of figures, in their order. */
export const FIGURE_NAMES: readonly string[] = OUTPUTS.map((o) => o.name);

const ONE: Symbols = Object.fromEntries(CANOPY.map((name) => [name, 0.5]));

/** Works out some of the figures, by their numbers in `FIGURE_NAMES`, as numbers: `to[c][i]` is the `c`th of them for canopy `i`. */
export function figuresAt(which: readonly number[]): (to: readonly Float64Array[], batch: Canopies) => void {
  const asked = which.map((o) => COLUMNS[o]!);
  const used = PREPARED.filter((p) => asked.some((o) => o.from === p));
  return (to, batch) => {
    for (let i = 0; i < batch.count; i++) {
      fill(ONE, batch, i);
      for (const { symbols, take } of used) for (const hand of take) hand(symbols, ONE);
      for (let o = 0; o < asked.length; o++) {
        const { from, value } = asked[o]!;
        to[o]![i] = value(from ? from.symbols : ONE);
      }
    }
  };
}
/** Works out all of them. */
export const allFigures = figuresAt(COLUMNS.map((_, o) => o));

import * as F from '#core/canopy/formulas.ts';
import type { CanopyState } from '#core/canopy/canopy.ts';
import { outlineOf, sectionArea } from '#core/canopy/outline.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import type { Strategy } from '#core/dose/strategy.ts';
import { FT2_PER_ACRE_M2_PER_HA, FT3_PER_ACRE_M3_PER_HA, GAL_PER_1000FT3_L_PER_M3, GAL_PER_ACRE_L_PER_HA } from '#core/quantity/constants.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import type { Formula } from '#core/working/answer.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import type { Quantity } from '#job/csv/columns.ts';

/** Figures of one canopy by the symbols of the formulas; one object is filled again and again. */
type Symbols = Record<string, number>;

const assumed = (id: string): number => ASSUMPTIONS.get(id)!.value;
/** A table tells no stage, density class or outline: full leaf, medium and the default outline stand, as for a document that is silent. */
const SILENT = { bbch: undefined, densityClass: 'medium' } as unknown as CanopyState;
const unit = { heightM: 1, widthM: 1 };
const FILL = sectionArea(outlineOf(unit));

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
  const constants = strategies.map((s) => ({ ...s.constants, ...s.choose?.(SILENT) }));
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
  v.n = 2;
  v.s = FILL;
  const k = b.usDensityGalPer1000Ft3[i]!;
  v.k = k === k ? k * GAL_PER_1000FT3_L_PER_M3 : US_DENSITY;
  const lad = b.ladM2PerM3[i]!;
  v.LAD = lad === lad ? lad : FULL_LEAF;
  v.m = MULTIPLIER;
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
const US_DENSITY = assumed('canopy.us-density');
const FULL_LEAF = assumed('canopy.full-leaf-density');
const MULTIPLIER = assumed('canopy.multiplier-medium');

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

interface Output {
  readonly name: string;
  /** Strategy whose symbols it is computed from; the bare canopy where there is none. */
  readonly from?: Prepared;
  readonly value: (v: Symbols) => number;
}

const PREPARED = prepare();
const of = (id: string): Prepared => PREPARED.find((p) => p.strategy.id === id)!;
const computed = (formula: Formula, factor = 1) => (factor === 1 ? (v: Symbols) => formula.compute(v) : (v: Symbols) => formula.compute(v) * factor);

function outputs(): readonly Output[] {
  const us = of('us-row-volume');
  const swiss = of('swiss-affine');
  const first: Output[] = [
    { name: 'trv_ground_m3_per_ha', value: (v) => v.TRVg! },
    { name: 'trv_ground_ft3_per_ac', value: (v) => v.TRVg! / FT3_PER_ACRE_M3_PER_HA },
    { name: 'trv_crown_m3_per_ha', value: (v) => v.TRVc! },
    { name: 'lwa_m2_per_ha', value: (v) => v.LWA! },
    { name: 'lwa_ft2_per_ac', value: (v) => v.LWA! / FT2_PER_ACRE_M2_PER_HA },
    { name: 'row_length_m_per_ha', value: (v) => v.RL! },
    { name: 'ucr_per_ha', value: (v) => v.UCR! },
    { name: 'us_trv_water_l_per_ha', from: us, value: computed(us.strategy.water!) },
    { name: 'us_trv_water_gal_per_ac', from: us, value: (v) => us.strategy.water!.compute(v) / GAL_PER_ACRE_L_PER_HA },
    { name: 'swiss_dose_percent', from: swiss, value: computed(swiss.strategy.index, 100) },
    { name: 'swiss_water_l_per_ha', from: swiss, value: computed(swiss.strategy.water!) }
  ];
  // Then what each other strategy says, in the order of the strategy table: its water, or its dose index where it names no water.
  const rest = PREPARED.flatMap((from): Output[] => {
    const { strategy } = from;
    const name = strategy.id.replaceAll('-', '_');
    if (strategy === us.strategy || strategy === swiss.strategy || strategy.descriptor === null) return [];
    return strategy.water
      ? [{ name: `${name}_water_l_per_ha`, from, value: computed(strategy.water) }]
      : [{ name: `${name}_dose_index`, from, value: computed(strategy.index) }];
  });
  return [...first, ...rest];
}

const OUTPUTS = outputs();
export const HEADER = ['block', ...OUTPUTS.map((o) => o.name)].join(',');

/** Strategies that some column asks. */
const USED = PREPARED.filter((p) => OUTPUTS.some((o) => o.from === p));

/** Room for one line: a name as long as the reader lets it be, and every number at its longest. */
const LONGEST_LINE = 1024 + 26 * OUTPUTS.length;
const NEWLINE = 10;
const COMMA = 44;

/** Lines of figures as UTF-8, one per canopy, numbers in the shortest form that reads back the same. */
export class Lines {
  private length = 0;
  /** A plain list: the language writes one as JSON in three quarters of the time of joining it, every number in the same shortest form. */
  private readonly row: number[] = OUTPUTS.map(() => 0.5);
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
      for (let o = 0; o < OUTPUTS.length; o++) {
        const { from, value } = OUTPUTS[o]!;
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

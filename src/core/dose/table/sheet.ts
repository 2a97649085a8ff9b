import * as F from '../../canopy/formulas.ts';
import { GAL_PER_1000FT3_L_PER_M3 } from '../../quantity/constants.ts';
import { ASSUMPTIONS } from '../../setting/assumptions.ts';
import { APPLICATION_VOLUME, passOf, WIDTH_SERVED } from '../../sprayer/volume.ts';
import type { PassPattern } from '../../sprayer/types.ts';
import { given, isRefused, valueOf, type Formula } from '../../working/answer.ts';
import { Assumptions, type AssumptionValues } from '../../working/assumption.ts';
import { deriveColumn, type Column } from '../../working/column.ts';
import { labelRules, type Rule, type Told } from '../label-rules.ts';
import type { Strategy } from '../strategy.ts';
import type { Label } from '../types.ts';
import { CONCENTRATION } from '../water.ts';
import { constantsOf, FACES, FIGURES_OF_CANOPY, FILL, FULL_LEAF, MULTIPLIER, US_DENSITY, type Output, type SaidOutput, type Says } from './plan.ts';

/** Canopies as columns, `count` of each. Lengths in m above the ground; NaN stands where a density was not told. */
export interface Canopies {
  readonly count: number;
  readonly block: readonly string[];
  readonly rowSpacingM: Float64Array;
  readonly treeHeightM: Float64Array;
  readonly skirtHeightM: Float64Array;
  readonly canopyWidthM: Float64Array;
  /** US gallons per 1000 ft³. */
  readonly usDensityGalPer1000Ft3: Float64Array;
  readonly ladM2PerM3: Float64Array;
  /** 0…1. */
  readonly filledFraction: Float64Array;
}

/** The setting that stands in front of every canopy; the water that it leaves on a hectare follows from the row spacing of each. */
export interface Applied {
  readonly flowLPerMin: number;
  readonly speedKmH: number;
  readonly pattern: PassPattern;
}

export interface SheetOptions {
  /** Product whose dose is wanted. */
  readonly label?: Label | undefined;
  /** Water that is really applied, L/ha, the same on every canopy; or the setting that applies it. */
  readonly appliedLPerHa?: number | Applied | undefined;
  /** The user's own values of assumptions. */
  readonly assumptions?: AssumptionValues | undefined;
  /** Faces of the row that are treated, 1 or 2; default 2. */
  readonly faces?: number | undefined;
  /** False for canopies that lie a step aside of others, as for slopes: no range of a formula is kept then. Default true. */
  readonly ranges?: boolean | undefined;
}

/** Canopies that are worked out at a time: their columns stay in the processor's cache. */
export const SHEET_ROWS = 2048;

/**
 * The engine's formulas bound by symbol to columns of canopies, each worked out once: figures of the canopy, what the strategies say, what
 * a label makes of it. The same formulas, constants and rules as for one canopy in a document that tells neither stage nor outline nor
 * density class; where that refuses, NaN stands.
 */
export class Sheet {
  private readonly inputs: Readonly<Record<'H' | 'Hs' | 'W' | 'R' | 'f' | 'k' | 'LAD', Float64Array<ArrayBuffer>>>;
  private readonly works: ((count: number) => void)[] = [];
  private readonly known = new Map<Strategy | null, Map<object, Column>>();
  private readonly rests = new Map<Column, ReadonlySet<string>>();
  private readonly assumptions: Assumptions;

  constructor(private readonly options: SheetOptions = {}) {
    const room = () => new Float64Array(SHEET_ROWS);
    this.inputs = { H: room(), Hs: room(), W: room(), R: room(), f: room(), k: room(), LAD: room() };
    for (const [symbol, column] of Object.entries(this.inputs)) this.rests.set(column, new Set([symbol]));
    this.assumptions = new Assumptions(ASSUMPTIONS, options.assumptions);
  }

  /** A column of the table, filled whenever canopies are taken. */
  column(output: Output | SaidOutput): Column {
    if ('says' in output) return this.says(output.strategy, output.says);
    const { formula, strategy, times, per } = output;
    const column = this.figure(formula, strategy ?? null);
    if (times === undefined && per === undefined) return column;
    // The same two operations, whichever is wanted: a product by 1 and a quotient by 1 change nothing.
    const [by, of] = [times ?? 1, per ?? 1];
    if (typeof column === 'number') return (column * by) / of;
    return this.worked(column, (to, count) => {
      for (let i = 0; i < count; i++) to[i] = (column[i]! * by) / of;
    });
  }

  /** Works out all columns for the canopies from `from` on. How many there were. */
  take(canopies: Canopies, from = 0): number {
    const count = Math.min(canopies.count - from, SHEET_ROWS);
    const { H, Hs, W, R, f, k, LAD } = this.inputs;
    const copy = (to: Float64Array, of: Float64Array): void => to.set(of.subarray(from, from + count));
    copy(H, canopies.treeHeightM);
    copy(Hs, canopies.skirtHeightM);
    copy(W, canopies.canopyWidthM);
    copy(R, canopies.rowSpacingM);
    copy(f, canopies.filledFraction);
    const density = this.assumptions.take(US_DENSITY.id).value;
    const leaf = this.assumptions.take(FULL_LEAF.id).value;
    for (let i = 0; i < count; i++) {
      const stated = canopies.usDensityGalPer1000Ft3[from + i]!;
      k[i] = Number.isNaN(stated) ? density : stated * GAL_PER_1000FT3_L_PER_M3;
      const lad = canopies.ladM2PerM3[from + i]!;
      LAD[i] = Number.isNaN(lad) ? leaf : lad;
    }
    for (const work of this.works) work(count);
    return count;
  }

  /** What a strategy says; null where it says nothing of the kind. */
  says(strategy: Strategy, says: Says): Column {
    switch (says) {
      case 'water':
        return strategy.water ? this.figure(strategy.water, strategy) : NaN;
      case 'dilute':
        return strategy.dilute ? this.figure(strategy.dilute, strategy) : strategy.waterKind === 'dilute' ? this.says(strategy, 'water') : NaN;
      case 'index':
        return this.figure(strategy.index, strategy);
      case 'dose':
        return this.dose(strategy);
      case 'concentration':
        return this.once(strategy, CONCENTRATION, () => this.derived(CONCENTRATION, { V1: this.says(strategy, 'dilute'), V: this.applied() }));
    }
  }

  private dose(strategy: Strategy): Column {
    const { label } = this.options;
    if (!label) return NaN;
    const { dose, adapted, capped } = labelRules(label);
    // A basis that follows the canopy by itself gives the same dose whatever the strategy.
    const own = adapted !== null || label.basis === 'per-100-l-dilute';
    return this.once(own ? strategy : null, label, () => {
      const made: Partial<Record<Told, Column>> = {};
      const told = (name: Told): Column => made[name] ?? (name === 'index' || name === 'dilute' ? this.says(strategy, name) : this.symbol(name, null));
      const apply = ({ formula, inputs }: Rule): Column =>
        this.derived(formula, Object.fromEntries(Object.entries(inputs).map(([symbol, input]) => [symbol, typeof input === 'string' ? told(input) : (valueOf(input) ?? NaN)])));
      made.dose = 'formula' in dose ? apply(dose) : dose.value;
      if (adapted) {
        made.bounded = apply(adapted.bounded);
        made.dose = apply(adapted.scaled);
      }
      return capped ? apply(capped.rule) : made.dose;
    });
  }

  /** Water that the setting applies, L/ha. */
  private applied(): Column {
    const { appliedLPerHa: applied } = this.options;
    if (applied === undefined || typeof applied === 'number') return applied ?? NaN;
    return this.once(null, applied, () => {
      // A pass serves so many rows, whatever their spacing, or a width of its own.
      const { width } = passOf(applied.pattern, given(1, 'm'));
      if (isRefused(width)) return NaN;
      const B = width.kind === 'given' ? width.value : this.derived(WIDTH_SERVED, { K: width.value, R: this.inputs.R });
      return this.derived(APPLICATION_VOLUME, { Q: applied.flowLPerMin, v: applied.speedKmH, B });
    });
  }

  /** A formula over the symbols of the strategy, or of the bare canopy where there is none. */
  private figure(formula: Formula, strategy: Strategy | null): Column {
    return this.once(strategy, formula, () => {
      const column = this.derived(formula, Object.fromEntries(Object.keys(formula.inputs).map((symbol) => [symbol, this.symbol(symbol, strategy)])));
      if (formula !== (F.CROWN_HEIGHT as Formula) || typeof column === 'number') return column;
      // A skirt at or above the top leaves no crown.
      this.works.push((count) => {
        for (let i = 0; i < count; i++) if (!(column[i]! > 0)) column[i] = NaN;
      });
      return column;
    });
  }

  /** What a symbol stands for: the strategy's own first, then what was measured, then what follows from it. */
  private symbol(symbol: string, strategy: Strategy | null): Column {
    if (strategy?.reference?.symbol === symbol) return this.figure(strategy.reference, strategy);
    const own = strategy && constantsOf(strategy)[symbol];
    if (own) return this.assumptions.take(own.id).value;
    if (Object.hasOwn(this.inputs, symbol)) return this.inputs[symbol as keyof Sheet['inputs']];
    if (symbol === 'n') return this.options.faces ?? FACES;
    if (symbol === 's') return FILL;
    if (symbol === 'm') return this.assumptions.take(MULTIPLIER.id).value;
    const formula = FIGURES_OF_CANOPY.find((f) => f.symbol === symbol);
    return formula ? this.figure(formula, null) : NaN;
  }

  /** Symbols of what was measured that a column rests on. */
  restsOn(column: Column): ReadonlySet<string> {
    return this.rests.get(column) ?? new Set();
  }

  private derived(formula: Formula, inputs: Readonly<Record<string, Column>>): Column {
    const { column, work } = deriveColumn(formula, inputs, SHEET_ROWS, this.options.ranges);
    if (work) this.works.push(work);
    return this.noted(column, Object.values(inputs));
  }

  private worked(from: Column, work: (to: Float64Array, count: number) => void): Column {
    const to = new Float64Array(SHEET_ROWS);
    this.works.push((count) => work(to, count));
    return this.noted(to, [from]);
  }

  private noted(column: Column, from: readonly Column[]): Column {
    if (typeof column !== 'number') this.rests.set(column, new Set(from.flatMap((c) => [...this.restsOn(c)])));
    return column;
  }

  /** A column that is made when it is first asked for: `what` of `whose`. */
  private once(whose: Strategy | null, what: object, make: () => Column): Column {
    let known = this.known.get(whose);
    if (!known) this.known.set(whose, (known = new Map()));
    const before = known.get(what);
    if (before !== undefined) return before;
    const made = make();
    known.set(what, made);
    return made;
  }
}

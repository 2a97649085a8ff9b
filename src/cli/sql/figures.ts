import type { Strategy } from '#core/dose/strategy.ts';
import { GAL_PER_1000FT3_L_PER_M3 } from '#core/quantity/constants.ts';
import type { Formula } from '#core/working/answer.ts';
import type { Assumption } from '#core/working/assumption.ts';
import { constantsOf, FACES, FIGURES_OF_CANOPY, FILL, FULL_LEAF, MULTIPLIER, OUTPUTS, US_DENSITY, type Output } from '#core/dose/table/plan.ts';
import { cli } from '#words/en/cli.ts';
import { certaintyWord } from '#words/index.ts';
import { literal, toSql } from './expression.ts';
import { NAMES } from './measured.ts';

/** `sql AS name`, with what is said beside it. */
export interface Item {
  readonly name: string;
  readonly sql: string;
  readonly note: string;
}

/** Everything behind the measured quantities: levels of items, each made from those before it, and the columns of the table. */
export interface Figures {
  readonly levels: readonly (readonly Item[])[];
  readonly outputs: readonly Item[];
}

/** Databases do not tell H from h: names are those of the formulas and assumptions, not the symbols. */
const snake = (id: string): string => id.replaceAll(/[^a-z0-9]+/g, '_');

const CONSTANTS = 0;

/** Works out what the columns of the table need, and nothing else, by following the symbols of their formulas. */
class Levels {
  readonly levels: Item[][] = [[]];
  private readonly known = new Map<string, { readonly sql: string; readonly level: number }>(Object.values(NAMES).map((name) => [name, { sql: '', level: -1 }]));

  /** Adds an item one level behind the latest that it needs. Its name. */
  private add(item: Item, needs: readonly string[]): string {
    const before = this.known.get(item.name);
    if (before) {
      if (before.sql !== item.sql) throw new Error(`two figures are called ${item.name}`);
      return item.name;
    }
    const level = needs.length === 0 ? CONSTANTS : 1 + Math.max(CONSTANTS, ...needs.map((n) => this.known.get(n)!.level));
    this.known.set(item.name, { sql: item.sql, level });
    (this.levels[level] ??= []).push(item);
    return item.name;
  }

  private constant(a: Assumption): string {
    return this.add({ name: snake(a.id), sql: literal(a.value), note: cli.sql.constant(a.unit, certaintyWord(a.certainty), a.sources) }, []);
  }

  /** The formula with its symbols in the names of this statement, and those names. */
  private written(formula: Formula, strategy: Strategy | undefined): { sql: string; needs: string[] } {
    const needs: string[] = [];
    const sql = toSql(formula.expression, (symbol) => {
      const name = this.symbol(symbol, strategy);
      needs.push(name);
      return name;
    });
    return { sql, needs };
  }

  private figure(formula: Formula, strategy?: Strategy): string {
    const { sql, needs } = this.written(formula, strategy);
    return this.add({ name: snake(formula.id), sql, note: said(formula) }, needs);
  }

  /** What a symbol stands for: the strategy's own first, then what was measured, then what follows from it. */
  private symbol(symbol: string, strategy: Strategy | undefined): string {
    if (strategy?.reference?.symbol === symbol) return this.figure(strategy.reference, strategy);
    const own = strategy && constantsOf(strategy)[symbol];
    if (own) return this.constant(own);
    const canopy = Object.hasOwn(this.canopy, symbol) ? this.canopy[symbol] : undefined;
    if (canopy) return canopy();
    const formula = FIGURES_OF_CANOPY.find((f) => f.symbol === symbol);
    if (!formula) throw new Error(`no column of a table tells ${symbol}`);
    return this.figure(formula);
  }

  private readonly canopy: Readonly<Record<string, () => string>> = {
    H: () => NAMES.treeHeightM,
    Hs: () => NAMES.skirtHeightM,
    W: () => NAMES.canopyWidthM,
    R: () => NAMES.rowSpacingM,
    f: () => NAMES.filledFraction,
    n: () => this.add({ name: 'faces_treated', sql: literal(FACES), note: cli.sql.faces }, []),
    s: () => this.add({ name: 'outline_fill', sql: literal(FILL), note: cli.sql.fill }, []),
    m: () => this.constant(MULTIPLIER),
    k: () => this.told('us_density', NAMES.usDensityGalPer1000Ft3, GAL_PER_1000FT3_L_PER_M3, US_DENSITY),
    LAD: () => this.told('leaf_area_density', NAMES.ladM2PerM3, 1, FULL_LEAF)
  };

  /** A quantity that a line may tell, with what stands where it does not. */
  private told(name: string, from: string, factor: number, otherwise: Assumption): string {
    const standing = this.constant(otherwise);
    return this.add({ name, sql: `COALESCE(${from}${factor === 1 ? '' : ` * ${literal(factor)}`}, ${standing})`, note: cli.sql.told(otherwise.unit) }, [from, standing]);
  }

  output({ name, formula, strategy, times, per }: Output): Item {
    const sql = strategy ? this.written(formula, strategy).sql : this.figure(formula);
    const note = strategy ? said(formula) : '';
    const bare = /^\w+$/.test(sql) ? sql : `(${sql})`;
    if (times !== undefined) return { name, sql: `${bare} * ${literal(times)}`, note };
    return { name, sql: per === undefined ? sql : `${bare} / ${literal(per)}`, note };
  }
}

const said = (f: Formula): string => cli.sql.formula(f.symbol, f.expression, certaintyWord(f.certainty), f.sources);

export function figures(): Figures {
  const levels = new Levels();
  const outputs = OUTPUTS.map((o) => levels.output(o));
  return { levels: levels.levels, outputs };
}

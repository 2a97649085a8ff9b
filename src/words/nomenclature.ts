import type { Unit } from '#core/quantity/units.ts';
import type { Formula } from '#core/working/answer.ts';
import { formulaTitle, symbolName } from './naming.ts';

/** One meaning of one symbol. A symbol that means different things in different formulas stands once for each. */
export interface SymbolUse {
  readonly symbol: string;
  readonly meaning: string;
  readonly unit: Unit;
  /** Formulas that take it, by id. */
  readonly usedBy: readonly string[];
  /** Formulas that give it, by id. */
  readonly givenBy: readonly string[];
}

/** Symbols of all formulas by their first letter, of inputs alone or (`results`) of what the formulas give as well. */
export function nomenclatureOf(formulas: Iterable<Formula>, results = false): readonly SymbolUse[] {
  const seen = new Map<string, { symbol: string; meaning: string; unit: Unit; usedBy: string[]; givenBy: string[] }>();
  const of = (symbol: string, meaning: string, unit: Unit) => {
    const key = `${symbol}\u0000${meaning}`;
    const there = seen.get(key) ?? { symbol, meaning, unit, usedBy: [], givenBy: [] };
    seen.set(key, there);
    return there;
  };
  const all = [...formulas];
  for (const f of all) for (const [symbol, unit] of Object.entries(f.inputs)) of(symbol, symbolName(symbol, f.id), unit).usedBy.push(f.id);
  if (results)
    for (const f of all) {
      const title = formulaTitle(f.id);
      // Under the name that its users have for it, where they say the same.
      const same = [...seen.values()].find((s) => s.symbol === f.symbol && s.meaning.toLowerCase() === title.toLowerCase());
      (same ?? of(f.symbol, title, f.unit)).givenBy.push(f.id);
    }
  return [...seen].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, use]) => use);
}

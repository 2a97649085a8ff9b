import './deep.ts';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import type { SourceId } from '#core/sources/bibliography.ts';
import { isRefused, type Answer, type Certainty, type Figure, type Quantity } from '#core/working/answer.ts';
import { filledExpression, prettyExpression, prettySymbol } from './expression.ts';
import { fill } from './fill.ts';
import { DASH, formatAmount, formatExact, formatShare, formatUnit } from './format.ts';
import { language } from './language.ts';
import { assumptionWords, certaintyWord, fieldWord, formulaTitle, symbolName } from './naming.ts';
import { capital, refusalSentence } from './sentences.ts';
import { sourceLine } from './sources.ts';

/** How one figure was made, ready to be unfolded: its own line, and those of its inputs. */
export interface WorkingLines {
  /** Symbol under which the formula above uses it; of the topmost, its own. */
  readonly symbol: string;
  readonly title: string;
  /** In the wanted system of units; of a refused answer, a dash. */
  readonly value: string;
  /** "V = 600·Q / (v·B)"; absent for a value that was not computed. */
  readonly formula?: string;
  /** "V = 600 × 14.2 / (5 × 4) = 426 L/ha", in the units of the formula. */
  readonly filled?: string;
  readonly certainty?: Certainty;
  readonly certaintyWord?: string;
  readonly sources: readonly { readonly id: SourceId; readonly line: string }[];
  readonly notes: readonly string[];
  readonly inputs: readonly WorkingLines[];
  /** Field of the document that it comes from. */
  readonly path?: string;
  /** Assumption that it is, the user's to change. */
  readonly assumption?: string;
}

/** The working of an answer, or why there is none. The view decides how deep to show it. */
export const workingLines = (answer: Answer, system: UnitSystem): WorkingLines =>
  isRefused(answer)
    ? { symbol: '', title: refusalSentence(answer, system), value: DASH, sources: [], notes: [], inputs: [], path: answer.path }
    : linesOf(answer, answer.kind === 'figure' ? answer.formula.symbol : '', '', system);

function linesOf(q: Quantity, symbol: string, user: string, system: UnitSystem): WorkingLines {
  const value = amountOf(q.value, q.unit, system);
  const common = {
    symbol: prettySymbol(symbol),
    value,
    certainty: q.certainty,
    certaintyWord: surety(q),
    sources: (q.kind === 'figure' ? q.formula.sources : (q.sources ?? [])).map((id) => ({ id, line: sourceLine(id) }))
  };
  if (q.kind === 'given')
    return {
      ...common,
      title: q.assumption ? assumptionWords(q.assumption).label : capital(user ? symbolName(symbol, user) : fieldWord(q.path ?? symbol)),
      notes: [],
      inputs: [],
      ...(q.path === undefined ? {} : { path: q.path }),
      ...(q.assumption === undefined ? {} : { assumption: q.assumption })
    };
  const { formula } = q;
  return {
    ...common,
    title: formulaTitle(formula.id),
    formula: isEquation(q) ? prettyExpression(formula.expression) : `${prettySymbol(formula.symbol)} = ${isSum(q) ? sumWord(q) : prettyExpression(formula.expression)}`,
    filled: `${prettySymbol(formula.symbol)} = ${filledOf(q)}`,
    notes: notesOf(q, system),
    inputs: Object.entries(q.inputs).map(([s, input]) => linesOf(input, s, formula.id, system))
  };
}

/** A figure made from a weaker input says so; its own formula may be as sure as any. */
const surety = (q: Quantity): string =>
  q.kind === 'figure' && q.certainty !== q.formula.certainty && WEAK.has(q.certainty)
    ? fill(language().working.restsOn, { word: certaintyWord(q.certainty) }, 'metric')
    : certaintyWord(q.certainty);
const WEAK: ReadonlySet<Certainty> = new Set<Certainty>(['practice', 'memory', 'assumed']);

/** The wet bulb is where an equation holds, not what an expression equals. */
const isEquation = (q: Figure): boolean => q.formula.expression.includes('=');
const isSum = (q: Figure): boolean => q.formula.expression.startsWith('sum of ');
const sumWord = (q: Figure): string => (q.formula.id === 'total-flow' ? language().working.sum : formulaTitle('sum-of-stages'));

/** A bound that was never set stands as the greatest number there is. */
const amountOf = (value: number, unit: Unit, system: UnitSystem): string =>
  value === Number.MAX_VALUE ? language().noLimit : formatAmount(value, unit, system);

/** Enough digits that a reader with a calculator meets the result. */
const figureOf = (q: Quantity): string => (q.value === Number.MAX_VALUE ? language().noLimit : formatExact(q.value, q.unit));

function filledOf(q: Figure): string {
  const result = formatAmount(q.value, q.unit, 'metric');
  if (isSum(q)) return `${sumOf(Object.values(q.inputs))} = ${result}`;
  const values = Object.fromEntries(Object.entries(q.inputs).map(([s, input]) => [s, figureOf(input)]));
  const text = filledExpression(q.formula.expression, values);
  return isEquation(q) ? `${result}; ${text}` : `${text} = ${result}`;
}

/** Equal flows are counted: "4 × 1.46 + 2 × 0.98". */
function sumOf(parts: readonly Quantity[]): string {
  const counts = new Map<string, number>();
  for (const p of parts) counts.set(figureOf(p), (counts.get(figureOf(p)) ?? 0) + 1);
  return [...counts].map(([text, n]) => (n === 1 ? text : `${n} × ${text}`)).join(' + ');
}

function notesOf(q: Figure, system: UnitSystem): string[] {
  const words = language().working;
  const notes: string[] = [];
  const metric = formatAmount(q.value, q.unit, 'metric');
  if (formatUnit(q.unit, system) !== formatUnit(q.unit, 'metric') && system !== 'metric')
    notes.push(fill(words.metricFormula, { metric, other: formatAmount(q.value, q.unit, system) }, system));
  if (q.extrapolated) notes.push(words.extrapolated);
  const ratio = flowRatio(q);
  if (ratio !== null) notes.push(squareLaw(ratio));
  return notes;
}

/** Flow after over flow before, where the formula joins flow and pressure; null elsewhere. */
function flowRatio(q: Figure): number | null {
  const v = (symbol: string): number => q.inputs[symbol]?.value ?? NaN;
  switch (q.formula.id) {
    case 'pressure-for-flow':
      return v('Q2') / v('Q1');
    case 'nozzle-flow':
    case 'nozzle-flow-between':
      return (q.value * Math.sqrt(v('SG'))) / v('q1');
    default:
      return null;
  }
}

/**
 * What scaling the pressure in proportion to the flow would have left: with r the wanted over the present flow, 1/√r − 1 of the
 * wanted flow is missing or too much. Derived from the square-root law.
 */
function squareLaw(ratio: number): string {
  const words = language().working;
  const residual = 1 / Math.sqrt(ratio) - 1;
  if (!(Math.abs(residual) >= 0.005) || !Number.isFinite(residual)) return words.squareLaw;
  return fill(words.squareLawCase, { off: formatShare(Math.abs(residual)), side: residual > 0 ? words.high : words.low }, 'metric');
}

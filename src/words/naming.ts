import type { Severity } from '#core/advice/finding.ts';
import type { Act } from '#core/dose/product.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Verdict } from '#core/sprayer/aim.ts';
import type { DropletClass, PassPattern } from '#core/sprayer/types.ts';
import type { Certainty } from '#core/working/answer.ts';
import { fill } from './fill.ts';
import { language, look } from './language.ts';
import type { AssumptionWords, StrategyWords } from './words.ts';

/** Words for the engine's ids. An id without words stands for itself, so that nothing is ever left unsaid. */

export const verdictWord = (verdict: Verdict): string => language().verdicts[verdict];
export const severityWord = (severity: Severity): string => language().severities[severity];
export const certaintyWord = (certainty: Certainty): string => language().certainties[certainty];
export const dropletWord = (c: DropletClass): string => language().droplets[c];
export const actWord = (act: Act): string => language().acts[act];
/** ISO colour names and those of the user's own tables. */
export const colourWord = (colour: string): string => look(language().colours, colour) ?? colour.replaceAll('-', ' ');
export const fieldWord = (path: string): string => look(language().fields, path) ?? path;

export const strategyWords = (id: string): StrategyWords => look(language().strategies, id) ?? { name: id, line: '', full: '' };
export const validitySentence = (code: string): string => look(language().validity, code) ?? code;
export const assumptionWords = (id: string): AssumptionWords => look(language().assumptions, id) ?? { label: id, meaning: '' };

/** Title of a formula: a short noun phrase. */
export const formulaTitle = (id: string): string => look(language().formulas, family(id)) ?? id;

/** Formulas that come in several kinds (products in kg and L, spray patterns, those of the user's own) share their words. */
const family = (id: string): string => id.replace(/-(kg|L|hollow-cone|full-cone|flat-fan)$/, '').replace(/^own\..*\./, 'own-');

/** What a symbol of a formula stands for. */
export function symbolName(symbol: string, formulaId = ''): string {
  if (formulaId === 'total-flow' && symbol !== 'Q') return fill(language().working.nozzle, { id: symbol }, 'metric');
  const { symbols } = language();
  return look(symbols, `${family(formulaId)}.${symbol}`) ?? look(symbols, symbol) ?? symbol;
}

export function patternPhrase(pattern: PassPattern, system: UnitSystem): string {
  const values = {
    side: 'side' in pattern ? language().sides[pattern.side] : '',
    rows: 'rows' in pattern ? String(pattern.rows) : '',
    width: 'widthM' in pattern ? { value: pattern.widthM, unit: 'm' as const } : ''
  };
  return fill(language().patterns[pattern.kind], values, system);
}


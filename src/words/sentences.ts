import type { Difference } from '#core/advice/difference.ts';
import type { Parameter } from '#core/advice/finding.ts';
import type { StrategyId } from '#core/dose/types.ts';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import type { DropletClass } from '#core/sprayer/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { fill, type Speller } from './fill.ts';
import { formatAmount } from './format.ts';
import { language, look } from './language.ts';
import { colourWord, fieldWord, formulaTitle, symbolName } from './naming.ts';

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Parameters that are ids or codes, in words. */
export const spell: Speller = (key, value) => {
  const words = language();
  switch (key) {
    case 'strategy':
      return look(words.strategies, value as StrategyId)?.name ?? value;
    case 'reason':
      return bare(value);
    case 'measurement':
      return fieldWord(value);
    case 'class':
      return look(words.droplets, value as DropletClass) ?? value;
    case 'colour':
      return colourWord(value);
    case 'direction':
      return value === 'more' ? words.more : words.less;
    default:
      return value;
  }
};

/** A refusal of which only the code is known. */
function bare(code: string): string {
  const words = language();
  const template = look<string>(words.refusals, code) ?? '{code}';
  return template.includes('{') ? words.refusedPlain : template;
}

/** Beyond this a percentage says less than the two values. */
const MOST_PERCENT = 300;
/** Told as from and to alone. */
const NO_PERCENT: ReadonlySet<string> = new Set(['speed', 'pressure']);

/** One line of what changes between two rungs. */
export function differenceLine(difference: Difference, system: UnitSystem): string {
  const { differences, differenceChange } = language();
  const template = look(differences, difference.code);
  if (template === undefined) return difference.code;
  const { change } = difference.parameters;
  const measured = !NO_PERCENT.has(difference.code) && typeof change === 'object' && 'value' in change && change.value <= MOST_PERCENT;
  return fill(measured ? template.replace(/\.$/, `${differenceChange}.`) : template, difference.parameters, system, spell);
}

/** Why there is no figure. */
export function refusalSentence(refused: Pick<Refused, 'code' | 'parameters'>, system: UnitSystem): string {
  const template = look<string>(language().refusals, refused.code);
  if (template === undefined) return refused.code;
  const p = refused.parameters;
  if (refused.code !== 'input-out-of-range' && refused.code !== 'not-a-number') return fill(template, asText(p), system, spell);
  const formula = String(p.formula ?? '');
  const unit = (p.unit ?? '1') as Unit;
  return capital(
    fill(
      template,
      {
        symbol: symbolName(String(p.symbol ?? ''), formula),
        formula: formulaTitle(formula),
        value: { value: Number(p.value), unit },
        range: rangePhrase(Number(p.least), Number(p.most), unit, system)
      },
      system
    )
  );
}

/** Numbers in the unit that is told with them, else as they are. */
const asText = (p: Refused['parameters']): Record<string, Parameter> =>
  Object.fromEntries(Object.entries(p).map(([k, v]) => [k, typeof v === 'number' && p.unit ? { value: v, unit: p.unit as Unit } : String(v)]));

function rangePhrase(least: number, most: number, unit: Unit, system: UnitSystem): string {
  const { ranges } = language();
  const open = !(most < Number.MAX_VALUE);
  if (open && least === 0) return ranges.notNegative;
  if (open) return least === Number.MIN_VALUE ? ranges.above : ranges.finite;
  return fill(ranges.between, { least: formatAmount(least, unit, system), most: formatAmount(most, unit, system) }, system);
}

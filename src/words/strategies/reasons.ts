import './join.ts';
import type { Reason } from '#core/dose/compare/differences.ts';
import type { StrategyRow } from '#core/dose/compare/rows.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { REASON_EFFECTS, REASON_TEMPLATES } from '../en/strategies/reasons.ts';
import { fill } from '../fill.ts';
import { formatAmount, formatShare } from '../format.ts';
import { strategyWords } from '../naming.ts';

/** The name of a strategy: the user's own has the one that was given to it. */
export const rowName = ({ id, strategy }: Pick<StrategyRow, 'id' | 'strategy'>): string => strategy.name ?? strategyWords(id).name;

const METRES: ReadonlySet<string> = new Set(['spacing', 'height', 'skirt', 'width']);
/** Nearer to 1 a factor does nothing. */
const NONE = 1e-9;

/** One reason why two indices differ, with what it makes: “a” against “b” as in the pair. */
export function reasonSentence({ code, values }: Reason, a: StrategyRow, b: StrategyRow, system: UnitSystem): string {
  const templates = REASON_TEMPLATES[code];
  if (!templates) return code;
  const v = (key: string): number => Number(values[key] ?? NaN);
  const [nameA, nameB] = [rowName(a), rowName(b)];
  const counts = (factor: number) => Math.abs(factor - 1) > NONE;
  const alone = counts(v('a')) !== counts(v('b'));
  const [one, other] = counts(v('a')) ? [nameA, nameB] : [nameB, nameA];
  const amount = (value: number) => (METRES.has(code) ? formatAmount(value, 'm', system) : formatShare(value));
  const text = fill(alone ? templates.one : templates.both, {
    a: nameA, b: nameB, one, other,
    from: amount(v('from')), to: amount(v('to')), least: formatShare(v('least')),
    trv: formatAmount(v('TRV'), 'm3/ha', system), shareA: formatShare(v('a')), shareB: formatShare(v('b'))
  }, system);
  const factor = v('factor');
  if (!(factor > 0)) return text + REASON_EFFECTS.unknown;
  return text + fill(factor > 1 ? REASON_EFFECTS.more : REASON_EFFECTS.less, { share: formatShare(Math.abs(factor - 1)), a: nameA }, system);
}

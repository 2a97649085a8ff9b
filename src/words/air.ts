import { amount, share, type Amount } from '#core/advice/finding.ts';
import type { AirMatch } from '#core/air/air.ts';
import type { Result } from '#core/setting/result.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { isRefused, valueOf } from '#core/working/answer.ts';
import { fill, type Values } from './fill.ts';
import { formatNumber } from './format.ts';
import { language } from './language.ts';
import { certaintyWord } from './naming.ts';
import { refusalSentence } from './sentences.ts';

export interface AirLine {
  /** The balance, the rule it rests on, ways to match it, and the ribbon that judges. */
  readonly kind: 'balance' | 'rule' | AirMatch['kind'] | 'judge';
  readonly text: string;
  readonly feasible: boolean;
}

/** What may stand between air given and air needed and still count as matched, where the assumption was not used. */
const TOLERANCE = 0.15;

/** Air in sentences: needed and given, what would match and what that does to the spray, and the ribbon. */
export function airLines(result: Result, system: UnitSystem): readonly AirLine[] {
  const { air, machine } = result;
  const words = language().air;
  const line = (kind: AirLine['kind'], template: string, values: Values, feasible = true): AirLine => ({ kind, feasible, text: fill(words[template] ?? template, values, system) });
  const lost = [air.needed, air.given].find(isRefused);
  if (lost || air.ratio === undefined) return [line('balance', 'unknown', { reason: lost ? refusalSentence(lost, system) : '' }, false), line('judge', 'judge', {})];

  const tolerance = result.assumptions.get('air.tolerance')?.value ?? TOLERANCE;
  const off = air.ratio - 1;
  const state = off < -tolerance ? 'short' : off > tolerance ? 'over' : 'matched';
  const out = [
    line('balance', state, { needed: amount(air.needed), given: amount(air.given), off: share(Math.abs(off)), tolerance: share(tolerance) }),
    line('rule', 'rule', { k: formatNumber(air.k.value, 2), certainty: certaintyWord(air.k.certainty) })
  ];
  const gearName = (id: string | undefined) => machine.gears.find((g) => g.id === id)?.name ?? id ?? '';
  if (state !== 'matched')
    for (const m of air.matches) {
      const value = valueOf(m.value);
      if (value === undefined) continue;
      const volume = m.volume && !isRefused(m.volume) ? amount(m.volume) : undefined;
      const limit: Amount = { value: m.limit ?? NaN, unit: m.kind === 'speed' ? 'km/h' : 'rpm' };
      const values: Values = { value: amount(m.value), gear: gearName(m.gear), limit, ...(volume ? { volume } : {}) };
      if (m.kind === 'gear') out.push(line('gear', 'gear', { ...values, share: share(value / valueOf(air.needed)!) }));
      else if (!m.feasible) out.push(line(m.kind, `${m.kind}-beyond`, values, false));
      else out.push(line(m.kind, m.kind === 'speed' && !volume ? 'speed-bare' : m.kind, values));
    }
  return [...out, line('judge', 'judge', {})];
}

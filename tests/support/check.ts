import { checkState } from '#core/check/check.ts';
import type { CheckState } from '#core/check/state.ts';
import type { Catch, Check, Round } from '#core/check/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { document, setting, type Parts } from './sample.ts';

/** The headland check of the sample document's rung, its rounds made with the present setting where they name none. */
export function checked(rounds: readonly (Omit<Round, 'setting'> & Partial<Pick<Round, 'setting'>>)[], parts: Parts = {}, more: Partial<Omit<Check, 'rounds'>> = {}): CheckState {
  const now = setting(parts.setting);
  const check: Check = { ...more, rounds: rounds.map((r) => ({ setting: now, ...r })) };
  const whole = document({ ...parts, rung: { ...parts.rung, check } });
  const result = evaluate(whole, 'block', 'now');
  if ('kind' in result) throw new Error(`${result.code} at ${result.path}`);
  return checkState(whole, result)!;
}

/** One round in hand. */
export const oneRound = (round: Omit<Round, 'setting'> & Partial<Pick<Round, 'setting'>>, parts: Parts = {}, more: Partial<Omit<Check, 'rounds'>> = {}) => {
  const state = checked([round], parts, more);
  return { state, round: state.current! };
};

/** Codes of all findings of a check. */
export const said = (state: CheckState): string[] => state.findings.map((f) => f.code);

/** A minute's catch at each of the sample machine's sixteen positions: litres by position, the rest as `litres` says. */
export const minute = (litres: number, own: Readonly<Record<string, number>> = {}): Catch[] =>
  ['L', 'R'].flatMap((side) => Array.from({ length: 8 }, (_, i) => ({ position: `${side}${i + 1}`, litres: own[`${side}${i + 1}`] ?? litres, seconds: 60 })));

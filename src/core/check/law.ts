import { given, isRefused, refused, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { FLOW_EXPONENT } from './formulas.ts';
import type { LawState } from './state.ts';
import type { Round } from './types.ts';

/** Pressures closer than this tell no exponent: their ratio's error would be all of it. */
const LEAST_RATIO = 1.1;

/** How flow follows pressure, from two pressures; null before anything of it was entered. */
export function lawState({ law }: Round, assumptions: Assumptions): LawState | null {
  if (!law) return null;
  const [least, most] = [assumptions.take('check.exponent-least'), assumptions.take('check.exponent-most')];
  const exponent = exponentOf(law);
  return { law, exponent, inside: isRefused(exponent) ? null : exponent.value >= least.value && exponent.value <= most.value };
}

function exponentOf({ firstBar, firstLPerMin, secondBar, secondLPerMin }: NonNullable<Round['law']>): Answer {
  if (firstBar === undefined || firstLPerMin === undefined || secondBar === undefined || secondLPerMin === undefined) return refused('law-not-measured', 'check.law');
  if (Math.max(firstBar, secondBar) / Math.min(firstBar, secondBar) < LEAST_RATIO) return refused('pressures-too-close', 'check.law.secondBar');
  return derive(FLOW_EXPONENT, {
    q1: given(firstLPerMin, 'L/min', 'measured', { path: 'check.law.firstLPerMin' }),
    q2: given(secondLPerMin, 'L/min', 'measured', { path: 'check.law.secondLPerMin' }),
    P1: given(firstBar, 'bar', 'measured', { path: 'check.law.firstBar' }),
    P2: given(secondBar, 'bar', 'measured', { path: 'check.law.secondBar' })
  });
}

import { isRefused, refused, type Answer, type Refused } from '../working/answer.ts';
import type { Measured } from './state.ts';

/** A value and half of its 95 % interval in per cent. */
export function measured(value: Answer, error: Answer): Measured {
  if (isRefused(value) || isRefused(error)) return { value, error, interval: null };
  const half = (Math.abs(value.value) * error.value) / 100;
  return { value, error, interval: { low: value.value - half, high: value.value + half } };
}

export const unmeasured = (why: Refused): Measured => ({ value: why, error: why, interval: null });

export const noSpeed = (): Refused => refused('speed-not-measured', 'check.runs');
export const noOutput = (): Refused => refused('output-not-measured', 'check.output');

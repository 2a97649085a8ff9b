import { given, isRefused, refused, type Answer, type Given } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import { PRESSURE_FOR_FLOW } from './flow.ts';

/** Flow within which a pressure counts as found, and how often the law is applied: each step at least halves the gap for exponents of 0.25 to 0.75. */
const FOUND = 1e-9;
const MOST_STEPS = 60;
/** Where the pressure is set. */
const PATH = 'setting.pressureBar';

/**
 * Pressure at which the flow is the wanted one. The square law hits it at once where a table has one reference pressure; printed points bend
 * the law, and it is applied again from the pressure reached, as one does after catching anew. Refuses by name a table that never gets there.
 */
export function pressureFor(wanted: Answer, from: Given, now: Answer, flowAtBar: (bar: number) => number): Answer {
  if (isRefused(wanted)) return wanted;
  let P1 = from;
  let Q1 = now;
  for (let i = 0; i < MOST_STEPS; i++) {
    const pressure = derive(PRESSURE_FOR_FLOW, { P1, Q2: wanted, Q1 });
    if (isRefused(pressure)) return pressure;
    const reached = flowAtBar(pressure.value);
    if (Math.abs(reached / wanted.value - 1) < FOUND) return pressure;
    P1 = given(pressure.value, 'bar', 'derived', { path: PATH });
    Q1 = given(reached, 'L/min', 'derived');
  }
  return refused('no-pressure', PATH, { flow: wanted.value });
}

import { saturation } from '#core/weather/psychrometry.ts';
import { refused, type Answer } from '#core/working/answer.ts';
import { job, need, type Call, type Inputs } from '../../support/published.ts';

const none = refused('absent', '');
/** A quantity inside the working of delta T. */
const inside = (i: Inputs, ...path: string[]): Answer => {
  let a: Answer = job(i).weather?.deltaT ?? none;
  for (const symbol of path) a = a.kind === 'figure' ? (a.inputs[symbol] ?? none) : none;
  return a;
};

export const weather: Record<string, Call> = {
  delta_t: (i) => inside(i),
  wet_bulb: (i) => inside(i, 'Tw'),
  pressure: (i) => inside(i, 'Tw', 'p'),
  saturation: (i) => saturation(need(i, 'temperature'))
};

import type { Finding } from '#core/advice/finding.ts';
import { RUN_TERMS } from '#core/check/types.ts';

export type Topic = 'speed' | 'output';

const FIELDS: Record<Topic, readonly string[]> = {
  speed: ['check.runs', 'check.displayKmH', ...RUN_TERMS.map((t) => `check.ticks.${t}`)],
  output: ['check.refill', 'check.catches', 'check.gauges', 'check.law']
};

/** Whether it is about what this step measures, by the field that it names. */
export const isOf = (topic: Topic, { path = '' }: Pick<Finding, 'path'>): boolean => FIELDS[topic].some((f) => path === f || path.startsWith(`${f}.`));

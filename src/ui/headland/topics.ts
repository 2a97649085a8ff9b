import type { Finding } from '#core/advice/finding.ts';

export type Topic = 'speed' | 'output';

const FIELDS: Record<Topic, readonly string[]> = {
  speed: ['check.runs', 'check.displayKmH'],
  output: ['check.refill', 'check.catches', 'check.gauges', 'check.law', 'check.output']
};
/** About another field, but said because of what this step measured. */
const CODES: Record<Topic, readonly string[]> = { speed: [], output: ['check-not-by-pressure', 'check-mirror-differs'] };

/** Whether it is about what this step measures, by the field that it names. */
export const isOf = (topic: Topic, { code, path = '' }: Pick<Finding, 'code' | 'path'>): boolean =>
  CODES[topic].includes(code) || FIELDS[topic].some((f) => path === f || path.startsWith(`${f}.`));

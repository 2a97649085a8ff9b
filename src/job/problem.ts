/** Every reason for which a document or a table is refused. The sentences for these codes are in `src/words`. */
export const PROBLEM_CODES = [
  // the text as a whole
  'too-large',
  'empty',
  'not-json',
  'too-deep',
  'too-many-values',
  'duplicate-key',
  'forbidden-key',
  'other-format',
  'not-a-version',
  'newer-version',
  // one field
  'missing',
  'wrong-type',
  'not-finite',
  'out-of-range',
  'not-whole',
  'too-short',
  'too-long',
  'too-few',
  'too-many',
  'not-a-choice',
  'unknown-key',
  'not-an-id',
  'not-a-date',
  'not-a-time',
  'not-a-moment',
  'unfit-characters',
  'not-plain-text',
  // one field against another
  'duplicate-id',
  'same-place',
  'reserved-id',
  'no-such-reference',
  'not-rising',
  'least-above-most',
  'bad-formula',
  // one record against another
  'amends-itself',
  'amends-in-circle',
  'amends-other-kind',
  'amendment-without-reason',
  'reason-without-amendment',
  'other-content'
] as const;
export type ProblemCode = (typeof PROBLEM_CODES)[number];

export type Parameters = Readonly<Record<string, number | string>>;

/** Why a document is refused. */
export interface Problem {
  /** JSON pointer (RFC 6901) to the field; empty for the whole file. */
  readonly path: string;
  readonly code: ProblemCode;
  /** What stands there, as JSON, shortened to be printed; empty when nothing stands there. */
  readonly value: string;
  /** What is allowed, and what the remedy needs to be told. */
  readonly parameters: Parameters;
}

type Step = string | number;

export const pointer = (steps: readonly Step[]): string =>
  steps.map((s) => '/' + String(s).replaceAll('~', '~0').replaceAll('/', '~1')).join('');

export const stepsOf = (path: string): string[] =>
  path
    .split('/')
    .slice(1)
    .map((s) => s.replaceAll('~1', '/').replaceAll('~0', '~'));

const LONGEST_STUB = 40;

/** Cuts a text to what fits in a sentence, with what a terminal would obey made visible. */
export function shortened(text: string): string {
  const cut = text.length > LONGEST_STUB ? text.slice(0, LONGEST_STUB - 1) + '…' : text;
  return cut.replace(/\p{C}/gu, (c) => '\\u' + (c.codePointAt(0) ?? 0).toString(16).padStart(4, '0'));
}

/** A value as JSON in a few characters, whatever it is. */
export function stub(value: unknown): string {
  if (value === undefined) return '';
  if (Array.isArray(value)) return value.length === 0 ? '[]' : `[… ${value.length}]`;
  if (typeof value === 'object' && value !== null) return Object.keys(value).length === 0 ? '{}' : '{…}';
  // JSON has no other numbers than these; an overflow such as 1e999 becomes Infinity on reading.
  if (typeof value === 'number') return String(value);
  return shortened(typeof value === 'string' ? JSON.stringify(value.slice(0, 2 * LONGEST_STUB)) : String(value));
}

export const problem = (steps: readonly Step[], code: ProblemCode, value: unknown, parameters: Parameters = {}): Problem => ({
  path: pointer(steps),
  code,
  value: stub(value),
  parameters
});

import type * as z from 'zod/mini';
import { ID_LENGTH } from './limits.ts';
import { limitsOf } from './limits-of.ts';
import { nearest } from './nearest.ts';
import { pointer, problem, type Parameters, type Problem, type ProblemCode } from './problem.ts';
import { fieldsOf, isObject, memberOf } from './shape.ts';

type Issue = z.core.$ZodIssue;
type Step = string | number;

/**
 * What the schema library found in the part at `prefix` → our problems, with the value that stands there and what is allowed
 * instead. `schema` and `root` are the whole document's.
 */
export function problemsOf(issues: readonly Issue[], prefix: readonly Step[], schema: z.ZodMiniType, root: unknown): Problem[] {
  // One field is told one thing, the first found, save for unknown keys, which are told one by one.
  const told = new Map<string, Problem>();
  for (const issue of issues) {
    const steps = [...prefix, ...(issue.path as Step[])];
    for (const p of issue.code === 'unrecognized_keys' ? unknownKeys(issue.keys, steps, schema, root) : [fieldProblem(issue, steps, root)])
      if (!told.has(p.path)) told.set(p.path, p);
  }
  return [...told.values()];
}

/** The value at `steps`, and whether anything stands there at all. */
function at(root: unknown, steps: readonly Step[]): { value: unknown; stands: boolean } {
  let value = root;
  for (const s of steps) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, s)) return { value: undefined, stands: false };
    value = (value as Record<Step, unknown>)[s];
  }
  return { value, stands: true };
}

function fieldProblem(issue: Issue, steps: readonly Step[], root: unknown): Problem {
  const { value, stands } = at(root, steps);
  const tell = (code: ProblemCode, parameters: Parameters = {}): Problem => problem(steps, code, value, parameters);
  const limits = limitsOf(pointer(steps));
  const range: Parameters = limits ? { least: limits.least, most: limits.most, unit: limits.unit } : {};

  if (issue.code === 'invalid_key') return problem(steps, 'not-an-id', String(steps.at(-1)), { most: ID_LENGTH });
  if (issue.code === 'invalid_value' || issue.code === 'invalid_union') {
    const choices = (issue.code === 'invalid_value' ? issue.values : ('options' in issue ? (issue.options ?? []) : [])).map(String);
    const parameters = { choices: choices.join(', '), nearest: typeof value === 'string' ? nearest(value, choices) : '' };
    return tell(stands ? 'not-a-choice' : 'missing', parameters);
  }
  if (limits && (!stands || typeof value !== 'number')) return tell(stands ? 'wrong-type' : 'missing', { wanted: 'number', ...range });
  if (limits) {
    if (!Number.isFinite(value)) return tell('not-finite', range);
    return tell(limits.whole && !Number.isInteger(value) && within(value as number, limits) ? 'not-whole' : 'out-of-range', range);
  }
  switch (issue.code) {
    case 'invalid_type':
      return tell(stands ? 'wrong-type' : 'missing', { wanted: issue.expected === 'record' ? 'object' : issue.expected });
    case 'too_big':
    case 'too_small': {
      const small = issue.code === 'too_small';
      const bound = Number(small ? issue.minimum : issue.maximum);
      const length = (value as { length: number }).length;
      if (issue.origin === 'string') return tell(small ? 'too-short' : 'too-long', { length, bound });
      return tell(small ? 'too-few' : 'too-many', { length, bound });
    }
    case 'invalid_format':
      if (issue.format === 'date') return tell('not-a-date');
      if (issue.format === 'time') return tell('not-a-time');
      if (issue.format === 'datetime') return tell('not-a-moment');
      if (issue.pattern?.includes('Cs')) return tell('unfit-characters');
      return tell(issue.pattern?.includes('Cc') ? 'not-plain-text' : 'not-an-id', { most: ID_LENGTH });
    default:
      return tell('wrong-type', { wanted: 'another value' });
  }
}

const within = (value: number, { least, most }: { least: number; most: number }): boolean => value >= least && value <= most;

function unknownKeys(keys: readonly string[], steps: readonly Step[], schema: z.ZodMiniType, root: unknown): Problem[] {
  let here: z.ZodMiniType | undefined = schema;
  let value = root;
  for (const s of steps) {
    here = here && memberOf(here, value, s);
    value = (value as Record<Step, unknown>)[s];
  }
  const known = Object.keys((here && fieldsOf(here, value)) ?? {});
  // A key that is already there was not what was meant.
  const free = known.filter((k) => !(isObject(value) && Object.hasOwn(value, k)));
  return keys.map((key) =>
    problem([...steps, key], 'unknown-key', at(root, [...steps, key]).value, {
      key,
      known: known.join(', '),
      nearest: nearest(key, free)
    })
  );
}

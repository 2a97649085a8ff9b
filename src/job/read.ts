import type * as z from 'zod/mini';
import { FORMAT, VERSION, type Document } from '#core/setting/document.ts';
import { problemsOf } from './issues.ts';
import { parseJson } from './json-text.ts';
import { ENOUGH_PROBLEMS, LENGTHS, MOST_PROBLEMS } from './limits.ts';
import { migrated, MIGRATIONS } from './migrations.ts';
import { problem, type Problem } from './problem.ts';
import { relationProblems } from './relations.ts';
import { DOCUMENT } from './schema.ts';
import { isObject, memberOf } from './shape.ts';

/**
 * A document, or every reason against it. `more` problems were found beyond those that are listed, at least: a file of
 * nothing but mistakes is not read to its end.
 */
export type Reading =
  | {
      readonly ok: true;
      readonly document: Document;
      /** Version in which it was written; older than ours where it was lifted. */
      readonly from: number;
    }
  | { readonly ok: false; readonly problems: readonly Problem[]; readonly more: number };

/** Reads the text of a file: all of it or nothing. Never throws. */
export function readDocument(text: string): Reading {
  const parsed = parseJson(text);
  return parsed.readable ? judged(parsed.value, parsed.problems) : refusedFor(parsed.problems);
}

/** Judges plain data that is already in memory as a file would be judged: before it is saved, or after it was edited. */
export const checkDocument = (value: unknown): Reading => judged(value, []);

function judged(value: unknown, found: readonly Problem[]): Reading {
  if (!isObject(value)) return refusedFor([...found, problem([], 'wrong-type', value, { wanted: 'object' })]);
  const foreign = formatProblem(value, FORMAT, VERSION, Math.min(VERSION, ...MIGRATIONS.map((m) => m.from)));
  if (foreign) return refusedFor([foreign]);
  const from = value['version'] as number;
  const current = migrated(value, from, MIGRATIONS);

  const { document, problems: inFields } = fields(current);
  const problems = [...found, ...inFields, ...relationProblems(current)];
  // A forbidden key is unknown too, and a field of a wrong type may be refused by two rules: the first says enough.
  const told = new Set<string>();
  const each = problems.filter((p) => !told.has(p.path) && told.add(p.path));
  return each.length > 0 || !document ? refusedFor(each) : { ok: true, document, from };
}

const LISTS = ['blocks', 'machines', 'nozzleTables', 'labels', 'records'] as const;

/**
 * Every field by itself. The entries of the great lists are judged one by one, so that a file of nothing but mistakes is
 * given up soon, and so that its mistakes never come in more at once than the schema library can carry.
 */
function fields(current: Readonly<Record<string, unknown>>): { document?: Document; problems: Problem[] } {
  const problems: Problem[] = [];
  const judge = (schema: z.ZodMiniType, value: unknown, at: readonly (string | number)[]): unknown => {
    const result = schema.safeParse(value);
    if (!result.success) problems.push(...problemsOf(result.error.issues, at, DOCUMENT, current));
    return result.data;
  };
  const shell: Record<string, unknown> = { ...current };
  const entries: Record<string, unknown[]> = {};
  for (const field of LISTS) {
    const list = current[field];
    // Too long a list is refused whole, with the shell.
    if (!Array.isArray(list) || list.length > LENGTHS[field][1]) continue;
    const entry = memberOf(DOCUMENT.shape[field], list, 0)!;
    shell[field] = [];
    entries[field] = list.map((value, i) => (problems.length < ENOUGH_PROBLEMS ? judge(entry, value, [field, i]) : undefined));
  }
  const data = judge(DOCUMENT, shell, []);
  // Every part has been through its schema, and the schema is the type.
  return problems.length > 0 ? { problems } : { document: { ...(data as Document), ...entries }, problems };
}

const refusedFor = (problems: readonly Problem[]): Reading => ({
  ok: false,
  problems: problems.slice(0, MOST_PROBLEMS),
  more: Math.max(0, problems.length - MOST_PROBLEMS)
});

/** Another format or a newer version is refused by name before anything else is looked at. */
export function formatProblem(value: Readonly<Record<string, unknown>>, wanted: string, newest: number, oldest = 1): Problem | undefined {
  const { format, version } = value;
  if (format !== wanted) return problem(['format'], 'other-format', format, { wanted });
  if (typeof version !== 'number' || !Number.isInteger(version) || version < oldest) return problem(['version'], 'not-a-version', version, { newest });
  if (version > newest) return problem(['version'], 'newer-version', version, { newest });
  return undefined;
}

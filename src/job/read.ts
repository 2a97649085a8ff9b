import { FORMAT, VERSION, type Document } from '#core/setting/document.ts';
import { problemsOf } from './issues.ts';
import { parseJson } from './json-text.ts';
import { MOST_PROBLEMS } from './limits.ts';
import { migrated } from './migrations.ts';
import { problem, type Problem } from './problem.ts';
import { relationProblems } from './relations.ts';
import { DOCUMENT } from './schema.ts';
import { isObject } from './shape.ts';

/** A document, or every reason against it. `more` problems were found beyond those that are listed. */
export type Reading =
  | { readonly ok: true; readonly document: Document }
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
  const foreign = formatProblem(value);
  if (foreign) return refusedFor([foreign]);
  const current = migrated(value, value['version'] as number);

  const result = DOCUMENT.safeParse(current);
  const problems = [
    ...found,
    ...(result.success ? [] : problemsOf(result.error.issues, DOCUMENT, current)),
    ...relationProblems(current)
  ];
  // A forbidden key is unknown too, and a field of a wrong type may be refused by two rules: the first says enough.
  const told = new Set<string>();
  const each = problems.filter((p) => !told.has(p.path) && told.add(p.path));
  if (each.length > 0 || !result.success) return refusedFor(each);
  return { ok: true, document: result.data };
}

const refusedFor = (problems: readonly Problem[]): Reading => ({
  ok: false,
  problems: problems.slice(0, MOST_PROBLEMS),
  more: Math.max(0, problems.length - MOST_PROBLEMS)
});

/** Another format or a newer version is refused by name before anything else is looked at. */
function formatProblem(value: Readonly<Record<string, unknown>>): Problem | undefined {
  const { format, version } = value;
  if (format !== FORMAT) return problem(['format'], 'other-format', format, { wanted: FORMAT });
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1)
    return problem(['version'], 'not-a-version', version, { newest: VERSION });
  if (version > VERSION) return problem(['version'], 'newer-version', version, { newest: VERSION });
  return undefined;
}

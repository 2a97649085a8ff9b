import { columnOf } from '#core/record/fields.ts';
import type { WorkRecord } from '#core/record/types.ts';
import { problemsOf } from '../issues.ts';
import { parseJson } from '../json-text.ts';
import { ENOUGH_PROBLEMS, LENGTHS, LONGEST_FILE, MOST_PROBLEMS } from '../limits.ts';
import { problem, stepsOf, type Parameters, type Problem } from '../problem.ts';
import { formatProblem } from '../read.ts';
import { relationProblems } from '../relations.ts';
import { isObject } from '../shape.ts';
import { inOrder } from '../write.ts';
import { RECORD, RECORDS_FILE, RECORDS_FORMAT, RECORDS_VERSION } from './schema.ts';
import { readTable, type Line } from './table.ts';

/** Why records are not taken: by path in a file of records, by line and column in a table. */
export interface RecordProblem {
  readonly path?: string;
  readonly line?: number;
  readonly column?: string;
  readonly code: string;
  readonly value: string;
  readonly parameters: Parameters;
}

/** Records that are new here, and how many were here already with the same content; or every reason against the file. */
export type RecordsReading =
  | { readonly ok: true; readonly added: readonly WorkRecord[]; readonly passed: number }
  | { readonly ok: false; readonly problems: readonly RecordProblem[]; readonly more: number };

const refusedFor = (problems: readonly RecordProblem[]): RecordsReading => ({ ok: false, problems: problems.slice(0, MOST_PROBLEMS), more: Math.max(0, problems.length - MOST_PROBLEMS) });

/** Judges raw records in memory as a file of them would be judged, beside those that are kept. */
export function checkRecords(raws: readonly unknown[], kept: readonly WorkRecord[]): RecordsReading {
  const { added, passed, problems } = judge(raws, kept);
  return problems.length > 0 ? refusedFor(problems) : { ok: true, added, passed };
}

/**
 * Reads a file of records or a table of them, to be added to `kept`: all of it or nothing. A record that is kept already with the same
 * content is passed over; one with the same id and other content is refused. Never throws.
 */
export function readRecords(text: string, kept: readonly WorkRecord[]): RecordsReading {
  if (/^\s*[{[]/.test(text.replace(/^\uFEFF/, '').slice(0, 1000))) return fromFile(text, kept);
  if (text.length > LONGEST_FILE) return refusedFor([problem([], 'too-large', undefined, { length: text.length, most: LONGEST_FILE })]);
  const { lines, problems } = readTable(text);
  const judged = judge(
    lines.map((l) => l.raw),
    kept
  );
  const all: RecordProblem[] = [...problems];
  // A cell that holds no number has been told already.
  const told = new Set(problems.map((p) => `${p.line} ${p.column}`));
  for (const p of judged.problems) {
    const there = inTable(p, lines);
    if (!told.has(`${there.line} ${there.column}`)) all.push(there);
  }
  if (all.length > 0) return refusedFor(all.sort((a, b) => (a.line ?? 0) - (b.line ?? 0)));
  return { ok: true, added: judged.added, passed: judged.passed };
}

function fromFile(text: string, kept: readonly WorkRecord[]): RecordsReading {
  const { value, problems, readable } = parseJson(text);
  if (!readable) return refusedFor(problems);
  if (!isObject(value)) return refusedFor([problem([], 'wrong-type', value, { wanted: 'object' })]);
  const foreign = formatProblem(value, RECORDS_FORMAT, RECORDS_VERSION);
  if (foreign) return refusedFor([foreign]);
  const { records } = value;
  const tooMany = Array.isArray(records) && records.length > LENGTHS.records[1];
  const list = Array.isArray(records) && !tooMany ? records : [];
  const shell = RECORDS_FILE.safeParse({ ...value, records: Array.isArray(records) && !tooMany ? [] : records });
  if (!shell.success) problems.push(...problemsOf(shell.error.issues, [], RECORDS_FILE, value));
  const judged = judge(list, kept);
  const told = new Set<string>();
  const all = [...problems, ...judged.problems].filter((p) => !told.has(p.path) && told.add(p.path));
  return all.length > 0 ? refusedFor(all) : { ok: true, added: judged.added, passed: judged.passed };
}

interface Judged {
  readonly added: readonly WorkRecord[];
  readonly passed: number;
  readonly problems: readonly Problem[];
}

const canonical = (record: unknown): string => JSON.stringify(inOrder(RECORD, record));

/** Raw records beside those that are kept. Paths begin at `/records`. */
function judge(raws: readonly unknown[], kept: readonly WorkRecord[]): Judged {
  const problems: Problem[] = [];
  const sound = new Map<number, WorkRecord>();
  raws.forEach((raw, i) => {
    if (problems.length >= ENOUGH_PROBLEMS) return;
    const result = RECORD.safeParse(raw);
    if (result.success) sound.set(i, result.data as WorkRecord);
    else problems.push(...problemsOf(result.error.issues, ['records', i], RECORDS_FILE, { records: raws }));
  });

  const known = new Map(kept.map((r) => [r.id, r]));
  const ids = new Set(raws.flatMap((raw) => (isObject(raw) ? [raw['id']] : [])));
  // What is kept is named by what comes in, and can have no fault of its own.
  const beside = kept.filter((r) => !ids.has(r.id));
  problems.push(...relationProblems({ records: [...raws, ...beside] }));

  const added: WorkRecord[] = [];
  let passed = 0;
  for (const [i, record] of sound) {
    const here = known.get(record.id);
    if (!here) added.push(record);
    else if (canonical(here) === canonical(record)) passed++;
    else problems.push(problem(['records', i, 'id'], 'other-content', record.id));
  }
  const count = kept.length + added.length;
  if (count > LENGTHS.records[1]) problems.push(problem(['records'], 'too-many', added, { length: count, bound: LENGTHS.records[1] }));
  return { added, passed, problems };
}

/** A problem of the raw record as one of its line. */
function inTable({ path, code, value, parameters }: Problem, lines: readonly Line[]): RecordProblem {
  const [, index, ...rest] = stepsOf(path);
  const line = lines[Number(index)]?.line;
  if (line === undefined) return { path, code, value, parameters };
  const name = rest.at(-1);
  const column = name === undefined ? '' : rest[0] === 'fields' ? columnOf(name) : name;
  const absent = column === 'at' ? 'not-a-moment' : 'absent';
  return { line, column, code: code === 'missing' && column !== 'reason' ? absent : code, value, parameters };
}

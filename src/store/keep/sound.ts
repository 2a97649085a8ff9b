import type { Orchard, SavedSetting } from './database.ts';

/*
 * What lies in a store may have been written by another version, by another page of the same origin, or by hand. A document's text is read
 * as a file is; these are for what stands beside it.
 */

const isObject = (v: unknown): v is Readonly<Record<string, unknown>> => typeof v === 'object' && v !== null && !Array.isArray(v);
const whole = (v: unknown, least: number): number => (Number.isSafeInteger(v) && (v as number) >= least ? (v as number) : least);
/** The furthest moments that a clock of this language can tell, ms from 1970. */
const FURTHEST_MS = 8.64e15;
const moment = (v: unknown): number => (typeof v === 'number' && Math.abs(v) <= FURTHEST_MS ? v : 0);

/** An orchard's row, each field what it must be; null where it has no id. */
export function soundOrchard(row: unknown): Orchard | null {
  if (!isObject(row) || typeof row['id'] !== 'string') return null;
  const { id, name, revision, changedMs, turn, length, away, format, original } = row;
  const version = (v: unknown) => Number.isSafeInteger(v);
  return {
    id,
    name: typeof name === 'string' ? name.slice(0, 120) : '',
    revision: whole(revision, 1),
    changedMs: moment(changedMs),
    turn: whole(turn, 0),
    length: whole(length, 0),
    ...(away === true ? { away } : {}),
    ...(version(format) ? { format: format as number } : {}),
    ...(version(original) ? { original: original as number } : {})
  };
}

/** Whether a saved setting has what a list of them shows. Whether a document may hold it is asked before it is taken back. */
export function isSoundSaved(row: unknown): row is SavedSetting {
  if (!isObject(row) || typeof row['block'] !== 'string' || typeof row['rung'] !== 'string' || moment(row['atMs']) !== row['atMs']) return false;
  const { setting } = row;
  if (!isObject(setting)) return false;
  const { speedKmH, pressureBar, gear, nozzles } = setting;
  return Number.isFinite(speedKmH) && Number.isFinite(pressureBar) && typeof gear === 'string' && (nozzles === undefined || (Array.isArray(nozzles) && nozzles.every(isObject)));
}

import fc from 'fast-check';
import { foreign } from './mutate.ts';

/** A way in for foreign data: what it is given, and what it says. */
export interface Door {
  readonly name: string;
  /** Real files; inputs are made from them. */
  readonly files: readonly Uint8Array[];
  /** What no change of a real file would come to: put among the inputs, one in twenty. */
  readonly hostile?: fc.Arbitrary<Uint8Array>;
  /** Reads, and goes on as the program would with what it took. Returns whether it took it; throws where a rule of all doors is broken. */
  read(bytes: Uint8Array): boolean | Promise<boolean>;
}

/** What a door is given. */
export const inputsOf = ({ files, hostile }: Door): fc.Arbitrary<Uint8Array> => (hostile ? fc.oneof({ weight: 19, arbitrary: foreign(files) }, { weight: 1, arbitrary: hostile }) : foreign(files));

/** Nothing of the language itself was changed by what was read. */
const NATIVES = [Object.prototype, Array.prototype, Function.prototype, String.prototype, Number.prototype] as const;
const own = (): string => NATIVES.map((p) => Reflect.ownKeys(p).map(String).join(' ')).join('|');
const BEFORE = own();

/** What is broken after an input was read; null where all is well. */
export function broken(): string | null {
  if (own() !== BEFORE) return 'a prototype of the language was changed';
  if (({} as Record<string, unknown>)['polluted'] !== undefined) return 'every object has a new member';
  return null;
}

export const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);
export const utf8 = (t: string): Uint8Array => new TextEncoder().encode(t);

/** What stands in a text as JSON; the text itself where it is none. */
export function valueIn(t: string): unknown {
  try {
    return JSON.parse(t);
  } catch {
    return t;
  }
}

/** What was refused has reasons that can be said; a rule that is broken is an error. */
export function reasons<T>(problems: readonly T[], say: (problem: T) => string): false {
  if (problems.length === 0) throw new Error('refused without a reason');
  // Those that are told one by one are the first of them.
  for (const problem of problems.slice(0, 200)) {
    const said = say(problem);
    if (said.length < 8 || said.length > 4000) throw new Error(`a reason of ${said.length} characters`);
  }
  return false;
}

/** Every number in plain data is finite. What stands in several places is looked at once. */
export function finite(value: unknown, at = '', seen = new Set<object>()): void {
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new Error(`${at} is ${value}`);
    return;
  }
  if (typeof value !== 'object' || value === null || seen.has(value)) return;
  seen.add(value);
  if (value instanceof Float64Array || value instanceof Float32Array) {
    const i = value.findIndex((v) => !Number.isFinite(v));
    if (i >= 0) throw new Error(`${at}[${i}] is ${value[i]}`);
  } else if (value instanceof Map) for (const [k, v] of value) finite(v, `${at}.${String(k)}`, seen);
  else if (!ArrayBuffer.isView(value)) for (const k of Object.keys(value)) finite((value as Record<string, unknown>)[k], `${at}.${k}`, seen);
}

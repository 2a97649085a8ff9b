/** A way in for foreign data: what it is given, and what it says. */
export interface Door {
  readonly name: string;
  /** Real files; inputs are made from them. */
  readonly files: readonly Uint8Array[];
  /** Reads, and goes on as the program would with what it took. Returns whether it took it; throws where a rule of all doors is broken. */
  read(bytes: Uint8Array): boolean | Promise<boolean>;
}

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

/** What was refused has reasons that can be said; a rule that is broken is an error. */
export function reasons<T>(problems: readonly T[], say: (problem: T) => string): false {
  if (problems.length === 0) throw new Error('refused without a reason');
  for (const problem of problems) {
    const said = say(problem);
    if (said.length < 8 || said.length > 4000) throw new Error(`a reason of ${said.length} characters`);
  }
  return false;
}

import type { Source } from '#core/sources/bibliography.ts';
import { ENGLISH } from './en/english.ts';
import type { AdviceWords, AssumptionWords, Language, Template } from './words.ts';

/** Words of advice or of one station, loaded with it: they join those of the language. */
export interface Part extends Partial<Omit<AdviceWords, 'findings' | 'remarks'>> {
  readonly findings?: Readonly<Record<string, Template>>;
  readonly refusals?: Readonly<Record<string, Template>>;
  readonly remarks?: Readonly<Record<string, Template>>;
  readonly fields?: Readonly<Record<string, string>>;
  readonly formulas?: Readonly<Record<string, string>>;
  readonly symbols?: Readonly<Record<string, string>>;
  readonly assumptions?: Readonly<Record<string, AssumptionWords>>;
  readonly validity?: Readonly<Record<string, string>>;
}

// What ENGLISH leaves out is joined by the modules that say it.
let spoken = ENGLISH as Language;
/** Works beside those of the first screen. */
const works: Record<string, Source> = {};

/** The language that everything is said in. */
export const language = (): Language => spoken;

/** Changes it for all that is said from here on; whoever shows words draws them anew. Parts are joined anew by whoever speaks another. */
export const speak = (other: Language): void => {
  spoken = other;
};

/** Joins a part to the language that is set, and its works to the bibliography. */
export function extend(part: Part, sources: Readonly<Record<string, Source>> = {}): void {
  const joined: Record<string, unknown> = { ...spoken };
  for (const [catalogue, words] of Object.entries(part)) joined[catalogue] = typeof words === 'string' ? words : { ...(joined[catalogue] as object), ...(words as object) };
  spoken = joined as unknown as Language;
  Object.assign(works, sources);
}

/** A work that came with a part. */
export const workOf = (id: string): Source | undefined => works[id];

/** A member of a catalogue, never one of the object's own machinery. */
export const look = <T>(catalogue: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(catalogue, key) ? catalogue[key] : undefined;

import { ENGLISH } from './en/english.ts';
import type { Language } from './words.ts';

let spoken: Language = ENGLISH;

/** The language that everything is said in. */
export const language = (): Language => spoken;

/** Changes it for all that is said from here on; whoever shows words draws them anew. */
export const speak = (other: Language): void => {
  spoken = other;
};

/** A member of a catalogue, never one of the object's own machinery. */
export const look = <T>(catalogue: Readonly<Record<string, T>>, key: string): T | undefined =>
  Object.hasOwn(catalogue, key) ? catalogue[key] : undefined;

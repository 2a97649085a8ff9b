import { kept } from './bidi.ts';
import { SPOKEN } from './spoken.ts';

/**
 * Languages other than English. A module `en/x.ts` has a twin `de/x.ts` that exports constants of the same names; the build puts every
 * exported constant of `en/` through `translated`, so that views go on to import the English module and read what is spoken. The language
 * is settled before the page starts, and a page that is to speak another is loaded anew: no sentence is ever half in one and half in another.
 */

/** A constant in another language: the same keys and the same parameters, other words. What is missing stays English; a test says what is. */
export type Translated<T> = T extends string
  ? string
  : T extends (...given: infer G) => infer R
    ? (...given: G) => Translated<R>
    : T extends readonly (infer E)[]
      ? readonly Translated<E>[]
      : T extends object
        ? { readonly [K in keyof T]?: Translated<T[K]> }
        : T;

type Constants = Readonly<Record<string, unknown>>;

/** The twin of an English module; nothing in English, or where there is none yet. */
export const twinOf = (module: string): Promise<Constants | undefined> | undefined =>
  SPOKEN === 'en' ? undefined : import('./twins.ts').then(({ twin }) => twin(SPOKEN, module));

const isPlain = (v: unknown): v is Constants => typeof v === 'object' && v !== null && Object.getPrototypeOf(v) === Object.prototype;

/**
 * English with what its twin says over it, key by key: what is not yet translated stays English. What is given to a sentence is kept
 * from turning the rest of it.
 */
export function translated<T>(english: T, other: unknown): T {
  if (isPlain(english) && (other === undefined || isPlain(other))) {
    const joined: Record<string, unknown> = {};
    for (const key of Object.keys({ ...english, ...other })) joined[key] = translated(english[key], other?.[key]);
    return joined as T;
  }
  const said: unknown = other ?? english;
  return (typeof said === 'function' ? (...values: unknown[]) => said(...values.map(kept)) : said) as T;
}

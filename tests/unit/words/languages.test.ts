import { existsSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { LANGUAGES } from '#words/spoken.ts';
import { translated } from '#words/translation.ts';

/** What is shown on the screen; the command line speaks English. */
const MODULES = listed().filter((m) => !/(^|[/-])cli$/.test(m));
const OTHERS = Object.keys(LANGUAGES).filter((code) => code !== 'en');

function listed(): string[] {
  return (readdirSync('src/words/en', { recursive: true }) as string[]).filter((path) => path.endsWith('.ts')).map((path) => path.replaceAll('\\', '/').replace(/\.ts$/, ''));
}

type Constants = Record<string, unknown>;
const load = async (code: string, module: string): Promise<Constants> => (await import(/* @vite-ignore */ `../../../src/words/${code}/${module}.ts`)) as Constants;

const isPlain = (v: unknown): v is Constants => typeof v === 'object' && v !== null && !Array.isArray(v);

/** Every place of a tree of words, with what stands there. */
function* leaves(value: unknown, at: string): Generator<[at: string, value: unknown]> {
  if (isPlain(value)) for (const [key, inner] of Object.entries(value)) yield* leaves(inner, `${at}.${key}`);
  else if (Array.isArray(value)) for (const [i, inner] of value.entries()) yield* leaves(inner, `${at}.${i}`);
  else yield [at, value];
}
/** Places for values, as often as they stand. */
const places = (template: string): string[] => [...template.matchAll(/\{(\w+)\}/g)].map((m) => m[1]!).sort();
/** Places that choose a word by number: as many as a language needs, of values that English has. */
const bent = (template: string): string[] => [...template.matchAll(/\{(\w+)#[^}]*\}/g)].map((m) => m[1]!);
/** Sentences, not names and signs that are the same in many languages. */
const isSentence = (text: string): boolean => text.replace(/\{[^}]*\}/g, ' ').split(/\s+/).filter((w) => /\p{L}{2}/u.test(w)).length > 4;

test('the modules of words are found', () => expect(MODULES.length).toBeGreaterThan(20));

test('what is not translated stays English, place by place', () => {
  const say = (n: number): string => `${n} trees`;
  const joined = translated({ a: 'one', b: { c: 'two', d: say }, e: ['x'] }, { b: { c: 'zwei' }, e: ['y', 'z'] });
  expect(joined).toEqual({ a: 'one', b: { c: 'zwei', d: expect.any(Function) }, e: ['y', 'z'] });
  expect(joined.b.d(3)).toBe('3 trees');
  expect(translated('one', undefined)).toBe('one');
});

describe.each(OTHERS)('%s', (code) => {
  test.each(MODULES)('%s says all that English says, with the same places for values', async (module) => {
    // The language itself is put together from the catalogues, which are twins of their own.
    if (module === 'english') return;
    expect(existsSync(`src/words/${code}/${module}.ts`), `src/words/${code}/${module}.ts`).toBe(true);
    const [english, other] = [await load('en', module), await load(code, module)];
    const said = new Map(Object.entries(other).flatMap(([name, v]) => [...leaves(v, name)]));
    const wanted = new Map(Object.entries(english).flatMap(([name, v]) => [...leaves(v, name)]));
    // English says colours as the tables do and has no words of its own for them.
    if (module === 'sprayer') for (const { colour } of ISO_10625.sizes) if (colour) wanted.set(`COLOURS.${colour}`, colour);
    // What changes nothing on the screen needs no twin: signs, numbers, ids.
    const words = [...wanted].filter(([, v]) => typeof v === 'function' || (typeof v === 'string' && /\p{L}{2}/u.test(v)));
    expect(words.filter(([at]) => !said.has(at)).map(([at]) => at)).toEqual([]);
    expect([...said.keys()].filter((at) => !wanted.has(at))).toEqual([]);
    for (const [at, value] of words) {
      const there = said.get(at);
      expect(typeof there, at).toBe(typeof value);
      if (typeof value === 'string' && typeof there === 'string') {
        expect(places(there), at).toEqual(places(value));
        expect([...places(value), ...bent(value)], at).toEqual(expect.arrayContaining(bent(there)));
        expect.soft(isSentence(value) && there === value, `${at} is still English`).toBe(false);
      }
    }
  });
});

import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { evaluate } from '../../../src/core/setting/evaluate.ts';
import type { Document } from '../../../src/core/setting/document.ts';
import { readDocument } from '../../../src/job/read.ts';
import { DEMO_ORCHARDS, isDemo } from '../../../src/words/demo.ts';
import { demoCrops, demoNames } from '../../../src/words/en/demo.ts';

const TEXT = readFileSync('demo-data/lower-bench.json', 'utf8');
const DEMO = JSON.parse(TEXT) as Document;
const OTHERS = ['de', 'es', 'fr', 'it', 'pt'] as const;

afterEach(() => {
  vi.doUnmock('../../../src/words/translation.ts');
  vi.resetModules();
});

/** The demo as a page in that language opens it. */
async function spoken(code: string): Promise<Document> {
  const names: unknown = await import(`../../../src/words/${code}/demo.ts`);
  vi.resetModules();
  vi.doMock('../../../src/words/translation.ts', () => ({ twinOf: () => Promise.resolve(names) }));
  return (await import('../../../src/words/demo.ts')).inWords(DEMO);
}

/** Every name and crop of a document, with what stands beside it left out. */
const namesOf = (d: Document): string[] => [
  d.name,
  ...d.blocks.flatMap((b) => [b.name, b.crop ?? '', ...b.rungs.map((r) => r.name)]),
  ...d.machines.flatMap((m) => [m.name, ...m.gears.map((g) => g.name)]),
  ...d.labels.map((l) => l.name)
];
/** The same document without its names. */
const bare = (d: Document): unknown => JSON.parse(JSON.stringify(d, (key, v) => (key === 'name' || key === 'crop' ? undefined : v)));

test('the English names are those of the file, and each is one of them', () => {
  const said = new Set<string>([...Object.values(demoNames), ...Object.values(demoCrops)]);
  expect(new Set(namesOf(DEMO))).toEqual(said);
});

test('the demo is known by its orchard in every language', async () => {
  const orchards = await Promise.all(['en', ...OTHERS].map(async (code) => (await import(`../../../src/words/${code}/demo.ts`)).demoNames.orchard as string));
  expect(orchards).toEqual(DEMO_ORCHARDS);
  expect(new Set(orchards).size).toBe(6);
  expect(isDemo({ name: 'My orchard' })).toBe(false);
});

describe.each(OTHERS)('%s', (code) => {
  test('every name is another, and nothing else is', async () => {
    const there = await spoken(code);
    const [names, english] = [namesOf(there), namesOf(DEMO)];
    expect(names.filter((n, i) => n === english[i])).toEqual([]);
    expect(bare(there)).toEqual(bare(DEMO));
    expect(JSON.stringify(DEMO)).toBe(JSON.stringify(JSON.parse(TEXT)));
  });

  test('it is a document that can be read', async () => {
    expect(readDocument(JSON.stringify(await spoken(code)))).toMatchObject({ ok: true });
  });

  test('the engine’s figures are those of the English one', async () => {
    const there = await spoken(code);
    for (const [i, b] of DEMO.blocks.entries())
      for (const [j, r] of b.rungs.entries()) {
        const [here, other] = [evaluate(DEMO, b.id, r.id), evaluate(there, b.id, r.id)];
        expect(figures(other), `${i} ${j}`).toEqual(figures(here));
        expect(JSON.stringify(figures(here))).toContain('value');
      }
  });
});

/** A result without its names. */
const figures = (result: unknown): unknown => JSON.parse(JSON.stringify(result, (key, v) => (key === 'name' || key === 'crop' ? undefined : v)));

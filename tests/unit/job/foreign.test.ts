import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evaluate } from '#core/setting/evaluate.ts';
import { checkDocument, readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';

const folder = new URL('../../../demo-data/', import.meta.url);
const texts = readdirSync(folder)
  .filter((f) => f.endsWith('.json'))
  .map((f) => [f, readFileSync(new URL(f, folder), 'utf8')] as const);
const sound = texts.filter(([f]) => f !== 'bad.json');

/** A reading that is refused has reasons, each of which can be said; one that is taken can be computed and written. */
function total(text: string): void {
  const r = readDocument(text);
  if (!r.ok) {
    expect(r.problems.length).toBeGreaterThan(0);
    for (const p of r.problems) expect(problemSentence(p).length).toBeGreaterThan(10);
    return;
  }
  for (const b of r.document.blocks) for (const g of b.rungs) evaluate(r.document, b.id, g.id);
  expect(readDocument(writeDocument(r.document))).toEqual(r);
}

describe.each(sound)('%s', (_, text) => {
  it('is sound', () => expect(readDocument(text)).toMatchObject({ ok: true }));
  it('comes out of writing as it went in, byte by byte', () => {
    const r = readDocument(text);
    if (!r.ok) throw new Error('refused');
    expect(writeDocument(r.document)).toBe(text);
  });
  it('is written in the same order however its keys are shuffled', () => {
    const reversed = (v: unknown): unknown =>
      Array.isArray(v) ? v.map(reversed) : typeof v === 'object' && v !== null ? Object.fromEntries(Object.entries(v).reverse().map(([k, x]) => [k, reversed(x)])) : v;
    const r = checkDocument(reversed(JSON.parse(text)));
    if (!r.ok) throw new Error('refused');
    expect(writeDocument(r.document)).toBe(text);
    expect(writeDocument(reversed(JSON.parse(text)) as typeof r.document)).toBe(text);
  });
});

it('bad.json makes at least ten different mistakes', () => {
  const r = readDocument(texts.find(([f]) => f === 'bad.json')![1]);
  if (r.ok) throw new Error('read');
  expect(new Set(r.problems.map((p) => p.code)).size).toBeGreaterThanOrEqual(10);
});

describe('nothing foreign makes the reader throw', () => {
  it('any text', () => fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.json()), total)));
  it('any JSON under the right format and version', () =>
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('name', 'blocks', 'machines', 'nozzleTables', 'labels', 'day', 'assumptions', 'x'), fc.jsonValue()), (d) =>
        total(JSON.stringify({ ...d, format: 'rowtailor', version: 1 }))
      )
    ));
  it('demo files with values exchanged', () =>
    fc.assert(
      fc.property(fc.constantFrom(...sound), fc.array(fc.tuple(fc.nat(), fc.jsonValue()), { minLength: 1, maxLength: 3 }), ([, text], changes) => {
        const document = JSON.parse(text) as unknown;
        for (const [n, value] of changes) {
          const places = holders(document);
          const [holder, key] = places[n % places.length]!;
          holder[key] = value;
        }
        total(JSON.stringify(document));
      }),
      { numRuns: 300 }
    ));
  it('demo files with characters cut out or put in', () =>
    fc.assert(
      fc.property(fc.constantFrom(...texts), fc.nat(), fc.nat(20), fc.string({ maxLength: 3 }), ([, text], at, cut, put) => {
        const i = at % text.length;
        total(text.slice(0, i) + put + text.slice(i + cut));
      }),
      { numRuns: 300 }
    ));
});

/** Every place of a value that could hold another. */
function holders(value: unknown): [Record<string, unknown>, string][] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((k) => [[value as Record<string, unknown>, k] as [Record<string, unknown>, string], ...holders((value as Record<string, unknown>)[k])]);
}

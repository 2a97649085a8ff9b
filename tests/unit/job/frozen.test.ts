import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '#core/setting/evaluate.ts';
import { VERSION } from '#core/setting/document.ts';
import { readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';

const folder = new URL('../../frozen/version-1/', import.meta.url);
const bytes = (name: string): Buffer => readFileSync(new URL(name, folder));

/** Files as they were written when the format was frozen, or before. They are never changed: whoever has one like them must be able to open it. */
const FILES: Readonly<Record<string, string>> = {
  'cherry-wall-early.json': 'b175cdcec7a3b52f904077b46ba232862b7e8a8e1db591f5e34b15ea29f6b0b0',
  'cherry-wall.json': 'd91889061ae62e151494ee726d327277f44b58ce29e830cd4184af6151e4a372',
  'citrus-globes-early.json': '4594ee02b87c82819252829b3016e50a4b3a8e5fb0d1bc7510032e7e2119dd51',
  'citrus-globes.json': 'e73de856d4264204f86ee0b6fd92ddb6bdc161934865620f73c779d3cf782e19',
  'loads.json': '95532bd2395cac738cf0ba5f155fe19ea1c5311141752dcfa8b6cc4d68ef15f2',
  'lower-bench-early.json': 'f24b87f8cdd492f30940e183a0d6971f0ee9251418a61f5d26f94b893b516160',
  'lower-bench.json': '4fdccb5a24401a2e22af5b706b21a81b2d85b063f268f48e2915c4dd57a1e11b'
};

it('are all there and unchanged', () => {
  expect(readdirSync(folder).filter((f) => f.endsWith('.json')).sort()).toEqual(Object.keys(FILES));
  for (const [name, hash] of Object.entries(FILES)) expect(createHash('sha256').update(bytes(name)).digest('hex'), name).toBe(hash);
});

describe.each(Object.keys(FILES))('%s', (name) => {
  it('opens, is worked out, and loses nothing when it is written', () => {
    const text = bytes(name).toString('utf8');
    const r = readDocument(text);
    if (!r.ok) throw new Error(JSON.stringify(r.problems.slice(0, 3)));
    for (const b of r.document.blocks) for (const g of b.rungs) expect(evaluate(r.document, b.id, g.id)).toHaveProperty('water');
    if (VERSION === 1) expect(JSON.parse(writeDocument(r.document))).toEqual(JSON.parse(text));
  });
  it('is refused by name where it says that it is newer', () => {
    const r = readDocument(bytes(name).toString('utf8').replace(/"version": \d+/, `"version": ${VERSION + 1}`));
    expect(r.ok).toBe(false);
    if (!r.ok) expect(r.problems.map((p) => p.code)).toEqual(['newer-version']);
  });
});

interface Node {
  readonly [key: string]: unknown;
}
const isNode = (v: unknown): v is Node => typeof v === 'object' && v !== null && !Array.isArray(v);

/** What a later schema of the same version no longer allows, or newly demands: nothing. A field may be added where it may be left out. */
function narrowed(was: unknown, is: unknown, at: string): string[] {
  if (!isNode(was)) return [];
  if (!isNode(is)) return [`${at} is gone`];
  const told: string[] = [];
  const [before, now] = [(was['required'] as string[] | undefined) ?? [], (is['required'] as string[] | undefined) ?? []];
  if (isNode(was['properties'])) told.push(...now.filter((f) => !before.includes(f)).map((f) => `${at}.${f} is newly demanded`));
  for (const [key, low] of [['minimum', true], ['maximum', false], ['minLength', true], ['maxLength', false], ['minItems', true], ['maxItems', false]] as const) {
    const [a, b] = [was[key], is[key]];
    if (typeof b === 'number' && (typeof a !== 'number' || (low ? b > a : b < a))) told.push(`${at}: ${key} was ${String(a)}, is ${b}`);
  }
  if (Array.isArray(was['enum'])) told.push(...was['enum'].filter((v) => !((is['enum'] as unknown[] | undefined) ?? []).includes(v)).map((v) => `${at}: ${String(v)} is no longer a choice`));
  for (const key of ['properties', '$defs'] as const) if (isNode(was[key])) for (const [name, inner] of Object.entries(was[key])) told.push(...narrowed(inner, isNode(is[key]) ? is[key][name] : undefined, `${at}.${name}`));
  if (isNode(was['items'])) told.push(...narrowed(was['items'], is['items'], `${at}[]`));
  return told;
}

it('the schema of version 1 allows whatever it allowed when it was frozen', () => {
  const frozen = JSON.parse(bytes('schema.frozen').toString('utf8')) as unknown;
  const today = JSON.parse(readFileSync('static/schema/rowtailor-1.json', 'utf8')) as unknown;
  expect(narrowed(frozen, today, '')).toEqual([]);
  // The comparison sees what it is to see.
  expect(narrowed({ properties: { a: { maximum: 3 }, b: {} } }, { properties: { a: { maximum: 2 } }, required: ['a'] }, '')).toHaveLength(3);
});

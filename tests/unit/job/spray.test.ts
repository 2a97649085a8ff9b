import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { checkDocument, readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { spoilt } from './sample.ts';

/** What the document tells the spray model: each field read, written and described, and each refusal by name. */

const schema = new Ajv2020({ allErrors: true, formats: { date: true, 'date-time': true } }).compile(
  JSON.parse(readFileSync(new URL('../../../static/schema/rowtailor-1.json', import.meta.url), 'utf8')) as object
);

const CANOPY = '/blocks/0/rungs/0/canopy';
const STATION = `${CANOPY}/profile/1`;
const GEAR = '/machines/0/gears/0';
const OUTLET = '/machines/0/outlet';
const spout = (heightM: number, more: object = {}) => ({ heightM, offsetM: 0.5, angleDeg: 20, ...more });
const spouts = (n: number) => Array.from({ length: n }, (_, i) => spout(1 + i / 10));
const outlet = (more: object = {}) => ({ kind: 'spouts', diameterM: 0.15, spouts: spouts(2), ...more });

describe('is read, comes out of writing as it went in, and is in the published schema', () => {
  it.each<[string, string, unknown]>([
    ['spouts', OUTLET, outlet()],
    ['one spout', OUTLET, outlet({ spouts: spouts(1) })],
    ['a dozen', OUTLET, outlet({ spouts: spouts(12) })],
    ['two spouts at one height', OUTLET, outlet({ spouts: [spout(1), spout(1, { offsetM: 0.3 })] })],
    ['a fan that blows more to the left', `${GEAR}/leftShare`, 0.8],
    ['or to the right', `${GEAR}/leftShare`, 0.2],
    ['leaf density by height, at some stations', `${CANOPY}/profile`, [{ heightM: 0.5, widthM: 1, relativeDensity: 0.6 }, { heightM: 1.5, widthM: 1.4 }, { heightM: 3, widthM: 0.4, relativeDensity: 1.3 }]],
    ['the ends of its range', `${CANOPY}/profile`, [{ heightM: 0.5, widthM: 1, relativeDensity: 0 }, { heightM: 3, widthM: 0.4, relativeDensity: 5 }]]
  ])('%s', (_, path, value) => {
    const text = spoilt(path, value);
    const r = readDocument(text);
    if (!r.ok) throw new Error(problemSentence(r.problems[0]!));
    expect(r.document).toEqual(JSON.parse(text));
    expect(checkDocument(JSON.parse(writeDocument(r.document)))).toEqual(r);
    schema(JSON.parse(text));
    expect(schema.errors).toBeNull();
  });
});

describe('is refused with the place and a code', () => {
  it.each<[string, unknown, string]>([
    [OUTLET, outlet({ spouts: [] }), `${OUTLET}/spouts too-few`],
    [OUTLET, outlet({ spouts: spouts(13) }), `${OUTLET}/spouts too-many`],
    [OUTLET, { kind: 'spouts', diameterM: 0.15 }, `${OUTLET}/spouts missing`],
    [OUTLET, { kind: 'spouts', spouts: spouts(2) }, `${OUTLET}/diameterM missing`],
    [OUTLET, outlet({ diameterM: 15 }), `${OUTLET}/diameterM out-of-range`],
    [OUTLET, outlet({ diameterM: 0 }), `${OUTLET}/diameterM out-of-range`],
    [OUTLET, outlet({ slotWidthM: 0.1 }), `${OUTLET}/slotWidthM unknown-key`],
    [OUTLET, outlet({ spouts: [spout(10.1)] }), `${OUTLET}/spouts/0/heightM out-of-range`],
    [OUTLET, outlet({ spouts: [spout(1, { offsetM: -0.5 })] }), `${OUTLET}/spouts/0/offsetM out-of-range`],
    [OUTLET, outlet({ spouts: [spout(1), spout(2, { angleDeg: 100 })] }), `${OUTLET}/spouts/1/angleDeg out-of-range`],
    [OUTLET, outlet({ spouts: [spout(1, { side: 'left' })] }), `${OUTLET}/spouts/0/side unknown-key`],
    [OUTLET, outlet({ spouts: [spout(1), spout(2), spout(1, { angleDeg: 45 })] }), `${OUTLET}/spouts/2 same-place`],
    [`${GEAR}/leftShare`, 0.19, `${GEAR}/leftShare out-of-range`],
    [`${GEAR}/leftShare`, 55, `${GEAR}/leftShare out-of-range`],
    [`${GEAR}/leftShare`, '0.5', `${GEAR}/leftShare wrong-type`],
    [`${GEAR}/rightShare`, 0.5, `${GEAR}/rightShare unknown-key`],
    [`${STATION}/relativeDensity`, -0.1, `${STATION}/relativeDensity out-of-range`],
    [`${STATION}/relativeDensity`, 5.1, `${STATION}/relativeDensity out-of-range`],
    [`${STATION}/relativeDensity`, null, `${STATION}/relativeDensity wrong-type`],
    [`${STATION}/density`, 1, `${STATION}/density unknown-key`]
  ])('%s = %j: %s', (path, value, told) => {
    const r = readDocument(spoilt(path, value));
    if (r.ok) throw new Error('read');
    expect(r.problems.map((p) => `${p.path} ${p.code}`)).toEqual([told]);
    // every parameter that the sentence asks for is there
    expect(problemSentence(r.problems[0]!)).not.toMatch(/undefined|NaN/);
  });
});

it('two spouts in one place are told with that place and what to do', () => {
  const r = readDocument(spoilt(OUTLET, outlet({ spouts: [spout(1), spout(1)] })));
  expect(r.ok || problemSentence(r.problems[0]!)).toBe(
    'machines[0].outlet.spouts[1] stands 1 m high and 0.5 m from the middle, where entry 1 of the same list stands already; each place is taken once. Move one of the two, or remove it.'
  );
});

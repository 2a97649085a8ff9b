import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import { PAPER_PLACES, RIBBON_CLASSES } from '#core/spray/seen.ts';
import { checkDocument, readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { spoilt } from './sample.ts';

/** What the document tells the spray model: each field read, written and described, and each refusal by name. */

const schema = new Ajv2020({ allErrors: true, formats: { date: true, 'date-time': true } }).compile(
  JSON.parse(readFileSync(new URL('../../../static/schema/rowtailor-1.json', import.meta.url), 'utf8')) as object
);

const RUNG = '/blocks/0/rungs/0';
const ribbon = (heightM: number, more: object = {}) => ({ side: 'left', heightM, class: 'flutters', ...more });
const paper = (heightM: number, more: object = {}) => ({ side: 'right', heightM, place: 'far', coveragePercent: 12.5, ...more });
const CANOPY = `${RUNG}/canopy`;
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
    ['the ends of its range', `${CANOPY}/profile`, [{ heightM: 0.5, widthM: 1, relativeDensity: 0 }, { heightM: 3, widthM: 0.4, relativeDensity: 5 }]],
    ['ribbons of every class', `${RUNG}/seen`, { ribbons: RIBBON_CLASSES.map((c, i) => ribbon(i, { class: c })) }],
    ['papers at every place', `${RUNG}/seen`, { papers: PAPER_PLACES.map((place) => paper(place === 'ground' ? 0 : 1.5, { place })) }],
    ['sixty of each, some at one place', `${RUNG}/seen`, { ribbons: Array(60).fill(ribbon(2)), papers: Array(60).fill(paper(2)) }],
    ['nothing seen yet', `${RUNG}/seen`, {}],
    ['nothing left of it', `${RUNG}/seen`, { ribbons: [], papers: [] }],
    ['every constant of the model as it is', '/assumptions', Object.fromEntries(SPRAY_ASSUMPTIONS.map((a) => [a.id, a.value]))],
    ['at its least', '/assumptions', Object.fromEntries(SPRAY_ASSUMPTIONS.map((a) => [a.id, a.least]))],
    ['at its most, beside one of the engine', '/assumptions', { ...Object.fromEntries(SPRAY_ASSUMPTIONS.map((a) => [a.id, a.most])), 'aim.overshoot': 0.4 }]
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
    [`${STATION}/density`, 1, `${STATION}/density unknown-key`],
    [`${RUNG}/seen`, { ribbons: Array(61).fill(ribbon(2)) }, `${RUNG}/seen/ribbons too-many`],
    [`${RUNG}/seen`, { papers: Array(61).fill(paper(2)) }, `${RUNG}/seen/papers too-many`],
    [`${RUNG}/seen`, { ribbons: [ribbon(2), ribbon(21)] }, `${RUNG}/seen/ribbons/1/heightM out-of-range`],
    [`${RUNG}/seen`, { ribbons: [ribbon(2, { class: 'flutter' })] }, `${RUNG}/seen/ribbons/0/class not-a-choice`],
    [`${RUNG}/seen`, { ribbons: [ribbon(2, { side: 'both' })] }, `${RUNG}/seen/ribbons/0/side not-a-choice`],
    [`${RUNG}/seen`, { ribbons: [ribbon(2, { place: 'near' })] }, `${RUNG}/seen/ribbons/0/place unknown-key`],
    [`${RUNG}/seen`, { papers: [paper(2, { coveragePercent: 101 })] }, `${RUNG}/seen/papers/0/coveragePercent out-of-range`],
    [`${RUNG}/seen`, { papers: [paper(2, { coveragePercent: '40 %' })] }, `${RUNG}/seen/papers/0/coveragePercent wrong-type`],
    [`${RUNG}/seen`, { papers: [paper(-1)] }, `${RUNG}/seen/papers/0/heightM out-of-range`],
    [`${RUNG}/seen`, { papers: [paper(2, { place: 'top' })] }, `${RUNG}/seen/papers/0/place not-a-choice`],
    [`${RUNG}/seen`, { papers: [{ side: 'left', heightM: 2, coveragePercent: 30 }] }, `${RUNG}/seen/papers/0/place missing`],
    [`${RUNG}/seen`, { strips: [] }, `${RUNG}/seen/strips unknown-key`],
    [`${RUNG}/seen`, [], `${RUNG}/seen wrong-type`],
    ['/assumptions/spray.projection', 1.1, '/assumptions/spray.projection out-of-range'],
    ['/assumptions/spray.vmd-XF', 2000, '/assumptions/spray.vmd-XF out-of-range'],
    ['/assumptions/spray.projection', '0.3', '/assumptions/spray.projection wrong-type'],
    ['/assumptions/spray.projektion', 0.3, '/assumptions/spray.projektion no-such-reference'],
    ['/assumptions/projection', 0.3, '/assumptions/projection no-such-reference']
  ])('%s = %j: %s', (path, value, told) => {
    const r = readDocument(spoilt(path, value));
    if (r.ok) throw new Error('read');
    expect(r.problems.map((p) => `${p.path} ${p.code}`)).toEqual([told]);
    // every parameter that the sentence asks for is there
    expect(problemSentence(r.problems[0]!)).not.toMatch(/undefined|NaN/);
  });
});

it('a constant that was misspelt is told with the one that was meant, an impossible one with what it may be', () => {
  const said = (id: string, value: number) => {
    const r = readDocument(spoilt(`/assumptions/${id}`, value));
    return r.ok ? '' : problemSentence(r.problems[0]!);
  };
  expect(said('spray.projektion', 0.3)).toContain('Did you mean "spray.projection"?');
  expect(said('spray.leaf-size', 50)).toContain('is 50; 0.002 to 0.3 m is allowed.');
});

it('two spouts in one place are told with that place and what to do', () => {
  const r = readDocument(spoilt(OUTLET, outlet({ spouts: [spout(1), spout(1)] })));
  expect(r.ok || problemSentence(r.problems[0]!)).toBe(
    'machines[0].outlet.spouts[1] stands 1 m high and 0.5 m from the middle, where entry 1 of the same list stands already; each place is taken once. Move one of the two, or remove it.'
  );
});

import { Ajv2020 as Ajv } from 'ajv/dist/2020.js';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkDocument, readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { document } from '../../support/sample.ts';

const OWN = { id: 'mine', name: 'Mine', index: 'TRVc / 10000', water: '0.1 * TRVc', waterKind: 'applied', note: 'From a field trial.' };
const told = (own: unknown): string[] => {
  const r = checkDocument({ ...document(), ownStrategies: own });
  return r.ok ? [] : r.problems.map((p) => `${p.path} ${p.code}`);
};

describe('strategies of the user’s own in a document', () => {
  it('are read and written as they stand, behind the assumptions', () => {
    const d = { ...document({ assumptions: { 'aim.overshoot': 0.4 } }), ownStrategies: [OWN] };
    const r = checkDocument(d);
    if (!r.ok) throw new Error('refused');
    expect(r.document.ownStrategies).toEqual([OWN]);
    expect(readDocument(writeDocument(r.document))).toEqual(r);
    expect(Object.keys(JSON.parse(writeDocument(r.document))).slice(-2)).toEqual(['assumptions', 'ownStrategies']);
  });
  it('may be none, and fifty', () => {
    expect(told([])).toEqual([]);
    expect(told(Array.from({ length: 50 }, (_, i) => ({ ...OWN, id: `o${i}` })))).toEqual([]);
    expect(told(Array.from({ length: 51 }, (_, i) => ({ ...OWN, id: `o${i}` })))).toEqual(['/ownStrategies too-many']);
  });
  it.each<[Record<string, unknown>, string]>([
    [{ index: undefined }, '/ownStrategies/0/index missing'],
    [{ index: '' }, '/ownStrategies/0/index too-short'],
    [{ index: ' ' }, '/ownStrategies/0/index bad-formula'],
    [{ index: 'TRV' }, '/ownStrategies/0/index bad-formula'],
    [{ index: 'h\n+ 1' }, '/ownStrategies/0/index not-plain-text'],
    [{ index: 5 }, '/ownStrategies/0/index wrong-type'],
    [{ index: 'h' + '+1'.repeat(200) }, '/ownStrategies/0/index too-long'],
    [{ water: 'alert(1)' }, '/ownStrategies/0/water bad-formula'],
    [{ water: 'this.h' }, '/ownStrategies/0/water bad-formula'],
    [{ waterKind: 'wet' }, '/ownStrategies/0/waterKind not-a-choice'],
    [{ id: 'no id' }, '/ownStrategies/0/id not-an-id'],
    [{ name: '' }, '/ownStrategies/0/name too-short'],
    [{ colour: 'red' }, '/ownStrategies/0/colour unknown-key']
  ])('%j is refused', (change, problem) => expect(told([Object.fromEntries(Object.entries({ ...OWN, ...change }).filter(([, v]) => v !== undefined))])).toEqual([problem]));
  it('each id stands once', () => expect(told([OWN, { ...OWN, name: 'Again' }])).toEqual(['/ownStrategies/1/id duplicate-id']));
  it('a formula that is none is told with what stands there and a remedy', () => {
    const r = checkDocument({ ...document(), ownStrategies: [{ ...OWN, index: 'TRVd / 2' }] });
    expect(r.ok ? '' : problemSentence(r.problems[0]!)).toMatch(/^ownStrategies\[0\]\.index is "TRVd \/ 2", which cannot be worked out\. TRVd is not the name of a canopy figure\. Did you mean TRVg\? There are: H, /);
  });
  it('a block follows a published strategy', () => {
    const d = document();
    const r = checkDocument({ ...d, ownStrategies: [OWN], blocks: [{ ...d.blocks[0], strategy: 'own.mine' }] });
    expect(r.ok ? [] : r.problems.map((p) => `${p.path} ${p.code}`)).toEqual(['/blocks/0/strategy not-a-choice']);
  });
  it('the published schema takes them and refuses what the reader refuses by the field alone', () => {
    const validate = new Ajv({ strict: false, validateFormats: false }).compile(JSON.parse(readFileSync('static/schema/rowtailor-1.json', 'utf8')));
    expect(validate({ ...document(), ownStrategies: [OWN] })).toBe(true);
    expect(validate({ ...document(), ownStrategies: [{ ...OWN, colour: 'red' }] })).toBe(false);
    expect(validate({ ...document(), ownStrategies: [{ id: 'x', name: 'X' }] })).toBe(false);
  });
});

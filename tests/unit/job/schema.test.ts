import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { jsonSchema } from '#job/json-schema.ts';
import { limitsOf } from '#job/limits-of.ts';
import { spoilt, sample } from './sample.ts';

const file = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const published = JSON.parse(file('static/schema/rowtailor-1.json')) as object;
// An independent validator; these formats are held by the pattern beside it.
const valid = new Ajv2020({ allErrors: true, formats: { date: true, 'date-time': true } }).compile(published);

it('the published schema is the one that the reader is made of (npm run schema)', () => expect(published).toEqual(jsonSchema()));

describe('an independent validator', () => {
  it.each(['lower-bench', 'citrus-globes', 'cherry-wall'])('takes %s.json', (name) => {
    valid(JSON.parse(file(`demo-data/${name}.json`)));
    expect(valid.errors).toBeNull();
  });
  it('takes the sample and refuses bad.json', () => {
    expect(valid(sample())).toBe(true);
    // 1e999 is no JSON for strict readers, but this one's parser takes it
    expect(valid(JSON.parse(file('demo-data/bad.json')))).toBe(false);
  });
  it.each<[string, unknown]>([
    ['/blocks/0/rowSpacingM', 21],
    ['/blocks/0/rowSpacingM', '4'],
    ['/colour', 'green'],
    ['/version', 2],
    ['/blocks/0/rungs/0/date', '2031-02-29'],
    ['/blocks/0/rungs/0/bbch', 7.5],
    ['/machines/0/outlet/kind', 'slot'],
    ['/name', '']
  ])('refuses %s = %j as the reader does', (path, value) => expect(valid(JSON.parse(spoilt(path, value)))).toBe(false));
});

describe('limitsOf', () => {
  it.each<[string, object | undefined]>([
    ['/blocks/0/rungs/1/canopy/heightM', { least: 0.2, most: 20, unit: 'm' }],
    ['canopy.heightM', { least: 0.2, most: 20, unit: 'm' }],
    ['rowSpacingM', { least: 0.5, most: 20, unit: 'm' }],
    ['bbch', { least: 0, most: 99, unit: '1', whole: true }],
    ['/blocks/0/rungs/1/saved/pressureBar', { least: 0.5, most: 60, unit: 'bar' }],
    ['/machines/2/nozzles/11/swivelDownDeg', { least: -90, most: 0, unit: 'deg' }],
    ['/assumptions/aim.overshoot', { least: 0, most: 1.5, unit: 'm' }],
    ['/blocks/0/name', undefined],
    ['/blocks/0/constructor', undefined],
    ['', undefined]
  ])('%s', (path, range) => (range ? expect(limitsOf(path)).toMatchObject(range) : expect(limitsOf(path)).toBeUndefined()));
});

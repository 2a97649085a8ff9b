import { describe, expect, it } from 'vitest';
import { readDocument, checkDocument } from '#job/read.ts';
import type { Problem } from '#job/problem.ts';
import { problemSentence } from '#words/en/problems.ts';
import { sample, spoilt } from './sample.ts';

const problems = (text: string): readonly Problem[] => {
  const r = readDocument(text);
  return r.ok ? [] : r.problems;
};
const told = (text: string): string[] => problems(text).map((p) => `${p.path} ${p.code}`);

const NOZZLE = '/machines/0/nozzles/0';
const RUNG = '/blocks/0/rungs/0';
const SIZE = '/nozzleTables/0/sizes/0';

describe('a sound document', () => {
  it('is read as it stands', () => {
    const r = readDocument(JSON.stringify(sample()));
    expect(r).toEqual({ ok: true, document: sample(), from: 1 });
  });
  it('may begin with a byte order mark', () => expect(readDocument('\uFEFF' + JSON.stringify(sample())).ok).toBe(true));
  it('may hold contradictions that a user makes while dragging: the engine tells those', () => {
    const d = sample();
    Object.assign(d.blocks[0]!.rungs[0]!.canopy, { skirtM: 5, widthM: 9 });
    expect(checkDocument(d).ok).toBe(true);
  });
  it('has plain objects with known keys only', () => {
    const r = readDocument(JSON.stringify(sample()));
    if (!r.ok) throw new Error('refused');
    expect(Object.getPrototypeOf(r.document.blocks[0])).toBe(Object.prototype);
  });
});

describe('one spoilt place is told with exactly its path and code', () => {
  it.each<[string, unknown, string]>([
    ['/format', 'orchard', 'other-format'],
    ['/format', undefined, 'other-format'],
    ['/version', 2, 'newer-version'],
    ['/version', 0, 'not-a-version'],
    ['/version', '1', 'not-a-version'],
    ['/version', 1.5, 'not-a-version'],
    ['/name', undefined, 'missing'],
    ['/name', '', 'too-short'],
    ['/name', 'x'.repeat(121), 'too-long'],
    ['/name', 'a\u001b[2Jb', 'not-plain-text'],
    ['/labels', null, 'wrong-type'],
    ['/blocks', {}, 'wrong-type'],
    ['/colour', 'green', 'unknown-key'],
    ['/blocks/0/id', 'a b', 'not-an-id'],
    ['/blocks/0/id', '', 'not-an-id'],
    ['/blocks/0/id', 'x'.repeat(41), 'not-an-id'],
    ['/blocks/0/rowSpacingM', 0.49, 'out-of-range'],
    ['/blocks/0/rowSpacingM', 20.01, 'out-of-range'],
    ['/blocks/0/rowSpacingM', '4', 'wrong-type'],
    ['/blocks/0/rowSpacingM', null, 'wrong-type'],
    ['/blocks/0/rowSpacingM', undefined, 'missing'],
    ['/blocks/0/rowspacing', 4, 'unknown-key'],
    ['/blocks/0/strategy', 'row-volum', 'not-a-choice'],
    ['/blocks/0/strategy', undefined, 'missing'],
    ['/blocks/0/machine', 'tower', 'no-such-reference'],
    ['/blocks/0/label', 'none', 'no-such-reference'],
    ['/blocks/0/rungs', [], 'too-few'],
    ['/blocks/0/pattern/kind', 'swat', 'not-a-choice'],
    ['/blocks/0/pattern/kind', undefined, 'missing'],
    [`${RUNG}/bbch`, 75.5, 'not-whole'],
    [`${RUNG}/bbch`, 100, 'out-of-range'],
    [`${RUNG}/date`, '2031-02-29', 'not-a-date'],
    [`${RUNG}/date`, '31.5.2031', 'not-a-date'],
    [`${RUNG}/canopy/heightM`, true, 'wrong-type'],
    [`${RUNG}/canopy/profile`, [{ heightM: 1, widthM: 1 }], 'too-few'],
    [`${RUNG}/canopy/profile/1/heightM`, 0.5, 'not-rising'],
    [`${RUNG}/canopy/errors`, { trees: 1 }, 'out-of-range'],
    [`${RUNG}/setting/gear`, 'high', 'no-such-reference'],
    [`${RUNG}/setting/nozzles/0/position`, 'L2', 'no-such-reference'],
    [`${RUNG}/setting/nozzles/0/open`, 0, 'wrong-type'],
    [`${RUNG}/setting/nozzles/0/size`, 'b', 'no-such-reference'],
    [`${RUNG}/setting/nozzles/0/table`, 'other', 'no-such-reference'],
    [`${RUNG}/setting/nozzles/1`, { position: 'L1' }, 'duplicate-id'],
    ['/machines/0/outlet/kind', 'slot', 'not-a-choice'],
    ['/machines/0/outlet', 'arc', 'wrong-type'],
    ['/machines/0/outlet/fromDeg', 85, 'least-above-most'],
    ['/machines/0/pressureMinBar', 21, 'least-above-most'],
    ['/machines/0/speedMinKmH', 9.5, 'least-above-most'],
    ['/machines/0/ptoMinRpm', 561, 'least-above-most'],
    [`${NOZZLE}/side`, 'top', 'not-a-choice'],
    [`${NOZZLE}/swivelDownDeg`, 15, 'out-of-range'],
    [`${NOZZLE}/table`, 'other', 'no-such-reference'],
    [`${NOZZLE}/size`, '016', 'no-such-reference'],
    ['/nozzleTables/0/pressureMinBar', 21, 'least-above-most'],
    [`${SIZE}/points/1/pressureBar`, 5, 'not-rising'],
    [`${SIZE}/points/1/flowLPerMin`, 0.6, 'not-rising'],
    [`${SIZE}/droplets/1/fromBar`, 3, 'not-rising'],
    [`${SIZE}/droplets/1/class`, 'fine', 'not-a-choice'],
    ['/labels/0/minWaterLPerHa', 1001, 'least-above-most'],
    ['/labels/0/rate', 0, 'out-of-range'],
    ['/day/sunLow', 'yes', 'wrong-type'],
    ['/assumptions/aim.overshoot', 9, 'out-of-range'],
    ['/assumptions/aim.overshoot', '9', 'wrong-type'],
    ['/assumptions/aim.overshot', 0.3, 'no-such-reference'],
    ['/assumptions/aim over', 0.3, 'not-an-id']
  ])('%s = %j: %s', (path, value, code) => {
    const at = code === 'duplicate-id' ? path + '/position' : path === `${RUNG}/canopy/errors` ? path + '/trees' : path;
    const text = spoilt(path, value);
    expect(told(text)).toEqual([`${at} ${code}`]);
    // every parameter that the sentence asks for is there
    expect(problemSentence(problems(text)[0]!)).not.toContain('undefined');
  });

  it.each(['/blocks', '/machines', '/nozzleTables', '/labels', '/blocks/0/rungs', '/machines/0/gears', '/machines/0/nozzles', SIZE.slice(0, -2)])(
    'an id that stands twice in %s',
    (path) => {
      const d = sample();
      const list = path.split('/').slice(1).reduce<unknown>((v, s) => (v as Record<string, unknown>)[s], d) as unknown[];
      list.push(list[0]);
      expect(told(JSON.stringify(d))).toEqual([`${path}/${list.length - 1}/id duplicate-id`]);
    }
  );
  it('a table that takes the id of the built-in one', () =>
    expect(told(spoilt('/nozzleTables/1', { ...sample().nozzleTables[0], id: 'iso-10625' }))).toEqual(['/nozzleTables/1/id reserved-id']));
  it('a table alone, set at a place whose size it does not have', () =>
    expect(told(spoilt(`${RUNG}/setting/nozzles/0`, { position: 'L1', table: 'own' }))).toEqual([`${RUNG}/setting/nozzles/0/size no-such-reference`]));
  it('a saved setting is judged as the present one', () =>
    expect(told(spoilt(`${RUNG}/saved`, { ...sample().blocks[0]!.rungs[0]!.setting, speedKmH: 60 }))).toEqual([`${RUNG}/saved/speedKmH out-of-range`]));
  it('more entries than a list may have', () =>
    expect(told(spoilt('/labels', Array.from({ length: 201 }, (_, i) => ({ ...sample().labels[0], id: i === 0 ? 'cover' : `l${i}` }))))).toEqual([
      '/labels too-many'
    ]));
});

describe('what a problem tells', () => {
  it('value, range and unit', () =>
    expect(problems(spoilt('/blocks/0/rowSpacingM', 380))).toEqual([
      { path: '/blocks/0/rowSpacingM', code: 'out-of-range', value: '380', parameters: { least: 0.5, most: 20, unit: 'm' } }
    ]));
  it('the nearest known key', () => {
    const text = spoilt('/blocks/0/rowSpacing', 3).replace('"rowSpacingM":4,', '');
    const p = problems(text).find((q) => q.code === 'unknown-key');
    expect(p?.parameters).toMatchObject({ key: 'rowSpacing', nearest: 'rowSpacingM' });
  });
  it('the nearest known key inside a union', () =>
    expect(problems(spoilt('/machines/0/outlet/slotWidth', 0.1))[0]?.parameters['known']).toBe(
      'kind, axisHeightM, radiusM, fromDeg, toDeg, slotWidthM'
    ));
  it('a long or dangerous value shortened and made visible', () => {
    expect(problems(spoilt('/blocks/0/strategy', 'x'.repeat(1000)))[0]?.value).toHaveLength(40);
    expect(problems(spoilt('/blocks/0/strategy', 'a\u009bb'))[0]?.value).toBe('"a\\u009bb"');
  });
  it('the first of two equal ids', () => {
    const d = sample();
    d.labels.push({ ...d.labels[0]! });
    expect(problems(JSON.stringify(d))[0]?.parameters).toEqual({ id: 'cover', first: 1 });
  });
  it('all problems at once, and at most 200 of them with the number of the others', () => {
    const d = sample() as { blocks: unknown[] };
    d.blocks = Array.from({ length: 100 }, () => ({}));
    const r = readDocument(JSON.stringify(d));
    if (r.ok) throw new Error('read');
    // each empty block lacks id, name, row spacing, machine, strategy and rungs
    expect([r.problems.length, r.more]).toEqual([200, 400]);
  });
  it.each<[string, object]>([
    ['empty nozzles by the hundred thousand', { blocks: Array(500).fill({ rungs: Array(40).fill({ setting: { nozzles: Array(9).fill({}) } }) }) }],
    ['unknown keys by the hundred thousand', { blocks: Array(280).fill(Object.fromEntries(Array.from({ length: 999 }, (_, i) => [`key-${i}`, 1]))) }]
  ])('%s, without failing', (_, wrong) => {
    const r = readDocument(JSON.stringify({ ...sample(), ...wrong }));
    if (r.ok) throw new Error('read');
    expect(r.problems).toHaveLength(200);
    expect(r.more).toBeGreaterThan(1000);
  });
  it('relations and fields together', () => {
    const d = sample();
    d.blocks[0]!.rowSpacingM = 99;
    d.blocks[0]!.machine = 'none';
    expect(told(JSON.stringify(d))).toEqual(['/blocks/0/rowSpacingM out-of-range', '/blocks/0/machine no-such-reference']);
  });
});

describe('text', () => {
  const text = JSON.stringify(sample());
  it.each<[string, string, string]>([
    ['nothing', '', 'empty'],
    ['white space', ' \n\t', 'empty'],
    ['a byte order mark alone', '\uFEFF', 'empty'],
    ['words', 'hello', 'not-json'],
    ['a cut file', text.slice(0, -1), 'not-json'],
    ['two documents', text + text, 'not-json'],
    ['NaN', text.replace('"rowSpacingM":4', '"rowSpacingM":NaN'), 'not-json'],
    ['a list', '[]', 'wrong-type'],
    ['null', 'null', 'wrong-type'],
    ['more than ten million characters', ' '.repeat(10_000_001), 'too-large'],
    ['very many values', `[${'0,'.repeat(300_000)}0]`, 'too-many-values']
  ])('%s', (_, t, code) => expect(told(t)).toEqual([` ${code}`]));
  it('a newer version is refused by name before its fields are looked at', () =>
    expect(problems('{"format":"rowtailor","version":7,"trees":[]}')).toEqual([
      { path: '/version', code: 'newer-version', value: '7', parameters: { newest: 1 } }
    ]));
  it('nesting without end', () => {
    const deep = told('['.repeat(4_000_000));
    expect(deep).toHaveLength(1);
    expect(deep[0]).toMatch(/ too-deep$/);
    expect(told('{"a":'.repeat(1_000_000))[0]).toMatch(/ too-deep$/);
  });
  it('keys without end', () => {
    const keys = (n: number): string => '{' + Array.from({ length: n }, (_, i) => `"a${i}":0`).join(',') + '}';
    expect(told(JSON.stringify(sample()).replace('{"aim.overshoot":0.4}', keys(200_000)))).toEqual(['/assumptions too-many']);
  });
  it('line and column of what breaks it', () =>
    expect(problems('{\n  "format": "rowtailor",\n  "version" 1\n}')[0]).toMatchObject({ value: '"1"', parameters: { line: 3, column: 13 } }));
  it('a number too large for a number', () =>
    expect(problems(text.replace('"rowSpacingM":4', '"rowSpacingM":1e999'))).toMatchObject([
      { path: '/blocks/0/rowSpacingM', code: 'not-finite', value: 'Infinity', parameters: { least: 0.5, most: 20 } }
    ]));
  it('a key that stands twice', () =>
    expect(problems(text.replace('"rowSpacingM":4', '"rowSpacingM":4,"rowSp\\u0061cingM":4'))).toMatchObject([
      { path: '/blocks/0/rowSpacingM', code: 'duplicate-key', parameters: { key: 'rowSpacingM', line: 1 } }
    ]));
  it.each(['__proto__', 'constructor', 'prototype'])('the key %s at any depth', (key) => {
    expect(told(text.replace('"heightM":3', `"heightM":3,"${key}":{"x":1}`))).toEqual([`${RUNG}/canopy/${key} forbidden-key`]);
    expect(told(text.replace('"aim.overshoot":0.4', `"${key}":{"x":1}`))).toEqual([`/assumptions/${key} forbidden-key`]);
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
  });
});

describe('data in memory', () => {
  it('is judged as a file', () => {
    expect(checkDocument({ ...sample(), name: '' })).toMatchObject({ ok: false, problems: [{ path: '/name', code: 'too-short' }] });
    expect(checkDocument({ ...sample(), day: { temperatureC: NaN } })).toMatchObject({ ok: false, problems: [{ path: '/day/temperatureC', code: 'not-finite' }] });
    expect(checkDocument(undefined)).toMatchObject({ ok: false, problems: [{ path: '', code: 'wrong-type' }] });
  });
});

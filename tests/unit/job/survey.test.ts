import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LENGTHS } from '#job/limits.ts';
import { checkDocument, readDocument } from '#job/read.ts';
import { readSurvey } from '#job/survey/table.ts';
import { writeDocument } from '#job/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { spoilt } from './sample.ts';

const said = (text: string): string[] => readSurvey(text).problems.map(problemSentence);
const codes = (text: string): string[] => readSurvey(text).problems.map((p) => `${p.line} ${p.column} ${p.value} ${p.code}`);

describe('columns', () => {
  it('stand in any order, in metres or feet, with names and notes', () => {
    expect(readSurvey('\uFEFFnote_who;WIDTH_M; height_ft ;skirt_m;variety;row;tree\r\nx;1,5;10;0,4;Early;7;A\r\n;2;10;;;;\r\n')).toEqual({
      trees: [{ tree: 'A', row: '7', variety: 'Early', heightM: 3.048, skirtM: 0.4, widthM: 1.5 }, { heightM: 3.048, widthM: 2 }],
      refused: 0,
      problems: []
    });
  });
  it('of widths by height make a profile, rising, with or without a greatest width', () => {
    expect(readSurvey('width_m_at_2,width_ft_at_2.5,height_m,width_m\n0.8,4,3,\n0,5,3.1,1.7\n,4,1.5,\n').trees).toEqual([
      { heightM: 3, profile: [{ heightM: 0.762, widthM: 4 * 0.3048 }, { heightM: 2, widthM: 0.8 }] },
      { heightM: 3.1, widthM: 1.7, profile: [{ heightM: 0.762, widthM: 5 * 0.3048 }, { heightM: 2, widthM: 0 }] },
      { heightM: 1.5, profile: [{ heightM: 0.762, widthM: 4 * 0.3048 }] }
    ]);
  });
  it('are named where they are wrong', () => {
    expect(said('hieght_m,width_m\n3,1\n')).toEqual([
      'Line 1: "hieght_m" is not a column that is known; known are: tree, row, variety, height_m, height_ft, skirt_m, skirt_ft, width_m, width_ft, width_m_at_1.5, width_ft_at_5. Did you mean "height_m"?'
    ]);
    expect(codes('height_m,height_ft,width_m,width_m\n')).toEqual(['1 width_m width_m duplicate-column', '1 height_ft height_ft two-units']);
    expect(codes('height_m,width_m_at_1.524,width_ft_at_5\n')).toEqual(['1 width_ft_at_5 width_ft_at_5 two-units']);
    expect(codes('height_m,width_m_at_21\n')).toEqual(['1 width_m_at_21 width_m_at_21 out-of-range']);
    expect(codes('height_m,width_m_at_x\n')[0]).toBe('1 width_m_at_x width_m_at_x unknown-column');
    expect(codes(['height_m', ...Array.from({ length: 61 }, (_, i) => `width_m_at_${i / 10}`)].join() + '\n')).toEqual(['1 width_m_at_6 width_m_at_6 too-many']);
    expect(said('tree,skirt_m\n')).toEqual([
      'Line 1, height_m is missing; one of height_m, height_ft is needed. Add it to the header and to every line.',
      'Line 1, width_m is missing; one of width_m, width_ft, width_m_at_1.5, width_ft_at_5 is needed. Add it to the header and to every line.'
    ]);
    expect(said('\n \n')).toEqual(['Line 1 has no header line; the names of the columns must stand in the first line. Add them: height_m, width_m.']);
    expect(said('')).toHaveLength(1);
  });
});

describe('a line that cannot be used is told, and the others are read', () => {
  it('by line, column, value and reason', () => {
    const text = [
      'tree,height_m,skirt_m,width_ft,width_m_at_2', 'a,3,0.4,5,1', 'b,3 m,0.4,5,1', 'c,30,0.4,5,1', 'd,,0.4,5,1', 'e,3,0.4,,', 'f,3,3,5,1', 'g,3,0.4,500,1',
      'h,3,0.4,5', '', 'i,3,0.4,5,1,6', 'j,1.9,0.4,5,1', `${'x'.repeat(121)},3,0.4,5,1`, 'k\uFFFD,3,0.4,5,1', 'l,3,,,0.05', 'm,3,,5,0'
    ].join('\n');
    const { trees, refused } = readSurvey(text);
    expect(trees.map((t) => t.tree)).toEqual(['a', 'm']);
    expect(refused).toBe(12);
    expect(codes(text)).toEqual([
      '3 height_m 3 m not-a-number', '4 height_m 30 out-of-range', '5 height_m  absent', '6 width_ft  absent', '7 skirt_m 3 skirt-not-below-top', '8 width_ft 500 out-of-range',
      '9   field-count', '11   field-count', '12 width_m_at_2 1 width-above-top', expect.stringMatching(/^13 tree xxx.* name-too-long$/), '14 tree k\uFFFD unfit-characters', '15 width_ft 0 out-of-range'
    ]);
    for (const s of said(text)) expect(s).not.toMatch(/undefined|NaN/);
  });
  it('in words, in the unit of the column', () => {
    expect(said('height_ft,width_ft\n100,5\n')).toEqual(['Line 2, height_ft is 100; 0.6562 to 65.62 ft is allowed. Check the decimal point, and that it is in feet: 1 m is 3.28 ft.']);
    expect(said('height_m,width_m_at_2\n1.5,1\n')).toEqual(['Line 2, width_m_at_2 is 1, but height_m is 1.5; above its top a tree has no width. Empty the cell, or correct one of the two.']);
  });
  it('ends at a quote left open, and at more trees than are kept', () => {
    expect(codes('height_m,width_m\n3,1\n"3,1\n3,1\n')).toEqual([expect.stringMatching(/^3 .*bad-quotes$/)]);
    const many = readSurvey('height_m,width_m\n' + '3,1\n'.repeat(LENGTHS.trees[1] + 5));
    expect([many.trees.length, many.problems.map((p) => `${p.line} ${p.code}`)]).toEqual([LENGTHS.trees[1], [`${LENGTHS.trees[1] + 2} too-many-lines`]]);
  });
  it('whatever the text, it never throws, and what it reads a document may hold', () => {
    const cell = fc.oneof(fc.constantFrom('3', '1,5', '2.5', '', '"', '0', '-1', '1e9', 'x'), fc.string());
    fc.assert(
      fc.property(fc.constantFrom(',', ';', '\t'), fc.array(fc.array(cell, { minLength: 4, maxLength: 6 }), { maxLength: 6 }), (d, rows) => {
        const { trees, problems, refused } = readSurvey([['tree', 'height_m', 'skirt_m', 'width_m', 'width_m_at_1'], ...rows].map((r) => r.join(d)).join('\n'));
        expect(refused > 0).toBe(problems.length > 0);
        expect(checkDocument(JSON.parse(spoilt('/blocks/0/rungs/0/survey', { trees }))).ok).toBe(true);
      })
    );
  });
});

const SURVEY = '/blocks/0/rungs/0/survey';
const TREES = `${SURVEY}/trees`;
const schema = new Ajv2020({ allErrors: true, formats: { date: true, 'date-time': true } }).compile(
  JSON.parse(readFileSync(new URL('../../../static/schema/rowtailor-1.json', import.meta.url), 'utf8')) as object
);

describe('the trees of a document', () => {
  it.each<[string, unknown]>([
    ['none yet', { trees: [], blockTrees: 800 }],
    ['each with all that may be told', { trees: [{ tree: '7', row: '3', variety: 'Early', heightM: 3, skirtM: 0.4, widthM: 1.2, profile: [{ heightM: 1, widthM: 1.1 }], leftOut: true }] }],
    ['with a profile alone', { trees: [{ heightM: 3, profile: [{ heightM: 1, widthM: 1.1 }, { heightM: 2, widthM: 0 }] }] }],
    ['a thousand', { trees: Array(1000).fill({ heightM: 3, widthM: 1 }) }]
  ])('are read, written and in the published schema: %s', (_, survey) => {
    const text = spoilt(SURVEY, survey);
    const r = readDocument(text);
    if (!r.ok) throw new Error(problemSentence(r.problems[0]!));
    expect(r.document).toEqual(JSON.parse(text));
    expect(checkDocument(JSON.parse(writeDocument(r.document)))).toEqual(r);
    schema(JSON.parse(text));
    expect(schema.errors).toBeNull();
  });
  const one = (more: object) => ({ trees: [{ heightM: 3, widthM: 1, ...more }] });
  it.each<[unknown, string]>([
    [{}, `${TREES} missing`],
    [{ trees: Array(1001).fill({ heightM: 3, widthM: 1 }) }, `${TREES} too-many`],
    [{ trees: [{ heightM: 3 }] }, `${TREES}/0/widthM missing`],
    [{ trees: [{ heightM: 3, profile: [{ heightM: 1, widthM: 0 }] }] }, `${TREES}/0/widthM missing`],
    [{ trees: [{ widthM: 1 }] }, `${TREES}/0/heightM missing`],
    [one({ heightM: 21 }), `${TREES}/0/heightM out-of-range`],
    [one({ skirtM: -1 }), `${TREES}/0/skirtM out-of-range`],
    [one({ widthM: '1' }), `${TREES}/0/widthM wrong-type`],
    [one({ profile: [] }), `${TREES}/0/profile too-few`],
    [one({ profile: [{ heightM: 2, widthM: 1 }, { heightM: 1, widthM: 1 }] }), `${TREES}/0/profile/1/heightM not-rising`],
    [one({ row: '' }), `${TREES}/0/row too-short`],
    [one({ girthM: 1 }), `${TREES}/0/girthM unknown-key`],
    [one({ leftOut: 'yes' }), `${TREES}/0/leftOut wrong-type`],
    [{ trees: [], blockTrees: 0 }, `${SURVEY}/blockTrees out-of-range`],
    [{ trees: [], blockTrees: 1.5 }, `${SURVEY}/blockTrees not-whole`]
  ])('are refused with place and code: %j', (survey, told) => {
    const r = readDocument(spoilt(SURVEY, survey));
    if (r.ok) throw new Error('read');
    expect(r.problems.map((p) => `${p.path} ${p.code}`)).toEqual([told]);
    expect(problemSentence(r.problems[0]!)).not.toMatch(/undefined|NaN/);
  });
});

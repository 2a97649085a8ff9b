import { expect, it } from 'vitest';
import { ROW_CODES } from '#job/csv/header.ts';
import { PROBLEM_CODES } from '#job/problem.ts';
import { readDocument } from '#job/read.ts';
import { PROBLEM_SENTENCES, moreProblems, problemSentence } from '#words/en/problems.ts';
import { spoilt } from './sample.ts';

const said = (path: string, value: unknown): string => {
  const r = readDocument(spoilt(path, value));
  return r.ok ? '' : problemSentence(r.problems[0]!);
};

it('every code has a sentence, and no sentence is without a code', () =>
  expect(Object.keys(PROBLEM_SENTENCES).sort()).toEqual([...new Set<string>([...PROBLEM_CODES, ...ROW_CODES])].sort()));

it('a sentence names field, value, allowed range and a remedy', () => {
  expect(said('/blocks/0/rowSpacingM', 380)).toBe(
    'blocks[0].rowSpacingM is 380; 0.5 to 20 m is allowed. Check the decimal point, and that it is in metres: 1 ft is 0.3048 m.'
  );
  expect(said('/blocks/0/rowSpacingM', '3.8')).toBe('blocks[0].rowSpacingM is "3.8"; a number, 0.5 to 20 m is needed. Write the figure alone, without quotes.');
  expect(said('/version', 9)).toBe('version is 9; this program reads versions up to 1. The file was made by a newer program: update this one.');
  expect(said('/blocks/0/machine', 'ark')).toBe('blocks[0].machine is "ark", but there is no such machine of this file; there are: arc. Did you mean "arc"?');
});
it('a sentence for the whole file begins with it', () => {
  const r = readDocument('');
  expect(r.ok || problemSentence(r.problems[0]!)).toBe('The file is empty; a document is expected. Choose another file.');
});
it('the rest of a long list is counted', () => {
  expect(moreProblems(1)).toBe('And 1 more problem.');
  expect(moreProblems(1200)).toBe('And 1,200 more problems.');
  expect(moreProblems(0)).toBe('');
});

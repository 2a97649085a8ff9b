import { describe, expect, test } from 'vitest';
import { dueFindings } from '#core/check/due.ts';
import type { Round } from '#core/check/types.ts';
import type { Rung } from '#core/setting/document.ts';
import { document, setting } from '../../../support/sample.ts';

const [block] = document().blocks;
const rung = block!.rungs[0]!;
const round = (more: Partial<Round> = {}): Round => ({ setting: setting(), ...more });
const stage = (name: string, ...rounds: Round[]): Rung => ({ ...rung, id: name, name, check: { rounds } });
const { check: _, ...unchecked } = stage('Full leaf');

describe('a stage that nobody checked', () => {
  const due = (now: Rung, ...others: Rung[]) => dueFindings({ ...block!, rungs: [...others, now] }, now);
  test('is told, with the stage that was', () =>
    expect(due(unchecked, stage('Bare', round()))).toEqual([
      { code: 'check-due-stage', severity: 'warn', parameters: { other: 'Bare', stage: 'Full leaf' }, sources: ['deveau-2009'], path: 'check.rounds' }
    ]));
  test('of several that were checked, the last of the season is named', () =>
    expect(due(unchecked, stage('Bare', round()), stage('Bloom', round()), stage('Petal fall')).map((f) => f.parameters['other'])).toEqual(['Bloom']));
  test('a check that was begun and has no round is no check, of this stage or of another', () => {
    expect(due(stage('Full leaf'), stage('Bare', round())).map((f) => f.code)).toEqual(['check-due-stage']);
    expect(due(unchecked, stage('Bare'))).toEqual([]);
  });
  test('nothing where no stage was checked, nor where it is the only one', () => {
    const { check: _none, ...bare } = stage('Bare');
    expect(due(unchecked, bare)).toEqual([]);
    // The block knows its check already, the rung in hand is about to.
    expect(dueFindings({ ...block!, rungs: [stage('Full leaf', round())] }, unchecked)).toEqual([]);
  });
});

describe('a check that was made', () => {
  const due = (last: Partial<Round>, date?: string) => {
    const now = { ...stage('Now', round({ machine: 'older', at: '2029-01-01T00:00:00Z' }), round({ machine: 'old' }), round(last)), ...(date === undefined ? {} : { date }) };
    return dueFindings({ ...block!, rungs: [stage('Bare', round()), now] }, now);
  };
  test('holds for the machine of its last round, and for the block’s where none is named', () => {
    expect(due({ machine: 'A' })).toEqual([]);
    expect(due({})).toEqual([]);
    expect(due({ machine: 'B' })).toEqual([{ code: 'check-due-machine', severity: 'stop', parameters: { machine: 'B' }, sources: ['deveau-2009'], path: 'machine' }]);
  });
  test('holds for a year and not a day more', () => {
    // 29 February 2032 lies between: 365 days end on 9 May.
    expect(due({ at: '2031-05-10T00:00:00Z' }, '2032-05-09')).toEqual([]);
    expect(due({ at: '2031-05-09T23:59:59Z' }, '2032-05-09')).toEqual([
      { code: 'check-due-season', severity: 'warn', parameters: { date: '2031-05-09' }, sources: ['deveau-2009'], path: 'check.rounds' }
    ]);
  });
  test('made after the day of the stage it is not old', () => expect(due({ at: '2033-05-10T00:00:00Z' }, '2031-05-09')).toEqual([]));
  test('a day that is not known tells nothing', () => {
    expect(due({ at: '2029-05-10T00:00:00Z' })).toEqual([]);
    expect(due({}, '2032-05-09')).toEqual([]);
  });
  test('both may be due', () => expect(due({ machine: 'B', at: '2030-05-10T00:00:00Z' }, '2032-05-09').map((f) => f.code)).toEqual(['check-due-machine', 'check-due-season']));
});

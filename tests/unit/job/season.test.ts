import { describe, expect, it } from 'vitest';
import { checkDocument, readDocument } from '#job/read.ts';
import { patchCanopy } from '#workspace/edits.ts';
import { canopyState } from '#core/canopy/canopy.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { canopy, document } from '../../support/sample.ts';
import { spoilt } from './sample.ts';

const problems = (path: string, value: unknown) => {
  const reading = readDocument(spoilt(path, value));
  return reading.ok ? [] : reading.problems.map((p) => `${p.path} ${p.code}`);
};

describe('a proposed canopy in a document', () => {
  const proposed = { from: 'now', by: 'stage' } as const;
  it('is read where it names a rung of its block', () => expect(checkDocument(document({ canopy: { proposed } })).ok).toBe(true));
  it('is refused by name where it does not', () => {
    const reading = checkDocument(document({ canopy: { proposed: { from: 'spring', to: 'summer', by: 'degree-days' } } }));
    expect(reading.ok ? [] : reading.problems.map((p) => `${p.path} ${p.code}`)).toEqual([
      '/blocks/0/rungs/0/canopy/proposed/from no-such-reference',
      '/blocks/0/rungs/0/canopy/proposed/to no-such-reference'
    ]);
  });
  it('says no more than it knows', () => expect(problems('/blocks/0/rungs/0/canopy/proposed', { from: 'bloom', by: 'guess' })).toContain('/blocks/0/rungs/0/canopy/proposed/by not-a-choice'));

  it('is nowhere said to be measured', () => {
    const { H, W, LAD, h } = canopyState(canopy({ ladM2PerM3: 1, proposed }), { rowSpacingM: 4, faces: 2 }, new Assumptions(ASSUMPTIONS)).figures;
    expect([H, W, LAD, h].map((a) => a.kind !== 'refused' && a.certainty)).toEqual(['assumed', 'assumed', 'assumed', 'assumed']);
  });
  it('is one no more after a measurement, and still one after another word on its density', () => {
    const rung = document({ canopy: { proposed } }).blocks[0]!.rungs[0]!;
    expect(patchCanopy(rung, { heightM: 3.1 }).canopy).not.toHaveProperty('proposed');
    expect(patchCanopy(rung, { ladM2PerM3: undefined }).canopy.proposed).toEqual(proposed);
    expect(patchCanopy(rung, { densityClass: 'open' }).canopy.proposed).toEqual(proposed);
  });
});

it.each([
  ['/blocks/0/rungs/0/treatments', 51, 'out-of-range'],
  ['/blocks/0/rungs/0/treatments', 1.5, 'not-whole'],
  ['/labels/0/maxUses', 0, 'out-of-range'],
  ['/labels/0/maxPerSeason', '3', 'wrong-type']
])('%s = %j is refused', (path, value, code) => expect(problems(path, value)).toContain(`${path} ${code}`));

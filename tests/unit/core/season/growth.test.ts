import { describe, expect, it } from 'vitest';
import { grownShare, stageOfShare } from '#core/canopy/growth/stages.ts';
import { dateOf, neighboursOf, proposeByDegreeDays, proposeByStage, sourcesFor, type Proposal } from '#core/canopy/growth/propose.ts';
import { unfoldedShare } from '#core/canopy/growth.ts';
import { sectionArea, outlineOf } from '#core/canopy/outline.ts';
import type { Block, Document, Rung } from '#core/setting/document.ts';
import { DegreeDays } from '#core/weather/degree-days.ts';
import { given, valueOf, type Refused } from '#core/working/answer.ts';
import { checkDocument } from '#job/read.ts';
import { canopy, document, type Parts } from '../../../support/sample.ts';
import { faultsOf } from '../../../support/working.ts';

function ladder(rungs: readonly Partial<Rung>[], parts: Parts = {}): { d: Document; block: Block; rung: (i: number) => Rung } {
  const d = document(parts);
  const base = d.blocks[0]!;
  const block: Block = { ...base, rungs: rungs.map((r, i) => ({ ...base.rungs[0]!, id: `r${i}`, name: `Rung ${i}`, ...r }) as Rung) };
  return { d: { ...d, blocks: [block] }, block, rung: (i) => block.rungs[i]! };
}
const proposal = (p: Proposal | Refused): Proposal => {
  if ('kind' in p) throw new Error(p.code);
  return p;
};
const valueIn = (p: Proposal, field: string): number => valueOf(p.figures.find((f) => f.field === field)!.proposed)!;

/** Full leaf: 2 m²/m³ in a box from 0.5 to 3 m. */
const FULL: Partial<Rung> = { bbch: 75, canopy: canopy({ ladM2PerM3: 2 }) };

describe('by growth stage', () => {
  it.each([
    [65, 0.1],
    [69, 0.23],
    [73, 0.8]
  ])('leaf area at BBCH %d is %d of the full one', (bbch, share) => {
    const { d, block, rung } = ladder([{ bbch }, FULL]);
    const p = proposal(proposeByStage(d, block, rung(0), rung(1)));
    // Leaf area per metre of row is density times section: the published shares are of that.
    const area = (density: number, of: Rung['canopy']) => density * sectionArea(outlineOf(of));
    const exact = { ...rung(1).canopy, heightM: valueIn(p, 'heightM'), widthM: valueIn(p, 'widthM') };
    expect(area(valueIn(p, 'ladM2PerM3'), exact) / area(2, rung(1).canopy)).toBeCloseTo(share, 9);
  });
  it('the row’s volume grows by a quarter from bare wood to full leaf, 20 to 30 % in the range', () => {
    const { d, block, rung } = ladder([{ bbch: 0 }, FULL]);
    const p = proposal(proposeByStage(d, block, rung(0), rung(1)));
    const section = (h: number, w: number) => (h - 0.5) * w;
    expect(section(3, 1.2) / section(valueIn(p, 'heightM'), valueIn(p, 'widthM'))).toBeCloseTo(1.25, 9);
    const range = (field: string) => p.figures.find((f) => f.field === field)!.range!;
    expect(section(3, 1.2) / section(range('heightM').low, range('widthM').low)).toBeCloseTo(1.3, 9);
    expect(section(3, 1.2) / section(range('heightM').high, range('widthM').high)).toBeCloseTo(1.2, 9);
  });
  it('forth and back is where it began', () => {
    const { d, block, rung } = ladder([{ bbch: 69 }, FULL]);
    const back = proposal(proposeByStage(d, block, rung(0), rung(1)));
    const measured: Block = { ...block, rungs: [{ ...rung(0), canopy: { ...rung(0).canopy, heightM: valueIn(back, 'heightM'), widthM: valueIn(back, 'widthM'), ladM2PerM3: valueIn(back, 'ladM2PerM3') } }, rung(1)] };
    const forth = proposal(proposeByStage({ ...d, blocks: [measured] }, measured, rung(1), measured.rungs[0]!));
    expect([valueIn(forth, 'heightM'), valueIn(forth, 'widthM'), valueIn(forth, 'ladM2PerM3')].map((v) => Number(v.toFixed(9)))).toEqual([3, 1.2, 2]);
  });
  it('is a canopy that a document holds, with where it is from, its working whole', () => {
    const { d, block, rung } = ladder([{ bbch: 69 }, { ...FULL, canopy: canopy({ ladM2PerM3: 2, tallestTenthM: 3.3, profile: [{ heightM: 0.6, widthM: 1 }, { heightM: 2.5, widthM: 0.5 }], errors: { heightSeM: 0.1 } }) }]);
    const p = proposal(proposeByStage(d, block, rung(0), rung(1)));
    expect(p.canopy.proposed).toEqual({ from: 'r1', by: 'stage' });
    expect(p.canopy).not.toHaveProperty('errors');
    expect(p.canopy.tallestTenthM).toBeLessThan(3.3);
    expect(p.canopy.profile!.every((s, i) => s.widthM < [1, 0.5][i]!)).toBe(true);
    expect(checkDocument({ ...d, blocks: [{ ...block, rungs: [{ ...rung(0), canopy: p.canopy }, rung(1)] }] }).ok).toBe(true);
    expect(faultsOf(p)).toEqual([]);
    expect(p.limits).toContain('apple-shares');
  });
  it('a density that nobody measured is shown, and left to the stage', () => {
    const { d, block, rung } = ladder([{ bbch: 69 }, { ...FULL, canopy: canopy() }]);
    const p = proposal(proposeByStage(d, block, rung(0), rung(1)));
    expect(p.canopy).not.toHaveProperty('ladM2PerM3');
    expect(p.figures.find((f) => f.field === 'ladM2PerM3')).toMatchObject({ written: false });
    expect(p.limits).toContain('density-left');
  });
  it('from a bare canopy there is an outline and no leaf', () => {
    const { d, block, rung } = ladder([{ bbch: 0 }, { bbch: 75 }]);
    const p = proposal(proposeByStage(d, block, rung(1), rung(0)));
    expect(valueIn(p, 'heightM')).toBeGreaterThan(3);
    expect(p.figures.find((f) => f.field === 'ladM2PerM3')!.proposed).toMatchObject({ code: 'growth-from-bare' });
  });
  it('the user’s own growth is taken, and widens the range', () => {
    const { d, block, rung } = ladder([{ bbch: 0 }, FULL], { assumptions: { 'growth.volume': 0.45 } });
    const p = proposal(proposeByStage(d, block, rung(0), rung(1)));
    expect(((3 - 0.5) * 1.2) / ((valueIn(p, 'heightM') - 0.5) * valueIn(p, 'widthM'))).toBeCloseTo(1.45, 9);
  });
  it.each<[string, readonly Partial<Rung>[], Parts, string]>([
    ['an evergreen', [{ bbch: 69 }, FULL], { block: { evergreen: true } }, 'growth-evergreen'],
    ['no stage here', [{}, FULL], {}, 'growth-no-stage'],
    ['no stage there', [{ bbch: 69 }, { canopy: canopy() }], {}, 'growth-no-stage'],
    ['a proposal there', [{ bbch: 69 }, { ...FULL, canopy: canopy({ proposed: { from: 'r0', by: 'stage' } }) }], {}, 'growth-not-measured']
  ])('%s: refused by name', (_, rungs, parts, code) => {
    const { d, block, rung } = ladder(rungs, parts);
    expect(proposeByStage(d, block, rung(0), rung(1))).toMatchObject({ kind: 'refused', code });
  });
  it('comes from the fullest measured leaf first, never from a proposal or from itself', () => {
    const { block, rung } = ladder([{ bbch: 10 }, { bbch: 69 }, FULL, { bbch: 85, canopy: canopy({ proposed: { from: 'r2', by: 'stage' } }) }, {}]);
    expect(sourcesFor(block, rung(1)).map((r) => r.id)).toEqual(['r2', 'r0']);
  });
});

describe('stages', () => {
  it('the inverse of the share leads back to the stage', () => {
    for (let b = 7; b <= 75; b += 0.5) expect(stageOfShare(unfoldedShare(b))).toBeCloseTo(b, 9);
    expect(stageOfShare(1.2)).toBeNull();
  });
  it('the outline is not lost with the leaf', () => expect([grownShare(0), grownShare(75), grownShare(97)]).toEqual([0, 1, 1]));
});

describe('by degree-days', () => {
  /** Ten degree-days on each of the first ten days, thirty on each of the ten after. */
  const weather = new DegreeDays(
    { kind: 'mean', readingsPerDay: 1, thin: [], days: Array.from({ length: 20 }, (_, i) => ({ date: `2031-05-${String(i + 1).padStart(2, '0')}`, temperatures: { meanC: i < 10 ? 15 : 35 } })) },
    given(5, 'degC')
  );
  const spring: Partial<Rung> = { date: '2031-05-01', bbch: 65, canopy: canopy({ heightM: 2.6, widthM: 1, ladM2PerM3: 0.2 }) };
  const summer: Partial<Rung> = { date: '2031-05-21', bbch: 73, canopy: canopy({ heightM: 3, widthM: 1.4, skirtM: 0.3, ladM2PerM3: 1.5 }) };

  it('a date lies as far on the way as its degree-days, in lengths and in leaf area', () => {
    // 100 of 400 degree-days at the middle of the days: a quarter of the way, not half.
    const { d, block, rung } = ladder([spring, { date: '2031-05-11', bbch: 69 }, summer]);
    const p = proposal(proposeByDegreeDays(d, block, rung(1), weather));
    expect(valueOf(p.way!)).toBeCloseTo(0.25, 12);
    expect(valueIn(p, 'heightM')).toBeCloseTo(2.7, 12);
    expect(valueIn(p, 'widthM')).toBeCloseTo(1.1, 12);
    expect(valueIn(p, 'skirtM')).toBeCloseTo(0.45, 12);
    const leaf = (h: number, w: number, lad: number) => h * w * lad;
    const expected = leaf(2.1, 1, 0.2) + 0.25 * (leaf(2.7, 1.4, 1.5) - leaf(2.1, 1, 0.2));
    // The outline as it is written, to the centimetre.
    expect(valueIn(p, 'ladM2PerM3')).toBeCloseTo(expected / ((2.7 - 0.45) * 1.1), 9);
    expect(p.canopy.proposed).toEqual({ from: 'r0', to: 'r2', by: 'degree-days' });
    expect(faultsOf(p)).toEqual([]);
    const range = p.figures[0]!.range!;
    // A week earlier 40 degree-days, a week later 310.
    expect([range.low, range.high].map((v) => Number(v.toFixed(4)))).toEqual([2.63, 2.91]);
  });
  it('a document holds it', () => {
    const { d, block, rung } = ladder([{ ...spring, canopy: canopy({ profile: [{ heightM: 0.6, widthM: 1 }, { heightM: 2, widthM: 0.5 }] }) }, { date: '2031-05-11' }, { ...summer, canopy: canopy({ profile: [{ heightM: 0.6, widthM: 1.3 }, { heightM: 2.8, widthM: 0.5 }] }) }]);
    const p = proposal(proposeByDegreeDays(d, block, rung(1), weather));
    expect(p.canopy.profile!.length).toBeGreaterThan(3);
    const reading = checkDocument({ ...d, blocks: [{ ...block, rungs: block.rungs.map((r) => (r.id === 'r1' ? { ...r, canopy: p.canopy } : r)) }] });
    expect(reading.ok || reading.problems).toBe(true);
  });
  it('stands between the measured neighbours, passing over proposals and rungs without a date', () => {
    const { block, rung } = ladder([spring, { date: '2031-05-05', canopy: canopy({ proposed: { from: 'r0', by: 'stage' } }) }, { date: '2031-05-11' }, {}, summer]);
    const between = neighboursOf(block, rung(2))!;
    expect([between.before.id, between.after.id]).toEqual(['r0', 'r4']);
  });
  it('a stage without a date is dated by the leaf that must have unfolded', () => {
    // 69 is 0.13 of 0.70 of the way from 65 to 73: 74 degree-days of 400, passed at the end of the eighth day.
    const { block, rung } = ladder([spring, { bbch: 69 }, summer]);
    expect(dateOf(block, rung(1), weather)?.date).toBe('2031-05-09');
  });
  it.each<[string, readonly Partial<Rung>[], string]>([
    ['no date', [spring, {}, summer], 'growth-no-date'],
    ['nothing measured after it', [spring, { date: '2031-05-11' }], 'growth-no-neighbours'],
    ['weather that is not there', [{ ...spring, date: '2031-01-01' }, { date: '2031-05-11' }, summer], 'weather-gap']
  ])('%s: refused by name', (_, rungs, code) => {
    const { d, block, rung } = ladder(rungs);
    expect(proposeByDegreeDays(d, block, rung(1), weather)).toMatchObject({ kind: 'refused', code });
  });
  it('an evergreen is refused: what is published is of leaf that comes and goes', () => {
    const { d, block, rung } = ladder([spring, { date: '2031-05-11' }, summer], { block: { evergreen: true } });
    expect(proposeByDegreeDays(d, block, rung(1), weather)).toMatchObject({ code: 'growth-evergreen' });
  });
  it('a way without warmth is no way', () => {
    const cold = new DegreeDays({ ...weather.weather, days: weather.weather.days.map((day) => ({ ...day, temperatures: { meanC: 0 } })) }, given(5, 'degC'));
    const { d, block, rung } = ladder([spring, { date: '2031-05-11' }, summer]);
    expect(proposeByDegreeDays(d, block, rung(1), cold)).toMatchObject({ code: 'growth-no-warmth' });
  });
});

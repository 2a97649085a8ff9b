import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { seasonOf, type Season, type SeasonTotal } from '#core/season/season.ts';
import type { SeasonKind } from '#core/season/formulas.ts';
import type { Document, Rung } from '#core/setting/document.ts';
import { valueOf } from '#core/working/answer.ts';
import { canopy, defined, document, label, setting, shut, type Parts } from '../../../support/sample.ts';
import { faultsOf } from '../../../support/working.ts';

/** A block of several rungs: what each has that is its own. 4 m rows, 3 ha, a tank of 1000 L. */
function seasonDocument(rungs: readonly Partial<Rung>[], parts: Parts = {}): Document {
  const d = document({ ...parts, block: { areaHa: 3, ...parts.block } });
  const block = d.blocks[0]!;
  return { ...d, blocks: [{ ...block, rungs: rungs.map((r, i) => defined({ ...block.rungs[0]!, id: `r${i}`, name: `Rung ${i}`, ...r }) as Rung) }] };
}
const season = (d: Document, fixed?: string): Season => {
  const s = seasonOf(d, d.blocks[0]!.id, fixed);
  if ('kind' in s) throw new Error(s.code);
  return s;
};
const totalOf = (s: Season, kind: SeasonKind): SeasonTotal => s.totals.find((t) => t.kind === kind)!;
const values = (t: SeasonTotal) => [t.fixed, t.adapted, t.saving, t.share].map((a) => valueOf(a));

const SMALL: Partial<Rung> = { canopy: canopy({ heightM: 2, widthM: 0.6, ladM2PerM3: 0.5 }), setting: setting({ speedKmH: 8 }) };
const LARGE: Partial<Rung> = { canopy: canopy({ ladM2PerM3: 2 }), setting: setting() };

describe('totals', () => {
  it('are each rung times its treatments; the fixed setting is that of the rung with most leaf', () => {
    const s = season(seasonDocument([{ ...SMALL, treatments: 3 }, { ...LARGE, treatments: 2 }]));
    expect(s.fixed.rung.id).toBe('r1');
    // 16 nozzles of one flow: litres per hectare go with one over the speed, so 8 km/h give three quarters of 6 km/h.
    const V = valueOf(s.rungs[1]!.volume)!;
    expect(valueOf(s.rungs[0]!.volume)).toBeCloseTo(0.75 * V, 9);
    const [fixed, adapted, saving, share] = values(totalOf(s, 'water'));
    expect(fixed).toBeCloseTo(5 * V, 9);
    expect(adapted).toBeCloseTo(2 * V + 3 * 0.75 * V, 9);
    expect(saving).toBeCloseTo(0.75 * V, 9);
    expect(share).toBeCloseTo(15, 9);
    expect(values(totalOf(s, 'mix'))[0]).toBeCloseTo(3 * 5 * V, 9);
  });
  it('tank fills are counted treatment by treatment, the last of each counted whole', () => {
    const s = season(seasonDocument([{ ...SMALL, treatments: 3 }, { ...LARGE, treatments: 2 }]));
    // 438 L/ha (worked by hand in the sprayer's own tests) on 3 ha are 1.3 tanks, 328 L/ha just under one.
    const fills = (V: number) => Math.ceil((3 * V) / 1000);
    const V = valueOf(s.rungs[1]!.volume)!;
    expect(values(totalOf(s, 'loads')).slice(0, 2)).toEqual([5 * fills(V), 2 * fills(V) + 3 * fills(0.75 * V)]);
    expect(totalOf(s, 'loads').fixed).not.toEqual(totalOf(s, 'loads').adapted);
  });
  it('one treatment is assumed where none was said, and none is none', () => {
    const s = season(seasonDocument([SMALL, { ...LARGE, treatments: 0 }]));
    expect(s.rungs.map((r) => [r.treatments.value, r.treatments.certainty])).toEqual([[1, 'assumed'], [0, 'stated']]);
    expect(values(totalOf(s, 'water'))[1]).toBeCloseTo(valueOf(s.rungs[0]!.volume)!, 9);
    expect(s.treatments).toBe(1);
  });
  it('another rung may stand for the whole season; adapting may then take more', () => {
    const s = season(seasonDocument([SMALL, LARGE]), 'r0');
    expect(s.fixed.rung.id).toBe('r0');
    expect(values(totalOf(s, 'water'))[2]).toBeLessThan(0);
  });
  it('every figure carries a working that gives it', () => {
    const s = season(seasonDocument([SMALL, LARGE], { label: {} }));
    expect(s.totals.length).toBe(5);
    expect(faultsOf(s.totals)).toEqual([]);
  });
});

describe('the label', () => {
  it('kept per hectare, product is the same either way', () => {
    const s = season(seasonDocument([SMALL, LARGE], { label: {} }));
    expect(values(totalOf(s, 'dose-kg'))).toEqual([4, 4, 0, 0]);
    expect(values(totalOf(s, 'product-kg'))[0]).toBeCloseTo(12, 9);
    expect(s.rungs.some((r) => r.doses.some((d) => d.fixedAboveLabel))).toBe(false);
  });
  it('may follow the canopy down: adapted is less, and fixed is still no more than the label’s dose', () => {
    const s = season(seasonDocument([SMALL, LARGE], { label: { adaptation: 'downward' } }));
    const [fixed, adapted] = values(totalOf(s, 'dose-kg'));
    expect(adapted).toBeLessThan(fixed!);
    expect(s.rungs[0]!.doses[0]!.fixedAboveLabel).toBe(false);
  });
  it.each<[string, NonNullable<Parts['label']>]>([
    ['must follow the canopy', { adaptation: 'required' }],
    ['counts leaf wall', { basis: 'per-leaf-wall', rate: 1 }]
  ])('%s: the large rung’s dose on the small one is above it, and is named so', (_, l) => {
    const s = season(seasonDocument([SMALL, LARGE], { label: l }));
    expect(s.rungs.map((r) => r.doses[0]!.fixedAboveLabel)).toEqual([true, false]);
  });
  it('of a season: above its maximum there is no total to go by, below there is', () => {
    const at = (treatments: number) => season(seasonDocument([{ ...SMALL, treatments }, LARGE], { label: { maxPerSeason: 8 } }));
    // 2 kg/ha each time.
    expect(values(totalOf(at(3), 'dose-kg'))[1]).toBe(8);
    const above = at(4);
    expect(totalOf(above, 'dose-kg').adapted).toMatchObject({ kind: 'refused', code: 'season-above-label', parameters: { planned: 10, most: 8 } });
    expect(totalOf(above, 'product-kg').adapted).toMatchObject({ code: 'season-above-label' });
    expect(valueOf(totalOf(above, 'water').adapted)).toBeGreaterThan(0);
  });
  it('of a season may count uses', () => {
    const s = season(seasonDocument([{ ...SMALL, treatments: 3 }, LARGE], { label: { maxUses: 3 } }));
    expect(s.rules).toMatchObject([{ uses: 4, mostUses: 3, usesPassed: true }]);
    expect(season(seasonDocument([{ ...SMALL, treatments: 2 }, LARGE], { label: { maxUses: 3 } })).rules[0]!.usesPassed).toBe(false);
  });
  it('a product that only one rung’s mix has is counted there alone', () => {
    const d = seasonDocument([SMALL, { ...LARGE, mix: { partners: [{ label: 'label' }, { label: 'other' }] } }], { label: {} });
    const s = season({ ...d, labels: [...d.labels, label({ id: 'other', unit: 'L', rate: 3 })] });
    expect(s.totals.filter((t) => t.label?.id === 'other').map((t) => valueOf(t.adapted))).toEqual([3, 9]);
  });
});

describe('a rung that cannot be worked out', () => {
  const broken: Partial<Rung> = { ...SMALL, name: 'Broken', setting: setting({ nozzles: shut('L1', 'L2', 'L3', 'L4', 'L5', 'L6', 'L7', 'L8', 'R1', 'R2', 'R3', 'R4', 'R5', 'R6', 'R7', 'R8') }) };
  it('is named, and so is every total that it belongs to', () => {
    const s = season(seasonDocument([broken, LARGE]));
    expect(s.refused.map((r) => r.rung.name)).toEqual(['Broken']);
    expect(totalOf(s, 'water').adapted).toMatchObject({ code: 'season-rung-refused', parameters: { rung: 'Broken', reason: 'no-nozzle-open' } });
    expect(totalOf(s, 'water').saving).toMatchObject({ code: 'season-rung-refused' });
    expect(valueOf(totalOf(s, 'water').fixed)).toBeGreaterThan(0);
  });
  it('counts in nothing where it is not treated', () => {
    const s = season(seasonDocument([{ ...broken, treatments: 0 }, LARGE]));
    expect(s.refused).toEqual([]);
    expect(valueOf(totalOf(s, 'water').adapted)).toBeGreaterThan(0);
  });
  it('as the fixed one it is the one that is named', () => {
    const s = season(seasonDocument([broken, LARGE]), 'r0');
    expect(totalOf(s, 'water').fixed).toMatchObject({ parameters: { rung: 'Broken' } });
  });
  it('without an area the figures per hectare stand', () => {
    const s = season(seasonDocument([SMALL, LARGE], { block: { areaHa: undefined as unknown as number } }));
    expect(valueOf(totalOf(s, 'water').adapted)).toBeGreaterThan(0);
    expect(totalOf(s, 'mix').adapted).toMatchObject({ code: 'season-rung-refused', parameters: { reason: 'no-area' } });
  });
  it('a block that is not there is refused', () => expect(seasonOf(document(), 'none')).toMatchObject({ code: 'unknown-block' }));
});

describe('from rung to rung', () => {
  it('rungs alike have no differences', () => {
    const s = season(seasonDocument([LARGE, LARGE, LARGE]));
    expect(s.changes.map((c) => [c.lines.length, c.opened.length, c.shut.length])).toEqual([[0, 0, 0], [0, 0, 0]]);
    expect(values(totalOf(s, 'water')).slice(2)).toEqual([0, 0]);
  });
  it('what opens and what is shut is named', () => {
    const s = season(seasonDocument([{ ...LARGE, setting: setting({ nozzles: shut('L1', 'R1', 'L8', 'R8') }) }, { ...LARGE, setting: setting({ nozzles: shut('L8', 'R7') }) }]));
    expect(s.changes[0]).toMatchObject({ opened: ['L1', 'R1', 'R8'], shut: ['R7'] });
  });
  it('nozzles stand as on the machine, left and right as one where they are alike all season', () => {
    const s = season(seasonDocument([{ ...LARGE, setting: setting({ nozzles: shut('L8', 'R8') }) }, { ...LARGE, setting: setting({ nozzles: shut('L3') }) }]));
    expect(s.nozzles.map((r) => r.ids.join())).toEqual(['L8,R8', 'L7,R7', 'L6,R6', 'L5,R5', 'L4,R4', 'L3', 'R3', 'L2,R2', 'L1,R1']);
    expect(s.nozzles[0]!.at.map((c) => c.open)).toEqual([false, true]);
  });
});

it.each(['lower-bench', 'cherry-wall', 'citrus-globes'])('%s: the season of every block is whole', (name) => {
  const d = JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')) as Document;
  for (const block of d.blocks) {
    const s = seasonOf(d, block.id) as Season;
    expect(s.refused).toEqual([]);
    expect(faultsOf(s.totals)).toEqual([]);
    expect(s.totals.every((t) => valueOf(t.fixed) !== undefined && valueOf(t.adapted) !== undefined)).toBe(true);
  }
});

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { LaserCanopy } from '#core/canopy/laser/types.ts';
import type { Canopy } from '#core/canopy/types.ts';
import { balance } from '#core/spray/balance.ts';
import { sprayCase } from '#core/spray/case.ts';
import { transport } from '#core/spray/transport.ts';
import { FATES, type SprayBalance } from '#core/spray/types.ts';
import { rowtailor, type Ended } from '../support/command.ts';
import { document, result, type Parts } from '../support/sample.ts';
import { DATA } from './stations.ts';

const FRAME = fileURLToPath(new URL('lidar-fuji-frame-every-4th.csv', DATA));
const laser = async (...more: string[]): Promise<LaserCanopy & { refusedLines: number }> => JSON.parse((await rowtailor(['laser', FRAME, '--json', ...more])).out);

let whole: Ended;
let l: LaserCanopy;
let scratch = '';
beforeAll(async () => {
  scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
  whole = await rowtailor(['laser', FRAME, '--json']);
  l = JSON.parse(whole.out);
});
afterAll(() => rm(scratch, { recursive: true }));

describe('one frame of a laser scanner gives a canopy', () => {
  it('without a complaint, each point used or left out for a reason', () => {
    expect([whole.code, whole.err]).toEqual([0, '']);
    expect(l).toMatchObject({ format: 'rowtailor-laser', total: 4968, used: 2811, leftOut: { platform: 116, ground: 1773, 'other-side': 0, beyond: 174, 'below-skirt': 78, 'above-top': 16 } });
  });
  // By numpy, from docs/methods/laser.md and the same points.
  it('by the rules as they are written', () => {
    expect(l.rowSpacingM).toBeCloseTo(3.1375, 9);
    expect(l.middleM).toBeCloseTo(-0.007675, 9);
    expect(l.canopy).toMatchObject({ heightM: 3.2, skirtM: 0.55, widthM: 1.15 });
    const widths = [1.0969, 1.0885, 0.8925, 0.9198, 0.573, 0.8996, 0.9299, 0.7927, 1.1517, 0.662, 1.0518];
    const densities = [1.057, 1.1802, 1.0023, 1.311, 1.8734, 1.2091, 1.1198, 0.7628, 0.7953, 0.8108, 0.2415];
    expect(l.bands.map((b) => b.points)).toEqual([324, 359, 250, 337, 300, 304, 291, 169, 256, 150, 71]);
    l.bands.forEach((b, k) => {
      expect(b.widthM).toBeCloseTo(widths[k]!, 4);
      expect(b.relativeDensity).toBeCloseTo(densities[k]!, 4);
    });
  });
  it('with the spacing that the rows further off show: a third of the distance between them, 3.1 m', () => expect(Math.abs(l.rowSpacingM - 3.1)).toBeLessThan(0.1));
  it('whose metre of row says nothing of gaps', () => {
    expect(l.gaps!.filledFraction).toBeNull();
    expect(l.canopy).not.toHaveProperty('filledFraction');
  });
  it('alike from either side, to what two rows differ', async () => {
    const [left, right] = [await laser('--side', 'left'), await laser('--side', 'right')];
    const section = ({ bands }: LaserCanopy): number => bands.reduce((a, b) => a + (b.widthM ?? 0) * (b.toM - b.fromM), 0);
    expect(left.leftOut['other-side'] + left.used + left.leftOut['below-skirt'] + left.leftOut['above-top']).toBe(1226 + 1679);
    expect(Math.abs(section(left) / section(right) - 1)).toBeLessThan(0.25);
  });
});

describe('the canopy stands in a document', () => {
  const block = { rowSpacingM: 3.1 };
  const advice = async (canopy: Canopy) => {
    const path = join(scratch, 'frame.json');
    const { canopy: _, ...rung } = document({ block }).blocks[0]!.rungs[0]!;
    await writeFile(path, JSON.stringify(document({ block: { ...block, rungs: [{ ...rung, canopy }] } })));
    return rowtailor(['advise', path, '--json']);
  };
  it('as it is printed, and advice is given on it', async () => {
    const text = (await rowtailor(['laser', FRAME])).out;
    const printed = JSON.parse(`{${text.slice(text.indexOf('"canopy"'))}}`).canopy as Canopy;
    expect(printed).toEqual(l.canopy);
    const { code, out, err } = await advice(printed);
    expect([code, err]).toEqual([0, '']);
    const { canopy, sprayer } = JSON.parse(out).results[0];
    const value = (symbol: string): number => canopy.figures[symbol].value;
    // A slender apple row: volumes of 5000–15 000 m³/ha and sections of 0.5–0.9 of their box are what such orchards have.
    expect(value('TRVs')).toBeGreaterThan(5000);
    expect(value('TRVc')).toBeLessThan(15_000);
    expect(value('s')).toBeGreaterThan(0.5);
    expect(value('s')).toBeLessThan(0.9);
    // The steepest nozzles of an arc that reaches 75° aim over a row of 3.2 m; those at axis height aim into it.
    expect(sprayer.nozzles['R8'].shares.overTop.value).toBeGreaterThan(0.9);
    expect(sprayer.nozzles['R4'].shares.inLeaf.value).toBeGreaterThan(0.9);
  });
});

describe('the spray model runs on it', () => {
  const run = (parts: Parts = {}, canopy: Partial<Canopy> = {}): SprayBalance => {
    const whole = { ...parts, block: { rowSpacingM: 3.1 }, canopy: { ...l.canopy, ...canopy } };
    const c = sprayCase(document(whole), result(whole));
    if ('kind' in c) throw new Error(c.code);
    return balance(c, transport(c));
  };
  it('and accounts for everything that is sprayed', () => {
    const b = run();
    expect(FATES.reduce((s, f) => s + b.shares[f], 0)).toBeCloseTo(1, 9);
    for (const f of FATES) expect(b.shares[f]).toBeGreaterThanOrEqual(0);
  });
  // Published balances of apple in leaf: 22–46 % on the trees, bare 6–22 % (air-blast); the model's own band is ±15 points.
  it('in the order that balances have: in leaf a quarter to two thirds on the trees, bare far less, thinner leaf in between', () => {
    const full = run();
    const thin = run({}, { ladM2PerM3: 1 });
    const bare = run({}, { ladM2PerM3: 0 });
    expect(full.onTrees).toBeGreaterThan(0.2);
    expect(full.onTrees).toBeLessThan(0.67);
    expect(full.onTrees).toBeGreaterThan(thin.onTrees);
    expect(thin.onTrees).toBeGreaterThan(bare.onTrees);
    expect(bare.onTrees).toBeLessThan(0.22);
    expect(bare.lost).toBeGreaterThan(full.lost);
  });
  it('with leaf where the points are: the thin top catches less per height than if leaf stood alike, the dense middle more', () => {
    const even = run({}, { profile: l.canopy.profile!.map(({ heightM, widthM }) => ({ heightM, widthM })) });
    const asSeen = run();
    const between = (b: SprayBalance, from: number, to: number) => b.heights.filter((h) => h.fromM >= from && h.toM <= to).reduce((s, h) => s + h.share, 0);
    expect(between(asSeen, 2.9, 3.3)).toBeLessThan(0.6 * between(even, 2.9, 3.3));
    expect(between(asSeen, 1.25, 1.9)).toBeGreaterThan(between(even, 1.25, 1.9));
  });
  it('and shutting the nozzles that aim over the top puts a greater share on the trees', () =>
    expect(run({ setting: { nozzles: ['L7', 'L8', 'R7', 'R8'].map((position) => ({ position, open: false })) } }).onTrees).toBeGreaterThan(run().onTrees));
});

import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { rowtailor } from '../support/command.ts';
import { document } from '../support/sample.ts';
import { readRows } from './stations.ts';

const BAND = 0.25;
const SKIRT = 0.5;
/** Assumed: a third of the 9.3 m between the rows seen furthest to either side. */
const ROW_SPACING = 3.1;

/** Linear between order statistics, as most statistics programs do by default. */
function percentile(x: readonly number[], p: number): number {
  const s = x.toSorted((a, b) => a - b);
  const at = p * (s.length - 1);
  const i = Math.floor(at);
  return s[i]! + (at - i) * ((s[i + 1] ?? s[i]!) - s[i]!);
}

it('one frame of a laser scanner gives a profile, and advice on it', async () => {
  const points = readRows('lidar-fuji-frame-every-4th.csv').map((r) => ({ x: Number(r['lateral_m']), z: Number(r['height_m']) }));
  expect(points).toHaveLength(4968);
  const seen = points.filter(({ x, z }) => !(Math.abs(x) < 0.75 && z > 0.2 && z < 2));
  expect(seen).toHaveLength(4852);
  // The row to the right holds more points higher up. Its far side is seen through the leaves, so the width of a band is the span that holds nine
  // tenths of its points; the distance from a row line would need the trunks, which are seen from one side only.
  const row = seen.filter(({ x }) => x > 0.75 && x < 3);
  const profile: { heightM: number; widthM: number }[] = [];
  for (let z = SKIRT; ; z += BAND) {
    const band = row.filter((p) => p.z >= z && p.z < z + BAND).map((p) => p.x);
    if (band.length < 30) break;
    profile.push({ heightM: z + BAND / 2, widthM: percentile(band, 0.95) - percentile(band, 0.05) });
  }
  const top = profile.at(-1)!.heightM + BAND / 2;
  const widest = Math.max(...profile.map((p) => p.widthM));
  expect([top, profile.length]).toEqual([3.25, 11]);

  const made = document({ block: { rowSpacingM: ROW_SPACING }, canopy: { heightM: top, skirtM: SKIRT, widthM: widest, profile } });
  const scratch = await mkdtemp(join(tmpdir(), 'rowtailor-'));
  const path = join(scratch, 'frame.json');
  await writeFile(path, JSON.stringify(made));
  const { code, out, err } = await rowtailor(['advise', path, '--json']);
  await rm(scratch, { recursive: true });
  expect([code, err]).toEqual([0, '']);
  const { canopy, sprayer } = JSON.parse(out).results[0];
  const value = (symbol: string): number => canopy.figures[symbol].value;

  // By numpy from the same points: greatest width 1.28365 m, section 2.39391 m², 10⁴·A/3.1.
  expect(value('W')).toBeCloseTo(1.28365, 5);
  expect(value('A')).toBeCloseTo(2.3939093750000002, 9);
  expect(value('s')).toBeCloseTo(0.6781540918474667, 9);
  expect(value('TRVs')).toBeCloseTo(7722.288306451614, 5);
  expect(value('TRVc')).toBeCloseTo(11387.217741935476, 5);
  // A slender apple row: volumes of 5000–15 000 m³/ha and sections of 0.5–0.9 of their box are what such orchards have.
  expect(value('TRVs')).toBeGreaterThan(5000);
  expect(value('TRVc')).toBeLessThan(15_000);
  expect(value('s')).toBeGreaterThan(0.5);
  expect(value('s')).toBeLessThan(0.9);

  // The steepest nozzles of an arc that reaches 75° aim over a row of 3.25 m, whatever its outline; those at axis height aim into it.
  expect(sprayer.nozzles['R8'].shares.overTop.value).toBeGreaterThan(0.9);
  expect(sprayer.nozzles['R4'].shares.inLeaf.value).toBeGreaterThan(0.9);
});

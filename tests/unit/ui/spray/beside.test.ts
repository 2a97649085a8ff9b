import { expect, it } from 'vitest';
import { FATES, type SprayBalance, type SprayBand } from '#core/spray/types.ts';
import { besideLines } from '#ui/spray/beside.ts';

const of = (near: number, more: Partial<SprayBalance> = {}): SprayBalance => ({
  shares: { near, far: 0.1, rows: 0.05, 'ground-in': 0.6 - near, 'ground-out': 0.05, over: 0.1, through: 0.06, dried: 0.04 },
  onTrees: near + 0.15,
  lost: 0.25,
  perNozzle: [],
  heights: [],
  depositUlPerCm2: 1,
  cv: 0.3,
  faces: [],
  bare: false,
  ...more
});
const band = { shares: Object.fromEntries(FATES.map((f) => [f, [0, 1]])), onTrees: [0.3, 0.6], lost: [0.15, 0.35], cv: [0.2, 0.4], depositUlPerCm2: [0.7, 1.3], runs: [] } as unknown as SprayBand;
const lines = (a: SprayBalance, b: SprayBalance, own: SprayBand | null, litres: readonly [number, number] = [400, 400]) =>
  new Map(besideLines({ balance: a, band: own, volumeLPerHa: litres[0] }, { balance: b, volumeLPerHa: litres[1] }).map((l) => [l.id, l]));

it('14 points more on the trees are no clear difference, 16 are, while only the model’s error is known', () => {
  expect(lines(of(0.3), of(0.16), null).get('on-trees')).toMatchObject({ by: expect.closeTo(0.14, 9), clear: false });
  expect(lines(of(0.3), of(0.14), null).get('on-trees')).toMatchObject({ by: expect.closeTo(0.16, 9), clear: true });
});
it('with the band, what lies in it is not told apart', () => {
  const l = lines(of(0.3), of(0.13), band);
  expect(l.get('on-trees')!.clear).toBe(true);
  expect(l.get('near')!.clear).toBe(false);
  expect(lines(of(0.3), of(0.3, { cv: 0.5 }), band).get('cv')!.clear).toBe(true);
  expect(lines(of(0.3), of(0.3, { cv: 0.39 }), band).get('cv')!.clear).toBe(false);
});
it('litres on the trees follow both share and volume; the volume itself is counted', () => {
  const l = lines(of(0.3), of(0.3), band, [400, 200]);
  expect(l.get('volume')).toMatchObject({ by: 200, clear: true });
  expect(l.get('trees-area')).toMatchObject({ now: expect.closeTo(180, 9), other: expect.closeTo(90, 9), clear: true });
  // Twice the water and the same shares: the share is not told apart.
  expect(l.get('on-trees')!.clear).toBe(false);
});
it('a bare row without figures for deposit leaves those lines out', () => {
  const ids = [...lines(of(0.3, { cv: null, depositUlPerCm2: null }), of(0.3), band).keys()];
  expect(ids).not.toContain('cv');
  expect(ids).not.toContain('deposit');
});

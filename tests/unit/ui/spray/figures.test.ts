import { describe, expect, it } from 'vitest';
import type { FaceSpeed, HeightCell, SprayBalance, SprayBand } from '#core/spray/types.ts';
import { airAt, bandOf, cellAt, difference, evenness, heightBands, heightsOver, lostBand, nozzleLine, orderOf, treesBand } from '#ui/spray/figures.ts';

const cell = (fromM: number, areaIndex: number, share: number, depositUlPerCm2: number | null): HeightCell => ({ fromM, toM: fromM + 0.5, areaIndex, share, byDepth: [], depositUlPerCm2 });

describe('heights for the eye', () => {
  it('cells are joined from below, the top first; the deposit is the mean over leaf, not over cells', () => {
    const bands = heightBands([cell(0.5, 0.1, 0.02, 1), cell(1, 0.3, 0.1, 2), cell(1.5, 0, 0, null), cell(2, 0, 0, null)], 2);
    expect(bands.map((b) => [b.fromM, b.toM])).toEqual([[1.5, 2.5], [0.5, 1.5]]);
    expect(bands[1]!.areaIndex).toBeCloseTo(0.4, 12);
    expect(bands[1]!.share).toBeCloseTo(0.12, 12);
    // 0.1 of leaf with 1 and 0.3 of it with 2.
    expect(bands[1]!.depositUlPerCm2).toBeCloseTo(1.75, 12);
    expect(bands[0]!.depositUlPerCm2).toBeNull();
  });
  it('a height finds its cell, one beyond the crown the nearest', () => {
    const cells = [cell(0.5, 1, 1, 1), cell(1, 1, 1, 2)];
    expect([0.2, 0.7, 1.2, 3].map((h) => cellAt(cells, h)?.fromM)).toEqual([0.5, 0.5, 1, 1]);
    expect(cellAt([], 1)).toBeUndefined();
  });
  it('usual heights are rounded to a decimetre and never told twice', () => {
    expect(heightsOver(0.5, 3, [1, 0.75, 0.5, 0.25])).toEqual([3, 2.4, 1.8, 1.1]);
    expect(heightsOver(1, 1.1, [1, 0.75, 0.5])).toEqual([1.1]);
  });
});

describe('air at a height', () => {
  const faces: readonly FaceSpeed[] = [
    { side: 'left', heightM: 2, inMPerS: 20, outMPerS: 8 },
    { side: 'left', heightM: 1, inMPerS: 10, outMPerS: 4 },
    { side: 'left', heightM: 3, inMPerS: 6, outMPerS: null },
    { side: 'right', heightM: 1, inMPerS: 1, outMPerS: null }
  ];
  it('lies between the paths below and above, in whatever order they come', () => {
    expect(airAt(faces, 'left', 1.5)).toMatchObject({ inMPerS: 15, outMPerS: 6 });
    expect(airAt(faces, 'left', 2)).toMatchObject({ inMPerS: 20, outMPerS: 8 });
  });
  it('beyond the last path it is that of the last one, but not far beyond', () => {
    expect(airAt(faces, 'right', 0.6)?.inMPerS).toBe(1);
    expect(airAt(faces, 'right', 2)).toBeNull();
    expect(airAt([], 'left', 1)).toBeNull();
  });
  it('where one neighbour stops within the row the nearer one decides', () => {
    expect(airAt(faces, 'left', 2.4)?.outMPerS).toBe(8);
    expect(airAt(faces, 'left', 2.6)?.outMPerS).toBeNull();
  });
});

describe('bands and differences', () => {
  const b = { onTrees: 0.5, lost: 0.05 } as SprayBalance;
  const band = { onTrees: [0.3, 0.7], lost: [0, 0.2] } as unknown as SprayBand;
  it('before the band is known it is the model’s own error, within nothing and all', () => {
    expect(treesBand(b, null)).toEqual([0.35, 0.65]);
    const [least, most] = lostBand(b, null);
    expect([least, most]).toEqual([0, expect.closeTo(0.15, 12)]);
    expect(treesBand(b, band)).toEqual([0.3, 0.7]);
  });
  it('a band that no longer holds the figure is another setting’s', () => {
    expect(bandOf(b, band)).toBe(band);
    expect(bandOf({ ...b, onTrees: 0.71 }, band)).toBeNull();
    expect(bandOf({ ...b, lost: 0.3 }, band)).toBeNull();
    expect(bandOf(b, null)).toBeNull();
  });
  it('within the band there is no clear difference, and none without a band', () => {
    expect(difference(0.5, 0.41, [0.4, 0.6])).toEqual({ by: expect.closeTo(0.09, 12), clear: false });
    expect(difference(0.5, 0.39, [0.4, 0.6]).clear).toBe(true);
    expect(difference(0.5, 0.1, null).clear).toBe(false);
  });
  it('the word for evenness turns at 20, 40 and 60 %', () => {
    expect([0.1, 0.2, 0.21, 0.4, 0.41, 0.6, 0.61].map(evenness)).toEqual(['even', 'even', 'fairly', 'fairly', 'uneven', 'uneven', 'very']);
  });
});

it('a nozzle’s line adds up to all of its spray', () => {
  const line = nozzleLine({ near: 0.3, far: 0.1, rows: 0.05, 'ground-in': 0.2, 'ground-out': 0.05, over: 0.2, through: 0.06, dried: 0.04 });
  expect(line.trees).toBeCloseTo(0.45, 12);
  expect(Object.values(line).reduce((a, c) => a + c, 0)).toBeCloseTo(1, 12);
});

describe('the order of what was seen', () => {
  it('counts pairs that agree, that do not, and that the model cannot tell apart', () => {
    expect(orderOf([{ seen: 0, predicted: 1 }, { seen: 2, predicted: 4 }, { seen: 3, predicted: 4.4 }])).toEqual({ agree: 2, against: 0, close: 1 });
    expect(orderOf([{ seen: 3, predicted: 1 }, { seen: 1, predicted: 4 }])).toEqual({ agree: 0, against: 1, close: 0 });
  });
  it('two alike say nothing, nor does one alone', () => {
    expect(orderOf([{ seen: 2, predicted: 1 }, { seen: 2, predicted: 9 }])).toEqual({ agree: 0, against: 0, close: 0 });
    expect(orderOf([{ seen: 2, predicted: 1 }])).toEqual({ agree: 0, against: 0, close: 0 });
  });
});

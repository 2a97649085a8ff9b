import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { FATES, type SprayBalance, type SprayBand } from '#core/spray/types.ts';
import { cell, csvLines, sprayCsv, type CsvOf } from '#ui/spray/csv.ts';

const shares = { near: 0.3, far: 0.1, rows: 0.1, 'ground-in': 0.2, 'ground-out': 0.05, over: 0.15, through: 0.06, dried: 0.04 };
const balance: SprayBalance = {
  shares,
  onTrees: 0.5,
  lost: 0.3,
  perNozzle: [{ position: '=cmd()', shares }],
  heights: [{ fromM: 0.5, toM: 1, areaIndex: 0.4, share: 0.2, byDepth: [0.1, 0.05, 0.03, 0.02], depositUlPerCm2: 1.25 }, { fromM: 1, toM: 1.5, areaIndex: 0, share: 0, byDepth: [0, 0, 0, 0], depositUlPerCm2: null }],
  depositUlPerCm2: 1.25,
  cv: 0.35,
  faces: [{ side: 'left', heightM: 1, inMPerS: 12, outMPerS: null }],
  bare: false
};
const band = { shares: Object.fromEntries(FATES.map((f) => [f, [0, 0.4]])), onTrees: [0.35, 0.65], lost: [0.2, 0.4], cv: [0.2, 0.5], depositUlPerCm2: [0.9, 1.6], runs: [] } as unknown as SprayBand;
const of = (more: Partial<CsvOf> = {}): CsvOf => ({ about: [['block', 'Lower "bench", east'], ['rung', '+SUM(A1)']], balance, band, volumeLPerHa: 400, system: 'metric', ...more });

describe('a cell', () => {
  it.each(['=1+1', '+49 1', '-x', '@SUM(A1)', ' =1', '\t=1', '＝1'])('%j does not run in a spreadsheet', (text) => {
    expect(Papa.parse<string[]>(cell(text)).data[0]![0]).toMatch(/^\s*'/);
  });
  it('numbers stay numbers, negative ones as well, and what is none stays empty', () => {
    expect([cell(-1.5), cell(0.1 + 0.2), cell(0), cell(Number.NaN), cell(null)]).toEqual(['-1.5', '0.3', '0', '', '']);
  });
  it('commas, quotes and line breaks come back as they were', () => {
    for (const text of ['a,b', 'say "so"', 'two\nlines', 'semi;colon']) expect(Papa.parse<string[]>(cell(text)).data).toEqual([[text]]);
  });
});

describe('the table', () => {
  const read = (text: string) => Papa.parse<Record<string, string>>(text.replace(/^\uFEFF/, ''), { header: true, skipEmptyLines: true });
  it('is read by another program, every line as wide as the head', () => {
    const { data, errors, meta } = read(sprayCsv(of()));
    expect(errors).toEqual([]);
    expect(meta.fields).toEqual(['table', 'item', 'figure', 'value', 'band from', 'band to', 'unit']);
    expect(data.length).toBe(csvLines(of()).length);
    expect(data.find((l) => l['item'] === 'rung')?.['value']).toBe("'+SUM(A1)");
    expect(data.some((l) => l['item'] === "'=cmd()")).toBe(true);
    expect(data.some((l) => /not validated/.test(l['value'] ?? ''))).toBe(true);
  });
  it('shares of all places add up to 100, and litres to what is sprayed', () => {
    const ends = csvLines(of()).filter((l) => l.table === 'Where it ends');
    const places = ends.filter((l) => !['on the trees', 'lost from the block', 'all that is sprayed'].includes(l.item));
    const sum = (figure: string) => places.filter((l) => l.figure === figure).reduce((s, l) => s + Number(l.value), 0);
    expect(sum('share')).toBeCloseTo(100, 9);
    expect(sum('per area')).toBeCloseTo(400, 9);
    const trees = ends.find((l) => l.item === 'on the trees' && l.figure === 'per area')!;
    expect([trees.value, ...trees.range!]).toEqual([200, expect.closeTo(140, 9), expect.closeTo(260, 9)]);
  });
  it('US units: gallons an acre and feet', () => {
    const lines = csvLines(of({ system: 'us' }));
    // 400 L/ha are 42.76 gal/acre.
    expect(Number(lines.find((l) => l.item === 'all that is sprayed' && l.unit === 'gal/ac')?.value)).toBeCloseTo(42.763, 2);
    expect(lines.some((l) => l.item.endsWith('ft'))).toBe(true);
    expect(lines.some((l) => l.unit === 'L/ha' || l.unit === 'm/s')).toBe(false);
  });
  it('another setting stands in lines of its own, without a band', () => {
    const lines = csvLines(of({ other: { name: 'Spring', balance: { ...balance, onTrees: 0.2 }, volumeLPerHa: 300 } })).filter((l) => l.table.endsWith('Spring'));
    expect(lines.find((l) => l.item === 'on the trees' && l.figure === 'share')?.value).toBeCloseTo(20, 9);
    expect(lines.every((l) => !l.range)).toBe(true);
  });
});

import { display, shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import { FATES, type FaceSpeed, type Range, type SprayBalance, type SprayBand } from '#core/spray/types.ts';
import { sprayScreen as words } from '#words/en/spray/screen.ts';
import { lostBand, nozzleLine, treesBand } from './figures.ts';

/** One figure of one thing: long tables are read by every program, and gain lines without changing shape. */
export interface CsvLine {
  readonly table: string;
  readonly item: string;
  readonly figure: string;
  readonly value: number | string | null;
  readonly range?: Range | null;
  readonly unit: string;
}

/** The start of a cell for any list separator, then apostrophes, then a sign that begins a formula; the last four are the wide forms. */
const FORMULA = /(^\s*|[;,"\n])('*)(?=[=+\-@＝＋－＠])/g;

/**
 * A cell of a table that a spreadsheet opens: text that it would run as a formula gets an apostrophe before it, as the table of records
 * has it; numbers are written as numbers, empty where there is none.
 */
export function cell(value: number | string | null | undefined): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return Number.isFinite(value) ? String(Number(value.toPrecision(6))) : '';
  const text = value.replace(FORMULA, "$1'$2");
  return /[",;\r\n\t]/.test(text) || text !== text.trim() ? `"${text.replaceAll('"', '""')}"` : text;
}

export interface CsvOf {
  /** Block, rung and whatever else says what was computed; free text of the user's. */
  readonly about: readonly (readonly [item: string, text: string])[];
  readonly balance: SprayBalance;
  readonly band: SprayBand | null;
  readonly volumeLPerHa: number;
  readonly system: UnitSystem;
  /** Another setting beside it. */
  readonly other?: { readonly name: string; readonly balance: SprayBalance; readonly volumeLPerHa: number };
}

const PERCENT = '%';

/** Every table of the panel, as lines. */
export function csvLines({ about, balance, band, volumeLPerHa, system, other }: CsvOf): readonly CsvLine[] {
  const t = words.csvTables;
  const of = (value: number | null, unit: Unit) => (value === null ? null : shown(value, unit, system));
  const symbol = (unit: Unit) => display(unit, system).symbol;
  const percent = (share: number) => share * 100;
  const percents = (r: Range | null | undefined): Range | null => (r ? [percent(r[0]), percent(r[1])] : null);
  const amounts = (r: Range | null | undefined, unit: Unit): Range | null => (r ? [shown(r[0], unit, system), shown(r[1], unit, system)] : null);
  const metres = (from: number, to: number) => `${cell(of(from, 'm'))} to ${cell(of(to, 'm'))} ${symbol('m')}`;

  const ends = (table: string, b: SprayBalance, volume: number, own: SprayBand | null | undefined): CsvLine[] => {
    const line = (item: string, share: number, range: Range | null): CsvLine[] => [
      { table, item, figure: words.share, value: percent(share), range: percents(range), unit: PERCENT },
      { table, item, figure: t.perArea, value: of(share * volume, 'L/ha'), range: range ? amounts([range[0] * volume, range[1] * volume], 'L/ha') : null, unit: symbol('L/ha') }
    ];
    const known = own !== undefined;
    return [
      ...FATES.flatMap((f) => line(words.fates[f], b.shares[f], own?.shares[f] ?? null)),
      ...line(words.allTrees, b.onTrees, known ? treesBand(b, own) : null),
      ...line(words.allLost, b.lost, known ? lostBand(b, own) : null),
      { table, item: words.sum, figure: t.perArea, value: of(volume, 'L/ha'), unit: symbol('L/ha') },
      { table, item: words.sum, figure: words.even, value: b.cv === null ? null : percent(b.cv), range: percents(own?.cv), unit: PERCENT },
      { table, item: words.sum, figure: words.deposit[b.bare ? 'wood' : 'leaf'], value: of(b.depositUlPerCm2, 'uL/cm2'), range: amounts(own?.depositUlPerCm2, 'uL/cm2'), unit: symbol('uL/cm2') }
    ];
  };
  const face = (f: FaceSpeed): CsvLine[] => {
    const item = `${words[f.side]}, ${cell(of(f.heightM, 'm'))} ${symbol('m')}`;
    return [
      { table: words.air, item, figure: words.airColumns.meets, value: of(f.inMPerS, 'm/s'), unit: symbol('m/s') },
      { table: words.air, item, figure: words.airColumns.leaves, value: of(f.outMPerS, 'm/s'), unit: symbol('m/s') }
    ];
  };
  return [
    ...about.map(([item, value]): CsvLine => ({ table: t.about, item, figure: '', value, unit: '' })),
    { table: t.about, item: t.note, figure: '', value: words.csvNote, unit: '' },
    ...ends(words.ends, balance, volumeLPerHa, band),
    ...balance.perNozzle.flatMap(({ position, shares }) => Object.entries(nozzleLine(shares)).map(([c, share]): CsvLine => ({ table: words.byNozzle, item: position, figure: words.nozzleColumns[c as keyof typeof words.nozzleColumns], value: percent(share), unit: PERCENT }))),
    ...balance.heights.flatMap((h): CsvLine[] => {
      const item = metres(h.fromM, h.toM);
      return [
        { table: words.byHeight, item, figure: t.areaIndex, value: h.areaIndex, unit: 'm²/m²' },
        { table: words.byHeight, item, figure: words.share, value: percent(h.share), unit: PERCENT },
        { table: words.byHeight, item, figure: words.heightColumns.deposit, value: of(h.depositUlPerCm2, 'uL/cm2'), unit: symbol('uL/cm2') }
      ];
    }),
    ...balance.faces.flatMap(face),
    ...(other ? ends(`${words.beside}: ${other.name}`, other.balance, other.volumeLPerHa, undefined) : [])
  ];
}

/** The table as text, comma and CRLF as RFC 4180 has them; the mark at its start tells a spreadsheet that it is UTF-8. */
export const sprayCsv = (of: CsvOf): string =>
  '\uFEFF' +
  [Object.values(words.csvHead), ...csvLines(of).map((l) => [l.table, l.item, l.figure, l.value, l.range?.[0], l.range?.[1], l.unit])].map((cells) => cells.map(cell).join(',')).join('\r\n') +
  '\r\n';

import type { Interval } from '#core/canopy/uncertainty.ts';
import { pairs, turned, type Pair } from '#core/dose/compare/differences.ts';
import type { Drawn, DrawWish } from '#core/dose/compare/draws.ts';
import type { StrategyRow } from '#core/dose/compare/rows.ts';
import type { Tornado } from '#core/dose/compare/tornado.ts';
import type { Quantities } from '#core/dose/compare/vary.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { actWord, assumptionWords, DASH, fieldWord, formatAmount, formatNumber, formatRange, formatShare, prettyExpression, refusalSentence } from '#words/index.ts';
import { strategiesCli as words } from '#words/en/strategies/cli.ts';
import { reasonSentence, rowName } from '#words/strategies/reasons.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';
import { title } from './report.ts';

/** Everything that was asked of one rung. */
export interface Compared {
  readonly result: Result;
  readonly rows: readonly StrategyRow[];
  readonly draws: { readonly wish: DrawWish; readonly drawn: readonly Drawn[] } | null;
  readonly tornado: { readonly row: StrategyRow; readonly quantity: Quantities; readonly of: Tornado } | null;
}

/** One rung of one block as text for a terminal. */
export function strategiesReport(document: Document, { result, rows, draws, tornado }: Compared, system: UnitSystem): string {
  const chosen = rows.find((r) => r.id === result.block.strategy)!;
  const own = rows.filter((r) => r.own);
  const lines = [
    ...title(result, system),
    ...section(words.headings.table, [...table(rows, system), ...paragraph(words.indexNote), ...paragraph(words.intervalNote)]),
    ...section(words.headings.own, own.length === 0 ? [] : [...own.flatMap((row) => ownLines(row, system)), words.ownNote]),
    ...section(words.headings.reasons(rowName(chosen)), reasons(pairs(document, result, rows), chosen, rows, system)),
    ...(draws ? section(words.headings.draws(formatNumber(draws.wish.draws, 0), draws.wish.seed, draws.wish.assumptions === true), drawn(draws.drawn, rows, system)) : []),
    ...(tornado ? section(words.headings.tornado(rowName(tornado.row), words.quantities[tornado.quantity]), bars(tornado, system)) : []),
    '',
    words.closing
  ];
  return lines.join('\n') + '\n';
}

const amount = (a: Answer | null, system: UnitSystem): string => (a === null || isRefused(a) ? DASH : a.unit === '1' ? formatShare(a.value) : formatAmount(a.value, a.unit, system));

const unitOf = (a: Answer | null) => (a && !isRefused(a) ? a.unit : '1');
const ends = (low: number, high: number, unit: ReturnType<typeof unitOf>, system: UnitSystem): string =>
  unit === '1' ? `${formatShare(low).replace(/\u00a0%$/, '')}–${formatShare(high)}` : formatRange(low, high, unit, system);
const interval = (i: Interval | null, a: Answer | null, system: UnitSystem): string => (i ? ends(i.low, i.high, unitOf(a), system) : '');

function table(rows: readonly StrategyRow[], system: UnitSystem): string[] {
  const c = words.columns;
  const withDose = rows.some((r) => r.dose !== null);
  const head = [c.strategy, c.index, c.interval, c.water, c.interval, c.dilute, ...(withDose ? [c.dose, c.interval, c.rules] : [])];
  const body = rows.map((r) => [
    rowName(r),
    amount(r.index, system),
    interval(r.intervals.index, r.index, system),
    amount(r.water, system),
    interval(r.intervals.water, r.water, system),
    amount(r.dilute, system),
    ...(withDose ? [amount(r.dose, system), interval(r.intervals.dose, r.dose, system), r.acts.map(actWord).join(', ')] : [])
  ]);
  return columns([head, ...body], ['left', 'right', 'right', 'right', 'right', 'right', 'right', 'right', 'left']);
}

function ownLines(row: StrategyRow, system: UnitSystem): string[] {
  const { strategy: s } = row;
  const refusals = [row.index, row.water].flatMap((a) => (a && isRefused(a) ? [refusalSentence(a, system)] : []));
  const formulas = [s.index, s.water].flatMap((f) => (f ? [`${f.symbol} = ${prettyExpression(f.expression)}`] : []));
  return [`${rowName(row)}: ${formulas.join('; ')}`, ...refusals.map((r) => INDENT + r)];
}

/** Why each other strategy differs from the block's. */
function reasons(all: readonly Pair[], chosen: StrategyRow, rows: readonly StrategyRow[], system: UnitSystem): string[] {
  return all
    .filter((p) => p.a === chosen.id || p.b === chosen.id)
    .map((p) => (p.b === chosen.id ? p : turned(p)))
    .flatMap((pair) => {
      const other = rows.find((r) => r.id === pair.a)!;
      const ratio = pair.ratio === null ? DASH : formatNumber(pair.ratio, 2);
      const why = pair.reasons.length === 0 ? [words.alike] : pair.reasons.map((r) => reasonSentence(r, other, chosen, system));
      return [`${rowName(other)}, × ${ratio}:`, ...why.flatMap((w) => paragraph(w, INDENT)).map((l) => INDENT + l)];
    });
}

function drawn(all: readonly Drawn[], rows: readonly StrategyRow[], system: UnitSystem): string[] {
  const c = words.drawColumns;
  const body = all.map((d) => {
    const row = rows.find((r) => r.id === d.id)!;
    const unit = unitOf(row[d.quantity]);
    const mean = unit === '1' ? formatShare(d.mean) : formatAmount(d.mean, unit, system);
    return [rowName(row), words.quantities[d.quantity], mean, ends(d.low, d.high, unit, system), d.analytic ? ends(d.analytic.low, d.analytic.high, unit, system) : DASH, d.lost > 0 ? words.lost(d.lost) : ''];
  });
  const redrawn = all[0]?.redrawn ?? 0;
  return [...columns([[c.strategy, c.figure, c.mean, c.drawn, c.analytic, c.note], ...body], ['left', 'left', 'right', 'right', 'right', 'left']), ...(redrawn > 0 ? [words.redrawn(redrawn)] : [])];
}

function bars({ row, quantity, of }: NonNullable<Compared['tornado']>, system: UnitSystem): string[] {
  const unit = unitOf(row[quantity]);
  const c = words.tornadoColumns;
  const base = words.base(unit === '1' ? formatShare(of.base) : formatAmount(of.base, unit, system));
  if (of.bars.length === 0) return [base, words.noBars];
  const body = of.bars.map((b) => [
    b.kind === 'measured' ? fieldWord(b.id) : assumptionWords(b.id).label,
    formatRange(b.from, b.to, b.unit, system),
    ends(b.low, b.high, unit, system),
    words.kinds[b.kind]
  ]);
  return [base, ...columns([[c.input, c.range, c.figure, c.kind], ...body], ['left', 'right', 'right', 'left'])];
}

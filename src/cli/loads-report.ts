import type { Load, LoadProduct, LoadsState, PartnerState } from '#core/mix/state.ts';
import { converted, shown, type UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, valueOf, type Answer } from '#core/working/answer.ts';
import { assumptionsUnder } from '#core/working/under.ts';
import { actWord, assumptionWords, certaintyWord, DASH, findingSentence, formatAmount, formatNumber, formatShare, formatUnit, refusalSentence, severityWord } from '#words/index.ts';
import { formatHours } from '#words/hours.ts';
import { cli } from '#words/en/cli.ts';
import { mixCli as words } from '#words/en/headland/mix-cli.ts';
import { mixText } from '#words/en/headland/mix-text.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** The loads of one rung as text for a terminal. */
export function loadsReport(s: LoadsState, { block, rung, machine }: Result, system: UnitSystem): string {
  const title = `${block.name}: ${rung.name}`;
  return (
    [
      title,
      '='.repeat([...title].length),
      machine.name,
      ...section(words.headings.loads, loads(s, system)),
      ...section(words.headings.each, each(s, system)),
      ...s.partners.flatMap((p) => section(words.headings.product(p.label.name), product(p, system))),
      ...section(words.headings.order, order(s)),
      ...section(words.headings.rows, rows(s, system)),
      ...section(words.headings.work, work(s, system)),
      ...section(words.headings.rinse, rinse(s, system)),
      ...section(cli.headings.findings, s.findings.flatMap((f) => paragraph(`${severityWord(f.severity)}: ${findingSentence(f, system)}`, INDENT))),
      ...section(words.headings.cautions, mixText.cautions.flatMap((c) => paragraph(c, INDENT))),
      ...section(cli.headings.assumptions, assumptions(s, system)),
      '',
      cli.closing
    ].join('\n') + '\n'
  );
}

const amount = (a: Answer, system: UnitSystem): string => (isRefused(a) ? `${DASH} ${refusalSentence(a, system)}` : formatAmount(a.value, a.unit, system));
const known = (a: Answer, system: UnitSystem): string => (isRefused(a) ? DASH : amount(a, system));
const weighed = (value: number, { label }: { readonly label: PartnerState['label'] }, system: UnitSystem): string => formatAmount(value, label.unit === 'kg' ? 'kg' : 'Lprod', system);
const percent = (a: Answer): string => formatShare((valueOf(a) ?? NaN) / 100);

function loads(s: LoadsState, system: UnitSystem): string[] {
  const [first, last] = [s.loads[0], s.loads.at(-1)];
  const n = s.loads.length;
  const uneven = first && last && valueOf(first.mix) !== valueOf(last.mix);
  const count = !first || !last
    ? amount(s.count, system)
    : uneven
      ? words.andLast(String(n - 1), amount(first.mix, system), amount(last.mix, system))
      : words.alike(String(n), amount(first.mix, system));
  return columns([
    [words.area, amount(s.area, system), isRefused(s.area) ? '' : mixText.areaFrom[s.areaFrom]],
    [words.volume, amount(s.volume, system), isRefused(s.volume) ? '' : mixText.volumeFrom[s.volumeFrom]],
    [words.sprayed, known(s.sprayed, system), ''],
    [words.residual, amount(s.residual, system), s.residual.certainty === 'assumed' ? words.unknown : isRefused(s.overOrdered) ? '' : words.beyond(percent(s.overOrdered))],
    [words.prepared, known(s.prepared, system), ''],
    [words.usable, amount(s.usable, system), isRefused(s.areaPerTank) ? '' : words.areaPerTank(amount(s.areaPerTank, system))],
    [words.count, count, '']
  ]);
}

function each(s: LoadsState, system: UnitSystem): string[] {
  if (s.loads.length === 0) return [];
  const c = words.columns;
  const withRows = s.loads[0]!.rows !== null;
  const row = (l: Load): string[] => [
    String(l.number), amount(l.fill, system), amount(l.area, system), ...(withRows ? [formatNumber(l.rows ?? NaN, 1, system)] : []),
    ...l.products.map((p) => weighed(p.total, p, system))
  ];
  const all = [words.all, known(s.prepared, system), known(s.area, system), ...(withRows ? [formatNumber(s.loads.reduce((n, l) => n + (l.rows ?? 0), 0), 1, system)] : []), ...s.partners.map((p) => weighed(p.total, p, system))];
  const table = columns([[c.load, c.fill, c.area, ...(withRows ? [c.rows] : []), ...s.partners.map((p) => p.label.name)], ...s.loads.map(row), all], Array(4 + s.partners.length).fill('right'));
  const extra = s.loads[0]!.products.filter((p) => p.forResidual > 0);
  const holds = s.residual.value > 0 ? words.firstHolds([amount(s.residual, system), ...extra.map((p: LoadProduct) => `${weighed(p.forResidual, p, system)} ${p.label.name}`)].join(', ')) : '';
  return [...table, ...(holds ? paragraph(holds, INDENT) : [])];
}

function product(p: PartnerState, system: UnitSystem): string[] {
  const { label } = p;
  if (isRefused(p.perHa)) return [amount(p.perHa, system)];
  const step = converted('kg', system) ? weighed(p.step, p, system) : `${Number((p.step * 1000).toPrecision(1))} ${label.unit === 'kg' ? 'g' : 'mL'}`;
  return columns([
    [words.dose, amount(p.perHa, system), p.acts.map(actWord).join(', ')],
    [words.strength, known(p.strength, system), ''],
    ...(label.basis === 'per-100-l-dilute' ? [[words.factor, known(p.concentration, system), '']] : []),
    [words.forArea, weighed(p.forArea, p, system), words.step(step)],
    ...(p.forResidual > 0 ? [[words.forResidual, weighed(p.forResidual, p, system), ''], [words.total, weighed(p.total, p, system), '']] : []),
    ...(p.ordered === undefined ? [] : [[words.ordered, weighed(p.ordered, p, system), '']])
  ]);
}

function order(s: LoadsState): string[] {
  if (s.partners.length === 0) return [];
  const several = s.partners.length > 1;
  const lines = s.order.map((step) => {
    switch (step.kind) {
      case 'water':
        return mixText.order.water(formatShare(s.firstWater.value));
      case 'agitate':
        return mixText.order.agitate;
      case 'product':
        return (several ? mixText.order.product : mixText.order.one)(step.label.name, mixText.groups[step.group]);
      case 'fill-up':
        return mixText.order['fill-up'];
    }
  });
  return [...paragraph(mixText.labelFirst, INDENT), ...lines.flatMap((l, i) => paragraph(`${i + 1}  ${l}`, '   ')), ...mixText.orderNotes.flatMap((n) => paragraph(n, INDENT))];
}

function rows({ rows: r }: LoadsState, system: UnitSystem): string[] {
  if (!r) return [];
  return columns([
    [words.passes, String(r.passes.passes), ''],
    [words.way, isRefused(r.way) ? DASH : `${formatNumber(shown(r.way.value, 'm', system), 0, system)} ${formatUnit('m', system)}`, ''],
    [words.onFaces, amount(r.mix, system), ''],
    ...(r.passes.spare > 0 ? [[words.spare, amount(r.spare, system), percent(r.spareShare)]] : [])
  ]);
}

function work({ work: w }: LoadsState, system: UnitSystem): string[] {
  const time = (a: Answer): string => (isRefused(a) ? amount(a, system) : formatHours(a.value));
  return columns([
    [words.theoretical, amount(w.theoretical, system), ''],
    [words.spraying, time(w.spraying), ''],
    ...((valueOf(w.outer) ?? 0) > 0 ? [[words.outer, time(w.outer), '']] : []),
    [words.turning, time(w.turning), ''],
    [words.filling, time(w.filling), ''],
    ...(isRefused(w.total) ? [] : [[words.inAll, time(w.total), '']]),
    ...(isRefused(w.effective) ? [] : [[words.effective, amount(w.effective, system), words.efficiency(percent(w.efficiency))]])
  ]);
}

function rinse({ rinse: r, residual }: LoadsState, system: UnitSystem): string[] {
  const { tenfold, tenth, left, out } = mixText.rinse;
  return [
    residual.value > 0 ? tenfold(amount(r.water, system), amount(residual, system)) : tenth(amount(r.water, system)),
    ...(isRefused(r.once) ? [] : [left(percent(r.once), percent(r.thrice))]),
    out
  ].flatMap((line) => paragraph(line, INDENT));
}

/** Assumptions that the figures above rest on, and those that judge them. */
const assumptions = (s: LoadsState, system: UnitSystem): string[] =>
  columns(
    [...new Map([...assumptionsUnder([s.volume, s.work.total, ...s.partners.map((p) => p.perHa)]), ...s.assumptions])].map(([id, g]) => [assumptionWords(id).label, formatAmount(g.value, g.unit, system), certaintyWord(g.certainty)])
  );

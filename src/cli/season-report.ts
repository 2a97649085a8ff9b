import type { Proposal } from '#core/canopy/growth/propose.ts';
import type { Season, SeasonRung } from '#core/season/season.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { DegreeDays } from '#core/weather/degree-days.ts';
import { isRefused, valueOf, type Answer, type Refused } from '#core/working/answer.ts';
import { cli } from '#words/en/cli.ts';
import { seasonCli as words } from '#words/en/season/cli.ts';
import { seasonText as text } from '#words/en/season/text.ts';
import { spanLine, weatherWhat } from '#words/season/weather.ts';
import { DASH, differenceLine, findingSentence, formatAmount, formatRange, formatShare, nozzleNames, refusalSentence, verdictWord } from '#words/index.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** Growth for one rung: the canopies that it may have, or why there is none. */
export interface Grown {
  readonly rung: string;
  readonly name: string;
  readonly stage: Proposal | Refused | null;
  readonly degreeDays: Proposal | Refused | null;
  /** By degree-days, of a rung with a stage and no date. */
  readonly date: string | null;
}

/** The season of one block as text for a terminal. */
export function seasonReport(s: Season, grown: readonly Grown[], weather: DegreeDays | null, system: UnitSystem): string {
  const title = words.title(s.block.name);
  const h = words.headings;
  return (
    [
      title,
      '='.repeat([...title].length),
      ...section(h.rungs, rungs(s, system)),
      ...section(h.nozzles, nozzles(s)),
      ...section(h.changes, s.changes.length === 0 ? [words.onlyOne] : changes(s, system)),
      ...section(h.totals, totals(s, system)),
      ...section(h.growth, [...grown.flatMap((g) => growth(g, system)), ...limitLines(grown)]),
      ...section(h.weather, weather ? weatherLines(s, weather, system) : []),
      ...section(h.notes, notes(s, system)),
      '',
      cli.closing
    ].join('\n') + '\n'
  );
}

const amount = (a: Answer | null, system: UnitSystem): string => (a === null || isRefused(a) ? DASH : formatAmount(a.value, a.unit, system));
const starred = (r: SeasonRung): string => `${r.treatments.value}${r.treatments.certainty === 'assumed' ? words.assumed : ''}`;

function rungs(s: Season, system: UnitSystem): string[] {
  const c = words.columns;
  const labels = [...new Map(s.rungs.flatMap((r) => r.doses.map((d) => [d.label.id, d.label.name] as const)))];
  const table = columns(
    [
      [c.rung, c.stage, c.date, c.treatments, c.volume, c.leaf, c.wanted, c.water, c.open, c.airNeeded, c.air, c.loads, ...labels.map(([, name]) => name)],
      ...s.rungs.map((r) => [
        r.rung.name,
        r.rung.bbch === undefined ? DASH : String(r.rung.bbch),
        r.rung.date ?? DASH,
        starred(r),
        amount(r.result.canopy.figures.TRVc, system),
        amount(r.result.canopy.figures.LAI, system),
        amount(r.wanted, system),
        amount(r.volume, system),
        words.of(r.result.sprayer.openCount, r.result.sprayer.nozzles.length),
        amount(r.result.air.needed, system),
        amount(r.result.air.given, system),
        amount(r.loads, system).replace(/\.00$/, ''),
        ...labels.map(([id]) => amount(r.doses.find((d) => d.label.id === id)?.adapted ?? null, system))
      ])
    ],
    ['left', ...Array<'right'>(12 + labels.length).fill('right')]
  );
  return [
    ...table,
    ...(s.rungs.some((r) => r.treatments.certainty === 'assumed') ? [`${words.assumed} ${text.treatmentsAssumed}`] : []),
    ...s.rungs.filter((r) => r.rung.canopy.proposed).map((r) => `${r.rung.name}: ${words.proposedCanopy}`)
  ];
}

const nozzles = (s: Season): string[] =>
  columns([
    [words.columns.nozzle, ...s.rungs.map((r) => r.rung.name)],
    ...s.nozzles.map((n) => [nozzleNames(n.ids), ...n.at.map((c) => `${c.open ? words.open : words.shut}${c.open && c.would === 'in-leaf' ? '' : `, ${verdictWord(c.would)}`}`)])
  ]);

function changes(s: Season, system: UnitSystem): string[] {
  return s.changes.flatMap((c) => {
    const lines = [
      ...(c.opened.length > 0 ? [text.opened(nozzleNames(c.opened), c.opened.length > 1)] : []),
      ...(c.shut.length > 0 ? [text.shut(nozzleNames(c.shut), c.shut.length > 1)] : []),
      ...c.lines.map((l) => differenceLine(l, system))
    ];
    return [words.fromTo(c.from.name, c.to.name), ...(lines.length > 0 ? lines : [text.same]).map((l) => INDENT + l)];
  });
}

function totals(s: Season, system: UnitSystem): string[] {
  const c = words.columns;
  const rows = s.totals.map((t) => [
    t.label ? text.ofProduct(t.label.name, text.kinds[t.kind]) : text.kinds[t.kind],
    ...[t.fixed, t.adapted, t.saving].map((a) => (t.kind === 'loads' && !isRefused(a) ? String(a.value) : amount(a, system))),
    isRefused(t.share) ? DASH : formatShare(t.share.value / 100)
  ]);
  const reasons = new Set(s.totals.flatMap((t) => [t.fixed, t.adapted].filter(isRefused).map((a) => refusalSentence(a, system))));
  return [
    ...columns([[c.total, c.fixed, c.adapted, c.saving, c.share], ...rows], ['left', 'right', 'right', 'right', 'right']),
    ...[...reasons].flatMap((r) => paragraph(r, INDENT)),
    text.fixedIs(s.fixed.rung.name),
    text.adaptedIs
  ];
}

/** Nothing was asked for there, or it is said already. */
const UNASKED: ReadonlySet<string> = new Set(['growth-no-date', 'growth-no-neighbours', 'growth-evergreen']);

function growth(g: Grown, system: UnitSystem): string[] {
  const shown = (p: Proposal | Refused): string[] => ('kind' in p ? paragraph(words.noSource(g.name, refusalSentence(p, system)), INDENT) : proposal(g.name, p, system));
  return [
    ...(g.stage ? shown(g.stage) : []),
    ...(g.degreeDays && !('kind' in g.degreeDays && UNASKED.has(g.degreeDays.code)) ? shown(g.degreeDays) : []),
    ...(g.date === null ? [] : [text.reached(g.name, g.date)])
  ];
}

function proposal(name: string, p: Proposal, system: UnitSystem): string[] {
  const c = words.columns;
  const way = p.way && p.spans ? `; ${text.way(formatShare(valueOf(p.way) ?? NaN))}` : '';
  return [
    `${name}, ${p.by === 'stage' ? text.by.stage(p.from.name) : text.by['degree-days'](p.from.name, p.to?.name ?? '')}${way}`,
    ...columns(
      [
        ['', c.now, c.proposed, c.range],
        ...p.figures.map((f) => [text.fields[f.field], amount(f.now, system), amount(f.proposed, system), f.range && !isRefused(f.proposed) ? formatRange(f.range.low, f.range.high, f.proposed.unit, system) : '']),
        [text.volume, amount(p.volume.now, system), amount(p.volume.proposed, system), '']
      ],
      ['left', 'right', 'right', 'right']
    ).map((l) => INDENT + l)
  ];
}

/** What all proposals rest on, each once. */
function limitLines(grown: readonly Grown[]): string[] {
  const limits = new Set(grown.flatMap((g) => [g.stage, g.degreeDays].flatMap((p) => (p && !('kind' in p) ? p.limits : []))));
  return [...limits].flatMap((l) => paragraph(text.limits[l], INDENT));
}

function weatherLines(s: Season, w: DegreeDays, system: UnitSystem): string[] {
  const { kind, thin } = w.weather;
  return [weatherWhat(w.weather), text.base(formatAmount(w.base.value, 'degC', system)), text.methods[kind], ...(thin.length > 0 ? [text.thin(thin.length)] : []), ...spans(s, w, system)];
}

/** Degree-days from each rung with a date to the next. */
function spans(s: Season, w: DegreeDays, system: UnitSystem): string[] {
  const dated = s.rungs.map((r) => r.rung).filter((r) => r.date !== undefined).sort((a, b) => (a.date! < b.date! ? -1 : 1));
  return dated.slice(1).flatMap((to, i) => spanLine(w, dated[i]!, to, system));
}

function notes(s: Season, system: UnitSystem): string[] {
  const above = s.rungs.flatMap((r) => r.doses.filter((d) => d.fixedAboveLabel && r.treatments.value > 0).map((d) => text.fixedAbove(r.rung.name, d.label.name, amount(d.fixed, system))));
  const passed = s.rules.filter((r) => r.usesPassed).map((r) => text.usesPassed(r.label.name, r.uses, r.mostUses ?? 0));
  const stops = s.rungs.flatMap((r) => r.result.findings.filter((f) => f.severity === 'stop').map((f) => text.stop(r.rung.name, findingSentence(f, system))));
  return [...stops, ...passed, ...above, text.label].flatMap((line) => paragraph(line, INDENT));
}

import { differences } from '#core/advice/difference.ts';
import { isRefused, valueOf, type Answer, type Given } from '#core/working/answer.ts';
import { assumptionsUnder } from '#core/working/under.ts';
import type { Interval } from '#core/canopy/uncertainty.ts';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import type { Advised, Result } from '#core/setting/result.ts';
import type { LimitState } from '#core/weather/weather.ts';
import {
  actWord,
  airLines,
  assumptionWords,
  certaintyWord,
  colourWord,
  DASH,
  differenceLine,
  dropletWord,
  formatAmount,
  formatRange,
  formatShare,
  optionSetTitle,
  optionWords,
  patternPhrase,
  refusalSentence,
  strategyWords,
  symbolName,
  validitySentence,
  verdictWord
} from '#words/index.ts';
import { cli } from '#words/en/cli.ts';
import { findingLines } from './finding-lines.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** One rung of one block as text for a terminal. `before` is the rung before it in the season, if it was worked out too. */
export function report(r: Advised, before: Result | null, system: UnitSystem): string {
  const lines = [
    ...title(r, system),
    ...section(cli.headings.canopy, canopy(r, system)),
    ...section(cli.headings.water, water(r, system)),
    ...(r.product ? section(cli.headings.product(r.product.label.name), product(r, r.product, system)) : []),
    ...section(cli.headings.setting, setting(r, system)),
    ...section(cli.headings.nozzles, nozzles(r, system)),
    ...section(cli.headings.options, options(r, system)),
    ...section(cli.headings.air, air(r, system)),
    ...section(cli.headings.weather, weather(r, system)),
    ...(before ? section(cli.headings.difference(before.rung.name), differences(before, r).map((d) => differenceLine(d, system))) : []),
    ...section(cli.headings.findings, findingLines(r.findings, system)),
    ...section(cli.headings.assumptions, assumptions(r, system)),
    '',
    cli.closing
  ];
  return lines.join('\n') + '\n';
}

const amount = (a: Answer, system: UnitSystem): string => (isRefused(a) ? `${DASH} ${refusalSentence(a, system)}` : formatAmount(a.value, a.unit, system));
const share = (a: Answer): string => formatShare(valueOf(a) ?? NaN);
const range = (i: Interval | null | undefined, unit: Unit, system: UnitSystem): string => (i ? cli.interval(formatRange(i.low, i.high, unit, system)) : '');

/** Block, stage and site. */
export function title({ block, rung, machine, pattern }: Result, system: UnitSystem): string[] {
  const m = (v: number) => formatAmount(v, 'm', system);
  const head = [`${block.name}: ${rung.name}`, rung.bbch === undefined ? '' : cli.bbch(rung.bbch), rung.date ?? ''];
  const site = [
    block.crop ?? '',
    block.areaHa === undefined ? '' : formatAmount(block.areaHa, 'ha', system),
    cli.rows(m(block.rowSpacingM)),
    block.treeSpacingM === undefined ? '' : cli.trees(m(block.treeSpacingM)),
    machine.name,
    patternPhrase(pattern, system)
  ];
  const joined = (parts: string[]) => parts.filter(Boolean).join(', ');
  const first = joined(head);
  return [first, '='.repeat([...first].length), joined(site)];
}

const CANOPY = ['H', 'Hs', 'W', 'h', 'f', 'TRVg', 'TRVc', 'TRVs', 'LWA', 'RL', 'UCR', 'LAD', 'LAI'] as const;

const canopy = (r: Result, system: UnitSystem): string[] =>
  columns(
    CANOPY.map((symbol) => {
      const a = r.canopy.figures[symbol];
      return [symbolName(symbol), amount(a, system), isRefused(a) ? '' : certaintyWord(a.certainty), isRefused(a) ? '' : range(r.intervals.get(symbol), a.unit, system)];
    })
  );

function water({ strategy, water: w, sprayer }: Result, system: UnitSystem): string[] {
  const words = strategyWords(strategy.strategy.id);
  const rows = [
    [cli.wantedWater, amount(w.wanted, system), isRefused(w.wanted) ? '' : range(w.interval, w.wanted.unit, system), w.acts.map(actWord).join(', ')],
    ...(strategy.dilute ? [[cli.dilute, amount(strategy.dilute, system), '', '']] : []),
    [cli.setWater, amount(sprayer.volume, system), '', ''],
    [cli.index, share(strategy.index), '', '']
  ];
  return [
    ...paragraph(`${words.name}. ${words.line} ${words.full}`, INDENT),
    ...strategy.strategy.validity.map(validitySentence),
    ...columns(rows)
  ];
}

function product(r: Result, p: NonNullable<Result['product']>, system: UnitSystem): string[] {
  const tank = formatAmount(r.machine.tankL, 'L', system);
  return columns([
    [cli.labelDose, amount(p.labelDose, system), ''],
    [cli.dose, amount(p.perHa, system), p.acts.map(actWord).join(', ')],
    [cli.mix, amount(p.strength, system), ''],
    [cli.perTank(tank), amount(p.perTank, system), ''],
    [cli.concentration, isRefused(p.concentration) ? DASH : amount(p.concentration, system), '']
  ]);
}

function setting({ sprayer: s, machine, setting: set }: Result, system: UnitSystem): string[] {
  return columns([
    [cli.speed, amount(s.speed, system), amount(s.pace, system)],
    [cli.pressure, amount(s.pressure, system), ''],
    [cli.gear, machine.gears.find((g) => g.id === set.gear)?.name ?? set.gear, ''],
    [cli.pto, formatAmount(set.ptoRpm, 'rpm', system), ''],
    [cli.open, cli.openOf(s.openCount, s.nozzles.length), ''],
    [cli.flow, amount(s.flow, system), ''],
    [cli.volume, amount(s.volume, system), amount(s.per100m, system)],
    [cli.workRate, amount(s.workRate, system), ''],
    [cli.inLeaf, share(s.inLeaf), ''],
    [cli.overTop, share(s.overTop), ''],
    [cli.underSkirt, share(s.underSkirt), '']
  ]);
}

function nozzles({ sprayer }: Result, system: UnitSystem): string[] {
  const c = cli.columns;
  const rows = sprayer.nozzles.map((n) => [
    n.position.id,
    n.size?.id ?? DASH,
    n.size?.colour ? colourWord(n.size.colour) : DASH,
    isRefused(n.flow) ? DASH : amount(n.flow, system),
    amount(n.angle, system),
    share(n.shares.inLeaf),
    share(n.shares.overTop),
    share(n.shares.underSkirt),
    n.droplets ? dropletWord(n.droplets) : DASH,
    verdictWord(n.verdict)
  ]);
  return [
    ...columns(
      [[c.nozzle, c.size, c.colour, c.flow, c.angle, c.inLeaf, c.overTop, c.underSkirt, c.drops, c.verdict], ...rows],
      ['left', 'left', 'left', 'right', 'right', 'right', 'right', 'right', 'left', 'left']
    ),
    cli.aimLimits
  ];
}

/** A table of the ways on, then what stands against each of them or comes with it. */
const options = (r: Advised, system: UnitSystem): string[] =>
  r.options.flatMap((set) => {
    const said = set.rows.map((row) => ({ row, words: optionWords(row, set, system) }));
    const known = (answer: Answer | null): string => (answer && !isRefused(answer) ? amount(answer, system) : DASH);
    const c = cli.optionColumns;
    const withProduct = r.product !== null;
    const table = columns(
      [
        ['', c.volume, c.rate, ...(withProduct ? [c.sameMix, c.newMix] : []), ''],
        ...said.map(({ row, words }) => [
          words.title,
          known(row.option.volume),
          known(row.option.workRate),
          ...(withProduct ? [known(row.sameMix), known(row.newMix)] : []),
          row.option.feasible ? cli.possible : cli.notPossible
        ])
      ],
      ['left', 'right', 'right', ...(withProduct ? (['right', 'right'] as const) : []), 'left']
    );
    const notes = said.flatMap(({ row, words }) => {
      const unusual = row.label === 'fine' ? '' : words.standing;
      const lost = isRefused(row.option.volume) ? words.consequence : '';
      return [lost, ...words.sizes, ...words.remarks, unusual].filter(Boolean).map((note) => `${words.name}: ${note}`);
    });
    return [`${optionSetTitle(set, system)}:`, ...table.map((l) => INDENT + l), ...notes.flatMap((n) => paragraph(n, INDENT)).map((l) => INDENT + l)];
  });

const air = (r: Result, system: UnitSystem): string[] => [
  ...columns([
    [cli.perMetre, amount(r.air.perMetre, system)],
    [cli.outlet, amount(r.air.outletSpeed, system)]
  ]),
  ...airLines(r, system).flatMap((l) => paragraph(l.text, INDENT))
];

function weather({ weather: w }: Result, system: UnitSystem): string[] {
  if (!w) return [];
  const unit: Record<LimitState['limit']['of'], Unit> = { 'delta-t': 'K', wind: 'm/s', temperature: 'degC', humidity: '%' };
  return columns(
    w.limits.map(({ limit, value, side }) => {
      const u = unit[limit.of];
      const { least, most } = limit;
      const bounds = least === undefined ? cli.atMost(formatAmount(most!, u, system)) : most === undefined ? cli.atLeast(formatAmount(least, u, system)) : formatRange(least, most, u, system);
      return [cli.limitOf[limit.of], formatAmount(value, u, system), bounds, cli.side[side]];
    })
  );
}

const assumptions = (r: Result, system: UnitSystem): string[] =>
  columns([...used(r)].map(([id, a]) => [assumptionWords(id).label, formatAmount(a.value, a.unit, system), certaintyWord(a.certainty)]));

/** Those that the figures printed here rest on; strategies that were not chosen have further ones. */
function used({ canopy: { figures }, water: w, strategy, product: p, sprayer: s, air: a, assumptions: all }: Result): Map<string, Given> {
  const printed = [...Object.values(figures).filter((f) => f !== figures.k && f !== figures.m), w.wanted, strategy.dilute, strategy.index, p?.perHa, s.volume, a.needed];
  const judged = [...all].filter(([id]) => id.startsWith('aim.') || id === 'air.tolerance');
  return new Map([...assumptionsUnder(printed), ...judged]);
}

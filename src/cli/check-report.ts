import type { CatchesState, CheckState, Measured, Outcome, PressureState, RefillState, Remedies, RoundState, SpeedState } from '#core/check/state.ts';
import type { TickItem } from '#core/check/types.ts';
import { shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { assumptionWords, certaintyWord, DASH, dropletWord, formatAmount, formatNumber, formatRange, formatShare, formatUnit, nozzleNames, refusalSentence, remarkSentence } from '#words/index.ts';
import { checkCli as words } from '#words/en/headland/check-cli.ts';
import { checkScreen } from '#words/en/headland/check-screen.ts';
import { cli } from '#words/en/cli.ts';
import { findingLines } from './finding-lines.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';
import { title } from './report.ts';

/** One rung's headland check as text for a terminal. */
export function checkReport(result: Result, state: CheckState, system: UnitSystem): string {
  const lines = [
    ...title(result, system),
    ...section(words.headings.walk, walk(state)),
    ...state.rounds.flatMap((r) => section(words.headings.round(r.index + 1, when(r.round.at)), round(r, system))),
    ...section(words.headings.result, outcome(state.outcome, system)),
    ...(state.remedies ? section(words.headings.remedies(amount(state.remedies.target, system)), remedies(state.remedies, system)) : []),
    ...(state.rounds.length > 1 ? section(words.headings.trail, trail(state, system)) : []),
    ...(state.used ? section(words.headings.used, columns([[words.used, amount(state.used.used, system), ''], [words.predictedUse, amount(state.used.predicted, system), signed(state.used.off)]])) : []),
    ...section(cli.headings.findings, findingLines(state.findings, system)),
    ...section(cli.headings.assumptions, columns([...state.assumptions].filter(([id]) => id.startsWith('check.')).map(([id, a]) => [assumptionWords(id).label, amount(a, system), certaintyWord(a.certainty)]))),
    '',
    words.caution
  ];
  return lines.join('\n') + '\n';
}

const amount = (a: Answer, system: UnitSystem): string => {
  if (isRefused(a)) return `${DASH} ${refusalSentence(a, system)}`;
  if (a.unit === '%') return formatShare(a.value / 100);
  return a.unit === 'km/h' ? `${speedFigure(a.value, system)}\u00a0${formatUnit(a.unit, system)}` : formatAmount(a.value, a.unit, system);
};
/** A timed speed is known more closely than a display shows it. */
const speedFigure = (kmH: number, system: UnitSystem): string => formatNumber(shown(kmH, 'km/h', system), 2, system);
const range = (low: number, high: number, unit: Unit, system: UnitSystem): string =>
  unit === 'km/h' ? `${speedFigure(low, system)}–${speedFigure(high, system)}\u00a0${formatUnit(unit, system)}` : formatRange(low, high, unit, system);
const when = (at: string | undefined | null): string => (at ?? '').slice(0, 16).replace('T', ' ');
/** With its sign, in per cent; a dash where there is none. */
const signed = (a: Answer | null): string => (!a || isRefused(a) ? DASH : `${a.value > 0 ? '+' : ''}${formatNumber(a.value, 1)}\u00a0%`);
const error = (a: Answer): string => (isRefused(a) ? '' : `±${formatNumber(a.value, 1)}\u00a0%`);
const interval = (m: Measured, system: UnitSystem): string => (m.interval && !isRefused(m.value) ? cli.interval(range(m.interval.low, m.interval.high, m.value.unit, system)) : '');
const measured = (name: string, m: Measured, system: UnitSystem, note = ''): string[] => [name, amount(m.value, system), error(m.error), interval(m, system), note];

function walk({ walk: w }: CheckState): string[] {
  const named = (what: string, items: readonly TickItem[]) => (items.length === 0 ? [] : paragraph(`${what}: ${items.map((i) => checkScreen.items[i].name).join(', ')}`, INDENT));
  return [words.lookedAt(w.done, w.of), ...named(words.faults, w.faults), ...named(words.open, w.open), ...named(words.notAlong, w.toolsOpen), ...named(words.termsBroken, w.termsBroken)];
}

function round(r: RoundState, system: UnitSystem): string[] {
  const set = r.round.setting;
  const blockOf = (heading: string, lines: readonly string[]) => (lines.length === 0 ? [] : [heading, ...lines.map((l) => INDENT + l)]);
  return [
    words.setting(formatAmount(set.speedKmH, 'km/h', system), formatAmount(set.pressureBar, 'bar', system), r.sprayer.openCount),
    ...(r.speed ? blockOf(words.headings.speed, speed(r.speed, system)) : []),
    ...blockOf(words.headings.pressure, pressure(r.pressure, system)),
    ...(r.catches ? blockOf(words.headings.catches, catches(r.catches, system)) : []),
    ...(r.refill.refill ? blockOf(words.headings.refill, refill(r.refill, system)) : []),
    ...(r.law ? blockOf(words.headings.law, columns([[words.exponent, amount(r.law.exponent, system)]])) : [])
  ];
}

function speed(s: SpeedState, system: UnitSystem): string[] {
  const runs = s.runs.map((r) => [
    words.run(r.number),
    formatAmount(r.run.distanceM, 'm', system),
    `${formatNumber(r.run.seconds, 1)}\u00a0s`,
    r.run.direction ? words.direction[r.run.direction] : '',
    amount(r.speed, system),
    r.deviation ? signed(r.deviation) : '',
    r.differs ? words.differs : ''
  ]);
  return [
    ...columns(runs, ['left', 'right', 'right', 'left', 'right', 'right', 'left']),
    ...columns([
      [...measured(words.speed, s.measured, system), words.againstSet(signed(s.settingOff))],
      ...(isRefused(s.spread) ? [] : [[words.spread, amount(s.spread, system), '', '', '', '']]),
      ...(s.display ? [[words.display, amount(s.display, system), '', '', '', words.against(signed(s.displayOff))]] : [])
    ].map((row) => row.filter((_, i) => i !== 4)))
  ];
}

const pressure = (p: PressureState, system: UnitSystem): string[] =>
  columns([
    [words.atNozzles, amount(p.atNozzles, system), words.from[p.from]],
    ...(p.gaugeOff ? [[words.gaugeOff, signed(p.gaugeOff), '']] : []),
    ...(p.loss ? [[words.loss, amount(p.loss, system), p.flowLoss ? words.flowLoss(amount(p.flowLoss, system)) : '']] : []),
    ...(p.oneSide ? [[words.oneSide, signed(p.oneSide), '']] : [])
  ]);

function catches(c: CatchesState, system: UnitSystem): string[] {
  const h = words.columns;
  const rows = c.nozzles.map((n) => [
    n.nozzle.position.id,
    n.nozzle.size?.id ?? DASH,
    formatNumber(shown(n.caught.litres, 'L', system), 3, system),
    formatNumber(n.caught.seconds, 1),
    isRefused(n.flow) ? DASH : amount(n.flow, system),
    isRefused(n.nominal) ? DASH : amount(n.nominal, system),
    signed(n.wear),
    signed(n.deviation),
    error(n.resolution),
    words.verdicts[n.verdict]
  ]);
  const t = c.tolerance;
  return [
    ...columns([[h.nozzle, h.size, `${h.litres} (${formatUnit('L', system)})`, `${h.time} (s)`, h.flow, h.table, h.wear, h.off, h.error, h.verdict], ...rows], ['left', 'left', 'right', 'right', 'right', 'right', 'right', 'right', 'right', 'left']),
    ...columns([
      [words.left, amount(c.left, system), ''],
      [words.right, amount(c.right, system), isRefused(c.sidesOff) ? '' : words.sides(signed(c.sidesOff))],
      [words.total, amount(c.total.value, system), error(c.total.error)]
    ]),
    words.tolerance(words.tolerances[t.id], amount(t.mean, system), amount(t.nominal, system), amount(t.sides, system)),
    words.diagnosis[c.diagnosis] + (c.bad.length > 0 ? `: ${nozzleNames(c.bad)}` : '')
  ];
}

const refill = (r: RefillState, system: UnitSystem): string[] =>
  columns([...(r.volume ? [measured(words.courseVolume, r.volume, system)] : []), measured(words.flow, r.flow, system), [words.longEnough(amount(r.closeness, system)), amount(r.longEnough, system), '', '', '']]);

function outcome(o: Outcome, system: UnitSystem): string[] {
  const from = (index: number | null) => (index === null ? '' : words.ofRound(index + 1));
  return columns([
    measured(words.measuredSpeed, o.speed, system, from(o.speedRound)),
    measured(words.measuredFlow, o.flow, system, [from(o.flowRound), o.flowStanding === 'scaled' ? words.scaled : ''].filter(Boolean).join(', ')),
    measured(words.measured, o.volume, system, words.verdict[o.verdict]),
    ...(isRefused(o.volume.value) && !isRefused(o.predicted) ? [[words.predicted, amount(o.predicted, system), '', '', '']] : []),
    [words.wanted, amount(o.wanted, system), signed(o.off), '', ''],
    [words.setSays, amount(o.computed, system), signed(o.computedOff), '', '']
  ]);
}

function remedies(r: Remedies, system: UnitSystem): string[] {
  const h = words.remedyColumns;
  const known = (a: Answer): string => (isRefused(a) ? DASH : amount(a, system));
  const rows = r.rows.map(({ kind, reach, option, airChange, suits }) => [
    words.remedy[kind],
    words.reach[reach],
    known(option.speed),
    known(option.pressure),
    option.droplets.map(dropletWord).join(', ') || DASH,
    signed(airChange),
    known(option.workRate),
    suits ? words.suits : option.feasible ? words.possible : words.notPossible
  ]);
  const notes = r.rows.flatMap(({ kind, option }) => [
    ...option.remarks.map((m) => `${words.remedy[kind]}: ${remarkSentence(m, system)}`),
    ...changes(option.sizes).map((line) => `${words.remedy[kind]}: ${line}`)
  ]);
  return [
    ...columns([['', '', h.speed, h.pressure, h.drops, h.air, h.rate, ''], ...rows]),
    ...notes,
    ...(r.firstReplace.length > 0 ? [words.firstReplace(nozzleNames(r.firstReplace))] : []),
    ...(isRefused(r.shortcutError) ? [] : [words.shortcut(signed(r.shortcutError))]),
    words.again
  ];
}

function changes(sizes: Remedies['rows'][number]['option']['sizes']): string[] {
  const groups = new Map<string, string[]>();
  for (const s of sizes) groups.set(`${s.from}|${s.to}`, [...(groups.get(`${s.from}|${s.to}`) ?? []), s.position]);
  return [...groups].map(([key, positions]) => words.change(nozzleNames(positions), ...(key.split('|') as [string, string])));
}

const trail = (s: CheckState, system: UnitSystem): string[] =>
  columns(
    s.trail.map((t) => [
      words.headings.round(t.index + 1, when(t.at)),
      isRefused(t.volume) ? DASH : amount(t.volume, system),
      signed(t.off),
      words.verdict[t.verdict],
      t.diagnosis ? words.diagnosis[t.diagnosis] : ''
    ]),
    ['left', 'right', 'right', 'left', 'left']
  );

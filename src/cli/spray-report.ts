import type { SprayAdvice } from '#core/spray/advice/types.ts';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import { basisOf, LEAF_DENSITY, shownRuns } from '#core/spray/basis.ts';
import { SPRAY_REGISTRY } from '#core/spray/case.ts';
import { FATES, type BandRun, type FaceSpeed, type Fate, type Range, type SprayBalance, type SprayBand, type SprayCase } from '#core/spray/types.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, type Answer, type Refused } from '#core/working/answer.ts';
import { airLines, assumptionWords, certaintyWord, DASH, dropletWord, formatAmount, formatFigure, formatRange, formatShare, formatUnit, refusalSentence } from '#words/index.ts';
import { cli } from '#words/en/cli.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { sprayScreen as screen } from '#words/en/spray/screen.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';
import { title } from './report.ts';
import { adviceLines } from './spray-advice.ts';
import { layers, type Layer } from './spray-layers.ts';
import { inLine, part, percent, percents, withUnit } from './spray-figures.ts';

/** Where the spray of one rung goes and what would do better, or why that cannot be told. */
export interface Sprayed {
  readonly document: Document;
  readonly result: Result;
  readonly spray: { readonly of: SprayCase; readonly balance: SprayBalance; readonly band: SprayBand; readonly advice: SprayAdvice | Refused } | Refused;
}

/** Where the spray of one rung goes as text for a terminal. */
export function sprayReport({ document, result, spray }: Sprayed, system: UnitSystem): string {
  const head = title(result, system);
  if ('kind' in spray) return [...head, '', ...paragraph(refusalSentence(spray, system)), '', cli.closing].join('\n') + '\n';
  const { of, balance, band, advice } = spray;
  const catches = balance.bare ? 'wood' : 'leaf';
  const lines = [
    ...head,
    ...section(words.headings.ends, [...ends(of, balance, band, system), ...notes(balance)]),
    ...section(words.headings.nozzles, nozzles(of, balance, system)),
    ...section(words.headings.heights[catches], heights(balance, system)),
    ...section(words.headings.air, air(result, balance, system)),
    ...section(words.headings.told, told(result, of, system)),
    ...section(words.headings.moving, moving(balance, band, system)),
    ...section(words.headings.advice, adviceLines(result, advice, system)),
    ...section(words.headings.limits, screen.limitList.slice(BESIDE).flatMap((l) => paragraph(l, INDENT))),
    ...section(words.headings.assumptions, assumptions(document, result, of, system)),
    '',
    cli.closing
  ];
  return lines.join('\n') + '\n';
}

/** The first of the limits stand beside the balance: what it is for, and how sure. */
const BESIDE = 2;

const amount = (a: Answer, system: UnitSystem): string => (isRefused(a) ? DASH : formatAmount(a.value, a.unit, system));

/** What is on the trees, on the ground and lost, with what each is made of under it. */
const GROUPS: readonly { readonly name: string; readonly fates: readonly Fate[]; readonly of: (b: SprayBalance) => number; readonly band: (b: SprayBand) => Range }[] = [
  { name: screen.allTrees, fates: ['near', 'far', 'rows'], of: (b) => b.onTrees, band: (b) => b.onTrees },
  { name: screen.fates['ground-in'], fates: [], of: (b) => b.shares['ground-in'], band: (b) => b.shares['ground-in'] },
  { name: screen.allLost, fates: ['ground-out', 'over', 'through', 'dried'], of: (b) => b.lost, band: (b) => b.lost }
];

function ends({ volumeLPerHa }: SprayCase, b: SprayBalance, band: SprayBand, system: UnitSystem): string[] {
  const line = (name: string, share: number, range: Range | null): string[] => [name, part(share), range ? percents(range) : '', inLine(share * volumeLPerHa, 'L/ha', system)];
  const rows = GROUPS.flatMap((g) => [line(g.name, g.of(b), g.band(band)), ...g.fates.map((f) => line(INDENT + screen.fates[f], b.shares[f], band.shares[f]))]);
  const all = FATES.reduce((sum, f) => sum + b.shares[f], 0);
  const deposit = b.depositUlPerCm2;
  const more = [
    ...(deposit === null ? [] : [[words.deposit[b.bare ? 'wood' : 'leaf'], formatAmount(deposit, 'uL/cm2', system), band.depositUlPerCm2 ? formatRange(...band.depositUlPerCm2, 'uL/cm2', system) : '']]),
    ...(b.cv === null ? [] : [[words.cv, formatShare(b.cv), band.cv ? percents(band.cv) : '']])
  ];
  return [
    ...columns([['', screen.share, screen.band, formatUnit('L/ha', system)], ...rows, line(screen.sum, all, null)], ['left', 'right', 'right', 'right']),
    ...columns(more, ['left', 'right', 'right'])
  ];
}

const notes = ({ bare }: SprayBalance): string[] => [
  ...(bare ? [screen.bare] : []),
  ...[...screen.limitList.slice(0, BESIDE), `${screen.bandMeans} ${words.bandLost}`, screen.noDose].flatMap((l) => paragraph(l))
];

function nozzles(of: SprayCase, { perNozzle }: SprayBalance, system: UnitSystem): string[] {
  const c = words.nozzleColumns;
  const rows = perNozzle.map(({ position, shares: s }) => {
    const n = of.nozzles.find((each) => each.position === position)!;
    return [position, n.droplets ? dropletWord(n.droplets) : DASH, formatAmount(n.flowLPerMin, 'L/min', system), part(s.near + s.far + s.rows), ...FATES.map((f) => part(s[f]))];
  });
  return columns([[c.nozzle, c.drops, c.flow, c.trees, ...FATES.map((f) => c[f])], ...rows], ['left', 'left', ...Array.from({ length: 2 + FATES.length }, () => 'right' as const)]);
}

const BAR = 20;

/** From the top down, with the deposit as a bar as long as it is large. */
function heights({ heights: cells, depositUlPerCm2: mean }: SprayBalance, system: UnitSystem): string[] {
  const c = words.heightColumns;
  const all = layers(cells);
  const most = Math.max(...all.map((l) => l.deposit ?? 0));
  const row = ({ fromM, toM, share, near, far, rows, deposit }: Layer): string[] => [
    withUnit(`${inLine(fromM, 'm', system)}–${inLine(toM, 'm', system)}`, 'm', system),
    deposit === null ? DASH : withUnit(inLine(deposit, 'uL/cm2', system), 'uL/cm2', system),
    deposit === null || !mean ? DASH : formatShare(deposit / mean),
    ...[share, near, far, rows].map(part),
    deposit === null || most === 0 ? '' : '█'.repeat(Math.round((deposit / most) * BAR))
  ];
  return [
    ...columns([[c.height, c.deposit, c.ofMean, c.share, c.near, c.far, c.rows, ''], ...all.map(row)], ['right', 'right', 'right', 'right', 'right', 'right', 'right', 'left']),
    words.heightNote
  ];
}

/** Both sides beside each other, from the top down. */
function air(result: Result, { faces }: SprayBalance, system: UnitSystem): string[] {
  const c = words.faceColumns;
  const speed = (v: number | null): string => (v === null ? DASH : formatAmount(v, 'm/s', system));
  const cells = (f: FaceSpeed | undefined): string[] => (f ? ['', withUnit(inLine(f.heightM, 'm', system), 'm', system), speed(f.inMPerS), speed(f.outMPerS)] : ['', '', '', '']);
  const sides = (['left', 'right'] as const).map((side) => ({ side, own: faces.filter((f) => f.side === side).toReversed() })).filter(({ own }) => own.length > 0);
  const count = Math.max(0, ...sides.map(({ own }) => own.length));
  const range = (least: number, most: number): string => formatRange(least, most, 'm/s', system);
  return [
    ...columns(
      [sides.flatMap(({ side }) => [words.sides[side], c.height, c.meets, c.leaves]), ...Array.from({ length: count }, (_, i) => sides.flatMap(({ own }) => cells(own[i])))],
      sides.flatMap(() => ['left', 'right', 'right', 'right'] as const)
    ),
    ...paragraph(screen.airNote),
    ...paragraph(screen.airRule(range(8, 12), range(2, 5), range(1, 2))),
    ...airLines(result, system).filter((l) => l.kind === 'balance' || l.kind === 'rule').flatMap((l) => paragraph(l.text))
  ];
}

function told({ canopy: { figures }, air: { perMetre } }: Result, of: SprayCase, system: UnitSystem): string[] {
  const sure = (a: Answer): string => (isRefused(a) ? '' : certaintyWord(a.certainty));
  return columns([
    [words.leafDensity, amount(figures.LAD, system), sure(figures.LAD)],
    [words.filled, formatShare(of.canopy.filled), sure(figures.f)],
    [words.volume, formatAmount(of.volumeLPerHa, 'L/ha', system), ''],
    ...of.air.map((a) => [words.outlet[a.side], formatAmount(a.outletMPerS, 'm/s', system), formatAmount(a.flowM3PerS * 3600, 'm3/h', system)]),
    [words.perMetre, amount(perMetre, system), '']
  ]);
}

/** Runs that move the share on the trees by less are not listed. */
const LEAST_MOVED = 0.01;

function moving({ onTrees }: SprayBalance, band: SprayBand, system: UnitSystem): string[] {
  const c = words.movingColumns;
  const moved = ({ onTrees: [low, high] }: BandRun): number => Math.max(Math.abs(low - onTrees), Math.abs(high - onTrees));
  const all = shownRuns(band);
  const listed = all.filter((r) => moved(r) >= LEAST_MOVED);
  const rows = listed.map(({ assumption, values: [low, high], onTrees: [from, to] }) => {
    const { unit } = SPRAY_REGISTRY.get(assumption)!;
    return [assumption === LEAF_DENSITY ? screen.leafDensity : assumptionWords(assumption).label, formatFigure(low, unit, system), formatAmount(high, unit, system), words.change(percent(from), part(to))];
  });
  return [
    ...(rows.length > 0 ? columns([[c.constant, c.from, c.to, c.onTrees], ...rows], ['left', 'right', 'right', 'right']) : []),
    ...(listed.length < all.length ? [words.movingRest] : [])
  ];
}

const PLAUSIBLE = new Map(SPRAY_ASSUMPTIONS.map((a) => [a.id, a]));

function assumptions(document: Document, result: Result, of: SprayCase, system: UnitSystem): string[] {
  const rows = [...basisOf(document, result, of)].map(([id, q]) => {
    const a = PLAUSIBLE.get(id);
    return [assumptionWords(id).label, formatAmount(q.value, q.unit, system), certaintyWord(q.certainty), a && a.plausible[0] < a.plausible[1] ? words.plausible(formatRange(...a.plausible, a.unit, system)) : ''];
  });
  const { k } = result.air;
  return columns([...rows, ...(k.assumption ? [[assumptionWords(k.assumption).label, formatAmount(k.value, k.unit, system), certaintyWord(k.certainty), '']] : [])]);
}

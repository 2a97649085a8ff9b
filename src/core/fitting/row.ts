import { finding, type Finding } from '../advice/finding.ts';
import { dropletClass, flowAt } from '../sprayer/flow.ts';
import { pressureFor } from '../sprayer/pressure.ts';
import type { DropletClass, Side } from '../sprayer/types.ts';
import { FLOW_FOR_VOLUME } from '../sprayer/volume.ts';
import { given, isRefused } from '../working/answer.ts';
import { pieceAt, type Piece } from './pressures.ts';
import type { FittingProblem } from './problem.ts';
import { ruleReports, type RuleReport } from './rules.ts';

/** What one position carries in a fitting. */
export interface FittedNozzle {
  readonly position: string;
  readonly side: Side;
  readonly table: string;
  readonly size: string;
  readonly colour?: string;
  /** Size that is fitted now, where it is another. */
  readonly instead?: { readonly table: string; readonly size: string };
  readonly flowLPerMin: number;
  readonly targetLPerMin: number;
  /** Share of the total flow, and the wanted one. */
  readonly share: number;
  readonly weight: number;
  /** Flow over target less 1; null where nothing is wanted here. */
  readonly off: number | null;
  readonly droplets?: DropletClass;
}

/** Sizes to be at hand for a fitting, beyond those that it takes off elsewhere on the machine. */
export interface Need {
  readonly table: string;
  readonly size: string;
  readonly colour?: string;
  readonly count: number;
  /** Of them, how many there are fewer at hand; 0 where nobody said how many there are. */
  readonly buy: number;
}

export const ROW_NAMES = ['no-change', 'few-changes', 'best-match'] as const;
export type RowName = (typeof ROW_NAMES)[number];

/** One fitting: plain data, so that it can come out of a worker. */
export interface FittingRow {
  readonly names: readonly RowName[];
  readonly nozzles: readonly FittedNozzle[];
  readonly changes: number;
  readonly speedKmH: number;
  readonly atPresentSpeed: boolean;
  readonly pressureBar: number;
  readonly flowLPerMin: number;
  readonly wantedLPerMin: number;
  readonly volumeLPerHa: number;
  /** Σ min(share, weight), 0 to 1. */
  readonly match: number;
  readonly classes: readonly DropletClass[];
  readonly needs: readonly Need[];
  readonly buy: number;
  /** Farthest from its target. */
  readonly worst: { readonly position: string; readonly off: number } | null;
  /** Share of the flow through the upper half of the open nozzles. */
  readonly topShare: number;
  readonly rules: readonly RuleReport[];
  readonly findings: readonly Finding[];
}

/** Total flow that the target wants at a speed, L/min. */
export const wantedFlow = (problem: FittingProblem, speedKmH: number): number => FLOW_FOR_VOLUME.compute({ V: problem.targetLPerHa, v: speedKmH, B: problem.widthM });

/** The present speed, or the nearest to it that is allowed. */
export const planSpeed = ({ speed }: FittingProblem): number => Math.min(Math.max(speed.presentKmH, speed.leastKmH), speed.mostKmH);

const flowOf = (problem: FittingProblem, index: number, bar: number): number => {
  const { table, size } = problem.sizes[index]!;
  return flowAt(table, size, bar, problem.specificGravity);
};
const flowTogether = (problem: FittingProblem, chosen: readonly number[], bar: number): number => chosen.reduce((sum, s) => sum + flowOf(problem, s, bar), 0);

/** Pressure at which these sizes give a flow; null where no pressure does. */
function pressureOf(problem: FittingProblem, chosen: readonly number[], wanted: number): number | null {
  const from = problem.pressure.presentBar;
  const bar = pressureFor(given(wanted, 'L/min', 'derived'), given(from, 'bar'), given(flowTogether(problem, chosen, from), 'L/min', 'derived'), (b) => flowTogether(problem, chosen, b));
  return isRefused(bar) ? null : bar.value;
}

/** How these sizes are brought to the target. */
export interface Drive {
  readonly speedKmH: number;
  readonly pressureBar: number;
}

/**
 * Speed and pressure that bring these sizes to the target: the planned speed with the pressure that then gives the total exactly, or, where no
 * pressure that all of them may use does, the nearest speed at which one does. Null where there is none.
 * @param chosen size of each position
 */
export function driveOf(problem: FittingProblem, pieces: readonly Piece[], chosen: readonly number[]): Drive | null {
  const plan = planSpeed(problem);
  const wanted = wantedFlow(problem, plan);
  const straight = pressureOf(problem, chosen, wanted);
  if (straight === null) return null;
  const all = (p: Piece | undefined): boolean => p !== undefined && chosen.every((s) => p.allowed[s] === 1);
  if (all(pieceAt(pieces, straight))) return { speedKmH: plan, pressureBar: straight };
  const slow = pressureOf(problem, chosen, wantedFlow(problem, problem.speed.leastKmH));
  const fast = pressureOf(problem, chosen, wantedFlow(problem, problem.speed.mostKmH));
  if (slow === null || fast === null) return null;
  let found: Drive | null = null;
  for (const piece of pieces) {
    const least = Math.max(piece.leastBar, slow);
    const most = Math.min(piece.mostBar, fast);
    if (least > most || !all(piece)) continue;
    const pressureBar = Math.min(Math.max(straight, least), most);
    const speedKmH = (plan * flowTogether(problem, chosen, pressureBar)) / wanted;
    if (!found || Math.abs(Math.log(speedKmH / plan)) < Math.abs(Math.log(found.speedKmH / plan))) found = { speedKmH, pressureBar };
  }
  return found;
}

/** Everything about one fitting. @param chosen size of each position, indices into `problem.sizes` */
export function rowOf(problem: FittingProblem, chosen: readonly number[], { speedKmH, pressureBar }: Drive): FittingRow {
  const wanted = wantedFlow(problem, speedKmH);
  const flows = chosen.map((s) => flowOf(problem, s, pressureBar));
  const total = flows.reduce((a, b) => a + b, 0);
  const nozzles = problem.positions.map((p, i): FittedNozzle => {
    const { table, size } = problem.sizes[chosen[i]!]!;
    const before = problem.sizes[p.present]!;
    const targetLPerMin = p.weight * wanted;
    const droplets = dropletClass(size, pressureBar);
    return {
      position: p.id,
      side: p.side,
      table: table.id,
      size: size.id,
      ...(size.colour === undefined ? {} : { colour: size.colour }),
      ...(chosen[i] === p.present ? {} : { instead: { table: before.table.id, size: before.size.id } }),
      flowLPerMin: flows[i]!,
      targetLPerMin,
      share: flows[i]! / total,
      weight: p.weight,
      off: targetLPerMin > 0 ? flows[i]! / targetLPerMin - 1 : null,
      ...(droplets ? { droplets } : {})
    };
  });
  const needs = needsOf(problem, chosen);
  const topShare = upperShare(problem, flows);
  const rules = ruleReports(problem, topShare, largestInMiddle(problem, flows));
  const worst = nozzles.reduce<FittingRow['worst']>((w, n) => (n.off !== null && Math.abs(n.off) > Math.abs(w?.off ?? 1e-6) ? { position: n.position, off: n.off } : w), null);
  const row: FittingRow = {
    names: [],
    nozzles,
    changes: chosen.filter((s, i) => s !== problem.positions[i]!.present).length,
    speedKmH,
    atPresentSpeed: speedKmH === problem.speed.presentKmH,
    pressureBar,
    flowLPerMin: total,
    wantedLPerMin: wanted,
    volumeLPerHa: (600 * total) / (speedKmH * problem.widthM),
    match: nozzles.reduce((s, n) => s + Math.min(n.share, n.weight), 0),
    classes: [...new Set(nozzles.flatMap((n) => n.droplets ?? []))],
    needs,
    buy: needs.reduce((s, n) => s + n.buy, 0),
    worst,
    topShare,
    rules,
    findings: []
  };
  return { ...row, findings: findingsOf(problem, row) };
}

function needsOf(problem: FittingProblem, chosen: readonly number[]): Need[] {
  return problem.sizes.flatMap(({ table, size, count: atHand }, s) => {
    const fitted = chosen.filter((c, i) => c === s && problem.positions[i]!.present !== s).length;
    const takenOff = chosen.filter((c, i) => c !== s && problem.positions[i]!.present === s).length;
    const count = fitted - takenOff;
    if (count <= 0) return [];
    return [{ table: table.id, size: size.id, ...(size.colour === undefined ? {} : { colour: size.colour }), count, buy: Math.max(0, count - (atHand ?? Infinity)) }];
  });
}

/** The open positions of each side from the bottom up, as indices. */
const sidesOf = (problem: FittingProblem): number[][] =>
  (['left', 'right'] as const)
    .map((side) => problem.positions.flatMap((p, i) => (p.side === side ? [i] : [])).sort((a, b) => problem.positions[a]!.heightM - problem.positions[b]!.heightM))
    .filter((s) => s.length > 0);

/** Share of the flow through the upper half of the open positions; of an odd number the middle one counts half. */
function upperShare(problem: FittingProblem, flows: readonly number[]): number {
  let upper = 0;
  let total = 0;
  for (const side of sidesOf(problem))
    side.forEach((i, k) => {
      const place = 2 * k - (side.length - 1);
      total += flows[i]!;
      upper += flows[i]! * (place > 0 ? 1 : place === 0 ? 0.5 : 0);
    });
  return upper / total;
}

/** Does one of the largest nozzles of each side stand in the middle third of the open ones? */
const largestInMiddle = (problem: FittingProblem, flows: readonly number[]): boolean =>
  sidesOf(problem).every((side) => {
    const most = Math.max(...side.map((i) => flows[i]!));
    return side.some((i, k) => flows[i] === most && k >= Math.floor(side.length / 3) && k < Math.ceil((2 * side.length) / 3));
  });

/** Is it about a published rule? */
export const isRule = (f: Finding): boolean => f.code.startsWith('fitting-rule-');

function findingsOf(problem: FittingProblem, row: FittingRow): Finding[] {
  const found: Finding[] = [];
  const far = row.nozzles.filter((n) => n.off !== null && Math.abs(n.off) > problem.positionTolerance);
  if (far.length > 0 && row.worst)
    found.push(
      finding('fitting-position-off', 'warn', { nozzles: far.map((n) => n.position), worst: row.worst.position, off: { value: row.worst.off * 100, unit: '%' }, tolerance: { value: problem.positionTolerance * 100, unit: '%' } }, ['habit'])
    );
  if (!row.atPresentSpeed)
    found.push(finding('fitting-other-speed', 'note', { speed: { value: row.speedKmH, unit: 'km/h' }, present: { value: problem.speed.presentKmH, unit: 'km/h' } }, ['pat-gardonne']));
  const wasted = row.nozzles.filter((n) => n.weight === 0);
  if (wasted.length > 0) {
    const share = wasted.reduce((s, n) => s + n.share, 0);
    found.push(finding('fitting-nothing-wanted', 'warn', { nozzles: wasted.map((n) => n.position), share: { value: share * 100, unit: '%' } }, ['geometry']));
  }
  for (const r of row.rules) {
    if (!r.suits || r.met) continue;
    const share = { share: { value: row.topShare * 100, unit: '%' as const } };
    switch (r.rule) {
      case 'upper-large':
        found.push(finding('fitting-rule-upper-large', 'note', share, [r.source]));
        break;
      case 'upper-low-machine':
        found.push(finding('fitting-rule-upper-low-machine', 'note', share, [r.source]));
        break;
      case 'two-thirds':
        found.push(finding('fitting-rule-two-thirds', 'note', share, [r.source]));
        break;
      case 'middle-heavy':
        found.push(finding('fitting-rule-middle-heavy', 'note', {}, [r.source]));
        break;
      case 'proportional':
        found.push(finding('fitting-rule-proportional', 'note', share, [r.source]));
        break;
    }
  }
  return found;
}

import { refused, type Refused } from '../working/answer.ts';
import { finding, type Finding } from '../advice/finding.ts';
import { flowAt } from '../sprayer/flow.ts';
import { gridOf } from './grid.ts';
import { pieceAt, piecesOf, type Piece } from './pressures.ts';
import type { FittingProblem } from './problem.ts';
import { driveOf, planSpeed, rowOf, wantedFlow, type FittingRow, type RowName } from './row.ts';
import { search, type Best, type Slot, type Total, type Watch } from './search.ts';
import { whyNothing } from './refuse.ts';

/** What a search has found. */
export interface FittingList {
  /** By nozzles changed, then by match: none is beaten by another on nozzles changed, match and keeping the present speed together. */
  readonly rows: readonly FittingRow[];
  /** What taking the nearest size for each position at the present pressure gives; null where it does not fit. */
  readonly byHand: FittingRow | null;
  readonly searched: {
    readonly positions: number;
    readonly sizes: number;
    /** Decimal logarithm of the number of combinations. */
    readonly logCombinations: number;
    /** Step in which flows were counted, L/min at the present pressure; exact where the tables lie on it. */
    readonly stepLPerMin: number;
    readonly exact: boolean;
    /** Some table prints flows at several pressures: sizes were chosen by the flow at the present pressure, then the pressure was solved by the table. */
    readonly bent: boolean;
  };
  readonly findings: readonly Finding[];
}

/** A place that is decided at once: a position, or a pair kept alike. */
interface Place extends Slot {
  readonly positions: readonly number[];
}

const LIKE_BEST = 1e-9;

/**
 * Searches all combinations of sizes for those that no other beats on nozzles changed, profile match and keeping the present speed.
 * At the present speed the pressure makes the total exact; a combination that no pressure brings there is tried at the nearest other speed.
 * Refuses by name where nothing fits, with the limit that binds; and with `fitting-cancelled` where `watch.cancelled` says so.
 */
export function fit(problem: FittingProblem, watch: Watch = {}): FittingList | Refused {
  const plan = problem.pressure.presentBar;
  const coefficients = problem.sizes.map(({ table, size }) => flowAt(table, size, plan, problem.specificGravity) / Math.sqrt(plan));
  const speed = planSpeed(problem);
  // Sum of coefficients that a speed and a pressure ask for.
  const sumAt = (v: number, bar: number): number => wantedFlow(problem, v) / Math.sqrt(bar);
  const { leastBar, mostBar } = problem.pressure;
  const least = sumAt(problem.speed.leastKmH, mostBar);
  const most = Math.min(sumAt(problem.speed.mostKmH, leastBar), Math.max(...coefficients) * problem.positions.length);
  const grid = gridOf(coefficients, most);
  const units = coefficients.map((k) => Math.round(k / grid.step));
  const places = placesOf(problem, units);
  if (places.some((p) => p.choices.length === 0)) return refused('fitting-no-size', 'fitting.stock', {});

  const pieces = piecesOf(problem);
  // Flows that were rounded to the grid leave a total this uncertain: it must fit at both ends.
  const slack = grid.exact ? 0 : problem.positions.length / 2;
  const barOf = (F: number): number => (wantedFlow(problem, speed) / (F * grid.step)) ** 2;
  const here: Total[] = [];
  const elsewhere: Total[] = [];
  for (let F = Math.ceil(Math.max(1 + slack, least / grid.step - LIKE_BEST)); F <= most / grid.step + LIKE_BEST; F++) {
    const bar = barOf(F);
    const allowed = common(pieceAt(pieces, barOf(F - slack))?.allowed, pieceAt(pieces, barOf(F + slack))?.allowed);
    if (allowed) here.push({ units: F, distance: Math.abs(Math.log(bar / plan)), allowed: [allowed] });
    const others = otherSpeeds(problem, pieces, bar, speed).filter((o) => !allowed || o.piece.allowed.some((a, s) => a === 1 && allowed[s] === 0));
    if (others.length > 0) elsewhere.push({ units: F, distance: Math.min(...others.map((o) => o.distance)), allowed: distinct(others.map((o) => o.piece.allowed)) });
  }

  const share = here.length / Math.max(here.length + elsewhere.length, 1);
  const part = (from: number, length: number): Watch => ({ ...watch, progress: watch.progress && ((done) => watch.progress?.(from + done * length)) });
  const straight = search(places, here, problem.mostChanges, [], part(0, share));
  if (straight === 'cancelled') return refused('fitting-cancelled', 'fitting', {});
  const turned = search(places, elsewhere, problem.mostChanges, straight, part(share, 1 - share));
  if (turned === 'cancelled') return refused('fitting-cancelled', 'fitting', {});

  const rows = front([...new Set([...straight, ...turned])].flatMap((best) => (best ? rowFor(problem, pieces, places, best) : [])));
  if (rows.length === 0) return whyNothing(problem, pieces, places.map((p) => ({ count: p.positions.length, sizes: p.choices.map((c) => c.size) })));
  const findings = presentFindings(problem, pieces, rows);
  const byHand = handRow(problem, pieces);
  return {
    rows: named(rows, problem.fewGain),
    byHand,
    searched: {
      positions: problem.positions.length,
      sizes: problem.sizes.filter((s) => s.offered).length,
      logCombinations: places.reduce((s, p) => s + Math.log10(p.choices.length), 0),
      stepLPerMin: grid.step * Math.sqrt(plan),
      exact: grid.exact,
      bent: problem.sizes.some((s) => (s.size.points?.length ?? 0) > 0)
    },
    findings
  };
}

/** Pairs left and right where both are to be alike, else each position by itself. */
function placesOf(problem: FittingProblem, units: readonly number[]): Place[] {
  const { positions, sizes } = problem;
  const groups: number[][] = [];
  positions.forEach((p, i) => {
    const mate = problem.mirrored ? groups.find(([j, more]) => more === undefined && mates(p, positions[j!]!)) : undefined;
    if (mate) mate.push(i);
    else groups.push([i]);
  });
  return groups.map((group) => ({
    positions: group,
    shares: group.map((i) => positions[i]!.weight),
    choices: sizes.flatMap((s, size) => {
      const changes = group.filter((i) => positions[i]!.present !== size).length;
      return changes === 0 || s.offered ? [{ size, units: units[size]!, changes }] : [];
    })
  }));
}

const mates = (a: FittingProblem['positions'][number], b: FittingProblem['positions'][number]): boolean => a.side !== b.side && a.heightM === b.heightM && a.angleDeg === b.angleDeg;

/** Pressures, one of each piece, that a change of speed can make a total spray at, the nearest to the pressure that the planned speed asks for. */
function otherSpeeds(problem: FittingProblem, pieces: readonly Piece[], bar: number, speed: number): { readonly piece: Piece; readonly distance: number }[] {
  const slow = bar * (problem.speed.leastKmH / speed) ** 2;
  const fast = bar * (problem.speed.mostKmH / speed) ** 2;
  return pieces.flatMap((piece) => {
    const least = Math.max(piece.leastBar, slow);
    const most = Math.min(piece.mostBar, fast);
    if (least > most) return [];
    return [{ piece, distance: Math.abs(Math.log(Math.min(Math.max(bar, least), most) / bar)) }];
  });
}

const common = (a: Uint8Array | undefined, b: Uint8Array | undefined): Uint8Array | undefined => (a && b ? (a === b ? a : a.map((v, s) => v & b[s]!)) : undefined);
const distinct = (sets: readonly Uint8Array[]): Uint8Array[] => [...new Map(sets.map((s) => [s.join(), s])).values()];

function rowFor(problem: FittingProblem, pieces: readonly Piece[], places: readonly Place[], best: Best): FittingRow[] {
  const chosen: number[] = [];
  places.forEach((place, j) => place.positions.forEach((i) => (chosen[i] = place.choices[best.choices[j]!]!.size)));
  const drive = driveOf(problem, pieces, chosen);
  return drive ? [rowOf(problem, chosen, drive)] : [];
}

/** Those that no other beats: fewer changes, a better match, or the present speed against another. */
function front(rows: readonly FittingRow[]): FittingRow[] {
  const beats = (a: FittingRow, b: FittingRow): boolean => {
    if (a.changes > b.changes || a.match < b.match - LIKE_BEST || Number(a.atPresentSpeed) < Number(b.atPresentSpeed)) return false;
    return a.changes < b.changes || a.match > b.match + LIKE_BEST || a.atPresentSpeed !== b.atPresentSpeed;
  };
  return rows.filter((b) => !rows.some((a) => beats(a, b))).sort((a, b) => a.changes - b.changes || a.match - b.match);
}

/** Names the rows that most people want: of those at the present speed where there are any. */
function named(rows: readonly FittingRow[], fewGain: number): FittingRow[] {
  const kept = rows.filter((r) => r.atPresentSpeed);
  const among = kept.length > 0 ? kept : rows;
  const best = among.reduce((a, b) => (b.match > a.match ? b : a));
  const first = among[0]!;
  const enough = first.match + fewGain * (best.match - first.match);
  const few = among.find((r) => r.changes > 0 && r.match >= enough - LIKE_BEST) ?? best;
  const none = kept.find((r) => r.changes === 0) ?? rows.find((r) => r.changes === 0);
  return rows.map((r) => {
    const names: RowName[] = [];
    if (r === none) names.push('no-change');
    if (r === few && r.changes > 0) names.push('few-changes');
    if (r === best) names.push('best-match');
    return { ...r, names };
  });
}

/** The usual way by hand: for each position the size that is nearest to its target at the present pressure, then the pressure for the total. */
export function nearestSizes(problem: FittingProblem): number[] {
  const wanted = wantedFlow(problem, planSpeed(problem));
  const flows = problem.sizes.map(({ table, size }) => flowAt(table, size, problem.pressure.presentBar, problem.specificGravity));
  return problem.positions.map((p) => {
    let nearest = p.present;
    flows.forEach((q, s) => {
      if (problem.sizes[s]!.offered && Math.abs(q - p.weight * wanted) < Math.abs(flows[nearest]! - p.weight * wanted)) nearest = s;
    });
    return nearest;
  });
}

function handRow(problem: FittingProblem, pieces: readonly Piece[]): FittingRow | null {
  const chosen = nearestSizes(problem);
  const drive = driveOf(problem, pieces, chosen);
  return drive ? rowOf(problem, chosen, drive) : null;
}

/** Why the list has no row that keeps every nozzle. */
function presentFindings(problem: FittingProblem, pieces: readonly Piece[], rows: readonly FittingRow[]): Finding[] {
  if (rows.some((r) => r.changes === 0)) return [];
  const present = problem.positions.map((p) => p.present);
  const drive = driveOf(problem, pieces, present);
  if (drive) return [finding('fitting-sides-unlike', 'note', {}, ['habit'])];
  const speed = planSpeed(problem);
  const bar = (wantedFlow(problem, speed) / present.reduce((s, i) => s + flowAt(problem.sizes[i]!.table, problem.sizes[i]!.size, problem.pressure.presentBar, problem.specificGravity), 0)) ** 2 * problem.pressure.presentBar;
  return [finding('fitting-present-unfit', 'note', { pressure: { value: bar, unit: 'bar' }, speed: { value: speed, unit: 'km/h' } }, ['sqrt-law'])];
}

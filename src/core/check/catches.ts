import { nozzleFlow, TOTAL_FLOW } from '../sprayer/flow.ts';
import type { NozzleState, SprayerState } from '../sprayer/sprayer.ts';
import type { Side } from '../sprayer/types.ts';
import { given, isRefused, refused, valueOf, type Answer, type Given } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { diagnose } from './diagnosis.ts';
import { JUG_ERROR, JUG_FLOW, NOZZLE_OFF, NOZZLE_RATIO, NOZZLE_WEAR, SIDES_OFF } from './formulas.ts';
import { measured } from './measured.ts';
import type { CatchesState, CatchState, CatchVerdict, Measured, PressureState, Tolerance } from './state.ts';
import type { Catch, Round } from './types.ts';

/** One jug per nozzle, against its mates and against its table at the pressure that the nozzles had. */
export function catchesState(round: Round, sprayer: SprayerState, pressure: PressureState, tolerance: Tolerance, assumptions: Assumptions): CatchesState | null {
  if (!round.catches || round.catches.length === 0) return null;
  const caught = new Map(round.catches.map((c) => [c.position, c]));
  const open = sprayer.nozzles.filter((n) => n.open);
  const u = assumptions.take('check.catch-litres');
  const w = assumptions.take('check.catch-seconds');

  const singles = open.flatMap((nozzle) => {
    const c = caught.get(nozzle.position.id);
    return c ? [single(c, nozzle, pressure.atNozzles, u, w)] : [];
  });
  const meanRatio = meanOf(singles.map((s) => s.ratio), '1', 'check.catches.meanRatio');
  const middle = middleOf(singles.map((s) => valueOf(s.ratio)));
  const nozzles: CatchState[] = singles.map((s) => {
    const deviation = derive(NOZZLE_OFF, { r: s.ratio, rm: meanRatio });
    return { ...s, deviation, verdict: verdictOf(deviation, valueOf(s.ratio), middle, tolerance.mean.value) };
  });

  const spraying = open.filter((n) => n.spraying);
  const missing = spraying.filter((n) => !caught.has(n.position.id)).map((n) => n.position.id);
  const of = (side: Side): Answer => sumOf(nozzles.filter((n) => n.nozzle.spraying && n.nozzle.position.side === side), spraying.filter((n) => n.position.side === side && missing.includes(n.position.id)));
  const [left, right] = [of('left'), of('right')];
  const resolution = derive(JUG_ERROR, { ...typical(nozzles.map((n) => n.caught)), u, w });
  const total: Measured = measured(sumOf(nozzles.filter((n) => n.nozzle.spraying), spraying.filter((n) => missing.includes(n.position.id))), resolution);
  const sidesOff = derive(SIDES_OFF, { QL: left, QR: right });
  const facts = { nozzles, missing, meanRatio, sidesOff, tolerance, pressure };
  return {
    ...facts,
    shut: round.catches.filter((c) => sprayer.nozzles.some((n) => n.position.id === c.position && !n.open)).map((c) => c.position),
    meanFlow: meanOf(nozzles.map((n) => n.flow), 'L/min', 'check.catches.meanFlow'),
    left,
    right,
    mirrored: mirrored(sprayer.nozzles),
    total,
    resolution,
    // Half of the limit: what the catch leaves must not decide.
    tooCoarse: !isRefused(resolution) && resolution.value > Math.min(tolerance.mean.value, tolerance.nominal.value) / 2,
    ...diagnose(facts)
  };
}

function single(caught: Catch, nozzle: NozzleState, P: Given, u: Answer, w: Answer): Omit<CatchState, 'deviation' | 'verdict'> {
  const U = given(caught.litres, 'L', 'measured', { path: 'check.catches.litres' });
  const t = given(caught.seconds, 's', 'measured', { path: 'check.catches.seconds' });
  const flow = derive(JUG_FLOW, { U, t });
  const { table, size } = nozzle;
  // Clean water in the jug, whatever the mix will be.
  const nominal = table && size ? nozzleFlow(table, size, P, given(1, '1', 'stated', { path: 'check.water' })) : nozzle.flow;
  return { caught, nozzle, flow, nominal, ratio: derive(NOZZLE_RATIO, { q: flow, q0: nominal }), wear: derive(NOZZLE_WEAR, { q: flow, q0: nominal }), resolution: derive(JUG_ERROR, { u, U, w, t }) };
}

/**
 * Low or high where it is beyond the limit both from the mean of all and from the middle one: among few nozzles a single bad one
 * draws the mean away from the good ones.
 */
function verdictOf(deviation: Answer, ratio: number | undefined, middle: number, limit: number): CatchVerdict {
  if (isRefused(deviation) || ratio === undefined) return 'unknown';
  const fromMiddle = 100 * (ratio / middle - 1);
  const least = Math.sign(deviation.value) === Math.sign(fromMiddle) ? Math.min(Math.abs(deviation.value), Math.abs(fromMiddle)) : 0;
  if (least <= limit + 1e-9) return 'fine';
  return deviation.value < 0 ? 'low' : 'high';
}

function meanOf(answers: readonly Answer[], unit: '1' | 'L/min', path: string): Answer {
  const values = answers.flatMap((a) => valueOf(a) ?? []);
  return values.length === 0 ? refused('nothing-caught', path) : given(values.reduce((s, v) => s + v, 0) / values.length, unit, 'measured', { path, sources: ['arithmetic'] });
}

/** The middle one, or midway between the two; NaN of none. */
export function middleOf(all: readonly (number | undefined)[]): number {
  const values = all.filter((v) => v !== undefined).sort((a, b) => a - b);
  const half = values.length >> 1;
  return values.length % 2 === 1 ? values[half]! : (values[half - 1]! + values[half]!) / 2;
}

function sumOf(nozzles: readonly CatchState[], missing: readonly NozzleState[]): Answer {
  if (missing.length > 0) return refused('catch-missing', 'check.catches', { count: missing.length });
  if (nozzles.length === 0) return refused('nothing-caught', 'check.catches');
  return derive(TOTAL_FLOW, Object.fromEntries(nozzles.map((n) => [n.nozzle.position.id, n.flow])));
}

/** Mean litres and seconds of the catches: jug and watch may err the same way in all of them. */
function typical(catches: readonly Catch[]): { U: Answer; t: Answer } {
  const mean = (pick: (c: Catch) => number) => catches.reduce((s, c) => s + pick(c), 0) / catches.length;
  if (catches.length === 0) return { U: refused('nothing-caught', 'check.catches'), t: refused('nothing-caught', 'check.catches') };
  return { U: given(mean((c) => c.litres), 'L', 'measured', { path: 'check.catches.meanLitres' }), t: given(mean((c) => c.seconds), 's', 'measured', { path: 'check.catches.meanSeconds' }) };
}

/** Whether both sides carry the same sizes, open in the same places; null where the places themselves do not mirror. */
function mirrored(nozzles: readonly NozzleState[]): boolean | null {
  const place = ({ position: p }: NozzleState) => `${p.heightM.toFixed(3)}/${p.angleDeg.toFixed(2)}`;
  const carried = (n: NozzleState) => `${n.open}/${n.open ? `${n.table?.id}/${n.size?.id}` : ''}`;
  const sides = { left: new Map<string, string>(), right: new Map<string, string>() };
  for (const n of nozzles) sides[n.position.side].set(place(n), carried(n));
  if (sides.left.size !== sides.right.size || [...sides.left.keys()].some((p) => !sides.right.has(p))) return null;
  return [...sides.left].every(([p, c]) => sides.right.get(p) === c);
}

import { NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { Unit } from '../quantity/units.ts';
import type { SourceId } from '../sources/bibliography.ts';
import type { Certainty } from '../working/answer.ts';

/** Speed over a marked distance, or over all runs of one direction together. */
export const RUN_SPEED = formula('run-speed', 'v', 'km/h', { D: 'm', t: 's' }, '3.6 * D / t', (v) => (3.6 * v.D) / v.t, {
  sources: ['drome-2021'],
  range: { D: POSITIVE, t: POSITIVE }
});
/** Both directions of one strip: each covers the same land, so that the times add up, not the speeds. */
export const JOINED_SPEED = formula('joined-speed', 'v', 'km/h', { v1: 'km/h', v2: 'km/h' }, '2 / (1 / v1 + 1 / v2)', (v) => 2 / (1 / v.v1 + 1 / v.v2), {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { v1: POSITIVE, v2: POSITIVE }
});
/** Standard error of a mean of n runs; with both directions n = 4·n₁·n₂/(n₁ + n₂). */
export const SPEED_STANDARD_ERROR = formula('speed-standard-error', 'SE', 'km/h', { s: 'km/h', n: '1' }, 's / sqrt(n)', (v) => v.s / Math.sqrt(v.n), {
  sources: ['error-propagation'],
  certainty: 'derived',
  range: { s: NOT_NEGATIVE, n: POSITIVE }
});
/** What starting and stopping the watch leaves, the same way in every run; t is the mean time of a run. */
export const WATCH_SPEED_ERROR = formula('watch-speed-error', 'Ew', 'km/h', { v: 'km/h', w: 's', t: 's' }, 'v * w / t', (v) => (v.v * v.w) / v.t, {
  sources: ['error-propagation'],
  certainty: 'derived',
  range: { v: POSITIVE, w: NOT_NEGATIVE, t: POSITIVE }
});
/** 95 % half interval of the speed, never less than what the watch leaves. */
export const SPEED_ERROR = formula(
  'speed-error', 'E', '%', { T: '1', SE: 'km/h', Ew: 'km/h', v: 'km/h' }, '100 * max(T * SE, Ew) / v', (v) => (100 * Math.max(v.T * v.SE, v.Ew)) / v.v,
  { sources: ['student-1908'], certainty: 'derived', range: { T: POSITIVE, SE: NOT_NEGATIVE, Ew: NOT_NEGATIVE, v: POSITIVE } }
);

/** Litres over time: a refill after spraying on the spot, or one nozzle into a jug. */
export const JUG_FLOW = formula('jug-flow', 'Q', 'L/min', { U: 'L', t: 's' }, '60 * U / t', (v) => (60 * v.U) / v.t, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { U: NOT_NEGATIVE, t: POSITIVE }
});
/** What jug and watch leave of it. */
export const JUG_ERROR = formula(
  'jug-error', 'E', '%', { u: 'L', U: 'L', w: 's', t: 's' }, '100 * sqrt((u / U) ^ 2 + (w / t) ^ 2)', (v) => 100 * Math.sqrt((v.u / v.U) ** 2 + (v.w / v.t) ** 2),
  { sources: ['error-propagation'], certainty: 'derived', range: { u: NOT_NEGATIVE, U: POSITIVE, w: NOT_NEGATIVE, t: POSITIVE } }
);
/** How long to spray on the spot for an output within E per cent. */
export const REFILL_TIME = formula(
  'refill-time', 't', 's', { E: '%', u: 'L', Q: 'L/min', w: 's' }, '100 / E * sqrt((60 * u / Q) ^ 2 + w ^ 2)', (v) => (100 / v.E) * Math.sqrt(((60 * v.u) / v.Q) ** 2 + v.w ** 2),
  { sources: ['error-propagation'], certainty: 'derived', range: { E: POSITIVE, u: NOT_NEGATIVE, Q: POSITIVE, w: NOT_NEGATIVE } }
);
/** Litres over a distance: the volume itself, without speed or time. B is the land width that a pass serves. */
export const COURSE_VOLUME = formula('course-volume', 'V', 'L/ha', { U: 'L', D: 'm', B: 'm' }, '10000 * U / (D * B)', (v) => (10000 * v.U) / (v.D * v.B), {
  sources: ['florida-manual'],
  range: { U: NOT_NEGATIVE, D: POSITIVE, B: POSITIVE }
});
export const COURSE_ERROR = formula('course-error', 'E', '%', { u: 'L', U: 'L' }, '100 * u / U', (v) => (100 * v.u) / v.U, {
  sources: ['error-propagation'],
  certainty: 'derived',
  range: { u: NOT_NEGATIVE, U: POSITIVE }
});
/** How far to spray for a volume within E per cent. */
export const COURSE_LENGTH = formula(
  'course-length', 'D', 'm', { u: 'L', E: '%', V: 'L/ha', B: 'm' }, '1000000 * u / (E * V * B)', (v) => (1_000_000 * v.u) / (v.E * v.V * v.B),
  { sources: ['error-propagation'], certainty: 'derived', range: { u: NOT_NEGATIVE, E: POSITIVE, V: POSITIVE, B: POSITIVE } }
);

/** Flow of a nozzle over that of its table. */
export const NOZZLE_RATIO = formula('nozzle-ratio', 'r', '1', { q: 'L/min', q0: 'L/min' }, 'q / q0', (v) => v.q / v.q0, {
  sources: ['deveau-2009'],
  range: { q: NOT_NEGATIVE, q0: POSITIVE }
});
/** Left against right, of their mean. */
export const SIDES_OFF = formula('sides-off', 'd', '%', { QL: 'L/min', QR: 'L/min' }, '200 * (QL - QR) / (QL + QR)', (v) => (200 * (v.QL - v.QR)) / (v.QL + v.QR), {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { QL: NOT_NEGATIVE, QR: NOT_NEGATIVE }
});

/** How far one value is from another of the same unit, % of the other. */
const off = (id: string, unit: Unit, a: string, b: string, sources: readonly SourceId[], certainty: Certainty = 'derived') =>
  formula<string>(id, 'd', '%', { [a]: unit, [b]: unit }, `100 * (${a} / ${b} - 1)`, (v) => 100 * (v[a]! / v[b]! - 1), { sources, certainty, range: { [a]: NOT_NEGATIVE, [b]: POSITIVE } });
export const RUN_OFF = off('run-off', 'km/h', 'v', 'vm', ['arithmetic']);
export const DISPLAY_OFF = off('display-off', 'km/h', 'vd', 'v', ['ucce-preseason']);
export const SPEED_OFF = off('speed-off', 'km/h', 'v', 'vs', ['arithmetic']);
export const NOZZLE_OFF = off('nozzle-off', '1', 'r', 'rm', ['florida-manual']);
export const NOZZLE_WEAR = off('nozzle-wear', 'L/min', 'q', 'q0', ['deveau-2009']);
export const VOLUME_OFF = off('volume-off', 'L/ha', 'V', 'Vw', ['ozkan-2021']);
export const GAUGE_OFF = off('gauge-off', 'bar', 'P', 'Pm', ['arithmetic']);
export const ONE_SIDE_OFF = off('one-side-off', 'bar', 'P1', 'P', ['arithmetic']);
export const USED_OFF = off('used-off', 'L', 'U', 'Up', ['arithmetic']);

/** Pressure lost on the way to the far nozzle, and the flow lost with it by the square root. */
export const PRESSURE_LOSS = formula('pressure-loss', 'd', '%', { P: 'bar', Pf: 'bar' }, '100 * (1 - Pf / P)', (v) => 100 * (1 - v.Pf / v.P), {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { P: POSITIVE, Pf: NOT_NEGATIVE }
});
export const FLOW_LOSS = formula('flow-loss', 'd', '%', { P: 'bar', Pf: 'bar' }, '100 * (1 - sqrt(Pf / P))', (v) => 100 * (1 - Math.sqrt(v.Pf / v.P)), {
  sources: ['sqrt-law'],
  certainty: 'derived',
  range: { P: POSITIVE, Pf: NOT_NEGATIVE }
});

/** Exponent that joins two flows and their pressures; one half by the square-root law. */
export const FLOW_EXPONENT = formula(
  'flow-exponent', 'b', '1', { q1: 'L/min', q2: 'L/min', P1: 'bar', P2: 'bar' }, 'log(q2 / q1) / log(P2 / P1)', (v) => Math.log(v.q2 / v.q1) / Math.log(v.P2 / v.P1),
  { sources: ['sqrt-law'], certainty: 'derived', range: { q1: POSITIVE, q2: POSITIVE, P1: POSITIVE, P2: POSITIVE } }
);

/** All nozzles being alike, flow goes with how many are open. */
export const FLOW_BY_COUNT = formula('flow-by-count', 'Q', 'L/min', { Q1: 'L/min', n1: '1', n2: '1' }, 'Q1 * n2 / n1', (v) => (v.Q1 * v.n2) / v.n1, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { Q1: NOT_NEGATIVE, n1: POSITIVE, n2: POSITIVE }
});
/** Flow of the mix from that of clean water. */
export const MIX_FLOW = formula('mix-flow', 'Q', 'L/min', { Q1: 'L/min', SG: '1' }, 'Q1 / sqrt(SG)', (v) => v.Q1 / Math.sqrt(v.SG), {
  sources: ['nebraska-2016'],
  range: { Q1: NOT_NEGATIVE, SG: [0.5, 2] }
});
/** Errors of flow and speed together, which do not depend on each other. */
export const VOLUME_ERROR = formula('volume-error', 'E', '%', { EQ: '%', Ev: '%' }, 'sqrt(EQ ^ 2 + Ev ^ 2)', (v) => Math.hypot(v.EQ, v.Ev), {
  sources: ['error-propagation'],
  certainty: 'derived',
  range: { EQ: NOT_NEGATIVE, Ev: NOT_NEGATIVE }
});

/** Flow wanted over flow measured. */
export const FLOW_RATIO = formula('flow-ratio', 'r', '1', { Q2: 'L/min', Q1: 'L/min' }, 'Q2 / Q1', (v) => v.Q2 / v.Q1, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { Q2: NOT_NEGATIVE, Q1: POSITIVE }
});
/** Flow error that is left when pressure is changed in proportion to the flow: it closes half of the logarithmic gap. For teaching. */
export const SHORTCUT_ERROR = formula('shortcut-error', 'd', '%', { r: '1' }, '100 * (1 / sqrt(r) - 1)', (v) => 100 * (1 / Math.sqrt(v.r) - 1), {
  sources: ['sqrt-law'],
  certainty: 'derived',
  range: { r: POSITIVE }
});
/** Air per metre of row goes with one over the speed. */
export const AIR_CHANGE = formula('air-change', 'd', '%', { v1: 'km/h', v2: 'km/h' }, '100 * (v1 / v2 - 1)', (v) => 100 * (v.v1 / v.v2 - 1), {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { v1: POSITIVE, v2: POSITIVE }
});
/** Litres that a setting says an area takes. */
export const LITRES_FOR_AREA = formula('litres-for-area', 'U', 'L', { A: 'ha', V: 'L/ha' }, 'A * V', (v) => v.A * v.V, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { A: POSITIVE, V: NOT_NEGATIVE }
});

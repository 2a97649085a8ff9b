import type { Assumption } from '../working/assumption.ts';
import { given, type Answer, type Given } from '../working/answer.ts';
import { derive, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { DropletClass, NozzleSize, NozzleTable } from './types.ts';

/**
 * Flow of one nozzle by the square-root law from the table's own reference pressure, and by √SG for the liquid's density.
 * The shortcut that scales pressure in proportion to the wanted flow is wrong (it closes half of the logarithmic gap) and is used nowhere.
 */
export const NOZZLE_FLOW = formula(
  'nozzle-flow', 'q', 'L/min', { q1: 'L/min', P: 'bar', P1: 'bar', SG: '1' }, 'q1 * sqrt(P / P1) / sqrt(SG)',
  (v) => (v.q1 * Math.sqrt(v.P / v.P1)) / Math.sqrt(v.SG),
  { sources: ['sqrt-law', 'nebraska-2016'], range: { q1: POSITIVE, P: POSITIVE, P1: POSITIVE, SG: [0.5, 2] } }
);

/** Flow between two printed pressures: the exponent that joins them. */
export const NOZZLE_FLOW_BETWEEN = formula(
  'nozzle-flow-between', 'q', 'L/min', { q1: 'L/min', P: 'bar', P1: 'bar', q2: 'L/min', P2: 'bar', SG: '1' },
  'q1 * (P / P1) ^ (log(q2 / q1) / log(P2 / P1)) / sqrt(SG)',
  (v) => (v.q1 * (v.P / v.P1) ** (Math.log(v.q2 / v.q1) / Math.log(v.P2 / v.P1))) / Math.sqrt(v.SG),
  { sources: ['sqrt-law', 'nebraska-2016'], certainty: 'derived', range: { q1: POSITIVE, P: POSITIVE, P1: POSITIVE, q2: POSITIVE, P2: POSITIVE, SG: [0.5, 2] } }
);

/** Pressure for another flow of the same nozzles: P₂ = P₁·(q₂/q₁)². */
export const PRESSURE_FOR_FLOW = formula(
  'pressure-for-flow', 'P2', 'bar', { P1: 'bar', Q2: 'L/min', Q1: 'L/min' }, 'P1 * (Q2 / Q1) ^ 2', (v) => v.P1 * (v.Q2 / v.Q1) ** 2,
  { sources: ['sqrt-law'], range: { P1: POSITIVE, Q2: POSITIVE, Q1: POSITIVE } }
);

/** Adds up as many flows as there are: the one formula without a fixed list of inputs. */
export const TOTAL_FLOW = formula(
  'total-flow', 'Q', 'L/min', {} as Record<string, 'L/min'>, 'sum of inputs', (v) => Object.values(v).reduce((s, q) => s + q, 0),
  { sources: ['arithmetic'], certainty: 'exact' }
);

export const FLOW_ASSUMPTIONS: readonly Assumption[] = [
  { id: 'mix.specific-gravity', value: 1, unit: '1', least: 0.7, most: 1.8, certainty: 'assumed', sources: ['nebraska-2016'] }
];

/** The printed pressures on both sides of one, or the single nearest; the table's reference where none are printed. */
function anchors(table: NozzleTable, size: NozzleSize, bar: number) {
  const points = size.points;
  if (!points || points.length === 0) return { low: { pressureBar: table.referenceBar, flowLPerMin: size.flowLPerMin }, high: null };
  const above = points.findIndex((p) => p.pressureBar >= bar);
  const low = points[above === -1 ? points.length - 1 : Math.max(above - 1, 0)]!;
  const high = above > 0 ? points[above]! : null;
  return { low, high: high && high.pressureBar > low.pressureBar ? high : null };
}

/** Flow of one nozzle size at a pressure, L/min, with its working. */
export function nozzleFlow(table: NozzleTable, size: NozzleSize, P: Given, SG: Given): Answer {
  const { low, high } = anchors(table, size, P.value);
  const path = `${table.id}/${size.id}`;
  const q1 = given(low.flowLPerMin, 'L/min', 'stated', { path });
  const P1 = given(low.pressureBar, 'bar', 'stated', { path });
  if (!high) return derive(NOZZLE_FLOW, { q1, P1, P, SG });
  return derive(NOZZLE_FLOW_BETWEEN, { q1, P1, q2: given(high.flowLPerMin, 'L/min', 'stated', { path }), P2: given(high.pressureBar, 'bar', 'stated', { path }), P, SG });
}

/** The same as a bare number, for searches. */
export function flowAt(table: NozzleTable, size: NozzleSize, bar: number, specificGravity: number): number {
  const { low, high } = anchors(table, size, bar);
  const v = { q1: low.flowLPerMin, P1: low.pressureBar, P: bar, SG: specificGravity };
  return high ? NOZZLE_FLOW_BETWEEN.compute({ ...v, q2: high.flowLPerMin, P2: high.pressureBar }) : NOZZLE_FLOW.compute(v);
}

/** Droplet class that the table prints for a pressure; undefined where it prints none. */
export const dropletClass = (size: NozzleSize, bar: number): DropletClass | undefined => size.droplets?.findLast((d) => d.fromBar <= bar)?.class;


import type { SourceId } from '../sources/bibliography.ts';
import type { Certainty } from '../working/answer.ts';
import type { FittingProblem } from './problem.ts';

/**
 * Published rules for spreading the flow over the height. They contradict each other, and the canopy's own profile: a fitting is held against
 * those that were meant for such a machine and such trees, and what differs is said, not forced.
 */
export interface Rule {
  readonly id: 'upper-large' | 'upper-low-machine' | 'two-thirds' | 'middle-heavy' | 'proportional';
  /** Share through the upper half of the open nozzles; none where the rule is about the middle. */
  readonly upper?: readonly [number, number];
  readonly source: SourceId;
  readonly certainty: Certainty;
  /** Was it meant for this machine before these trees? */
  suits(problem: FittingProblem): boolean;
}

const arc = ({ outlet }: FittingProblem): boolean => outlet.kind === 'arc';
/** How far the canopy stands above the upper end of a radial fan's slot, m; none for other outlets. */
const aboveArc = ({ outlet, canopyTopM }: FittingProblem): number =>
  outlet.kind === 'arc' ? canopyTopM - outlet.axisHeightM - outlet.radiusM * (outlet.toDeg >= 90 ? 1 : Math.sin((outlet.toDeg * Math.PI) / 180)) : NaN;
/** More than this above the outlet, a radial fan has to throw upward; from memory. */
const HIGH_ABOVE_OUTLET_M = 2;

export const RULES: readonly Rule[] = [
  { id: 'upper-large', upper: [0.65, 0.8], source: 'niederholzer-2023', certainty: 'published', suits: (p) => aboveArc(p) > HIGH_ABOVE_OUTLET_M },
  // Trees of 20 to 25 ft.
  { id: 'upper-low-machine', upper: [0.68, 0.72], source: 'brann-1965', certainty: 'published', suits: (p) => arc(p) && p.canopyTopM >= 6 && p.canopyTopM <= 7.6 },
  { id: 'two-thirds', upper: [0.65, 0.69], source: 'habit', certainty: 'memory', suits: (p) => aboveArc(p) > 0 },
  { id: 'middle-heavy', source: 'comite-citricos-2024', certainty: 'published', suits: (p) => arc(p) && p.evergreen },
  { id: 'proportional', upper: [0.5, 0.6], source: 'habit', certainty: 'memory', suits: (p) => p.outlet.kind === 'tower' }
];

export interface RuleReport {
  readonly rule: Rule['id'];
  readonly suits: boolean;
  readonly met: boolean;
  readonly least?: number;
  readonly most?: number;
  readonly source: SourceId;
  readonly certainty: Certainty;
}

/** Half a point either way is how a share is read. */
const READ = 0.005;

/** @param topShare share through the upper half @param largestInMiddle the largest nozzle of each side stands in the middle third of the open ones */
export const ruleReports = (problem: FittingProblem, topShare: number, largestInMiddle: boolean): RuleReport[] =>
  RULES.map((r) => ({
    rule: r.id,
    suits: r.suits(problem),
    met: r.upper ? topShare >= r.upper[0] - READ && topShare <= r.upper[1] + READ : largestInMiddle,
    ...(r.upper ? { least: r.upper[0], most: r.upper[1] } : {}),
    source: r.source,
    certainty: r.certainty
  }));

import { NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';

/** What one position should give: its share of the wanted flow. */
export const TARGET_FLOW = formula('target-flow', 'qw', 'L/min', { w: '1', Q: 'L/min' }, 'w * Q', (v) => v.w * v.Q, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { w: [0, 1], Q: NOT_NEGATIVE }
});

/** How far one position is from what it should give. */
export const OFF_TARGET = formula('off-target', 'd', '1', { q: 'L/min', qw: 'L/min' }, 'q / qw - 1', (v) => v.q / v.qw - 1, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { q: NOT_NEGATIVE, qw: POSITIVE }
});

/** Overlap of two profiles, Σ min(share, weight), from the sum e of their differences without sign: both add up to 1. */
export const PROFILE_MATCH = formula('profile-match', 'M', '1', { e: '1' }, '1 - e / 2', (v) => 1 - v.e / 2, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { e: [0, 2] }
});

/** Share of the flow that leaves through the upper half of the open nozzles. */
export const TOP_SHARE = formula('top-share', 'St', '1', { qt: 'L/min', Q: 'L/min' }, 'qt / Q', (v) => v.qt / v.Q, {
  sources: ['niederholzer-2023'],
  certainty: 'derived',
  range: { qt: NOT_NEGATIVE, Q: POSITIVE }
});

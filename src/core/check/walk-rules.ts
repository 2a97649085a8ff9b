import { finding, type Finding } from '../advice/finding.ts';
import type { WalkState } from './state.ts';
import { TOOLS, type Check, type TickItem } from './types.ts';

/** Nobody goes on with one of these. */
const STOPS: ReadonlySet<TickItem> = new Set<TickItem>(['leaks', 'guards', 'water-only', 'protection']);
const TOOL: ReadonlySet<TickItem> = new Set<TickItem>(TOOLS);

/** What each fault does to the result, one line each; and what nobody has looked at. */
export function walkFindings(check: Check, walk: WalkState): Finding[] {
  const faults = (check.ticks ?? []).filter((t) => t.state === 'fault').map((t) => finding(`check-fault-${t.item}`, STOPS.has(t.item) ? 'stop' : TOOL.has(t.item) ? 'note' : 'warn', {}, [], 'check.ticks'));
  const timed = check.rounds.some((r) => r.runs?.length);
  return [
    ...faults,
    ...(walk.open.length > 0 ? [finding('check-walk-open', 'note', { open: String(walk.open.length), of: String(walk.of) }, [], 'check.ticks')] : []),
    ...(timed && walk.termsOpen.length > 0 ? [finding('check-terms-open', 'note', { open: String(walk.termsOpen.length) }, ['habit'], 'check.ticks')] : [])
  ];
}

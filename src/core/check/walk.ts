import type { WalkState } from './state.ts';
import { RUN_TERMS, TOOLS, WALK, type Check, type TickItem } from './types.ts';

/** What was looked at before anything was started. */
export function walkState({ ticks = [] }: Check): WalkState {
  const states = new Map(ticks.map((t) => [t.item, t.state]));
  const found = (items: readonly TickItem[], state: 'fine' | 'fault' | undefined) => items.filter((i) => states.get(i) === state);
  const open = found(WALK, undefined);
  return {
    faults: found(WALK, 'fault'),
    open,
    toolsOpen: TOOLS.filter((i) => states.get(i) !== 'fine'),
    termsBroken: found(RUN_TERMS, 'fault'),
    termsOpen: found(RUN_TERMS, undefined),
    done: WALK.length - open.length,
    of: WALK.length
  };
}

import type { Tick, TickItem } from '#core/check/types.ts';
import type { Headland } from '#workspace/headland.svelte.ts';

export const stateOf = (headland: Headland, item: TickItem): Tick['state'] | undefined => headland.check.ticks?.find((t) => t.item === item)?.state;

/** Writes down what was found; the same again takes it back. */
export function tick(headland: Headland, item: TickItem, state: Tick['state']): void {
  const others = headland.check.ticks?.filter((t) => t.item !== item) ?? [];
  const ticks = stateOf(headland, item) === state ? others : [...others, { item, state }];
  headland.editCheck({ ticks: ticks.length > 0 ? ticks : undefined });
}

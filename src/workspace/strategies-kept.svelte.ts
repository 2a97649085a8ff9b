import { BlockTable } from './block-table.svelte.ts';
import { StrategiesView } from './strategies.svelte.ts';
import { Sureness } from './sureness.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

/** One of its kind for each workspace, for as long as that lives: whoever looks at another view comes back to what was there. */
function kept<T>(make: (workspace: Workspace) => T): (workspace: Workspace) => T {
  const all = new WeakMap<Workspace, T>();
  return (workspace) => {
    const before = all.get(workspace);
    if (before) return before;
    let made!: T;
    // What is derived in it belongs to no view, and outlives them all.
    $effect.root(() => {
      made = make(workspace);
    });
    all.set(workspace, made);
    return made;
  };
}

export const blockTableOf = kept((workspace) => new BlockTable(workspace));
export const comparisonOf = kept((workspace) => {
  const view = new StrategiesView(workspace);
  return { view, sure: new Sureness(view) };
});

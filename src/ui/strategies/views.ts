import type { Component } from 'svelte';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Workspace } from '#workspace/workspace.svelte.ts';

export const VIEW_IDS = ['block', 'season', 'table'] as const;
export type ViewId = (typeof VIEW_IDS)[number];

type View = Component<{ workspace: Workspace; system: UnitSystem }>;
type Fetch = () => Promise<{ default: View }>;

/** Each view is fetched when it is first looked at. A view that is not built is not offered. */
const BUILT = import.meta.glob<{ default: View }>(['./BlockView.svelte', './TableView.svelte', '../season/Season.svelte']);

export const VIEWS: ReadonlyMap<ViewId, Fetch> = new Map(
  ([
    ['block', './BlockView.svelte'],
    ['season', '../season/Season.svelte'],
    ['table', './TableView.svelte']
  ] as const).flatMap(([id, path]): [ViewId, Fetch][] => (BUILT[path] ? [[id, BUILT[path]]] : []))
);

export const viewOf = (name: string): ViewId => [...VIEWS.keys()].find((v) => v === name) ?? 'block';

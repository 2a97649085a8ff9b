import type { Component } from 'svelte';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Headland } from '#workspace/headland.svelte.ts';
import type { Workspace } from '#workspace/workspace.svelte.ts';

/** What every step is given. */
export interface StepProps {
  workspace: Workspace;
  system: UnitSystem;
  headland: Headland;
}

type Load = () => Promise<{ default: Component<StepProps> }>;

const FOUND = import.meta.glob('./*Step.svelte') as Record<string, Load>;
const ORDER = ['before', 'speed', 'output', 'result', 'fitting', 'loads', 'record', 'card'] as const;

/** The steps in the order of the work, each loaded when it is first shown. */
export const STEPS = Object.fromEntries(
  ORDER.flatMap((name) => {
    const load = FOUND[`./${name.charAt(0).toUpperCase()}${name.slice(1)}Step.svelte`];
    return load ? [[name, load]] : [];
  })
) as Record<Step, Load>;

export type Step = (typeof ORDER)[number];
export const isStep = (name: string): name is Step => Object.hasOwn(STEPS, name);

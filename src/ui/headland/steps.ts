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

/** The steps in the order of the work, each loaded when it is first shown. */
export const STEPS = {
  before: () => import('./BeforeStep.svelte'),
  speed: () => import('./SpeedStep.svelte'),
  output: () => import('./OutputStep.svelte'),
  result: () => import('./ResultStep.svelte'),
  fitting: () => import('./FittingStep.svelte'),
  loads: () => import('./LoadsStep.svelte'),
  record: () => import('./RecordStep.svelte'),
  card: () => import('./CardStep.svelte')
} satisfies Record<string, () => Promise<{ default: Component<StepProps> }>>;

export type Step = keyof typeof STEPS;
export const isStep = (name: string): name is Step => Object.hasOwn(STEPS, name);

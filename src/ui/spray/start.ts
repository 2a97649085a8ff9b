import { SprayView } from '#workspace/spray.svelte.ts';
import type { Workspace } from '#workspace/workspace.svelte.ts';
import Layer from './Layer.svelte';
import Controls from './LayerControls.svelte';
import Panel from './SprayPanel.svelte';
import '#words/spray/join.ts';

const PARTS = { Layer, Controls, Panel };
/** The spray model with all that shows it: one door, so that it is fetched as a whole and not before it is asked for. */
export type Spray = typeof PARTS & { readonly view: SprayView };
export const start = (workspace: Workspace): Spray => ({ ...PARTS, view: new SprayView(workspace) });

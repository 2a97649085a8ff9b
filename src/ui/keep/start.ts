import type { Document } from '#core/setting/document.ts';
import type { Workspace } from '#workspace/workspace.svelte.ts';
import Bar from './Bar.svelte';
import Broken from './Broken.svelte';
import { Desk } from './desk.svelte.ts';
import Earlier from './Earlier.svelte';
import Sheets from './Sheets.svelte';

const PARTS = { Bar, Broken, Earlier, Sheets };
/** Keeping with all that shows it: one door, fetched after the first drawing stands. */
export type Keep = typeof PARTS & { readonly desk: Desk };
export async function start(workspace: Workspace, demo: Document): Promise<Keep> {
  const desk = new Desk(workspace, demo);
  await desk.start();
  return { ...PARTS, desk };
}

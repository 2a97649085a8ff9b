import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import '../../src/words/headland/join.ts';
import BeforeStep from '../../src/ui/headland/BeforeStep.svelte';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

async function step() {
  const workspace = new Workspace(demo as unknown as Document);
  const headland = new Headland(workspace);
  const screen = await render(BeforeStep, { workspace, headland, system: 'metric' });
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click();
  return { workspace, headland, screen, press };
}

describe('before you start', () => {
  it('counts what was looked at, and says what a fault does to the result', async () => {
    const { screen, press } = await step();
    await expect.element(screen.getByText('0 of 13')).toBeVisible();
    await press('No leaks: fault');
    await press('Agitation works: fine');
    await expect.element(screen.getByText('2 of 13')).toBeVisible();
    await expect.element(screen.getByText('1 fault', { exact: true })).toBeVisible();
    await expect.element(screen.getByText(/counted as sprayed/)).toBeVisible();
  });
  it('is part of the document: it can be undone, and reads again', async () => {
    const { workspace, screen, press } = await step();
    await press('No leaks: fault');
    await press('Graduated jug: with me');
    expect(workspace.rung.check?.ticks).toEqual([
      { item: 'leaks', state: 'fault' },
      { item: 'jug', state: 'fine' }
    ]);
    expect(checkDocument(workspace.document).ok).toBe(true);
    workspace.undo();
    workspace.undo();
    await expect.element(screen.getByRole('button', { name: 'No leaks: fault' })).toHaveAttribute('aria-pressed', 'false');
    expect(workspace.rung.check?.ticks ?? []).toEqual([]);
  });
  it('the same again takes it back; the other one changes it', async () => {
    const { headland, press } = await step();
    await press('PTO speed is right: fine');
    await press('PTO speed is right: fault');
    expect(headland.check.ticks).toEqual([{ item: 'pto', state: 'fault' }]);
    await press('PTO speed is right: fault');
    expect(headland.check.ticks).toBeUndefined();
  });
});

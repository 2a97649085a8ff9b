import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { fit, type FittingList } from '../../src/core/fitting/fit.ts';
import type { Document } from '../../src/core/setting/document.ts';
import { refused, valueOf, type Refused } from '../../src/core/working/answer.ts';
import { checkDocument } from '../../src/job/read.ts';
import type { StartFitting } from '../../src/store/fitting/client.ts';
import FittingStep from '../../src/ui/headland/FittingStep.svelte';
import '../../src/words/headland/join.ts';
import { FittingSearch } from '../../src/workspace/fitting.svelte.ts';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

/** A search in the page's own thread. */
const atOnce: StartFitting = (problem) => ({ found: Promise.resolve(fit(problem)), cancel: () => {} });

async function step(begin: StartFitting | null = atOnce, system: 'metric' | 'us' = 'metric') {
  const workspace = new Workspace(demo as unknown as Document);
  const headland = new Headland(workspace);
  const search = begin ? new FittingSearch(workspace, begin) : new FittingSearch(workspace);
  const screen = await render(FittingStep, { workspace, headland, system, search });
  return { workspace, headland, search, screen };
}

describe('fitting nozzles', () => {
  it('a worker finds the short list, and no change of nozzles is on it', async () => {
    const { screen } = await step(null);
    await expect.element(screen.getByRole('article', { name: 'No change of nozzles' }), { timeout: 15_000 }).toBeVisible();
    await expect.element(screen.getByRole('article', { name: 'Best match' })).toBeVisible();
  });
  it('shows sizes with their colours and what changes', async () => {
    const { screen } = await step();
    const card = screen.getByRole('article', { name: 'Few changes' });
    await expect.element(card).toBeVisible();
    await expect.element(card.getByRole('row', { name: /L8 R8 0050 purple was 01/ })).toBeVisible();
  });
  it('sets sizes and pressure in one step of undo, and the volume is the wanted one', async () => {
    const { screen, workspace } = await step();
    const before = workspace.document;
    await screen.getByRole('button', { name: 'Use: Best match' }).click();
    expect(checkDocument(workspace.document).ok).toBe(true);
    expect(workspace.rung.setting.nozzles?.length).toBeGreaterThan(0);
    expect(valueOf(workspace.result.sprayer.volume)).toBeCloseTo(400, 0);
    await expect.element(screen.getByText('This is set now')).toBeVisible();
    await screen.getByRole('button', { name: 'Undo' }).click();
    expect(workspace.document).toBe(before);
  });
  it('a wish narrows the list', async () => {
    const { screen, headland, workspace } = await step();
    await expect.element(screen.getByRole('article', { name: 'Best match' })).toBeVisible();
    headland.editFitting({ mostChanges: 2 });
    await expect.element(screen.getByText('4 nozzles changed')).not.toBeInTheDocument();
    await screen.getByText('Sizes to choose from: 17 of 17').click();
    await screen.getByRole('checkbox', { name: '0050 purple' }).click();
    await expect.element(screen.getByText('Sizes to choose from: 16 of 17')).toBeVisible();
    expect(workspace.rung.fitting?.stock?.length).toBe(16);
    await screen.getByRole('checkbox', { name: '0050 purple' }).click();
    expect(workspace.rung.fitting?.stock).toBeUndefined();
  });
  it('what lies in the drawer is counted, the rest is to buy', async () => {
    const { screen, headland } = await step();
    headland.editFitting({ stock: [{ table: 'iso-10625', size: '0050', count: 1 }] });
    const best = screen.getByRole('article', { name: /Best match/ });
    await expect.element(best).toBeVisible();
    // Only 0050 may be fitted anew, and one of them is at hand.
    const text = best.element().textContent ?? '';
    const changed = Number(/(\d+) nozzles changed/.exec(text)?.[1]);
    expect(changed).toBeGreaterThan(1);
    expect(text).toContain(`${changed - 1} to buy`);
    expect(text).toContain(`${changed} × 0050 purple (buy ${changed - 1})`);
  });
  it('own weights are typed for a pair', async () => {
    const { screen, workspace } = await step();
    await screen.getByLabelText('Spread of the flow').selectOptions('own');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('No open position has a weight');
    await screen.getByRole('spinbutton', { name: 'Weight of L3' }).fill('5');
    expect(workspace.rung.fitting?.weights).toEqual([{ position: 'L3', weight: 5 }, { position: 'R3', weight: 5 }]);
    await expect.element(screen.getByRole('article', { name: 'Best match' })).toBeVisible();
  });
  it('nothing that fits is refused by name', async () => {
    const { screen, headland } = await step();
    headland.editFitting({ targetLPerHa: 9000, stock: [{ table: 'iso-10625', size: '01' }] });
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/The largest sizes at the highest pressure and the lowest speed give .* L\/ha; wanted are 9.?000 L\/ha/);
  });
  it('a search can be stopped and run again', async () => {
    let settle: (list: FittingList | Refused) => void = () => {};
    let tell: (done: number) => void = () => {};
    let cancelled = 0;
    const slow: StartFitting = (_, progress) => {
      tell = progress;
      return { found: new Promise((resolve) => (settle = resolve)), cancel: () => (cancelled++, settle(refused('fitting-cancelled', 'fitting', {}))) };
    };
    const { screen } = await step(slow);
    await expect.element(screen.getByRole('progressbar')).toBeVisible();
    tell(0.42);
    await expect.element(screen.getByText('42 % done')).toBeVisible();
    await screen.getByRole('button', { name: 'Stop' }).click();
    expect(cancelled).toBe(1);
    await expect.element(screen.getByText('Stopped.')).toBeVisible();
    await screen.getByRole('button', { name: 'Search' }).click();
    await expect.element(screen.getByRole('progressbar')).toBeVisible();
  });
  it('US units', async () => {
    const { screen } = await step(atOnce, 'us');
    const card = screen.getByRole('article', { name: 'Best match' });
    await expect.element(card).toBeVisible();
    expect(card.element().textContent).toMatch(/psi/);
    expect(card.element().textContent).not.toMatch(/\bbar\b|km\/h|L\/ha|L\/min/);
  });
});

import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import ResultStep from '../../src/ui/headland/ResultStep.svelte';
import '../../src/words/headland/join.ts';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

/** 17.6 L/min at 5.4 km/h in rows of 3.5 m: 559 L/ha (common practice, no source). */
async function step(wanted: number | null, litres = 52.8) {
  const workspace = new Workspace(demo as unknown as Document);
  const headland = new Headland(workspace);
  workspace.editBlock({ rowSpacingM: 3.5, ...(wanted === null ? {} : { ownWaterLPerHa: wanted }) });
  if (litres > 0)
    headland.editRound({
      runs: [
        { distanceM: 100, seconds: 66.7, direction: 'out' },
        { distanceM: 100, seconds: 66.6, direction: 'back' },
        { distanceM: 100, seconds: 66.7, direction: 'out' },
        { distanceM: 100, seconds: 66.6, direction: 'back' }
      ],
      refill: { kind: 'standing', seconds: 180, litres }
    });
  const screen = await render(ResultStep, { workspace, headland, system: 'metric' });
  const cards = () => [...screen.container.querySelectorAll('.cards > li')].map((li) => li.textContent ?? '');
  return { workspace, headland, screen, cards };
}
const big = (screen: { container: HTMLElement }) => screen.container.querySelector('[data-figure=volume] strong')?.textContent;

describe('result', () => {
  it('17.6 L/min at 5.4 km/h and 3.5 m is 559 L/ha (common practice, no source)', async () => {
    const { screen, cards } = await step(559);
    expect(big(screen)).toBe('559');
    await expect.element(screen.getByText('within tolerance').first()).toBeVisible();
    expect(cards()).toEqual([]);
  });
  it('says what is missing before it was measured, and where to go', async () => {
    const { screen } = await step(559, 0);
    expect(big(screen)).toBe('–');
    await expect.element(screen.getByText('not known yet').first()).toBeVisible();
    await expect.element(screen.getByRole('link', { name: 'Go to Speed' })).toHaveAttribute('href', '#headland/speed');
  });
  it('three remedies: nozzles for large, speed for moderate, pressure for fine gaps; one fits', async () => {
    const { cards } = await step(503);
    expect(cards().map((c) => /for (large|moderate|fine) corrections/.exec(c)?.[1])).toEqual(['large', 'moderate', 'fine']);
    expect(cards().filter((c) => c.includes('fits this gap'))).toHaveLength(1);
  });
  it('by speed: measured over wanted volume times speed (common practice, no source), in one step with the new round', async () => {
    const { screen, workspace, headland } = await step(503);
    const before = workspace.rung.setting.speedKmH;
    await screen.getByRole('button', { name: /^Use: By speed/ }).click();
    expect(workspace.rung.setting.speedKmH).toBeCloseTo((559 / 503) * 5.4, 1);
    expect(headland.check.rounds).toHaveLength(2);
    expect(headland.round.setting.speedKmH).toBe(workspace.rung.setting.speedKmH);
    await expect.element(screen.getByText('Taken into the setting; a new round has begun.')).toBeVisible();
    expect(checkDocument(workspace.document).ok).toBe(true);
    workspace.undo();
    expect(workspace.rung.setting.speedKmH).toBe(before);
    expect(headland.check.rounds).toHaveLength(1);
  });
  it('pressure in proportion, 0.9 of the flow wanted: 5.4 % too much is left (derived)', async () => {
    const { screen } = await step(502.9);
    await expect.element(screen.getByText(/Why not pressure in proportion/)).toBeVisible();
    expect(screen.container.querySelector('.teach')?.textContent).toMatch(/× 0\.90.*\+5\.4\s%/);
  });
  it('the trail has every round, the last one last', async () => {
    const { screen, headland } = await step(503);
    await screen.getByRole('button', { name: 'Check again: new round' }).click();
    headland.editRound({ refill: { kind: 'standing', seconds: 180, litres: 47.5 } });
    const rows = () => [...screen.container.querySelectorAll('tbody tr')].map((r) => r.textContent ?? '');
    await expect.poll(() => rows().length).toBe(2);
    expect(rows()[0]).toMatch(/559/);
    // 47.5 L in 3 min at the speed that still holds: 15.83 · 600 / (5.4 · 3.5).
    expect(rows()[1]).toMatch(/503.*within tolerance/);
  });
  it('findings stand worst first, each with its severity as a word', async () => {
    const { screen, headland } = await step(400);
    headland.editCheck({ ticks: [{ item: 'guards', state: 'fault' }] });
    const first = screen.getByRole('list', { name: 'Findings' }).getByRole('listitem').first();
    await expect.element(first).toHaveTextContent(/^\s*stop/);
    await expect.element(first).toHaveTextContent(/guard/);
  });
  it('the working of the volume unfolds down to litres and seconds', async () => {
    const { screen } = await step(559);
    await screen.getByRole('button', { name: 'Working of Measured' }).click();
    await expect.element(screen.getByText('V = 600·Q / (v·B)').first()).toBeVisible();
    expect(screen.container.textContent).toMatch(/Q = 60 × 52\.8 \/ 180 = 17\.60/);
  });
});

import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Change, Gain, Gains, Plan, SprayAdvice as Advice } from '../../src/core/spray/advice/types.ts';
import type { Document } from '../../src/core/setting/document.ts';
import { refused, type Refused } from '../../src/core/working/answer.ts';
import { checkDocument } from '../../src/job/read.ts';
import type { StartSpraySearch } from '../../src/store/spray-search/client.ts';
import SprayAdvice from '../../src/ui/spray/SprayAdvice.svelte';
import '../../src/words/spray/join.ts';
import { SpraySearch } from '../../src/workspace/spray-search.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const gain = (value: number, clear: boolean): Gain => ({ value, range: [value - 0.01, value + 0.01], clear });
const gains = (onTrees: Gain, lost: Gain, onTreesRelative: number): Gains => ({ onTrees, lost, evenness: gain(0.01, false), onTreesRelative, workRateRelative: 0, volumeLPerHa: 0 });

/** What a search might hand back: one plan that is clearly better, one that is not. */
function given(workspace: Workspace): Advice {
  const setting = { ...workspace.rung.setting, nozzles: [{ position: 'L8', open: false }, { position: 'R8', open: false }] };
  const change: Change = { code: 'shut', nozzles: ['L8', 'R8'] };
  const judged = { volumeLPerHa: 350, droplets: [], airRatio: 1 };
  const clear = gains(gain(0.06, true), gain(0.1, true), 0.14);
  const unclear = gains(gain(0.01, false), gain(0.01, false), 0.02);
  const plan = (g: Gains, more: Partial<Plan>): Plan => ({ ...judged, setting, objectives: { onTrees: 0.5, cv: 0.2, lost: 0.29, workRateHaPerH: 2.3 }, names: [], gains: g, clear: false, steps: [{ change, gains: g, clear: false, remarks: [] }], remarks: [], ...more });
  return {
    today: { ...judged, setting: workspace.rung.setting, objectives: { onTrees: 0.44, cv: 0.21, lost: 0.39, workRateHaPerH: 2.3 }, beaten: true },
    plans: [
      plan(clear, { clear: true, names: ['most-on-trees'], remarks: [{ code: 'spray-advice-understated', severity: 'note', parameters: {}, sources: ['cross-2003'] }] }),
      plan(unclear, { objectives: { onTrees: 0.45, cv: 0.2, lost: 0.38, workRateHaPerH: 2.3 }, remarks: [{ code: 'spray-advice-no-clear-difference', severity: 'note', parameters: {}, sources: [] }] })
    ],
    searched: { airs: 1, settings: 500, constants: [] },
    findings: [{ code: 'spray-advice-judges', severity: 'note', parameters: {}, sources: ['ucce-airblast'] }]
  };
}

async function advice(begin?: StartSpraySearch, system: 'metric' | 'us' = 'metric') {
  const workspace = new Workspace(demo as unknown as Document);
  const search = new SpraySearch(workspace, begin ?? (() => ({ found: Promise.resolve(given(workspace)), cancel: () => undefined })));
  const screen = await render(SprayAdvice, { workspace, system, search });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
  const look = () => screen.getByRole('button', { name: 'Look for better settings' }).click();
  return { workspace, search, screen, text, look };
}

describe('better settings', () => {
  it('nothing is searched before it is asked for; then a worker finds settings and says what judges them', async () => {
    const workspace = new Workspace(demo as unknown as Document);
    const screen = await render(SprayAdvice, { workspace, system: 'metric' });
    await screen.getByRole('button', { name: 'Look for better settings' }).click();
    await expect.element(screen.getByText(/settings looked at/), { timeout: 60_000 }).toBeVisible();
    await expect.element(screen.getByText(/it is no recommendation/)).toBeVisible();
    await expect.element(screen.getByRole('row', { name: /^today/ })).toBeVisible();
  });
  it('today’s setting is marked; what is not clear is said to be so', async () => {
    const { look, screen } = await advice();
    await look();
    const table = screen.getByRole('table', { name: 'What can be had' }).element();
    const lines = [...table.querySelectorAll('tbody tr')].map((r) => [...r.children].map((c) => (c.textContent ?? '').trim()));
    expect(lines[0]!.slice(0, 4)).toEqual(['today', '44', '39', '21']);
    expect(lines[1]![1]).toMatch(/50\s*\+6/);
    expect(lines[1]![2]).toMatch(/29\s*−10/);
    expect(lines[2]![1]).toMatch(/45\s*≈\s*no clear difference/);
  });
  it('each step is one line, cautions and the note on less air beside it', async () => {
    const { look, screen, text } = await advice();
    await look();
    await screen.getByRole('heading', { name: 'Setting 1: most on the trees' }).click();
    expect(text()).toMatch(/Shutting L8 and R8 puts 14 % more of what is sprayed on the trees and loses 10 points less\./);
    expect(text()).toMatch(/What less air saves is understated here/);
    await screen.getByRole('heading', { name: 'Setting 2' }).click();
    expect(text()).toMatch(/Shutting L8 and R8 makes no clear difference\./);
  });
  it('a setting is used in one step of undo, and can be taken back at once', async () => {
    const { look, screen, workspace } = await advice();
    const before = workspace.document;
    await look();
    await screen.getByRole('heading', { name: 'Setting 1: most on the trees' }).click();
    await screen.getByRole('button', { name: 'Use: Setting 1: most on the trees' }).click();
    expect(workspace.isOpen('L8')).toBe(false);
    expect(checkDocument(workspace.document).ok).toBe(true);
    await expect.element(screen.getByText(/^Set: Setting 1/)).toBeVisible();
    await expect.element(screen.getByText('This is set now')).toBeVisible();
    await screen.getByRole('button', { name: 'Undo' }).click();
    expect(workspace.document).toBe(before);
  });
  it('what was found for an earlier setting cannot be used; it is looked for again', async () => {
    const { look, screen, workspace } = await advice();
    await look();
    await screen.getByRole('heading', { name: 'Setting 2' }).click();
    workspace.editSetting({ pressureBar: 9 });
    await expect.element(screen.getByText(/The setting has changed since/)).toBeVisible();
    await expect.element(screen.getByRole('button', { name: 'Use: Setting 2' })).toBeDisabled();
    await screen.getByRole('button', { name: 'Look again' }).click();
    await expect.element(screen.getByRole('button', { name: 'Use: Setting 2' })).toBeEnabled();
  });
  it('shows how far it is and can be stopped', async () => {
    let tell: (done: number) => void = () => undefined;
    let settle: (a: Advice | Refused) => void = () => undefined;
    let cancelled = 0;
    const { look, screen } = await advice((_, progress) => {
      tell = progress;
      return { found: new Promise((resolve) => (settle = resolve)), cancel: () => (cancelled++, settle(refused('advice-cancelled', 'setting', {}))) };
    });
    await look();
    await expect.element(screen.getByRole('progressbar')).toBeVisible();
    tell(0.42);
    await expect.element(screen.getByText('42 % done')).toBeVisible();
    await screen.getByRole('button', { name: 'Stop' }).click();
    expect(cancelled).toBe(1);
    await expect.element(screen.getByText('Stopped.')).toBeVisible();
    await expect.element(screen.getByRole('button', { name: 'Look for better settings' })).toBeVisible();
  });
  it('in weather that says wait nothing is advised', async () => {
    const { workspace, screen } = await advice();
    workspace.edit((d) => ({ ...d, day: { temperatureC: 20, humidityPct: 60, windMPerS: 9 } }));
    await expect.element(screen.getByText(/too windy to spray: no setting is advised/)).toBeVisible();
    await expect.element(screen.getByRole('button', { name: 'Look for better settings' })).not.toBeInTheDocument();
  });
  it('a search that fails says so and can be tried again', async () => {
    const { look, screen } = await advice(() => ({ found: Promise.reject(new Error('no worker')), cancel: () => undefined }));
    await look();
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/could not be run/);
    await expect.element(screen.getByRole('button', { name: 'Look for better settings' })).toBeVisible();
  });
});

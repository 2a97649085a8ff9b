import { describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import type { WatchStore } from '../../src/store/watch.ts';
import '../../src/words/headland/join.ts';
import SpeedStep from '../../src/ui/headland/SpeedStep.svelte';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Stopwatch } from '../../src/workspace/stopwatch.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

async function step(system: 'metric' | 'us' = 'metric', keeps = true) {
  let now = Date.parse('2031-06-02T07:00:00Z');
  let text: string | null = null;
  const store: WatchStore = { load: () => text, save: (t) => ((text = t), keeps) };
  const workspace = new Workspace(demo as unknown as Document);
  const headland = new Headland(workspace, () => new Date(now), new Stopwatch(store, () => now));
  const screen = await render(SpeedStep, { workspace, headland, system });
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click();
  const type = async (time: string) => {
    await screen.getByLabelText('or type a time, s or min:s').fill(time);
    await userEvent.keyboard('{Enter}');
  };
  return { workspace, headland, screen, press, type, pass: (s: number) => (now += s * 1000), runs: () => headland.round.runs };
}
const big = (screen: { container: HTMLElement }) => screen.container.querySelector('[data-figure=speed] strong')?.textContent;

describe('speed', () => {
  it('100 m in 67 s is 5.4 km/h (common practice, no source)', async () => {
    const { screen, type } = await step();
    await type('67');
    expect(Number(big(screen))).toBeCloseTo(5.4, 1);
  });
  it('100 m in 72 s is 5.0 km/h (common practice, no source), however it is typed', async () => {
    const { screen, type, runs } = await step();
    await type('1:12');
    await type('72,0');
    expect(big(screen)).toBe('5.00');
    expect(runs()).toEqual([
      { distanceM: 100, seconds: 72, direction: 'out' },
      { distanceM: 100, seconds: 72, direction: 'back' }
    ]);
  });
  it('88 ft in a minute is 1 mph', async () => {
    const { screen, press, type } = await step('us');
    await press('88 ft');
    await type('60');
    expect(big(screen)).toBe('1.00');
    expect(screen.container.textContent).not.toMatch(/km\/h|L\/ha/);
  });
  it('the stopwatch makes a run of what lies between two presses', async () => {
    const { press, pass, runs } = await step();
    await press('Start');
    pass(0.4);
    // A glove that presses twice.
    await press('Mark end');
    pass(61.8);
    await press('Mark end');
    expect(runs()).toEqual([{ distanceM: 100, seconds: 62.2, direction: 'out' }]);
  });
  it('a false start adds nothing, and can be taken back', async () => {
    const { press, pass, runs, screen } = await step();
    await press('Start');
    pass(9);
    await press('Start over');
    await expect.element(screen.getByText('False start: nothing was added.')).toBeVisible();
    await press('It was no false start: run on');
    pass(53.2);
    await press('Mark end');
    expect(runs()?.map((r) => r.seconds)).toEqual([62.2]);
  });
  it('a stopwatch that was forgotten adds no run', async () => {
    const { press, pass, runs, screen } = await step();
    await press('Start');
    pass(7200);
    await press('Mark end');
    expect(runs()).toBeUndefined();
    await expect.element(screen.getByRole('alert')).toHaveTextContent('2:00:00.0');
  });
  it('a stopwatch that runs for another rung is named there, and given up only on purpose', async () => {
    const { press, workspace, screen, headland } = await step();
    await press('Start');
    workspace.goToRung('petal-fall');
    await expect.element(screen.getByText('The stopwatch is running for a speed run, Lower bench, Full leaf.')).toBeVisible();
    expect(headland.watch.running).not.toBeNull();
    await press('Give that time up');
    await expect.element(screen.getByRole('button', { name: 'Start', exact: true })).toBeVisible();
  });
  it('says when the browser keeps nothing', async () => {
    const { press, screen } = await step('metric', false);
    await press('Start');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('keeps nothing');
  });
  it('the run that differs is named; deleting it is one step that undo takes back', async () => {
    const { type, press, screen, workspace, runs } = await step();
    for (const t of ['62', '62.4', '55', '62.1', '62.2', '62.3']) await type(t);
    const rows = screen.container.querySelectorAll('ol li');
    expect([...rows].map((r) => r.classList.contains('differs'))).toEqual([false, false, true, false, false, false]);
    await press('Delete run 3');
    expect(runs()?.map((r) => r.seconds)).toEqual([62, 62.4, 62.1, 62.2, 62.3]);
    workspace.undo();
    expect(runs()?.map((r) => r.seconds)).toEqual([62, 62.4, 55, 62.1, 62.2, 62.3]);
  });
  it('out and back by turns, and a run can be turned round', async () => {
    const { type, runs, screen } = await step();
    for (const t of ['62', '63', '62']) await type(t);
    expect(runs()?.map((r) => r.direction)).toEqual(['out', 'back', 'out']);
    await screen.getByRole('button', { name: /^run 3 goes out/ }).click();
    expect(runs()?.at(-1)?.direction).toBe('back');
  });
  it('a display that shows 6.3 at 5.4 km/h reads 17 % high', async () => {
    const { type, screen, workspace } = await step();
    await type('66.667');
    await screen.getByRole('spinbutton', { name: 'tractor display shows' }).fill('6.3');
    await expect.element(screen.getByText(/display shows 6\.3\skm\/h.*reads 17\s% high/)).toBeVisible();
    expect(checkDocument(workspace.document).ok).toBe(true);
  });
  it('what is no time is named with its range, stays, and adds nothing', async () => {
    const { type, screen, runs } = await step();
    await type('6o');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('time: “6o” is no time of 1–3600 s.');
    await expect.element(screen.getByLabelText('or type a time, s or min:s')).toHaveValue('6o');
    await type('0.2');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('0.2');
    expect(runs()).toBeUndefined();
  });
  it('another distance counts for the runs that follow, not for those before', async () => {
    const { type, press, runs, screen } = await step();
    await type('62');
    await press('50 m');
    await type('31');
    await screen.getByRole('spinbutton', { name: 'marked distance' }).fill('80');
    await type('50');
    expect(runs()?.map((r) => r.distanceM)).toEqual([100, 50, 80]);
  });
});

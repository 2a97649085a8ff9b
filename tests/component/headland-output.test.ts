import { describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import type { WatchStore } from '../../src/store/watch.ts';
import OutputStep from '../../src/ui/headland/OutputStep.svelte';
import '../../src/words/headland/join.ts';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Stopwatch } from '../../src/workspace/stopwatch.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

async function step(system: 'metric' | 'us' = 'metric', prepare: (w: Workspace) => void = () => undefined) {
  let now = Date.parse('2031-06-02T07:00:00Z');
  let text: string | null = null;
  const store: WatchStore = { load: () => text, save: (t) => ((text = t), true) };
  const workspace = new Workspace(demo as unknown as Document);
  prepare(workspace);
  const headland = new Headland(workspace, () => new Date(now), new Stopwatch(store, () => now));
  const screen = await render(OutputStep, { workspace, headland, system });
  const field = (name: string | RegExp) => screen.getByRole('spinbutton', { name, ...(typeof name === 'string' ? { exact: true } : {}) });
  const jug = (id: string, unit = 'mL') => screen.getByLabelText(`jug of ${id}, ${unit}`, { exact: true });
  const text_ = () => screen.container.textContent ?? '';
  return { workspace, headland, screen, field, jug, text: text_, pass: (s: number) => (now += s * 1000), reads: () => checkDocument(workspace.document).ok };
}
const big = (screen: { container: HTMLElement }) => screen.container.querySelector('[data-figure=output] strong')?.textContent;

/** What each size of the demo gives in a minute at 8 bar, mL: 0.40 and 0.60 L/min at 3 bar by the square root. */
const NOMINAL: Record<string, number> = { '01': 653, '015': 980 };
/** Types one jug after the other, Enter between; positions not named give what their table says. */
async function pour({ headland, jug }: Awaited<ReturnType<typeof step>>, own: Record<string, number> = {}) {
  const nozzles = headland.now.sprayer.nozzles.filter((n) => n.spraying);
  const order = [...nozzles.filter((n) => n.position.side === 'left'), ...nozzles.filter((n) => n.position.side === 'right')];
  await jug(order[0]!.position.id).click();
  for (const n of order) await userEvent.keyboard(`${own[n.position.id] ?? NOMINAL[n.size!.id]}{Enter}`);
}

describe('refill', () => {
  it('53 L in 3 min is 17.7 L/min (common practice, no source)', async () => {
    const { screen, field, reads } = await step();
    await screen.getByRole('radio', { name: 'Refill, on the spot' }).click();
    await field('time sprayed').fill('180');
    await field('refilled to the mark').fill('53');
    expect(Number(big(screen))).toBeCloseTo(17.7, 1);
    expect(reads()).toBe(true);
  });
  it('±2 L on 75 L and ±2 s on 240 s leave ±2.8 % (2.7 % and 0.8 %, derived)', async () => {
    const { screen, field, text } = await step();
    await screen.getByRole('radio', { name: 'Refill, on the spot' }).click();
    await field('time sprayed').fill('240');
    await field('refilled to the mark').fill('75');
    // 18.75 L/min.
    expect(big(screen)).toBe('18.75');
    expect(text()).toMatch(/±\s0\.52/);
  });
  it('75 L over 300 m at 4 m is 625 L/ha, without any speed', async () => {
    const { screen, field, reads } = await step('metric', (w) => w.editBlock({ rowSpacingM: 4 }));
    await screen.getByRole('radio', { name: 'Refill, along a course' }).click();
    await field('distance sprayed').fill('300');
    await field('refilled to the mark').fill('75');
    expect(big(screen)).toBe('625');
    expect(reads()).toBe(true);
  });
  it('12 gal over 660 ft at 10 ft is 79.2 gal/ac', async () => {
    const { screen, field } = await step('us', (w) => w.editBlock({ rowSpacingM: 3.048 }));
    await screen.getByRole('radio', { name: 'Refill, along a course' }).click();
    await field('distance sprayed').fill('660');
    await field('refilled to the mark').fill('12');
    expect(big(screen)).toBe('79.2');
    expect(screen.container.textContent).not.toMatch(/km\/h|L\/ha|L\/min|\bbar\b/);
  });
  it('the stopwatch gives the time; what is not measured yet gives no output', async () => {
    const { screen, headland, pass, reads } = await step();
    await screen.getByRole('radio', { name: 'Refill, on the spot' }).click();
    await screen.getByRole('button', { name: 'Nozzles open: start' }).click();
    pass(183.44);
    await screen.getByRole('button', { name: 'Nozzles shut: end' }).click();
    expect(headland.round.refill).toEqual({ kind: 'standing', seconds: 183.4 });
    expect(big(screen)).toBeUndefined();
    expect(reads()).toBe(true);
  });
  it('too short a time is told and not taken', async () => {
    const { screen, headland, pass } = await step();
    await screen.getByRole('radio', { name: 'Refill, on the spot' }).click();
    await screen.getByRole('button', { name: 'Nozzles open: start' }).click();
    pass(3);
    await screen.getByRole('button', { name: 'Nozzles shut: end' }).click();
    await expect.element(screen.getByRole('alert')).toHaveTextContent('00:03.0');
    expect(headland.round.refill).toBeUndefined();
  });
  it('the other kind keeps the litres', async () => {
    const { screen, field, headland } = await step();
    await screen.getByRole('radio', { name: 'Refill, on the spot' }).click();
    await field('time sprayed').fill('180');
    await field('refilled to the mark').fill('53');
    await screen.getByRole('radio', { name: 'Refill, along a course' }).click();
    expect(headland.round.refill).toEqual({ kind: 'course', litres: 53 });
  });
});

describe('catch', () => {
  it('Enter goes from jug to jug, left then right, from the bottom; the sum is that of the jugs', async () => {
    const all = await step();
    await pour(all);
    const { screen, headland, reads } = all;
    expect(headland.round.catches).toHaveLength(16);
    expect(headland.round.catches![0]).toEqual({ position: 'L1', litres: 0.653, seconds: 60 });
    // 6 nozzles of 653 mL and 10 of 980 mL in a minute.
    expect(Number(big(screen))).toBeCloseTo(6 * 0.653 + 10 * 0.98, 2);
    await expect.element(screen.getByText('All 16 nozzles caught.')).toBeVisible();
    await expect.element(screen.getByRole('img', { name: /^Each nozzle against the mean.*None outside/ })).toBeVisible();
    expect(reads()).toBe(true);
  });
  it('a clogged and a worn one that the sum hides are both named', async () => {
    const all = await step();
    await pour(all, { L4: 780, R5: 1180 });
    const { screen } = all;
    await expect.element(screen.getByRole('img', { name: /Outside: L4 −20\s% low, R5 \+20\s% high\./ })).toBeVisible();
    await expect.element(screen.getByText(/L4 is low and R5 high/).first()).toBeVisible();
  });
  it('7 % off its mates is low by the strict set and fine by the normal one', async () => {
    const all = await step();
    await pour(all, { L5: 911 });
    const { screen } = all;
    const row = () => [...screen.container.querySelectorAll('ol li')].find((li) => li.textContent?.includes('L5'))!;
    expect(row().className).toContain('fine');
    await screen.getByRole('radio', { name: /^strict/ }).click();
    expect(row().className).toContain('low');
    expect(row().textContent).toContain('low');
  });
  it('one time for all, with a time of its own for one', async () => {
    const { screen, field, jug, headland } = await step();
    await jug('L1').fill('653');
    await jug('L2').fill('327');
    await screen.getByRole('button', { name: 'L2 held for 60 s; own time' }).click();
    await field('L2 held for').fill('30');
    await field('jug held for').fill('90');
    expect(headland.round.catches).toEqual([
      { position: 'L1', litres: 0.653, seconds: 90 },
      { position: 'L2', litres: 0.327, seconds: 30 }
    ]);
    expect(headland.round.catchS).toBe(90);
  });
  it('on the way to another time of all, a time of its own is not swept along', async () => {
    const { screen, field, jug, headland, workspace } = await step();
    await jug('L1').fill('653');
    await jug('L2').fill('327');
    await screen.getByRole('button', { name: 'L2 held for 60 s; own time' }).click();
    await field('L2 held for').fill('30');
    await field('jug held for').click();
    await userEvent.keyboard('300');
    expect(headland.round.catches?.map((c) => c.seconds)).toEqual([300, 30]);
    workspace.undo();
    expect(headland.round.catches?.map((c) => c.seconds)).toEqual([60, 30]);
  });
  it('litres and millilitres are the same jug', async () => {
    const { screen, jug, headland } = await step();
    await jug('L1').fill('1310');
    await screen.getByRole('radio', { name: 'L', exact: true }).click();
    await expect.element(jug('L1', 'L')).toHaveValue('1.31');
    await jug('L2', 'L').fill('0,98');
    expect(headland.round.catches?.map((c) => c.litres)).toEqual([1.31, 0.98]);
  });
  it('128 fl oz in a minute are a gallon a minute', async () => {
    const { jug, headland } = await step('us');
    await jug('L1', 'fl oz').fill('128');
    expect(headland.round.catches?.[0]?.litres).toBeCloseTo(3.785411784, 9);
  });
  it('a jug that cannot be is named with its range, and nothing is lost', async () => {
    const { screen, jug, headland } = await step();
    await jug('L1').fill('653');
    await jug('L1').fill('65o');
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/jug of L1, mL: “65o” is no number\. Type 0–100000 mL/);
    expect(headland.round.catches?.[0]?.litres).toBe(0.653);
    await jug('L1').fill('');
    expect(headland.round.catches).toBeUndefined();
  });
  it('each jug is one step back', async () => {
    const { jug, headland, workspace } = await step();
    await jug('L1').fill('653');
    await jug('L2').fill('650');
    workspace.undo();
    expect(headland.round.catches?.map((c) => c.position)).toEqual(['L1']);
  });
});

describe('a test belongs to its setting', () => {
  it('another pressure makes it stale, by name; a new round goes on', async () => {
    const all = await step();
    await pour(all);
    const { workspace, screen, headland } = all;
    workspace.editSetting({ pressureBar: 9 });
    await expect.element(screen.getByText('The setting was changed since this test.')).toBeVisible();
    await expect.element(screen.getByText(/Changed: .*pressure/i)).toBeVisible();
    await screen.getByRole('button', { name: 'New round with the present setting' }).click();
    expect(headland.check.rounds).toHaveLength(2);
    expect(headland.round.setting.pressureBar).toBe(9);
    expect(headland.round.catches).toBeUndefined();
  });
});

describe('pressure', () => {
  it('15 % lost to the far nozzle are 7.8 % of its flow (derived)', async () => {
    const { field, text, headland, reads } = await step();
    await field('gauge, spraying').fill('10');
    await field('gauge at far nozzle').fill('8.5');
    expect(text()).toMatch(/15\s% of the pressure, 7\.8\s% of its flow/);
    expect(headland.round.gauges).toEqual({ readBar: 10, farBar: 8.5 });
    expect(reads()).toBe(true);
  });
  it('twice the flow at four times the pressure is an exponent of one half', async () => {
    const { screen, field, text, reads } = await step();
    await screen.getByText('Does flow follow pressure? Test at two pressures').click();
    await field('one pressure').fill('4');
    await field('flow at it').fill('10');
    await field('other pressure').fill('16');
    expect(reads()).toBe(true);
    await field('flow at that').fill('20');
    expect(text()).toMatch(/Exponent of flow by pressure\s*0\.50/);
  });
});

import { userEvent } from 'vitest/browser';
import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import type { UnitSystem } from '../../src/core/quantity/units.ts';
import { checkDocument } from '../../src/job/read.ts';
import BlockView from '../../src/ui/strategies/BlockView.svelte';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const opened = () => new Workspace(demo as unknown as Document);
async function view(workspace = opened(), system: UnitSystem = 'metric') {
  const screen = await render(BlockView, { workspace, system });
  const table = screen.getByRole('region', { name: /^Every strategy for/ });
  await expect.element(table).toBeVisible();
  const column = (n: number) => [...table.element().querySelectorAll('tbody tr')].map((r) => r.children[n]!.querySelector('b')?.textContent ?? r.children[n]!.textContent!.trim());
  const names = () => [...table.element().querySelectorAll('tbody th button')].map((b) => b.getAttribute('aria-label')!.replace('Working of ', ''));
  const numbers = (n: number) => column(n).map((t) => (/\d/.test(t) ? Number(t.replace(/[^\d.−-]/g, '').replace('−', '-')) : null));
  return { workspace, screen, table, names, numbers };
}
const heading = (screen: Awaited<ReturnType<typeof view>>['screen'], name: RegExp) => screen.getByRole('columnheader', { name });

describe('the strategy table', () => {
  it('sorts by a heading: lowest first, highest first, as written; what has no figure stands last', async () => {
    const { screen, names, numbers } = await view();
    const written = names();
    const water = heading(screen, /^Water/);
    await water.getByRole('button').click();
    await expect.element(water).toHaveAttribute('aria-sort', 'ascending');
    let there = numbers(2);
    const known = there.filter((v) => v !== null);
    expect(known.length).toBeGreaterThan(5);
    expect(known).toEqual([...known].sort((a, b) => a - b));
    expect(there.slice(known.length).every((v) => v === null)).toBe(true);
    await water.getByRole('button').click();
    await expect.element(water).toHaveAttribute('aria-sort', 'descending');
    there = numbers(2);
    expect(there.slice(0, known.length)).toEqual([...known].reverse());
    expect(there.at(-1)).toBeNull();
    await water.getByRole('button').click();
    await expect.element(water).toHaveAttribute('aria-sort', 'none');
    expect(names()).toEqual(written);
  });
  it('shows those alone that scale by what is asked for, and that name water or none', async () => {
    const { screen, names } = await view();
    const all = names().length;
    const chips = screen.getByRole('group', { name: 'Strategies that scale by' });
    await chips.getByRole('button', { name: 'wall' }).click();
    expect(names()).toEqual(['Leaf wall area', 'Row distance and height']);
    await screen.getByLabelText('Water', { exact: true }).selectOptions('that name no water');
    expect(names()).toEqual(['Leaf wall area']);
    await chips.getByRole('button', { name: 'wall' }).click();
    await chips.getByRole('button', { name: 'leaf', exact: true }).click();
    await expect.element(screen.getByText('No strategy is left. Widen the choice above.')).toBeVisible();
    await chips.getByRole('button', { name: 'all', exact: true }).click();
    await screen.getByLabelText('Water', { exact: true }).selectOptions('with or without water');
    expect(names()).toHaveLength(all);
  });
  it('marks the block’s own, and lets the block follow another from its working', async () => {
    const { screen, table, workspace } = await view();
    const chosen = () => table.element().querySelector('tr.chosen')!.textContent;
    expect(chosen()).toContain('Tree-row volume');
    await screen.getByRole('button', { name: 'Working of Swiss straight line' }).click();
    await expect.element(screen.getByText(/^I = e \+ \(1 − e\)/).first()).toBeVisible();
    await screen.getByRole('button', { name: 'Let the block follow this strategy' }).click();
    expect(workspace.block.strategy).toBe('swiss-affine');
    await expect.poll(chosen).toContain('Swiss straight line');
    workspace.undo();
    await expect.poll(chosen).toContain('Tree-row volume');
  });
  it('says what the label did to the dose, in the units asked for', async () => {
    const { table } = await view(opened(), 'us');
    const text = table.element().textContent!.replace(/\u00a0/g, ' ');
    expect(text).toContain('label dose per hectare kept');
    expect(text).toContain('gal/ac');
    expect(text).toContain('lb/ac');
  });
});

describe('the stair of differences', () => {
  it('is walked with the arrow keys, and says why two differ', async () => {
    const { screen } = await view();
    const cell = (name: RegExp) => screen.getByRole('button', { name });
    await cell(/^Row length less Per ground hectare/).click();
    await userEvent.keyboard('{ArrowDown}{ArrowDown}{ArrowDown}{ArrowRight}{ArrowRight}{ArrowRight}');
    await expect.element(cell(/^Tree-row volume less Leaf wall area: \+0\.26$/)).toHaveFocus();
    await expect.element(screen.getByRole('heading', { name: 'Tree-row volume against Leaf wall area' })).toBeVisible();
    await expect.element(screen.getByText(/“Tree-row volume” counts the width, 1\.60.m here and 1\.25.m of the reference; “Leaf wall area” does not: 28.% more/)).toBeVisible();
    // The end of the stair, and nothing beyond it.
    await userEvent.keyboard('{Control>}{End}{/Control}{ArrowRight}{ArrowDown}');
    await expect.element(cell(/^Leaf area less Occupied canopy/)).toHaveFocus();
    await userEvent.keyboard('{Control>}{Home}{/Control}{ArrowLeft}{ArrowUp}');
    await expect.element(cell(/^Row length less Per ground hectare/)).toHaveFocus();
  });
  it('has one stop for the tab key', async () => {
    const { screen } = await view();
    expect(screen.container.querySelectorAll('[data-cell][tabindex="0"]')).toHaveLength(1);
  });
  it('follows the order of the table', async () => {
    const { screen } = await view();
    await heading(screen, /^Dose index/).getByRole('button').click();
    const signs = [...screen.container.querySelectorAll('[data-cell]')].map((b) => b.textContent!.trim());
    // Sorted by index no row is below one before it.
    expect(signs.length).toBeGreaterThan(70);
    expect(signs.filter((s) => s.startsWith('−'))).toEqual([]);
  });
});

describe('the plots', () => {
  it('are read with the arrow keys: along a curve, and from curve to curve', async () => {
    const { screen } = await view();
    const plot = screen.getByRole('slider', { name: /^Dose index against leaf wall/ });
    const says = () => plot.element().getAttribute('aria-valuetext')!;
    expect(says()).toBe('no point chosen');
    (plot.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(says()).toMatch(/^Tree-row volume: 1\.\d\d at 1\d/);
    const before = says();
    await userEvent.keyboard('{ArrowRight}');
    expect(Number(/: ([\d.]+) at/.exec(says())![1])).toBeGreaterThan(Number(/: ([\d.]+) at/.exec(before)![1]));
    await userEvent.keyboard('{End}');
    expect(plot.element().getAttribute('aria-valuenow')).toBe(plot.element().getAttribute('aria-valuemax'));
    await userEvent.keyboard('{ArrowDown}{ArrowDown}{ArrowDown}');
    expect(says()).not.toContain('Tree-row volume');
    await userEvent.keyboard('{Escape}');
    expect(says()).toBe('no point chosen');
  });
  it('stand as a table too', async () => {
    const { screen } = await view();
    await screen.getByRole('button', { name: 'As a table: Dose index against tree height' }).click();
    const region = screen.getByRole('region', { name: 'Dose index against tree height' });
    await expect.element(region).toBeVisible();
    const lines = [...region.element().querySelectorAll('tbody tr')].map((r) => [...r.children].map((c) => c.textContent!.trim()));
    expect(lines.length).toBeGreaterThan(8);
    // Per ground hectare stands first and is 1 everywhere.
    expect(new Set(lines.map((l) => l[1]))).toEqual(new Set(['1.00']));
  });
  it('say so where what is drawn along does not change', async () => {
    const { screen } = await view();
    await screen.getByLabelText('What changes').selectOptions('canopy width');
    await expect.element(screen.getByText('leaf wall area stays the same when canopy width changes, so there is no curve to draw against it.')).toBeVisible();
    await expect.element(screen.getByRole('slider', { name: /^Dose index against what changes/ })).toBeVisible();
  });
});

describe('what if', () => {
  it('moves the figures, not the block; put back it is as before', async () => {
    const { screen, workspace, numbers } = await view();
    const before = workspace.document;
    const was = numbers(3);
    const slider = screen.getByRole('slider', { name: 'canopy width', exact: true });
    (slider.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}{ArrowRight}{ArrowRight}{ArrowRight}');
    await expect.element(screen.getByText(/^What if: not what was measured/)).toBeVisible();
    // Width 1.60 to 1.80: row volume goes up by an eighth, leaf wall stays.
    expect(numbers(3)[4]! / was[4]!).toBeCloseTo(1.125, 2);
    expect(numbers(3)[3]).toBe(was[3]);
    expect(workspace.document).toBe(before);
    await screen.getByRole('button', { name: 'Put back' }).click();
    expect(numbers(3)).toEqual(was);
  });
  it('is taken over in one step of undo', async () => {
    const { screen, workspace } = await view();
    const before = workspace.document;
    for (const [name, key] of [['tree height', '{ArrowRight}'], ['row spacing', '{ArrowLeft}{ArrowLeft}'], ['skirt height', '{PageUp}']] as const) {
      (screen.getByRole('slider', { name, exact: true }).element() as HTMLElement).focus();
      await userEvent.keyboard(key);
    }
    await screen.getByRole('button', { name: 'Take over for Full leaf' }).click();
    const { canopy } = workspace.rung;
    expect([canopy.heightM, canopy.skirtM, workspace.block.rowSpacingM].map((v) => Number(v!.toFixed(6)))).toEqual([3.35, 0.95, 3.7]);
    expect(checkDocument(workspace.document).ok).toBe(true);
    await expect.element(screen.getByText('Taken over. Undo puts it back.')).toBeVisible();
    workspace.undo();
    expect(workspace.document).toEqual(before);
    expect(workspace.canUndo).toBe(false);
  });
  it('keeps the skirt below the top', async () => {
    const { screen } = await view();
    const at = (name: string) => Number((screen.getByRole('slider', { name, exact: true }).element() as HTMLInputElement).value);
    (screen.getByRole('slider', { name: 'skirt height', exact: true }).element() as HTMLElement).focus();
    await userEvent.keyboard('{PageUp}{PageUp}{PageUp}{PageUp}{PageUp}');
    (screen.getByRole('slider', { name: 'tree height', exact: true }).element() as HTMLElement).focus();
    await userEvent.keyboard('{PageDown}{PageDown}{PageDown}{PageDown}');
    expect(at('skirt height')).toBeLessThan(at('tree height'));
    expect(screen.container.textContent).not.toContain('The skirt is not below the top.');
  });
});

describe('a strategy of one’s own', () => {
  it('has its problems said under the field while it is written, and is kept with the document', async () => {
    const { screen, workspace, names } = await view();
    await screen.getByRole('button', { name: /Write a strategy of your own/ }).click();
    const index = screen.getByLabelText('dose index', { exact: true });
    const keep = screen.getByRole('button', { name: 'Keep it' });
    await index.fill('TRVc / ');
    await expect.element(index).toHaveAttribute('aria-invalid', 'true');
    await expect.element(keep).toBeDisabled();
    await index.fill('TRVx / 10000');
    await expect.element(screen.getByText(/TRVx is not the name of a canopy figure/)).toBeVisible();
    await index.fill('TRVc / 6000');
    await expect.element(index).toHaveAttribute('aria-invalid', 'false');
    // 12 000 m³/ha on the demo's full leaf.
    await expect.element(screen.getByText('For this canopy: dose index 2.00', { exact: false })).toBeVisible();
    await screen.getByLabelText('name', { exact: true }).fill('Tree-row volume');
    await expect.element(screen.getByText(/There is a strategy “Tree-row volume” already/)).toBeVisible();
    await screen.getByLabelText('name', { exact: true }).fill('Bench rule');
    await keep.click();
    expect(names().at(-1)).toBe('Bench rule');
    expect(workspace.document.ownStrategies).toMatchObject([{ name: 'Bench rule', index: 'TRVc / 6000' }]);
    expect(checkDocument(workspace.document).ok).toBe(true);
    // It stands in the stair and in the plots as the others do.
    await expect.element(screen.getByRole('button', { name: /^Bench rule less Tree-row volume: \+0\.80$/ })).toBeVisible();
    await screen.getByRole('button', { name: 'Remove Bench rule' }).click();
    expect(names()).not.toContain('Bench rule');
    workspace.undo();
    await expect.poll(names).toContain('Bench rule');
  });
  it('takes a symbol from the list into the field in hand', async () => {
    const { screen } = await view();
    await screen.getByRole('button', { name: /Write a strategy of your own/ }).click();
    const index = screen.getByLabelText('dose index', { exact: true });
    await index.fill('');
    await screen.getByRole('button', { name: /^Put LWA,/ }).click();
    await expect.element(index).toHaveValue('LWA');
  });
});

describe('how sure', () => {
  it('draws in a worker, beside the reckoned interval; the draws of another canopy are said to be so', async () => {
    const { screen } = await view();
    await screen.getByLabelText('number of draws').fill('2000');
    await screen.getByRole('button', { name: 'Draw', exact: true }).click();
    await expect.element(screen.getByText(/2.000 draws with seed 1\./), { timeout: 20_000 }).toBeVisible();
    await screen.getByRole('button', { name: 'As a table: Intervals of dose index' }).click();
    const region = screen.getByRole('region', { name: 'Intervals of dose index' });
    const line = () => [...region.getByRole('row', { name: /^Tree-row volume/ }).element().children].slice(1).map((c) => Number(c.textContent));
    const [figure, low, high, mean, sd, drawnLow, drawnHigh] = line() as [number, number, number, number, number, number, number];
    expect(mean).toBeCloseTo(figure, 1);
    expect(drawnLow).toBeCloseTo(low, 1);
    expect(drawnHigh).toBeCloseTo(high, 1);
    expect(sd).toBeGreaterThan(0.02);
    (screen.getByRole('slider', { name: 'canopy width', exact: true }).element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    await expect.element(screen.getByText('These draws belong to the canopy before the last change. Draw again.')).toBeVisible();
  });
  it('shows which input moves the figure most', async () => {
    const { screen } = await view();
    await screen.getByRole('button', { name: /^As a table: What moves the dose index/ }).click();
    const rows = [...screen.getByRole('region', { name: 'What moves the dose index of Tree-row volume' }).element().querySelectorAll('tbody tr')].map((r) => r.children[0]!.textContent);
    expect(rows[0]).toBe('canopy width');
  });
});

import { userEvent } from 'vitest/browser';
import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import TableView from '../../src/ui/strategies/TableView.svelte';
import { madeUpCanopies } from '../../src/workspace/made-up.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const HEAD = 'block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n';
/** Invented: C has the largest crown by far, B the smallest. */
const FOUR = `${HEAD}Apple A,4,3.5,0.5,1.5\nApple B,4,2,0.5,1\nCherry C,4,5,0.5,3\nApple D,4,3,0.5,1.4\n`;

async function view(text: string, name = 'blocks.csv') {
  const workspace = new Workspace(demo as unknown as Document);
  const screen = await render(TableView, { workspace, system: 'metric' });
  const drop = (content: string, as: string) => {
    const data = new DataTransfer();
    data.items.add(new File([content], as));
    screen.container.querySelector('.open')!.dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
  };
  drop(text, name);
  const grid = screen.getByRole('grid');
  return {
    workspace, screen, drop, grid,
    ready: () => expect.element(grid, { timeout: 30_000 }).toBeVisible(),
    lines: () => [...grid.element().querySelectorAll('.lines [role=row]')].map((r) => r.firstElementChild!.textContent!.replace('◉ ', '')),
    active: () => document.getElementById(grid.element().getAttribute('aria-activedescendant') ?? '')
  };
}

describe('a table of canopies', () => {
  it('is opened by dropping a file; bad lines are told with their remedy and the good ones kept', async () => {
    const { screen, ready, lines, grid } = await view(`${FOUR}Bad,4,99,0.5,1.5\n`);
    await ready();
    expect(lines()).toEqual(['Apple A', 'Apple B', 'Cherry C', 'Apple D']);
    await screen.getByText(/1 line was not used/).click();
    await expect.element(screen.getByText(/line 6.*tree_height_m.*99/i)).toBeVisible();
    expect(grid.element().getAttribute('aria-rowcount')).toBe('7');
  });
  it('what is no table is said to be none; what was open stays', async () => {
    const { screen, ready, lines, drop } = await view(FOUR);
    await ready();
    drop('this is no table', 'letter.txt');
    await expect.element(screen.getByText(/letter\.txt holds no canopy that can be used/)).toBeVisible();
    void lines;
  });
  it('is sorted by a heading, by pointer and by key, and filtered by name and by figure', async () => {
    const { screen, ready, lines, grid, active } = await view(FOUR);
    await ready();
    const heading = screen.getByRole('columnheader', { name: /^Tree-row volume m³\/ha/ });
    await heading.click();
    await expect.element(heading).toHaveAttribute('aria-sort', 'ascending');
    expect(lines()).toEqual(['Apple B', 'Apple D', 'Apple A', 'Cherry C']);
    (grid.element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(lines()).toEqual(['Cherry C', 'Apple A', 'Apple D', 'Apple B']);
    await userEvent.keyboard('{Home}{Enter}');
    expect(active()!.textContent).toContain('Block');
    expect(lines()).toEqual(['Apple A', 'Apple B', 'Apple D', 'Cherry C']);
    await screen.getByLabelText('block name holds').fill('apple');
    await expect.poll(lines).toEqual(['Apple A', 'Apple B', 'Apple D']);
    await screen.getByLabelText('only where').selectOptions('Tree height');
    await screen.getByLabelText('limit').fill('3');
    await expect.poll(lines).toEqual(['Apple A', 'Apple D']);
    await screen.getByLabelText('is', { exact: true }).selectOptions('at most');
    await expect.poll(lines).toEqual(['Apple B', 'Apple D']);
    await expect.element(screen.getByText('2 of 4 canopies')).toBeVisible();
  });
  it('sums up what is shown, and says where the strategies agree least', async () => {
    const { screen, ready, grid } = await view(FOUR);
    await ready();
    const mean = [...grid.element().querySelectorAll('.summary [role=row]')][0]!;
    // Heights 3.5, 2, 5 and 3 m.
    expect(mean.children[1]!.textContent).toBe('3.38');
    await expect.element(screen.getByText(/They agree least on Cherry C: from 0\.\d\d \(.+\) to 3\.\d\d \(.+\)\./)).toBeVisible();
  });
  it('a line that is marked has its point, and a point marks its line', async () => {
    const { screen, ready, grid } = await view(FOUR);
    await ready();
    const plot = screen.getByRole('slider', { name: /^Dose index by Tree-row volume against leaf wall area/ });
    const marked = () => grid.element().querySelector('[aria-selected="true"] [role=rowheader]')?.textContent;
    (grid.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowDown}{ArrowDown}{Enter}');
    await expect.poll(marked).toBe('◉ Cherry C');
    await expect.element(plot).toHaveAttribute('aria-valuetext', expect.stringMatching(/^Cherry C: 3\.38 at 22.500/));
    (plot.element() as HTMLElement).focus();
    await userEvent.keyboard('{Home}');
    await expect.poll(marked).toBe('◉ Apple B');
    await userEvent.keyboard('{ArrowRight}');
    await expect.poll(marked).toBe('◉ Apple D');
  });
  it('is still there for whoever comes back from another view', async () => {
    const { screen, ready, workspace } = await view(FOUR);
    await ready();
    await screen.getByLabelText('block name holds').fill('apple');
    await screen.unmount();
    const again = await render(TableView, { workspace, system: 'metric' });
    await expect.element(again.getByText('3 of 4 canopies')).toBeVisible();
    await again.getByLabelText('block name holds').fill('');
    await expect.element(again.getByText('all 4 canopies')).toBeVisible();
  });
  it('shows water, dose and concentration, each with what it needs', async () => {
    const { screen, ready, grid } = await view(FOUR);
    await ready();
    const headings = () => [...grid.element().querySelectorAll('.headings [role=columnheader]')].map((h) => h.textContent!.trim());
    const sets = screen.getByRole('group', { name: 'Columns' });
    await sets.getByRole('button', { name: 'water' }).click();
    expect(headings().some((h) => h.includes('Per ground hectare'))).toBe(false);
    expect(headings().filter((h) => h.includes('L/ha')).length).toBeGreaterThan(5);
    await sets.getByRole('button', { name: 'concentration' }).click();
    await expect.element(screen.getByText(/The concentration needs the water that is sprayed/)).toBeVisible();
    await screen.getByLabelText('water sprayed').fill('500');
    await userEvent.keyboard('{Enter}');
    await expect.poll(() => headings().length).toBeGreaterThan(8);
    await sets.getByRole('button', { name: 'dose', exact: true }).click();
    await expect.poll(() => headings().some((h) => h.includes('kg/ha'))).toBe(true);
  });
});

describe('a table of ten thousand', () => {
  it('draws what is in view alone, and every line is reached by keyboard', async () => {
    const { ready, grid, active } = await view(madeUpCanopies(10_000), 'many.csv');
    await ready();
    const drawn = () => grid.element().querySelectorAll('.lines [role=row]').length;
    expect(grid.element().getAttribute('aria-rowcount')).toBe('10003');
    expect(drawn()).toBeLessThan(60);
    (grid.element() as HTMLElement).focus();
    await userEvent.keyboard('{Control>}{End}{/Control}');
    await expect.poll(() => active()?.closest('[role=row]')?.getAttribute('aria-rowindex')).toBe('10001');
    await expect.poll(() => active()?.closest('[role=row]')?.firstElementChild!.textContent).toBe('Made up 10000');
    await userEvent.keyboard('{Home}{PageUp}{PageUp}');
    await expect.poll(() => Number(active()?.closest('[role=row]')?.getAttribute('aria-rowindex'))).toBeLessThan(9990);
    expect(drawn()).toBeLessThan(60);
    // The cell in hand is in view, between heading and summary.
    await expect
      .poll(() => {
        const [cell, box] = [active()!.getBoundingClientRect(), grid.element().getBoundingClientRect()];
        return cell.top >= box.top + 60 && cell.bottom <= box.bottom - 48;
      })
      .toBe(true);
  });
});

import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import TreeSurvey from '../../src/ui/row/TreeSurvey.svelte';
import { TreeBench } from '../../src/workspace/survey.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

async function open(system: 'metric' | 'us' = 'metric') {
  const workspace = new Workspace(demo as unknown as Document);
  const screen = await render(TreeSurvey, { workspace, system });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ').replace(/\s+/g, ' ');
  const press = (name: string) => screen.getByRole('button', { name, exact: true }).click();
  const field = (name: string) => screen.getByRole('spinbutton', { name, exact: true });
  const add = async (height: string, width: string) => {
    await field('Tree height').fill(height);
    await field('Greatest width').fill(width);
    await press('Add tree');
  };
  return { workspace, screen, text, press, field, add, trees: () => workspace.rung.survey?.trees ?? [], reads: () => checkDocument(workspace.document).ok };
}

describe('measuring with one hand', () => {
  it('steps of 5 cm on their own grid, kept for the next tree', async () => {
    const { press, field, trees, reads, workspace } = await open();
    await field('Tree height').fill('3.02');
    await press('Tree height: 0.05 m more');
    await expect.element(field('Tree height')).toHaveValue('3.05');
    await press('Tree height: 0.05 m less');
    await press('Tree height: 0.05 m less');
    await field('Greatest width').fill('1.2');
    await press('Add tree');
    expect(trees()).toMatchObject([{ heightM: 2.95, widthM: 1.2 }]);
    await press('Add tree');
    expect(trees()[1]).toEqual(trees()[0]);
    expect(reads()).toBe(true);
    await press('Undo last step');
    await press('Undo last step');
    expect(workspace.rung.survey).toBeUndefined();
  });
  it('of 0.1 ft in US units', async () => {
    const { press, field, trees } = await open('us');
    await field('Tree height').fill('10');
    await press('Tree height: 0.1 ft more');
    await field('Greatest width').fill('5');
    await press('Add tree');
    expect(trees()[0]!.heightM).toBeCloseTo(10.1 * 0.3048, 9);
  });
  it('a skirt above the top is told and not added', async () => {
    const { press, field, screen, trees } = await open();
    await field('Tree height').fill('2');
    await field('Lowest foliage').fill('2.5');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('The lowest foliage is not below the top');
    await expect.element(screen.getByRole('button', { name: 'Add tree', exact: true })).toBeDisabled();
    await field('Lowest foliage').fill('0.5');
    await press('Add tree');
    expect(trees()).toHaveLength(1);
  });
});

describe('what the trees say', () => {
  it('grows with each tree; a tree that stands out is marked, counts, and can be left out, corrected, removed', async () => {
    const { add, text, press, screen, trees } = await open();
    expect(text()).toContain('No tree yet');
    await add('3', '1.2');
    expect(text()).toContain('One tree tells no spread');
    for (const [h, w] of [['3.1', '1.3'], ['2.9', '1.1'], ['3.05', '1.25'], ['9', '1.2']] as const) await add(h, w);
    expect(text()).toMatch(/Height 4\.21 m CV 64 %/);
    expect(text()).toMatch(/measure \d+ more/);
    expect(text()).toMatch(/Stands out: height; the median is 3\.05 m/);
    await screen.getByRole('checkbox', { name: 'Tree 5 counts' }).click();
    expect(text()).not.toContain('Stands out');
    // (3 + 3.1 + 2.9 + 3.05)/4
    expect(text()).toMatch(/Height 3\.01 m/);
    await press('Correct tree 5');
    await screen.getByRole('spinbutton', { name: 'Tree height' }).fill('3.2');
    await press('Change tree 5');
    expect(trees()[4]).toMatchObject({ heightM: 3.2, leftOut: true });
    await press('Remove tree 5');
    expect(trees()).toHaveLength(4);
    await press('Undo last step');
    expect(trees()).toHaveLength(5);
  });
  it('more trees than stand in the block are refused by name', async () => {
    const { add, text, field } = await open();
    await add('3', '1.2');
    await add('3.1', '1.2');
    await field('Trees in the block').fill('1');
    expect(text()).toContain('2 trees were measured, but the block is said to hold 1');
  });
  it('goes into the canopy in one step and leaves the rest as it was', async () => {
    const { add, press, workspace, reads } = await open();
    const before = workspace.rung.canopy;
    await add('3', '1.2');
    await add('3.4', '1.6');
    await press('Use for this rung');
    expect(workspace.rung.canopy).toMatchObject({ ...before, heightM: 3.2, widthM: 1.4, skirtM: before.skirtM, tallestTenthM: 3.4, errors: { heightSeM: 0.2, widthSeM: 0.2, trees: 2 } });
    expect(reads()).toBe(true);
    await press('Undo last step');
    expect(workspace.rung.canopy).toEqual(before);
    expect(workspace.rung.survey!.trees).toHaveLength(2);
  });
});

describe('groups', () => {
  it('of known size weight the whole, once each has its size, and stay with the document', async () => {
    const { workspace, screen, add, field, text, press, reads } = await open();
    const tree = async (variety: string, height: string) => {
      await screen.getByLabelText('Variety (may be left out)').fill(variety);
      await add(height, '1');
    };
    for (const h of ['3', '3.2', '3.1']) await tree('Early', h);
    for (const h of ['4', '4.2']) await tree('Late', h);
    // (3 + 3.2 + 3.1 + 4 + 4.2)/5
    expect(text()).toMatch(/Height 3\.50 m/);
    await screen.getByLabelText('Means by').selectOptions('variety');
    await field('Trees in the block: Early').fill('100');
    expect(text()).toContain('Not weighted yet');
    await field('Trees in the block: Late').fill('300');
    // (100·3.1 + 300·4.1)/400
    expect(text()).toMatch(/Height 3\.85 m/);
    expect(text()).toContain('Weighted by the trees of each variety; 400 in the block.');
    expect(text()).toContain('Late (2 of 300, 75 % of the block)');
    expect(reads()).toBe(true);
    await field('Trees in the block: Late').fill('1');
    expect(text()).toContain('2 trees of “Late” were measured, but it is said to hold 1');
    await field('Trees in the block: Late').fill('300');
    await press('Use for this rung');
    expect(workspace.rung.canopy.heightM).toBeCloseTo(3.85, 9);
    expect(new TreeBench(workspace).by).toBe('variety');
  });
});

describe('a table of trees', () => {
  it('is added behind those that are there, in one step, and what cannot be used is given back', async () => {
    const workspace = new Workspace(demo as unknown as Document);
    const bench = new TreeBench(workspace);
    bench.add({ heightM: 3, widthM: 1 });
    const { added, problems, noRoom } = await bench.read('height_m,width_m\n3.1,1.2\nthree,1\n3.3,1.4\n');
    expect([added, noRoom, problems.map((p) => `${p.line} ${p.code}`), bench.trees.length]).toEqual([2, 0, ['3 not-a-number'], 3]);
    workspace.undo();
    expect(bench.trees).toHaveLength(1);
    const full = await bench.read('height_m,width_m\n' + '3,1\n'.repeat(1000));
    expect([full.added, full.noRoom, bench.full]).toEqual([999, 1, true]);
  });
});

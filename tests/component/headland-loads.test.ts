import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import LoadsStep from '../../src/ui/headland/LoadsStep.svelte';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import '../../src/words/headland/join.ts';
import example from '../cli/documents/loads.json';

/** The worked example: 6 ha, 500 L/ha, 1480 L usable, 20 L that stay behind; oil and powder in the tank. */
async function step(system: 'metric' | 'us' = 'metric', document: unknown = example) {
  const workspace = new Workspace(document as Document);
  workspace.goToRung('alike');
  const headland = new Headland(workspace);
  const screen = await render(LoadsStep, { workspace, headland, system });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ').replace(/\s+/g, ' ');
  const big = () => screen.container.querySelector('[data-figure=loads] strong')?.textContent?.replace(/[\u00a0\u202f]/g, ' ');
  const card = (n: number) => screen.getByRole('listitem', { name: `Load ${n}`, exact: true });
  const amounts = (n: number) => [...card(n).element().querySelectorAll('dd')].map((e) => e.textContent?.replace(/[\u00a0\u202f]/g, ' '));
  const mix = () => workspace.rung.mix;
  return { workspace, headland, screen, text, big, card, amounts, mix };
}

describe('the answer', () => {
  it('three loads of 1000 L, 2 ha each, and a card for each with what is weighed', async () => {
    const { big, text, amounts } = await step();
    expect(big()).toBe('3 × 1 000');
    expect(text()).toContain('each 2.00 ha, about 33.3 rows');
    expect(amounts(1)).toEqual(['1 020 L', '5.508 L', '2.448 kg']);
    expect(amounts(2)).toEqual(['1 000 L', '5.400 L', '2.400 kg']);
  });
  it('follows the area, and says so; undo takes it back', async () => {
    const { screen, big, workspace, mix } = await step();
    await screen.getByRole('spinbutton', { name: 'area treated' }).fill('2');
    expect(big()).toBe('1 × 1 000');
    expect(mix()?.areaHa).toBe(2);
    workspace.undo();
    expect(mix()?.areaHa).toBeUndefined();
    await expect.element(screen.getByText('3 × 1', { exact: false }).first()).toBeVisible();
  });
  it('without an area: what is missing and where it goes', async () => {
    const document = structuredClone(example) as { blocks: Record<string, unknown>[] };
    for (const field of ['areaHa', 'rows', 'rowLengthM']) delete document.blocks[0]![field];
    const { text, screen, big } = await step('metric', document);
    expect(text()).toContain('No loads yet');
    expect(text()).toContain('Enter the block’s area, or its rows and their length.');
    await screen.getByRole('spinbutton', { name: 'rows of the block' }).fill('100');
    await screen.getByRole('spinbutton', { name: 'row length' }).fill('150');
    expect(big()).toBe('3 × 1 000');
  });
  it('US units: nothing metric is left', async () => {
    const { text, screen } = await step('us');
    await expect.element(screen.getByText('264', { exact: false }).first()).toBeVisible();
    expect(text()).not.toMatch(/\d (L|kg|ha)\b/);
  });
});

describe('full loads and outer passes', () => {
  it('a small last load is warned of, and alike again is one press', async () => {
    const { screen, big, text } = await step();
    await screen.getByRole('button', { name: 'full, last smaller' }).click();
    expect(big()).toBe('2 × 1 480');
    expect(text()).toContain('and a last one of 40 L');
    expect(text()).toContain('Make 3 loads of 1 000 L instead.');
    await screen.getByRole('button', { name: 'all alike' }).click();
    expect(text()).not.toContain('hard to agitate');
  });
  it('both sides on outside: litres and share of the waste', async () => {
    const { screen, text } = await step();
    await screen.getByRole('button', { name: 'both sides on' }).click();
    expect(text()).toContain('throw 30 L past the outer rows (1 % of the mix)');
  });
});

describe('products', () => {
  it('are taken out and put in again; the document stays one that can be read', async () => {
    const { screen, mix, workspace, text } = await step();
    await screen.getByRole('button', { name: 'Take Invented oil out' }).click();
    expect(mix()?.partners?.map((p) => p.label)).toEqual(['powder']);
    // One product needs no cross: without any the block’s own label would be back.
    expect(screen.getByRole('button', { name: /^Take/ }).elements()).toHaveLength(0);
    await screen.getByRole('button', { name: 'Add a product' }).click();
    expect(mix()?.partners?.map((p) => p.label)).toEqual(['powder', 'oil']);
    expect(text()).toContain('7.248 kg needed, 7.000 kg at hand: 0.248 kg short');
    expect(checkDocument(workspace.document).ok).toBe(true);
  });
  it('the order of mixing goes by their kind', async () => {
    const { screen, workspace } = await step();
    const order = () => [...screen.container.querySelectorAll('li.product')].map((e) => e.textContent?.split(' (')[0]);
    expect(order()).toEqual(['Invented powder', 'Invented oil']);
    await screen.getByLabelText('kind of product').first().selectOptions('SG, soluble granule');
    expect(order()).toEqual(['Invented oil', 'Invented powder']);
    await screen.getByLabelText('kind of product').first().selectOptions('not known');
    expect(order()).toEqual(['Invented powder', 'Invented oil']);
    expect(workspace.document.labels.find((l) => l.id === 'oil')).not.toHaveProperty('formulation');
  });
  it('a rate of active ingredient becomes one of product: 2 kg/ha of an 80 % product are 2.5 kg/ha', async () => {
    const { screen, workspace } = await step();
    await screen.getByText('The label gives active ingredient?').click();
    await screen.getByRole('spinbutton', { name: 'active ingredient', exact: true }).fill('2');
    await screen.getByRole('spinbutton', { name: 'in the product, by weight' }).fill('80');
    await screen.getByRole('button', { name: 'Use as label rate' }).click();
    expect(workspace.document.labels.find((l) => l.id === 'powder')?.rate).toBeCloseTo(2.5, 12);
  });
});

describe('at the filling station', () => {
  it('loads are ticked off in order, in the document; a tick undone opens those after it', async () => {
    const { screen, mix, text } = await step();
    const press = (n: number) => screen.getByRole('button', { name: `Load ${n} filled` }).click();
    await press(1);
    await press(2);
    expect(mix()?.filled).toBe(2);
    expect(text()).toContain('2 of 3 filled');
    await press(1);
    expect(mix()?.filled).toBeUndefined();
  });
  it('another amount than the card’s is told at once', async () => {
    const { screen, mix, text } = await step();
    await screen.getByRole('button', { name: 'Load 1 filled' }).click();
    await screen.getByRole('button', { name: 'Load 2 filled' }).click();
    await screen.getByRole('spinbutton', { name: 'put into load 2, Invented powder' }).fill('3.6');
    expect(mix()?.partners?.find((p) => p.label === 'powder')?.putIn).toEqual([{ load: 2, amount: 3.6 }]);
    expect(text()).toContain('Invented powder, load 2: 3.600 kg instead of 2.400 kg.');
    await screen.getByRole('spinbutton', { name: 'put into load 2, Invented powder' }).fill('');
    expect(mix()?.partners?.find((p) => p.label === 'powder')).not.toHaveProperty('putIn');
  });
});

describe('what stands around it', () => {
  it('cautions come before the order of mixing, and the order defers to the label', async () => {
    const { text } = await step();
    expect(text().indexOf('protective equipment')).toBeGreaterThan(0);
    expect(text().indexOf('Order of mixing')).toBeGreaterThan(text().indexOf('protective equipment'));
    expect(text()).toContain('The order on the labels comes first');
  });
  it('hours by parts, and their working', async () => {
    const { text, screen } = await step();
    expect(text()).toContain('4 h 28 min');
    await screen.getByRole('button', { name: 'Working of Work' }).click();
    await expect.element(screen.getByText('Field efficiency').first()).toBeVisible();
  });
});

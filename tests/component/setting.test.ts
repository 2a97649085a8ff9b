import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { advised } from '../../src/core/setting/evaluate.ts';
import type { Document } from '../../src/core/setting/document.ts';
import NozzleChips from '../../src/ui/nozzles/NozzleChips.svelte';
import OptionsTable from '../../src/ui/setting/OptionsTable.svelte';
import Working from '../../src/ui/setting/Working.svelte';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const open = () => new Workspace(demo as unknown as Document);

describe('options after a change', () => {
  const changed = () => {
    const w = open();
    w.setOpen('L8', false);
    return w;
  };
  const held = (w: Workspace) => advised(w.result).options.find((s) => s.against === 'saved')!;

  it('the setting kept, then speed, pressure, size; only what is possible can be used', async () => {
    const workspace = changed();
    const screen = await render(OptionsTable, { workspace, set: held(workspace), system: 'metric' });
    const heads = screen.getByRole('rowheader').elements().map((e) => e.textContent ?? '');
    expect(heads).toHaveLength(4);
    expect(heads[0]).toBe('Keep the setting');
    const uses = screen.getByRole('button').elements().map((e) => e.getAttribute('aria-label') ?? '');
    expect(uses.some((u) => u.startsWith('Use: By speed'))).toBe(true);
    expect(uses.some((u) => u.includes('Keep'))).toBe(false);
    // 1.31 of 13.72 L/min is lost: 10.5 % more of the rest is too much for pressure.
    expect(uses.some((u) => u.includes('pressure'))).toBe(false);
    await expect.element(screen.getByText(/too large for pressure/)).toBeVisible();
  });
  it('use is one step that undo takes back', async () => {
    const workspace = changed();
    const screen = await render(OptionsTable, { workspace, set: held(workspace), system: 'metric' });
    await screen.getByRole('button', { name: /By speed/ }).click();
    // Speed falls as flow fell: 12.41 / 13.72 of 6 km/h.
    expect(workspace.result.setting.speedKmH).toBeCloseTo((6 * 12.41) / 13.717, 2);
    workspace.undo();
    expect(workspace.result.setting.speedKmH).toBe(6);
    expect(workspace.isOpen('L8')).toBe(false);
  });
  it('a mix that would give less than the label is told under the option', async () => {
    const workspace = changed();
    const screen = await render(OptionsTable, { workspace, set: held(workspace), system: 'metric' });
    await expect.element(screen.getByText(/gives less than the dose; you have not stated/).first()).toBeVisible();
  });
  it('US units in heads and cells', async () => {
    const workspace = changed();
    const screen = await render(OptionsTable, { workspace, set: held(workspace), system: 'us' });
    await expect.element(screen.getByText('gal/ac').first()).toBeVisible();
    await expect.element(screen.getByText('ac/h')).toBeVisible();
    expect(screen.container.textContent).not.toMatch(/L\/ha|kg|bar|km/);
  });
});

describe('a working', () => {
  it('has title, value, formula in symbols, formula with values, certainty and source', async () => {
    const screen = await render(Working, { answer: open().result.sprayer.volume, system: 'metric' });
    const text = screen.container.textContent ?? '';
    expect(text).toContain('V = 600·Q / (v·B)');
    expect(text).toMatch(/V = 600 × 13\.717 \/ \(6 × 3\.8\) = 361\sL\/ha/);
    expect(text).toMatch(/\(\d{4}\)/);
  });
  it('unfolds down to what was measured', async () => {
    const screen = await render(Working, { answer: open().result.canopy.figures.TRVc, system: 'metric' });
    await screen.getByText('Crown height').click();
    await expect.element(screen.getByText('h = H − Hs')).toBeVisible();
    await expect.element(screen.getByText('h = 3.3 − 0.45 = 2.85')).toBeVisible();
    await expect.element(screen.getByText('measured').first()).toBeVisible();
  });
  it('of what cannot be worked out says why', async () => {
    const w = open();
    w.editCanopy({ skirtM: 5 });
    const screen = await render(Working, { answer: w.result.canopy.figures.TRVc, system: 'metric' });
    expect(screen.container.textContent).toMatch(/skirt/i);
    expect(screen.container.textContent).not.toContain('NaN');
  });
});

describe('nozzle chips', () => {
  it('one for each position, with size, flow and verdict in its name', async () => {
    const screen = await render(NozzleChips, { workspace: open(), system: 'metric' });
    expect(screen.getByRole('listitem').elements()).toHaveLength(16);
    await expect.element(screen.getByRole('button', { name: /^Set nozzle L8, 01, 0\.653\sL\/min, 100\s% over the top$/ })).toBeVisible();
  });
  it('the dot shuts the pair; the chip then says so in words, not by colour alone', async () => {
    const workspace = open();
    const screen = await render(NozzleChips, { workspace, system: 'metric' });
    await screen.getByRole('button', { name: 'Nozzle L8 open; press to shut' }).click();
    const shut = screen.getByRole('button', { name: /^Nozzle [LR]8 shut; press to open$/ });
    expect(shut.elements().map((e) => e.getAttribute('aria-pressed'))).toEqual(['false', 'false']);
    await expect.element(screen.getByRole('button', { name: /^Set nozzle L8,.*shut$/ })).toBeVisible();
  });
  it('the chip opens the card of its nozzle, and closes it', async () => {
    const workspace = open();
    const screen = await render(NozzleChips, { workspace, system: 'metric' });
    const pick = screen.getByRole('button', { name: /^Set nozzle L4,/ });
    await pick.click();
    await expect.element(pick).toHaveAttribute('aria-expanded', 'true');
    await screen.getByLabelText('size').selectOptions('03');
    // Both sides carry it.
    expect(workspace.result.sprayer.nozzles.filter((n) => n.size?.id === '03').map((n) => n.position.id)).toEqual(['L4', 'R4']);
    await pick.click();
    await expect.element(pick).toHaveAttribute('aria-expanded', 'false');
  });
});

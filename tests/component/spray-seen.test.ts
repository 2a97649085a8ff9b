import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { balance } from '../../src/core/spray/balance.ts';
import { sprayCase } from '../../src/core/spray/case.ts';
import { transport } from '../../src/core/spray/transport.ts';
import type { SprayBalance } from '../../src/core/spray/types.ts';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import FieldCheck from '../../src/ui/spray/FieldCheck.svelte';
import '../../src/words/spray/join.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

async function check({ system = 'metric', change = (b) => b }: { system?: 'metric' | 'us'; change?: (b: SprayBalance) => SprayBalance } = {}) {
  const workspace = new Workspace(demo as unknown as Document);
  const of = sprayCase(workspace.document, workspace.result);
  if ('kind' in of) throw new Error(of.code);
  const screen = await render(FieldCheck, { workspace, of, balance: change(balance(of, transport(of))), system });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
  const ribbon = (side: string, height: string) => screen.getByLabelText(`Ribbon, ${side}, at ${height}`, { exact: true });
  const paper = (side: string, height: string, place: string) => screen.getByLabelText(`Cover, ${side}, ${height}, ${place}`, { exact: true });
  return { workspace, screen, text, ribbon, paper, reads: () => checkDocument(workspace.document).ok };
}
const NB = '\u00a0';

describe('the protocols', () => {
  it('put people first: nobody in the row, protective equipment, water only', async () => {
    const { text } = await check();
    expect(text().match(/Clean water only in the tank/g)).toHaveLength(2);
    expect(text().match(/Nobody stands in the row while spraying/g)).toHaveLength(2);
    expect(text().match(/product label (asks|says)/g)).toHaveLength(2);
    expect(text()).toMatch(/overrules every figure here/);
  });
  it('says why deposit is not turned into cover', async () => {
    const { text } = await check();
    expect(text()).toMatch(/Deposit is not turned into cover: .*fine drops/);
  });
});

describe('ribbons', () => {
  it('are kept with the rung, beside the air that is expected there, and undo takes each back', async () => {
    const { ribbon, workspace, screen, reads } = await check();
    await ribbon('left', `3.30${NB}m`).selectOptions('streams');
    await ribbon('right', `1.90${NB}m`).selectOptions('still');
    expect(workspace.rung.seen?.ribbons).toEqual([{ side: 'left', heightM: 3.3, class: 'streams' }, { side: 'right', heightM: 1.9, class: 'still' }]);
    expect(reads()).toBe(true);
    expect(ribbon('right', `1.90${NB}m`).element().closest('td')!.textContent).toMatch(/model: [\d.]+\sm\/s/);
    workspace.undo();
    await expect.element(ribbon('right', `1.90${NB}m`)).toHaveValue('');
    await ribbon('left', `3.30${NB}m`).selectOptions('not seen');
    expect(workspace.rung.seen).toBeUndefined();
    await expect.element(screen.getByRole('button', { name: 'Clear all' })).not.toBeInTheDocument();
  });
  it('are set against the order of the prediction, pair by pair', async () => {
    const faces = [{ side: 'left', heightM: 1.2, inMPerS: 20, outMPerS: 8 }, { side: 'left', heightM: 1.9, inMPerS: 20, outMPerS: 4 }, { side: 'left', heightM: 2.6, inMPerS: 20, outMPerS: 1 }] as const;
    const { ribbon, text } = await check({ change: (b) => ({ ...b, faces }) });
    expect(text()).toMatch(/Two ribbons that moved differently/);
    await ribbon('left', `1.20${NB}m`).selectOptions('streams');
    await ribbon('left', `1.90${NB}m`).selectOptions('lifts');
    await ribbon('left', `2.60${NB}m`).selectOptions('flutters');
    expect(text()).toMatch(/2 in the order the model expects, 1 against it, 0 too close/);
    expect(text()).toMatch(/the ribbon is right/);
  });
  it('another height gets a line of its own', async () => {
    const { screen, ribbon, workspace } = await check();
    await screen.getByRole('spinbutton', { name: 'another height' }).first().fill('2.2');
    await screen.getByRole('button', { name: 'Add' }).first().click();
    await ribbon('left', `2.20${NB}m`).selectOptions('lifts');
    expect(workspace.rung.seen?.ribbons?.[0]?.heightM).toBe(2.2);
  });
  it('in US units heights are feet, and the document keeps metres', async () => {
    const { workspace, screen, text } = await check({ system: 'us' });
    await screen.getByLabelText(/^Ribbon, left, at 10\.8/).selectOptions('lifts');
    expect(workspace.rung.seen?.ribbons?.[0]?.heightM).toBe(3.3);
    expect(text()).not.toMatch(/\d m\b|m\/s/);
  });
});

describe('papers', () => {
  it('are kept by place, beside the deposit that is expected there', async () => {
    const { paper, workspace, screen, reads, text } = await check();
    await paper('left', `1.90${NB}m`, 'near face').fill('60');
    await paper('left', `1.90${NB}m`, 'far face').fill('12');
    await screen.getByRole('spinbutton', { name: 'above the top' }).fill('35');
    expect(workspace.rung.seen?.papers).toEqual([
      { side: 'left', heightM: 1.9, place: 'near', coveragePercent: 60 },
      { side: 'left', heightM: 1.9, place: 'far', coveragePercent: 12 },
      { side: 'left', heightM: 3.3, place: 'over', coveragePercent: 35 }
    ]);
    expect(reads()).toBe(true);
    await expect.element(screen.getByText('Seen and predicted')).toBeVisible();
    expect(text()).toMatch(/left, 1\.90 m, near face\s*seen\s*60 %\s*model\s*[\d.]+ µL\/cm²/);
    // The sprayed face gets more than the one behind it: that is the order that was seen.
    expect(text()).toMatch(/Pairs of papers that differ: 1 in the order/);
    expect(text()).toMatch(/above the top: 35 % covered\. The model sends [\d.]+ % of the spray over the top/);
  });
  it('a field typed through is one step of undo; cover beyond 100 % is refused by name', async () => {
    const { paper, workspace, screen } = await check();
    await paper('left', `1.90${NB}m`, 'middle').fill('4');
    await paper('left', `1.90${NB}m`, 'middle').fill('45');
    workspace.undo();
    expect(workspace.rung.seen).toBeUndefined();
    await paper('left', `1.90${NB}m`, 'middle').fill('140');
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/0–100/);
    expect(workspace.rung.seen).toBeUndefined();
  });
  it('left and right are kept apart; clearing takes all in one step', async () => {
    const { paper, workspace, screen } = await check();
    await paper('left', `1.90${NB}m`, 'near face').fill('60');
    await screen.getByLabelText('side of the alley').selectOptions('right');
    await expect.element(paper('right', `1.90${NB}m`, 'near face')).toHaveValue('');
    await paper('right', `1.90${NB}m`, 'near face').fill('50');
    const both = workspace.document;
    await screen.getByRole('button', { name: 'Clear all' }).click();
    expect(workspace.rung.seen).toBeUndefined();
    workspace.undo();
    expect(workspace.document).toBe(both);
  });
});

import Papa from 'papaparse';
import { afterEach, describe, expect, it } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import SprayPanel from '../../src/ui/spray/SprayPanel.svelte';
import { SprayView } from '../../src/workspace/spray.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

let shown: SprayView | null = null;
afterEach(() => shown?.hide());

/** The panel beside the demo block, with its own worker; what is saved is kept for the test. */
async function panel({ system = 'metric', prepare = () => undefined }: { system?: 'metric' | 'us'; prepare?: (w: Workspace) => void } = {}) {
  const workspace = new Workspace(demo as unknown as Document);
  prepare(workspace);
  const spray = new SprayView(workspace);
  shown = spray;
  const saved: { name: string; text: string }[] = [];
  spray.save = (name, content) => void saved.push({ name, text: String(content) });
  spray.show();
  const screen = await render(SprayPanel, { workspace, spray, system });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ');
  const open = (title: string) => screen.getByRole('heading', { name: title, exact: true }).click();
  const ready = () => expect.poll(() => spray.band !== null && spray.answer !== null, { timeout: 15_000 }).toBe(true);
  const rows = (name: string) => [...screen.getByRole('table', { name }).element().querySelectorAll('tbody tr, tfoot tr')].map((r) => [...r.children].map((c) => (c.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ').trim()));
  return { workspace, spray, saved, screen, text, open, ready, rows };
}
const number = (text: string | undefined) => Number(/-?[\d.]+/.exec((text ?? '').replaceAll(' ', ''))?.[0]);

describe('where it ends', () => {
  it('every place with its share, its band and its litres; the parts add up to all', async () => {
    const { ready, rows, workspace } = await panel();
    await ready();
    const all = rows('Where it ends');
    const of = (name: string) => all.find((r) => r[0] === name)!;
    const parts = ['nearest row, near half', 'nearest row, far half', 'other rows', 'ground in the block', 'ground beyond the last row', 'in the air, over the top', 'in the air, through the row', 'in the air, dried up'];
    const sum = (column: number, names: readonly string[]) => names.reduce((s, n) => s + number(of(n)[column]), 0);
    // Rounded to a tenth or to whole percent and litres.
    expect(Math.abs(sum(1, parts) - 100)).toBeLessThan(4);
    expect(number(of('all that is sprayed')[1])).toBe(100);
    const volume = workspace.result.sprayer.volume;
    expect(Math.abs(sum(3, parts) - (volume.kind === 'refused' ? 0 : volume.value))).toBeLessThan(5);
    expect(Math.abs(sum(1, parts.slice(0, 3)) - number(of('on the trees')[1]))).toBeLessThan(2);
    for (const name of parts) expect(of(name)[2], name).toMatch(/^\d+–\d+ %$/);
  });
  it('the band stands beside the figure from the first moment, never narrower than 15 points', async () => {
    const { screen, spray, text, ready } = await panel();
    await expect.poll(() => spray.answer !== null, { timeout: 15_000 }).toBe(true);
    await expect.element(screen.getByText(/^band at least|^band/).first()).toBeVisible();
    await ready();
    const share = number(screen.container.querySelector('[data-figure=spray-on-trees]')?.textContent ?? '');
    const [, least, most] = /On the trees.*?band (\d+)–(\d+) %/.exec(text().replaceAll('\n', ' ')) ?? [];
    expect(Number(most) - share).toBeGreaterThanOrEqual(14);
    expect(share - Number(least)).toBeGreaterThanOrEqual(14);
  });
  it('says whose figures these are, that nothing was validated, and that air is no drift dose', async () => {
    const { ready, text, open, screen } = await panel();
    await ready();
    expect(text()).toMatch(/one pass through an alley/);
    expect(text()).toMatch(/Nothing here was validated/);
    expect(text()).toMatch(/no drift dose/);
    expect(text()).toMatch(/Meets the leaf at [\d.–]+ m\/s, leaves the row at [\d.–]+ m\/s, ±15 to 25 %/);
    await open('Air at the row');
    await expect.element(screen.getByRole('table', { name: 'Air at the row' })).toBeVisible();
    expect(text()).toMatch(/Rule of thumb, from memory/);
    // The rule for air and its k, from memory, stand beside the model's.
    expect(text()).toMatch(/Air needed about .*carried along [\d.]+ times, from memory/);
  });
  it('evenness has a word, deposit its unit', async () => {
    const { ready, text } = await panel();
    await ready();
    expect(text()).toMatch(/Evenness by height \(CV\)\s*\d+(\.\d)? %\s*(even|fairly even|uneven|very uneven)/);
    expect(text()).toMatch(/Mean deposit on leaf\s*[\d.]+ µL\/cm²/);
  });
  it('with no nozzle open it says so, in words', async () => {
    const { text } = await panel({ prepare: (w) => w.result.machine.nozzles.forEach((n) => w.setOpen(n.id, false)) });
    expect(text()).toMatch(/No nozzle is open/);
  });
  it('in US units nothing metric is left', async () => {
    const { ready, open, text, screen } = await panel({ system: 'us' });
    await ready();
    await open('By height');
    await expect.element(screen.getByRole('table', { name: 'By height' })).toBeVisible();
    expect(text()).toMatch(/gal\/ac/);
    expect(text()).not.toMatch(/L\/ha|m\/s|\d m\b|m³/);
  });
});

describe('by nozzle', () => {
  it('a line for each that sprays, every line 100 %', async () => {
    const { ready, open, rows, spray } = await panel();
    await ready();
    await open('By nozzle');
    const lines = rows('By nozzle');
    expect(lines.map((l) => l[0])).toEqual(spray.answer!.balance.perNozzle.map((n) => n.position));
    for (const [id, ...shares] of lines) expect(Math.abs(shares.reduce((s, v) => s + Number(v), 0) - 100), id).toBeLessThan(3);
  });
  it('the line under focus is drawn alone, and again all when it is left', async () => {
    const { ready, open, screen, spray } = await panel();
    await ready();
    await open('By nozzle');
    (screen.getByRole('button', { name: 'Draw the spray of L3 alone' }).element() as HTMLElement).focus();
    await expect.poll(() => spray.alone).toBe('L3');
    await userEvent.tab();
    await expect.poll(() => spray.alone).toBe('L4');
    (document.activeElement as HTMLElement).blur();
    await expect.poll(() => spray.alone).toBeNull();
  });
  it('a shut nozzle has no line', async () => {
    const { ready, open, rows, workspace } = await panel();
    workspace.paired = false;
    workspace.setOpen('L8', false);
    await ready();
    await open('By nozzle');
    expect(rows('By nozzle').map((l) => l[0])).not.toContain('L8');
  });
});

describe('by height', () => {
  it('from the top down to the skirt, all leaf and all that is on the trees', async () => {
    const { ready, open, rows, spray } = await panel();
    await ready();
    await open('By height');
    const lines = rows('By height');
    expect(lines).toHaveLength(10);
    const off = (a: number, b: number) => Math.abs(a - b);
    expect(off(lines.reduce((s, l) => s + number(l[1]), 0), 100)).toBeLessThan(2);
    expect(off(lines.reduce((s, l) => s + number(l[2]), 0), spray.answer!.balance.onTrees * 100)).toBeLessThan(2);
    expect(number(lines[0]![0]!.split('–')[1])).toBeGreaterThan(number(lines[9]![0]!.split('–')[1]));
  });
});

describe('beside another', () => {
  it('the ghost’s figures and the differences; bare trees are clearly other than trees in leaf', async () => {
    const { ready, open, rows, spray, screen } = await panel();
    await ready();
    await open('Beside another');
    await expect.poll(() => spray.ghost !== null, { timeout: 15_000 }).toBe(true);
    const line = rows('Beside another').find((r) => r[0] === 'on the trees')!;
    expect(number(line[1])).toBe(Math.round(spray.answer!.balance.onTrees * 100));
    expect(number(line[2])).toBe(Math.round(spray.ghost!.onTrees * 100));
    expect(line[3]).toMatch(/^[+−]\d+$/);
    await screen.getByLabelText('compare with').selectOptions('nothing');
    expect(screen.container.textContent).toMatch(/Choose another rung/);
  });
  it('against the saved setting a small change makes no clear difference, in words', async () => {
    const { ready, open, rows, screen, workspace, spray } = await panel();
    workspace.saveSetting();
    workspace.editSetting({ pressureBar: workspace.rung.setting.pressureBar + 1 });
    await ready();
    await open('Beside another');
    await screen.getByLabelText('compare with').selectOptions('the saved setting');
    await expect.poll(() => spray.ghost !== null, { timeout: 15_000 }).toBe(true);
    await expect.poll(() => rows('Beside another').find((r) => r[0] === 'on the trees')?.[3]).toMatch(/no clear difference/);
    // More pressure is more litres: that is arithmetic and clear.
    expect(rows('Beside another').find((r) => r[0]?.startsWith('sprayed'))?.[3]).toMatch(/^\+/);
    workspace.backToSaved();
    await expect.poll(() => [...(screen.getByLabelText('compare with').element() as HTMLSelectElement).options].map((o) => o.text)).not.toContain('the saved setting');
  });
  it('other air: the note that the model understates what less air saves', async () => {
    const { ready, open, screen, workspace, spray } = await panel();
    workspace.saveSetting();
    workspace.editSetting({ ptoRpm: 420 });
    await ready();
    await open('Beside another');
    await screen.getByLabelText('compare with').selectOptions('the saved setting');
    await expect.poll(() => spray.ghost !== null, { timeout: 15_000 }).toBe(true);
    await expect.element(screen.getByText(/understates what less air saves/)).toBeVisible();
  });
});

describe('limits and constants', () => {
  it('the limits are said, and never what wind does to deposit', async () => {
    const { ready, open, text, screen } = await panel();
    await ready();
    await open('Limits and constants');
    await expect.element(screen.getByText('What moves the share on the trees most')).toBeVisible();
    for (const said of [/ranks settings/, /5 to 10 points too high/, /No bounce, no run-off/, /Wind is not shown/, /Travel speed is not shown/, /understated/]) expect(text()).toMatch(said);
    await screen.getByText(/^Constants of the model/).click();
    const wind = screen.getByRole('spinbutton', { name: 'Wind across the rows' }).element().closest('li')!;
    expect(wind.textContent).not.toMatch(/on the trees\./);
  });
  it('a constant is changed in one step of undo, with its source and how sure it is', async () => {
    const { ready, open, screen, workspace } = await panel();
    await ready();
    await open('Limits and constants');
    await screen.getByText(/^Constants of the model/).click();
    const field = screen.getByRole('spinbutton', { name: 'Leaf that faces the spray' });
    expect(field.element().closest('li')!.textContent).toMatch(/derived|Pergher/);
    const before = workspace.document;
    await field.fill('0.25');
    expect(workspace.document.assumptions?.['spray.projection']).toBe(0.25);
    expect(checkDocument(workspace.document).ok).toBe(true);
    await field.fill('7');
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/0\.05–1/);
    workspace.undo();
    expect(workspace.document).toBe(before);
  });
  it('another constant gives another answer', async () => {
    const { ready, workspace, spray } = await panel();
    await ready();
    const was = spray.answer!.balance.onTrees;
    workspace.edit((d) => ({ ...d, assumptions: { 'spray.projection': 0.1 } }));
    await expect.poll(() => spray.answer!.balance.onTrees, { timeout: 15_000 }).toBeLessThan(was - 0.1);
  });
});

describe('the table as a file', () => {
  it('holds every table, reads back, and is named after block and rung', async () => {
    const { ready, saved, screen } = await panel({ prepare: (w) => w.edit((d) => ({ ...d, blocks: d.blocks.map((b) => ({ ...b, name: '=cmd|x' })) })) });
    await ready();
    await screen.getByRole('button', { name: 'Save tables (CSV)' }).click();
    expect(saved).toHaveLength(1);
    expect(saved[0]!.name).toMatch(/^-?cmd-x.*-spray\.csv$/);
    const { data, errors } = Papa.parse<Record<string, string>>(saved[0]!.text.replace(/^\uFEFF/, ''), { header: true, skipEmptyLines: true });
    expect(errors).toEqual([]);
    for (const table of ['Where it ends', 'By nozzle', 'By height', 'Air at the row']) expect(data.some((l) => l['table'] === table), table).toBe(true);
    expect(data.find((l) => l['item'] === 'block')?.['value']).toBe("'=cmd|x");
  });
});

import { beforeEach, describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import Season from '../../src/ui/season/Season.svelte';
import { weatherFile } from '../../src/workspace/weather.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

beforeEach(() => weatherFile.forget());

async function open(system: 'metric' | 'us' = 'metric', change: (d: any) => void = () => undefined) {
  const document = structuredClone(demo) as unknown as Document;
  change(document);
  const workspace = new Workspace(document);
  const screen = await render(Season, { workspace, system });
  const text = () => (screen.container.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ').replace(/\s+/g, ' ');
  const table = (name: string) => screen.getByRole('table', { name });
  const row = (name: string, of: string) => table(name).getByRole('row').elements().map((r) => (r.textContent ?? '').replace(/[\u00a0\u202f]/g, ' ').replace(/\s+/g, ' ').trim()).find((r) => r.startsWith(of));
  const press = (name: string | RegExp) => screen.getByRole('button', { name, ...(typeof name === 'string' ? { exact: true } : {}) }).click();
  return { workspace, screen, text, table, row, press, rung: (id: string) => workspace.block.rungs.find((r) => r.id === id)!, reads: () => checkDocument(workspace.document).ok };
}
/** Hours as they would come from a station: ten degree-days on each day of a spring. */
const WEATHER = ['date,temperature_mean_c', ...Array.from({ length: 120 }, (_, i) => `${new Date(Date.UTC(2031, 2, 15 + i)).toISOString().slice(0, 10)},15`)].join('\n');

describe('what a season shows', () => {
  it('a section for each rung, said in words; nozzles by rung with words beside the marks', async () => {
    const { screen, row } = await open();
    const pictures = screen.getByRole('img').elements().map((e) => (e.getAttribute('aria-label') ?? '').replace(/\u00a0/g, ' '));
    expect(pictures).toHaveLength(3);
    expect(pictures[2]).toBe('Full leaf: canopy 3.30 m high and 1.60 m wide, leaf area density 1.90 m²/m³; 16 of 16 nozzles open; open without leaf: L7, L8, R7 and R8');
    expect(row('Which nozzle is open when', 'L8')).toBe('L8 and R8 shut shut open, over the top');
  });
  it('figures by rung, changes between neighbours, totals with their saving', async () => {
    const { row, text } = await open();
    expect(row('Figures of each rung', 'Water sprayed')).toBe('Water sprayed208 L/ha301 L/ha361 L/ha');
    expect(text()).toContain('Petal fall → Full leaf L8 and R8 open.');
    // 361 three times against 361, 301 and 208: by hand 1083 − 870.
    expect(row('The season: adapted against one setting', 'water by')).toMatch(/^water by area ?1 083 L\/ha ?870 L\/ha ?213 L\/ha, 20 %$/);
    expect(text()).toContain('One treatment is assumed where none was entered.');
  });
  it('in US units nothing metric is left in the tables', async () => {
    const { screen } = await open('us');
    for (const t of screen.getByRole('table').elements()) expect(t.textContent).not.toMatch(/\d[\u00a0 ](L|m|kg|ha|L\/ha|m³\/ha)\b/);
  });
  it('the label’s season maximum takes the total away and says why', async () => {
    const { text, row } = await open('metric', (d) => (d.labels[0].maxPerSeason = 4));
    expect(row('The season: adapted against one setting', 'Protective fungicide (invented), by area')).toMatch(/– ?– ?–$/);
    expect(text()).toContain('come to 4.50 kg/ha in the season; its label allows 4.00 kg/ha');
  });
  it('the maximum and the number of uses are entered from the label, and kept with it', async () => {
    const { screen, workspace, text, reads } = await open();
    const fields = (name: string) => screen.getByRole('group', { name: 'Protective fungicide (invented)' }).getByRole('spinbutton', { name });
    await fields('Most in a season by the label').fill('4');
    await fields('Most treatments by the label').fill('2');
    expect(workspace.document.labels[0]).toMatchObject({ maxPerSeason: 4, maxUses: 2 });
    expect(text()).toContain('3 treatments are planned; its label allows 2 in a season.');
    await fields('Most treatments by the label').fill('');
    expect(workspace.document.labels[0]).not.toHaveProperty('maxUses');
    expect(reads()).toBe(true);
  });
  it('another block shows another season', async () => {
    const { workspace, text } = await open();
    workspace.goTo('upper-shelf');
    await expect.poll(text).toContain('Upper shelf: the season');
  });
});

describe('treatments', () => {
  it('are entered at the rung and counted in the totals; undo takes them back', async () => {
    const { screen, row, workspace, rung, reads } = await open();
    await screen.getByRole('spinbutton', { name: 'Treatments at Petal fall' }).fill('4');
    expect(rung('petal-fall').treatments).toBe(4);
    // 1083 and three times 361 more; 870 and three times 301.6 more.
    expect(row('The season: adapted against one setting', 'water by')).toMatch(/2 16[56] L\/ha ?1 77[456] L\/ha/);
    expect(reads()).toBe(true);
    workspace.undo();
    expect(rung('petal-fall')).not.toHaveProperty('treatments');
  });
  it('one setting for the whole season is chosen from the rungs', async () => {
    const { screen, row, text } = await open();
    await screen.getByLabelText('One setting for the whole season').selectOptions('Mouse-ear');
    expect(row('The season: adapted against one setting', 'water by')).toMatch(/62[345] L\/ha ?870 L\/ha ?24[567] L\/ha more/);
    expect(text()).toContain('One setting all season: that of Mouse-ear.');
  });
});

describe('growth', () => {
  it('a proposal stands beside the measurement and changes nothing until it is taken; taking it is one step of undo', async () => {
    const { workspace, rung, text, press, reads } = await open();
    const before = rung('petal-fall').canopy;
    expect(text()).toContain('from Full leaf, by growth stage');
    expect(rung('petal-fall').canopy).toBe(before);
    await press('Use for Petal fall instead of its measurement, from Full leaf, by growth stage');
    expect(rung('petal-fall').canopy).toMatchObject({ heightM: 3.07, widthM: 1.47, proposed: { from: 'full-leaf', by: 'stage' } });
    // Its setting, its density as seen, its name stay.
    expect(rung('petal-fall').canopy.densityClass).toBe(before.densityClass);
    expect(reads()).toBe(true);
    await expect.poll(text).toContain('Canopy proposed, not measured');
    expect(text()).toContain('Petal fall now has the proposed canopy.');
    // It is no source for others any more.
    expect(text()).not.toContain('from Petal fall, by growth stage');
    workspace.undo();
    expect(rung('petal-fall').canopy).toBe(before);
  });
  it('the first measurement takes the place of a proposal', async () => {
    const { workspace, press, rung } = await open();
    await press('Use for Petal fall instead of its measurement, from Full leaf, by growth stage');
    workspace.goToRung('petal-fall');
    workspace.editCanopy({ heightM: 3.15 });
    expect(rung('petal-fall').canopy).not.toHaveProperty('proposed');
  });
  it('a weather file places a date between two rungs; its bad lines are told', async () => {
    const { screen, text, press, rung, reads } = await open();
    const input = screen.container.querySelector<HTMLInputElement>('input[type=file]')!;
    const files = new DataTransfer();
    files.items.add(new File([`${WEATHER}\n2031-07-40,15\n`], 'station.csv', { type: 'text/csv' }));
    input.files = files.files;
    input.dispatchEvent(new Event('change', { bubbles: true }));
    // 42 of 77 days of ten degree-days each.
    await expect.poll(text).toContain('between Mouse-ear and Full leaf, by degree-days, 55 % of the way');
    expect(text()).toContain('station.csv: 120 lines read.');
    expect(text()).toContain('Line 122, date is');
    expect(text()).toContain('Mouse-ear to Petal fall: 420 °C·d');
    await press(/^Use for Petal fall instead of its measurement, between Mouse-ear and Full leaf/);
    expect(rung('petal-fall').canopy.proposed).toEqual({ from: 'mouse-ear', to: 'full-leaf', by: 'degree-days' });
    expect(reads()).toBe(true);
    await press('Forget it');
    await expect.poll(text).not.toContain('by degree-days, 55 %');
  });
  it('a file that is no weather leaves the one before', async () => {
    await weatherFile.read('good.csv', WEATHER);
    expect(await weatherFile.read('bad.csv', 'a,b\n1,2\n')).toBe(false);
    expect(weatherFile.weather?.days).toHaveLength(120);
    const { text } = await open();
    expect(text()).toContain('bad.csv cannot be used.');
  });
  it('the growth of the volume is the user’s to change, and kept in the document', async () => {
    const { screen, workspace, text } = await open();
    const before = text();
    await screen.getByRole('spinbutton', { name: 'Growth of the row’s volume, spring to summer' }).fill('50');
    expect(workspace.document.assumptions).toMatchObject({ 'growth.volume': 0.5 });
    expect(text()).not.toBe(before);
  });
  it('a rung is added at its place with a proposed canopy', async () => {
    const { screen, workspace, press, reads } = await open();
    await screen.getByLabelText('Name', { exact: true }).fill('Full bloom');
    await screen.getByRole('spinbutton', { name: 'Growth stage, BBCH' }).fill('65');
    await press('Add rung');
    expect(workspace.block.rungs.map((r) => r.name)).toEqual(['Mouse-ear', 'Full bloom', 'Petal fall', 'Full leaf']);
    expect(workspace.block.rungs[1]!.canopy.proposed).toEqual({ from: 'full-leaf', by: 'stage' });
    expect(reads()).toBe(true);
    workspace.undo();
    expect(workspace.block.rungs).toHaveLength(3);
  });
  it('an evergreen has no proposals, and says why', async () => {
    const { text, screen } = await open('metric', (d) => (d.blocks[0].evergreen = true));
    expect(text()).toContain('Leaf stands all year here');
    expect(screen.getByRole('button', { name: /^Use for/ }).elements()).toHaveLength(0);
  });
});

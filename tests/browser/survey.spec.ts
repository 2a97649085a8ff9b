import { readFileSync } from 'node:fs';
import { expect, test } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';

const [, ...LINES] = readFileSync(new URL('../measured/data/canopy-stations-kaysville-2013.csv', import.meta.url), 'utf8').trim().split('\n').map((l) => l.split(','));
/** The measured apple trees: highest, lowest foliage and the two half spreads, each a mean over the stations in leaf. */
function appleTrees(): string {
  const stations = new Map<string, Record<string, number>>();
  for (const [species, tree, location, position, m] of LINES) if (species === 'apple') stations.set(`${tree} ${location}`, { ...stations.get(`${tree} ${location}`), [position!]: Number(m) });
  const trees = new Map<string, Record<string, number>[]>();
  for (const [key, s] of stations) if ((s['mh'] ?? 0) > 0) trees.set(key.split(' ')[0]!, [...(trees.get(key.split(' ')[0]!) ?? []), s]);
  const mean = (all: Record<string, number>[], of: (s: Record<string, number>) => number): number => all.reduce((sum, s) => sum + of(s), 0) / all.length;
  const lines = [...trees].map(([tree, all]) => [tree, mean(all, (s) => s['mh']!), mean(all, (s) => s['ml'] ?? 0), mean(all, (s) => (s['nd'] ?? 0) + (s['sd'] ?? 0) + (s['ed'] ?? 0) + (s['wd'] ?? 0))].join(','));
  return ['tree,height_m,skirt_m,width_m', ...lines, 'bad,tall,,'].join('\n');
}

test('measured trees from a file, and one more by hand, become the canopy of the rung', async ({ app, page }) => {
  await app.open('#row');
  await page.getByText('Survey of many trees').click();
  const panel = page.locator('.survey');
  const chooser = page.waitForEvent('filechooser');
  await panel.getByRole('button', { name: 'Add trees from a CSV file' }).click();
  await (await chooser).setFiles({ name: 'trees.csv', mimeType: 'text/csv', buffer: Buffer.from(appleTrees()) });
  await expect(panel.getByText('18 trees added from the file.')).toBeVisible();
  await expect(panel.getByRole('alert')).toContainText('Line 20, height_m is tall; a number');
  // The README of the data: heights 35.9 %, products 62.7 %; 154 trees by scipy.
  await expect(panel).toContainText('measure 136 more, 154 in all');
  await expect(panel.getByRole('region', { name: 'What the trees say' })).toContainText(/CV\s36\s%/);

  await panel.getByRole('button', { name: 'Tree height: 0.05 m more' }).press('Enter');
  await panel.getByRole('button', { name: 'Add tree', exact: true }).press('Enter');
  await expect(panel.getByText('Tree 19 added.')).toBeVisible();
  await panel.getByRole('button', { name: 'Undo last step' }).click();
  await panel.getByRole('button', { name: 'Use for this rung' }).click();
  const { heightM, errors } = JSON.parse(await app.saveFile()).blocks[0].rungs.at(-1).canopy;
  expect(errors.trees).toBe(18);
  await app.to('Section');
  await expect(app.field('canopy top')).toHaveValue(String(Number(heightM.toFixed(2))));
});

test('no barrier in the survey in any theme; what can be pressed is 48 px high and wide', async ({ app, page }) => {
  await app.open('#row');
  await page.getByText('Survey of many trees').click();
  const panel = page.locator('.survey');
  for (let i = 0; i < 5; i++) await panel.getByRole('button', { name: 'Add tree', exact: true }).click();
  for (let i = 0; i < 30; i++) await panel.getByRole('button', { name: 'Tree height: 0.05 m more' }).click();
  await panel.getByRole('button', { name: 'Add tree', exact: true }).click();
  await expect(panel.getByText('Stands out: height')).toBeVisible();
  await cleanInAll(page, 'survey');
  expect.soft(await small(page, '.survey', 48)).toEqual([]);
  expect.soft(await wide(page)).toEqual([]);
});

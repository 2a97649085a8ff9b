import { expect, onLaptop, test, type App } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';
import { bare, readPdf } from './pdf.ts';
import type { Page } from '@playwright/test';

const WEATHER = 'tests/measured/data/weather-tmy3-greensboro-spring.csv';
const season = (page: Page) => page.locator('.season');

async function open(app: App, page: Page): Promise<void> {
  await page.goto('#strategies/season');
  await expect(season(page).locator('.strip .season-nozzle').first()).toBeVisible();
}
async function readWeather(page: Page): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await season(page).getByRole('button', { name: 'Read a weather file' }).click();
  await (await chooser).setFiles(WEATHER);
  await expect(season(page)).toContainText('3672 lines read.');
}
async function addRung(page: Page, name: string, bbch: number): Promise<void> {
  await season(page).getByLabel('Name', { exact: true }).fill(name);
  await season(page).getByRole('spinbutton', { name: 'Growth stage, BBCH' }).fill(String(bbch));
  await season(page).getByRole('button', { name: 'Add rung' }).click();
  await expect(season(page).locator('.strip').first().getByRole('heading', { name, exact: true })).toBeVisible();
}

test('from a typical year’s weather to a canopy between two rungs, in one tap and one undo; a measurement takes its place', async ({ app, page }) => {
  await open(app, page);
  await readWeather(page);
  await expect(season(page)).toContainText(/Mouse-ear to Petal fall: 451.°C·d, by month and day/);
  await season(page).getByRole('button', { name: 'Use for Petal fall instead of its measurement, between Mouse-ear and Full leaf, by degree-days' }).press('Enter');
  await expect(season(page).getByText('Petal fall now has the proposed canopy.')).toBeVisible();
  await expect(season(page).locator('.strip').first()).toContainText('Canopy proposed, not measured');
  const kept = async () => JSON.parse(await app.saveFile()).blocks[0].rungs[1].canopy;
  const proposed = await kept();
  expect(proposed.proposed).toEqual({ from: 'mouse-ear', to: 'full-leaf', by: 'degree-days' });

  await app.undo.click();
  expect(await kept()).toMatchObject({ heightM: 3.2, widthM: 1.3 });
  await app.redo.click();
  expect(await kept()).toEqual(proposed);

  await season(page).getByRole('button', { name: 'Go to Petal fall' }).click();
  await page.goto('#section');
  await app.field('canopy top').fill('3.15');
  expect(await kept()).not.toHaveProperty('proposed');
});

for (const paper of ['a4', 'letter'] as const)
  test(`six rungs on ${paper}: one landscape page that holds the whole season and nothing else`, onLaptop('the paper is the same for both'), async ({ app, page }) => {
    await open(app, page);
    for (const [name, bbch] of [['Pink bud', 57], ['Full bloom', 65], ['Fruit set', 72]] as const) await addRung(page, name, bbch);
    await season(page).getByRole('spinbutton', { name: 'Treatments at Full bloom' }).fill('3');
    await season(page).getByLabel('Paper').selectOption(paper);
    const pdf = await readPdf(await page.pdf({ preferCSSPageSize: true, tagged: true, printBackground: false }));
    expect(pdf.pages).toBe(1);
    const [width, height] = paper === 'a4' ? [297, 210] : [279.4, 215.9];
    expect(pdf.width).toBeCloseTo(width, 0);
    expect(pdf.height).toBeCloseTo(height, 0);
    for (const text of ['Lower bench: the season', 'land 2.40 ha', 'Demo: an invented orchard', 'Mouse-ear', 'Pink bud', 'Full bloom', 'Petal fall', 'Fruit set', 'Full leaf', 'Which nozzle is open when', 'L8 and R8', 'open, over the top', 'What changes from rung to rung', 'Water sprayed', 'Tank fills', 'Adapted', '3 treatments', 'The label rules'])
      expect(pdf.text, text).toContain(bare(text));
    for (const other of ['Growthbetweenrungs', 'Weatherfile', 'Printtheseasonsheet', 'Unitstheme', 'Strategies']) expect(pdf.text).not.toContain(other);
    expect(pdf.tagged).toBe(true);
    for (const role of ['H3', 'H4', 'Table', 'TH', 'TD', 'L', 'LI', 'Figure']) expect(pdf.roles, role).toContain(role);
    expect(pdf.alternatives.join(' ')).toContain('Full bloom: canopy');
    for (const w of pdf.words) {
      expect(w.left, w.text).toBeGreaterThan(8);
      expect(w.right, w.text).toBeLessThan(width - 8);
      expect(w.base, w.text).toBeGreaterThan(8);
      expect(w.base, w.text).toBeLessThan(height - 8);
    }
  });

test('no barrier in the season in any theme; what can be pressed is 48 px high and wide; nothing sticks out', async ({ app, page }) => {
  await open(app, page);
  // Every rule looks at every stroke of the drawings.
  test.slow();
  await readWeather(page);
  await addRung(page, 'Full bloom', 65);
  await season(page).getByText('How these were worked out').click();
  expect.soft(await small(page, '.season', 48)).toEqual([]);
  await season(page).getByRole('button', { name: 'Working of water by area' }).click();
  await expect(season(page).getByText('Season: water').first()).toBeVisible();
  await cleanInAll(page, 'season');
  expect.soft(await wide(page)).toEqual([]);
});

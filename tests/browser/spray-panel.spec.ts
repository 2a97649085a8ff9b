import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, isPhone, numberIn, test, type App } from './app.ts';
import { cleanInAll, crowded, small, wide } from './barriers.ts';
import { speakLongWords } from './long-words.ts';

/** The figures of the spray beside the drawing, in the built page with its workers under the page's own policy. */

const ROOT = 'section.spray';

async function spray(app: App): Promise<void> {
  await app.open();
  await on(app.page);
}
async function on(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Spray', exact: true }).click();
  await expect(page.locator('[data-figure=spray-on-trees]')).toBeVisible({ timeout: 20_000 });
  // Until the band of all constants is there, the least one stands in its place.
  await expect(page.locator(ROOT).getByText('band at least')).toHaveCount(0, { timeout: 20_000 });
}
const fold = (page: Page, title: string) => page.locator(ROOT).getByRole('heading', { name: title, exact: true });
const cells = (page: Page, table: string, row: string | RegExp) => page.locator(ROOT).getByRole('table', { name: table }).getByRole('row', { name: row }).getByRole('cell');
const onTrees = async (page: Page) => numberIn(await page.locator('[data-figure=spray-on-trees]').innerText());

/** Everything that can be unfolded. */
async function unfold(page: Page): Promise<void> {
  for (let i = 0; i < 3; i++) {
    await page.locator(`${ROOT} details:not([open])`).evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
    await page.waitForTimeout(150);
  }
}

test('shutting what sprays over the top: more of it on the trees, fewer litres; undo takes it back', async ({ app, page }) => {
  await spray(app);
  const before = await onTrees(page);
  const litres = async () => numberIn(await cells(page, 'Where it ends', /^all that is sprayed/).last().innerText());
  const sprayed = await litres();
  for (const id of ['L7', 'L8']) await app.toggle(id).click();
  await expect.poll(() => onTrees(page)).toBeGreaterThan(before + 5);
  expect(await litres()).toBeLessThan(sprayed * 0.9);
  await app.undo.click();
  await app.undo.click();
  await expect.poll(() => onTrees(page)).toBe(before);
  await page.getByRole('button', { name: 'Spray', exact: true }).click();
  await expect(page.locator(ROOT)).toHaveCount(0);
});

test('by keyboard: a table is unfolded and a nozzle drawn alone', async ({ app, page }) => {
  await spray(app);
  await page.locator(`${ROOT} summary`).filter({ hasText: 'By nozzle' }).focus();
  await page.keyboard.press('Enter');
  const first = page.getByRole('button', { name: 'Draw the spray of L1 alone' });
  await expect(first).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(first).toBeFocused();
  await expect(app.drawing.getByText('L1 alone, on the trees')).toBeVisible();
  await page.keyboard.press('Tab');
  await expect(app.drawing.getByText('L2 alone, on the trees')).toBeVisible();
});

test('beside the saved setting, then beside another rung', async ({ app, page }) => {
  await spray(app);
  for (const id of ['L7', 'L8']) await app.toggle(id).click();
  await fold(page, 'Beside another').click();
  await page.getByLabel('compare with').selectOption('the saved setting');
  const line = cells(page, 'Beside another', /^on the trees/);
  await expect(line.last()).toHaveText(/^\+\d+|no clear difference/);
  await expect(cells(page, 'Beside another', /^sprayed/).last()).toHaveText(/^−/);
  await page.getByLabel('compare with').selectOption('Mouse-ear');
  await expect(page.getByRole('columnheader', { name: 'Mouse-ear' })).toBeVisible();
});

test('what was seen in the field is kept over a reload', async ({ app, page }) => {
  await spray(app);
  await fold(page, 'Judge it in the field').click();
  await page.getByLabel(/^Ribbon, left, at 3\.30/).selectOption('streams');
  await page.getByRole('spinbutton', { name: /^Cover, left, 1\.90\sm, near face/ }).fill('60');
  await app.kept();
  await page.reload();
  await on(page);
  await fold(page, 'Judge it in the field').click();
  await expect(page.getByLabel(/^Ribbon, left, at 3\.30/)).toHaveValue('streams');
  await expect(page.getByRole('spinbutton', { name: /^Cover, left, 1\.90\sm, near face/ })).toHaveValue('60');
});

test('better settings are looked for, one is used, and taken back', async ({ app, page }) => {
  test.slow();
  await spray(app);
  const before = await onTrees(page);
  await fold(page, 'Better settings?').click();
  await app.button('Look for better settings').click();
  await expect(page.getByText(/settings looked at/)).toBeVisible({ timeout: 45_000 });
  await page.getByRole('heading', { name: /^Setting 1/ }).click();
  await app.button(/^Use: Setting 1/).click();
  await expect(page.getByText(/^Set: Setting 1/)).toBeVisible();
  await expect.poll(() => onTrees(page)).not.toBe(before);
  await page.locator(ROOT).getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => onTrees(page)).toBe(before);
});

test('the tables are saved as a file', async ({ app, page }) => {
  await spray(app);
  const download = page.waitForEvent('download');
  await app.button('Save tables (CSV)').click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('lower-bench-full-leaf-spray.csv');
  const text = readFileSync(await file.path(), 'utf8');
  expect(text).toMatch(/^\uFEFFtable,item,figure,value,band from,band to,unit\r\n/);
  expect(text).toMatch(/\r\nWhere it ends,on the trees,share,[\d.]+,[\d.]+,[\d.]+,%\r\n/);
});

test('no barrier with all unfolded, in any theme', async ({ app, page }) => {
  test.slow();
  await app.open();
  await on(page);
  await fold(page, 'Judge it in the field').click();
  await page.getByRole('spinbutton', { name: /^Cover, left, 1\.90\sm, near face/ }).fill('60');
  await page.getByRole('spinbutton', { name: /^Cover, left, 1\.90\sm, far face/ }).fill('160');
  await unfold(page);
  await cleanInAll(page, 'spray');
});

test('whatever can be pressed is 44 px high and wide', async ({ app, page }) => {
  await spray(app);
  await unfold(page);
  expect(await small(page, ROOT, 44)).toEqual([]);
});

for (const [name, prepare] of [
  ['as it is', () => Promise.resolve()],
  ['a window half as wide, as at a zoom of 200 %', (page: Page) => page.setViewportSize(isPhone(page) ? { width: 195, height: 422 } : { width: 720, height: 470 })],
  ['the narrowest phone', (page: Page) => page.setViewportSize({ width: 320, height: 640 })],
  ['text twice as large', (page: Page) => page.addInitScript(() => addEventListener('DOMContentLoaded', () => (document.documentElement.style.fontSize = '200%')))]
] as const)
  test(`${name}: nothing sticks out sideways, no word is cut or lies on another`, async ({ app, page }) => {
    test.slow();
    await prepare(page);
    await spray(app);
    await unfold(page);
    expect.soft(await wide(page)).toEqual([]);
    expect.soft(await crowded(page, ROOT)).toEqual([]);
  });

for (const system of ['metric', 'us'] as const)
  test(`in a language with longer words, ${system}: nothing is cut, lies on other words or sticks out`, async ({ page }) => {
    test.slow();
    await speakLongWords(page);
    await page.addInitScript((kept) => localStorage.setItem('rowtailor-preferences', kept), JSON.stringify({ system, theme: 'paper', tried: ['top', 'shut', 'why'] }));
    await page.goto('');
    await page.getByRole('button', { name: /^\[?Spráá?y/ }).click();
    await expect(page.locator('[data-figure=spray-on-trees]')).toBeVisible({ timeout: 20_000 });
    await unfold(page);
    expect(await page.locator(ROOT).innerText()).toMatch(/\[[^\]]*[áéíóú]{2}/);
    expect.soft(await wide(page)).toEqual([]);
    expect.soft(await crowded(page, ROOT)).toEqual([]);
  });

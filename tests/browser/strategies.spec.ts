import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';

/** The station is as wide as the window; there is no drawing to wait for. */
async function to(page: Page, view: 'block' | 'table'): Promise<void> {
  await page.goto(`#strategies/${view}`);
  await expect(page.getByRole('heading', { name: 'Strategies', exact: true })).toBeVisible();
  await expect(view === 'block' ? page.getByRole('heading', { name: 'Take it with you' }) : page.getByRole('button', { name: 'Open a table of canopies' })).toBeVisible();
}
/** Text of the file that a button gives. */
async function fileOf(page: Page, button: string): Promise<{ readonly name: string; readonly text: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const file = await download;
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part as Buffer);
  return { name: file.suggestedFilename(), text: Buffer.concat(parts).toString('utf8') };
}
const indexOf = async (page: Page, name: string): Promise<number> => Number(await page.getByRole('row', { name: new RegExp(`^Working of ${name}`) }).locator('td').nth(2).locator('b').innerText());

test('one block: what if, why two differ, own formula, files, all by keyboard', async ({ app, page }) => {
  test.slow();
  await to(page, 'block');
  const before = await indexOf(page, 'Tree-row volume');
  const slider = page.getByRole('slider', { name: 'canopy width', exact: true });
  await slider.focus();
  for (let i = 0; i < 8; i++) await page.keyboard.press('ArrowRight');
  // From 1.60 to 2.00 m: a quarter more volume.
  await expect.poll(() => indexOf(page, 'Tree-row volume')).toBeCloseTo(before * 1.25, 2);
  await page.getByRole('button', { name: 'Take over for Full leaf' }).press('Enter');
  await expect(page.getByText('Taken over. Undo puts it back.')).toBeVisible();
  await page.keyboard.press('Control+z');
  await expect.poll(() => indexOf(page, 'Tree-row volume')).toBe(before);

  await page.getByRole('button', { name: /Write a strategy of your own/ }).press('Enter');
  await page.getByLabel('name', { exact: true }).fill('Bench rule');
  await page.getByLabel('dose index', { exact: true }).fill('min(1, TRVc / 8000)');
  await page.getByRole('button', { name: 'Keep it' }).press('Enter');
  expect(await indexOf(page, 'Bench rule')).toBe(1);
  await page.getByRole('button', { name: /^Row length less Per ground hectare/ }).focus();
  await page.keyboard.press('Control+End');
  await expect(page.getByRole('heading', { name: 'Bench rule against Leaf area' })).toBeVisible();

  const csv = await fileOf(page, 'Table, CSV');
  expect(csv.name).toBe('lower-bench-full-leaf-strategies.csv');
  expect(csv.text.trim().split('\n')).toHaveLength(15);
  expect(csv.text).toContain('own.own-1,Bench rule,1,');
  expect((await fileOf(page, 'Methods, text')).text).toContain('Bench rule');
  const bib = (await fileOf(page, 'Sources, BibTeX')).text;
  const ids = (JSON.parse((await fileOf(page, 'Sources, CSL-JSON')).text) as { id: string }[]).map((w) => w.id);
  expect([...bib.matchAll(/^@\w+\{([^,]+),/gm)].map((m) => m[1])).toEqual(ids);
  expect(JSON.parse((await fileOf(page, 'Manifest, JSON')).text).document.sha256).toMatch(/^[0-9a-f]{64}$/);
  expect((await fileOf(page, 'Stair of differences, SVG')).text).toMatch(/^<svg[\s\S]*Bench rule/);
  // What was written is in the document's own file.
  expect(JSON.parse(await app.saveFile()).ownStrategies).toMatchObject([{ name: 'Bench rule' }]);
});

test('one block: no barrier in any theme, nothing sticks out, all can be pressed', async ({ app, page }) => {
  test.slow();
  await to(page, 'block');
  expect(await wide(page)).toEqual([]);
  expect(await small(page, 'section.strategies', 48)).toEqual([]);
  await page.getByRole('button', { name: 'Working of Swiss straight line' }).click();
  await page.getByRole('button', { name: /^Swiss straight line less US tree-row volume/ }).click();
  await page.getByRole('button', { name: /Write a strategy of your own/ }).click();
  await page.getByLabel('dose index', { exact: true }).fill('TRV /');
  await page.getByRole('button', { name: 'As a table: Dose index against leaf wall' }).click();
  await page.getByRole('button', { name: 'Draw', exact: true }).click();
  await expect(page.getByText(/draws with seed 1/)).toBeVisible({ timeout: 20_000 });
  await cleanInAll(page, 'strategies of one block');
  void app;
});

test('a table: ten thousand canopies from a file, sorted, marked, taken along', async ({ app, page }) => {
  test.slow();
  await to(page, 'table');
  const given = async (name: string, text: string) => {
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: /^Open (a table of canopies|another table)$/ }).click();
    await (await chooser).setFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
  };
  await given('head.csv', 'block,spacing,tree_height_m,skirt_height_m,canopy_width_m\nUpper,4,3,0.5,1\n');
  await expect(page.getByText('The table was not read.')).toBeVisible();
  await expect(page.getByText('1 line was not used')).toHaveCount(0);
  await cleanInAll(page, 'a table that is not read');
  const lines = Array.from({ length: 10_000 }, (_, i) => `Block ${i + 1},${3 + (i % 20) / 10},${2 + (i % 37) / 10},0.5,${1 + (i % 11) / 10}`);
  await given('blocks.csv', `block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n${lines.join('\n')}\nNo good,4,tall,0.5,1\n`);
  await expect(page.getByText(/^blocks\.csv: 10.000 canopies$/)).toBeVisible({ timeout: 20_000 });
  await page.getByText('1 line was not used').click();
  await expect(page.getByText(/Line 10002, tree_height_m is tall/i)).toBeVisible();
  const grid = page.getByRole('grid');
  await grid.focus();
  await page.keyboard.press('Control+End');
  await expect(grid.getByRole('rowheader', { name: 'Block 10000', exact: true })).toBeInViewport();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('slider', { name: /^Dose index by/ })).toHaveAttribute('aria-valuetext', /^Block 10000: /);
  await cleanInAll(page, 'table of canopies');
  expect(await wide(page)).toEqual([]);
  expect(await small(page, 'section.strategies', 48)).toEqual([]);
  await page.getByLabel('block name holds').fill('Block 99');
  await expect(page.getByText(/^111 of 10.000 canopies$/)).toBeVisible();
  const csv = await fileOf(page, 'CSV');
  expect(csv.name).toBe('blocks-index.csv');
  expect(csv.text.trim().split('\n')).toHaveLength(112);
  expect((await fileOf(page, 'Parquet')).text.slice(0, 4)).toBe('PAR1');
  void app;
});

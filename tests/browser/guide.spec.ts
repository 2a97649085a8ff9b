import { expect, test } from './app.ts';
import { cleanInAll, wide } from './barriers.ts';

test('symbols and terms: found from the menu, and a working names its own', async ({ app, page }) => {
  await app.open();
  await app.menu();
  await app.button('Symbols and terms').click();
  const sheet = page.getByRole('dialog', { name: 'Symbols and terms' });
  const find = sheet.getByLabel('Find a symbol, a word or a unit');
  await expect(sheet.locator('.symbols > div').nth(100)).toBeAttached();
  await cleanInAll(page, 'glossary');
  expect(await wide(page)).toEqual([]);
  await find.fill('LAD');
  await expect(sheet.locator('.symbols dt').first()).toHaveText('LAD');
  await expect(sheet).toContainText('Leaf area, one side');
  await find.fill('zzz');
  await expect(sheet.getByRole('status')).toHaveText('Nothing found. Try a shorter word.');
  await page.keyboard.press('Escape');
  await page.keyboard.press('Escape');
  await expect(sheet).toHaveCount(0);
  await app.button('Working of Water').click();
  await page.locator('#working-water').getByRole('button', { name: 'Symbols and terms' }).first().click();
  // V = 600·Q / (v·B): its own symbols, each with its meaning, and no others until they are asked for.
  // The sheet is fetched: it is there when it shows something.
  await expect(sheet.locator('.symbols dt').first()).toBeVisible();
  const few = await sheet.locator('.symbols dt').allInnerTexts();
  expect(few).toEqual(expect.arrayContaining(['V', 'Q', 'v', 'B']));
  expect(few.length).toBeLessThan(40);
  await sheet.getByRole('button', { name: 'Show all' }).click();
  await expect.poll(() => sheet.locator('.symbols dt').count()).toBeGreaterThan(few.length);
});

test('licences of all that is in the page', async ({ app, page }) => {
  await app.open();
  await app.menu();
  await app.button('Licences').click();
  const sheet = page.getByRole('dialog', { name: 'Licences' });
  for (const name of ['svelte', 'd3-shape', 'laz-perf', '@fontsource/bitter']) await expect(sheet.locator('summary strong').getByText(name, { exact: true })).toBeVisible();
  await sheet.locator('summary').filter({ hasText: /^svelte / }).click();
  await expect(sheet).toContainText('Permission is hereby granted, free of charge');
  await cleanInAll(page, 'licences');
  expect(await wide(page)).toEqual([]);
});

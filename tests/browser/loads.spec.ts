import { expect, isPhone, numberIn, test } from './app.ts';

const FILE = 'tests/cli/documents/loads.json';

test('a grower mixes the loads of a block, ticks them off at the water, reloads, and nothing is lost', async ({ app, page }) => {
  await page.goto('#headland/loads');
  await expect(page.getByRole('heading', { name: 'Loads', level: 2 })).toBeVisible();
  await app.openFile(FILE);
  await page.getByRole('button', { name: 'Alike', exact: true }).click();

  // 6 ha at 500 L/ha from 1480 L that can be used: three loads of 1000 L, 2.4 kg of powder each.
  await expect(app.figure('loads')).toContainText('3 × 1');
  const card = page.getByRole('listitem', { name: 'Load 2', exact: true });
  await expect(card).toContainText('2.400');

  // Half of the block today: 1500 L are two loads of 750 L.
  await app.field('area treated').fill('3');
  await expect(app.figure('loads')).toContainText('2 × 750');
  await app.field('area treated').fill('');
  await expect(app.figure('loads')).toContainText('3 × 1');

  await page.getByRole('button', { name: 'Load 1 filled' }).click();
  await page.getByRole('button', { name: 'Load 2 filled' }).click();
  await app.field('put into load 2, Invented powder').fill('3.6');
  const findings = page.getByRole('list', { name: 'Findings' }).first();
  await expect(findings).toContainText(/Invented powder, load 2: 3\.600.kg instead of 2\.400.kg/);

  await app.kept();
  await page.reload();
  await page.getByRole('button', { name: 'Alike', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Load 2 filled' })).toHaveAttribute('aria-pressed', 'true');
  await expect(page.getByText('2 of 3 filled')).toBeVisible();
  await expect(app.field('put into load 2, Invented powder')).toHaveValue('3.6');
  expect(numberIn(await card.locator('dd').first().innerText())).toBe(1000);

  // Every target is made for a thumb in a glove, and nothing runs off the side.
  for (const button of await page.locator('section.headland').locator('button, select, .box').all()) expect((await button.boundingBox())!.height).toBeGreaterThanOrEqual(55.5);
  const most = isPhone(page) ? 390 : 1440;
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(most);
});

test('by keyboard alone: from the answer to a ticked load', async ({ app, page }) => {
  await page.goto('#headland/loads');
  await app.openFile(FILE);
  await page.getByRole('button', { name: 'full, last smaller' }).focus();
  await page.keyboard.press('Enter');
  await expect(app.figure('loads')).toContainText('2 × 1');
  await page.getByRole('button', { name: 'Load 1 filled' }).focus();
  await page.keyboard.press('Space');
  await expect(page.getByText('1 of 3 filled')).toBeVisible();
});

import { expect, isPhone, numberIn, test } from './app.ts';

/** Fitting nozzles on the headland, in the built page with its worker under the page's own policy. */

const card = (page: import('@playwright/test').Page, name: string | RegExp) => page.getByRole('article', { name });

test('from the demo block to a setting: narrow the sizes, read the list, use one, undo it', async ({ app, page }) => {
  await page.goto('#headland/fitting');
  await expect(page.getByRole('heading', { name: 'Nozzle fitting', exact: true })).toBeVisible();
  const none = card(page, 'No change of nozzles');
  const best = card(page, 'Best match');
  await expect(best).toBeVisible();
  await expect(none).toContainText('no nozzle changed');
  const match = async (of: typeof best) => numberIn(await of.locator('[data-figure=match]').innerText());
  expect(await match(best)).toBeGreaterThan(await match(none));

  // Fewer sizes: the list is found anew, and is no better.
  const before = await match(best);
  await page.getByText(/^Sizes to choose from: 17 of 17$/).click();
  for (const size of ['0050 purple', '025 lilac']) await page.getByRole('checkbox', { name: size }).uncheck();
  await expect(page.getByText('Sizes to choose from: 15 of 17')).toBeVisible();
  await expect(best).toBeVisible();
  await expect(best.getByRole('row', { name: /025 lilac/ })).toHaveCount(0);
  expect(await match(best)).toBeLessThanOrEqual(before);

  await best.getByRole('button', { name: /^Use: Best match/ }).click();
  await expect(page.getByText('Set: Best match. Prove it with a catch of every nozzle.')).toBeVisible();
  await expect(card(page, /No change of nozzles/)).toContainText('This is set now');
  await page.getByRole('link', { name: 'Section', exact: true }).click();
  await expect(app.figure('water')).toBeVisible();
  expect(await app.value('water')).toBeCloseTo(400, -1);
  await app.undo.first().click();
  await page.goBack();
  await expect(none).toContainText('01 orange');
});

test('works by keyboard alone, is wide enough for a thumb, and nothing hangs over the edge', async ({ app: _, page }) => {
  await page.goto('#headland/fitting');
  await expect(card(page, 'Best match')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(await page.evaluate(() => innerWidth));
  for (const control of await page.locator('section.headland').getByRole('button').all()) {
    if (!(await control.isVisible())) continue;
    const box = (await control.boundingBox())!;
    expect(box.height, await control.innerText()).toBeGreaterThanOrEqual(55.5);
  }
  await page.getByRole('button', { name: /^Use: Few changes/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Set: Few changes/)).toBeVisible();
  await page.getByText('Limits', { exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.getByRole('spinbutton', { name: 'Most nozzles to change' }).fill('2');
  await page.keyboard.press('Tab');
  await expect(page.getByText(/^(4|6|8) nozzles changed$/)).toHaveCount(0);
  if (isPhone(page)) expect((await card(page, /No change/).boundingBox())!.width).toBeLessThanOrEqual(390);
});

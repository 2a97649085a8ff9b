import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { crowded, wide } from './barriers.ts';

/** No language that is read from the right is there yet: the layout is. */
const turn = (page: Page) => page.evaluate(() => document.documentElement.setAttribute('dir', 'rtl'));

test('read from the right: nothing sticks out, no word lies on another; the machine keeps its sides', async ({ app, page }) => {
  await app.open();
  const left = async () => (await page.locator('.nozzle').first().boundingBox())!.x - (await app.drawing.boundingBox())!.x;
  const before = await left();
  await turn(page);
  for (const station of ['Section', 'Row', 'Headland', 'Strategies'] as const) {
    await page.getByRole('link', { name: station, exact: true }).click();
    await expect(page.locator('.panel :is(h2, h3)').first()).toBeVisible();
    await page.waitForTimeout(400);
    expect.soft(await wide(page), station).toEqual([]);
    expect.soft((await crowded(page, 'body')).filter((w) => !/^“\d+” on “\d+”$/.test(w)), station).toEqual([]);
    if (station === 'Section') expect(Math.abs((await left()) - before)).toBeLessThan(2);
  }
  await page.getByRole('link', { name: 'Section', exact: true }).click();
  await app.button('Working of Water').click();
  await expect(page.locator('#working-water .formula').first()).toHaveCSS('direction', 'ltr');
  expect(await wide(page)).toEqual([]);
});

test('read from the right: the menu opens inside the window', async ({ app, page }) => {
  await app.open();
  await turn(page);
  await app.menu();
  await expect(page.getByLabel('Theme')).toBeVisible();
  expect(await wide(page)).toEqual([]);
  const box = (await page.locator('.menu .sheet').boundingBox())!;
  expect(box.x).toBeGreaterThanOrEqual(0);
});

import { expect, onLaptop, test } from './app.ts';
import { cleanInAll, crowded, wide } from './barriers.ts';

test.use({ firstVisit: true });

test('three marked things to try: each goes when it is done, all for ever', async ({ app, page }) => {
  await app.open();
  const steps = page.getByRole('region', { name: 'Three things to try' });
  await expect(steps.getByRole('button')).toHaveCount(4);
  await expect.poll(() => wide(page)).toEqual([]);
  expect((await crowded(page, '.drawing')).filter((w) => !/^“\d+” on “\d+”$/.test(w))).toEqual([]);
  await cleanInAll(page, 'first steps');
  // Another rung is another canopy, not a change of this one.
  await page.getByRole('group', { name: 'Season ladder' }).getByRole('button').first().click();
  await page.getByRole('group', { name: 'Season ladder' }).getByRole('button').last().click();
  await expect(steps.getByRole('button')).toHaveCount(4);
  await app.pull(app.handle('canopy top'), 0, -20);
  await expect(steps).not.toContainText('canopy top');
  await expect(page.locator('html')).toHaveAttribute('data-try', 'shut why');
  await app.undo.click();
  await expect(steps).not.toContainText('canopy top');
  await page.reload();
  await expect(steps.getByRole('button')).toHaveCount(3);
  await page.locator('.chip.over-top .toggle').last().click();
  await expect(steps.getByRole('button')).toHaveCount(2);
  await app.button('Working of Water').click();
  await expect(steps).toHaveCount(0);
  await page.reload();
  await expect(app.drawing).toBeVisible();
  await page.waitForTimeout(500);
  await expect(steps).toHaveCount(0);
});

test('by keyboard: a line leads to its place; hidden is hidden for ever', onLaptop('a keyboard'), async ({ app, page }) => {
  await app.open();
  const steps = page.getByRole('region', { name: 'Three things to try' });
  await steps.getByRole('button').first().focus();
  await page.keyboard.press('Enter');
  await expect(app.handle('canopy top')).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(steps).not.toContainText('canopy top');
  await expect(page.getByText('Done: Drag the canopy top')).toBeAttached();
  await steps.getByRole('button', { name: 'Shut a nozzle' }).press('Enter');
  await page.keyboard.press('Space');
  await expect(steps).not.toContainText('Shut a nozzle');
  await steps.getByRole('button', { name: 'Hide these' }).press('Enter');
  await expect(steps).toHaveCount(0);
  await page.reload();
  await page.waitForTimeout(500);
  await expect(steps).toHaveCount(0);
});

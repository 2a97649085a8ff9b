import { expect, isPhone, test, type App } from './app.ts';

/** The ghost's name: in the drawing, or, on a phone, in the strip above it. */
const named = async (app: App, ghost: string): Promise<void> =>
  isPhone(app.page) ? expect(app.page.getByLabel('ghost').locator('option:checked')).toHaveText(ghost) : expect(app.drawing.locator('.ghost-label')).toHaveText(ghost);

test('spring and full leaf in one section; each difference is one line', async ({ app, page }) => {
  await app.open();
  await expect(app.drawing.locator('.ghost')).toHaveCount(2);
  await named(app, 'Mouse-ear');
  const lines = page.getByRole('region', { name: 'Mouse-ear → Full leaf' }).getByRole('listitem');
  await expect(lines.filter({ hasText: 'Tree-row volume' })).toHaveCount(1);
  // 10 000 · (3.1 − 0.6) · 1.0 · 0.9 / 3.8 and 10 000 · (3.3 − 0.45) · 1.6 / 3.8
  await expect(lines.filter({ hasText: 'Tree-row volume' })).toHaveText(/^Tree-row volume 5\s921\sm³\/ha → 12\s000\sm³\/ha, 103\s% more\.$/);
  await page.getByLabel('ghost').selectOption('petal-fall');
  await expect(page.getByRole('region', { name: 'Petal fall → Full leaf' })).toBeVisible();
  await named(app, 'Petal fall');
  await page.getByLabel('ghost').selectOption('');
  await expect(app.drawing.locator('.ghost')).toHaveCount(0);
});

test('going to the ghost’s rung swaps the two', async ({ app, page }) => {
  await app.open();
  await app.button(/^Mouse-ear/).click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lower bench, Mouse-ear');
  await expect(app.button(/^Mouse-ear/)).toHaveAttribute('aria-pressed', 'true');
  await named(app, 'Full leaf');
  await expect(app.figure('nozzles')).toHaveText('10 of 16');
});

test('another block: its own machine, without a trace of the last', async ({ app, page }) => {
  await app.open();
  await app.pick('L4').click();
  await page.getByLabel('Block').selectOption('upper-shelf');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Upper shelf, Full leaf');
  await expect(app.drawing.locator('.slot')).toHaveCount(2);
  await expect(app.handle('swivel of L4')).toHaveCount(0);
  await expect(app.figure('water')).not.toHaveText('–');
});

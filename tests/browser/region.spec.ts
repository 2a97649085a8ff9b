import { expect, test } from './app.ts';

test.use({ locale: 'en-US' });

test('units are those of the browser’s region until others are chosen, and the menu says so', async ({ app, page }) => {
  await app.open();
  await expect(app.figure('water')).toContainText('gal/ac');
  await app.menu();
  const guessed = page.getByText('Units by the region of your browser: United States.');
  await expect(guessed).toBeVisible();
  await page.getByLabel('Theme').selectOption('shed');
  await page.reload();
  await expect(app.figure('water')).toContainText('gal/ac');
  await app.menu();
  await expect(guessed).toBeVisible();
  await page.getByLabel('Units', { exact: true }).selectOption('metric');
  await expect(guessed).toBeHidden();
  await expect(app.figure('water')).toContainText('L/ha');
  await page.reload();
  await expect(app.figure('water')).toContainText('L/ha');
});

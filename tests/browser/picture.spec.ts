import { expect, isPhone, test } from './app.ts';

test('the picture of the README: the demo block after shutting the top pair', async ({ app, page }) => {
  test.skip(process.env['UPDATE_SCREENSHOT'] !== '1' || isPhone(page), 'made anew with UPDATE_SCREENSHOT=1');
  await app.open();
  await app.toggle('L8').click();
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
  await app.page.mouse.move(0, 0);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: 'docs/images/section.png' });
});

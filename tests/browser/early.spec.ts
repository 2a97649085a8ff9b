import { expect, onLaptop, test } from './app.ts';

const PURPOSE = { en: 'Fits the dose', de: 'Stimmt Dosis', pt: 'Ajusta a dose' };

for (const [locale, says] of Object.entries(PURPOSE))
  test(`what the page is for stands there before its script runs, in ${locale} and in the chosen look`, onLaptop('one page, one file'), async ({ browser, baseURL }) => {
    const context = await browser.newContext({ locale, baseURL: baseURL! });
    await context.addInitScript(() => localStorage.setItem('rowtailor-preferences', JSON.stringify({ theme: 'shed', large: true })));
    const page = await context.newPage();
    const asked: string[] = [];
    // The page's own script is cut off: what stands then is what stands while it comes.
    await page.route('**/', async (route) => {
      const answer = await route.fetch();
      const html = await answer.text();
      await route.fulfill({ response: answer, body: html.slice(0, html.indexOf('<script type="module">')) });
    });
    page.on('request', (r) => asked.push(new URL(r.url()).pathname));
    await page.goto('');
    await expect(page.locator('.meanwhile')).toContainText(says);
    await expect(page.locator('html')).toHaveAttribute('lang', locale);
    await expect(page.locator('html')).toHaveAttribute('data-theme', 'shed');
    await expect(page.locator('html')).toHaveAttribute('data-large', '');
    // Words are asked for beside the script, and no font is: it would take from the way of both.
    await page.waitForLoadState('networkidle');
    expect(asked.filter((path) => path.endsWith('.js')).length).toBe(locale === 'en' ? 0 : 2);
    expect(asked.filter((path) => path.endsWith('.woff2'))).toEqual([]);
    await context.close();
  });

test('a look that was kept by no page of ours changes nothing', onLaptop('one page, one file'), async ({ page, app }) => {
  await page.addInitScript(() => localStorage.setItem('rowtailor-preferences', '{"theme":"sun\\" onload=1","large":1'));
  await app.open();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'paper');
  await expect(page.locator('.meanwhile')).toHaveCount(0);
});

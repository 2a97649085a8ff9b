import { expect, onLaptop, onPhone, test } from './app.ts';

test('a demo block stands open, drawn, with its six figures', async ({ app, page }) => {
  await app.open();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lower bench, Full leaf');
  await expect(app.drawing.locator('.tree')).toHaveCount(2);
  await expect(app.drawing.locator('.nozzle')).toHaveCount(16);
  await expect(app.drawing.locator('.ray.in-leaf')).not.toHaveCount(0);
  await expect(app.drawing.locator('.ray.over-top')).not.toHaveCount(0);
  for (const id of ['water', 'product', 'nozzles', 'air']) expect(await app.value(id)).toBeGreaterThan(0);
  await expect(app.field('Speed')).toHaveValue('6');
  await expect(app.field('Pressure')).toHaveValue('8');
  await expect(page.getByText('Demo: an invented orchard.')).toBeVisible();
  await expect(page.getByText('The product label, local law and licensed advice rule')).toBeVisible();
});

test('the litres per hectare are what flow, speed and row spacing give by the trade’s formula', async ({ app, page }) => {
  await app.open();
  const flow = Number(/([\d.]+)\sL\/min/.exec((await page.getByText(/L\/min both sides/).innerText()).replaceAll('\u00a0', ' '))![1]);
  const speed = Number(await app.field('Speed').inputValue());
  const spacing = Number(await app.field('row spacing').inputValue());
  // L/ha = 600 · L/min / (km/h · m)
  expect(Math.abs((await app.value('water')) - (600 * flow) / (speed * spacing))).toBeLessThanOrEqual(1);
});

test('the drawing is true to scale', async ({ app }) => {
  await app.open();
  const crown = await app.drawing
    .locator('.tree .crown-line')
    .first()
    .evaluate((e) => {
      const { width, height } = (e as SVGGraphicsElement).getBBox();
      return { width, height };
    });
  const dimension = await app.drawing.locator('.dimension-line').evaluate((e) => (e as SVGGraphicsElement).getBBox().width);
  const pxPerM = dimension / 3.8;
  expect(crown.width / pxPerM).toBeCloseTo(1.6, 2);
  expect(crown.height / pxPerM).toBeCloseTo(3.3 - 0.45, 2);
});

test('the page’s own policy refuses a call to elsewhere', async ({ page, baseURL }) => {
  await page.goto(baseURL ?? '');
  const blocked = await page.evaluate(
    () =>
      new Promise<string>((done) => {
        addEventListener('securitypolicyviolation', (e) => done(e.violatedDirective));
        fetch('https://elsewhere.invalid/').then(
          () => done('it went out'),
          () => undefined
        );
      })
  );
  expect(blocked).toBe('connect-src');
});

test('the watch of these tests sees a request that leaves the page', async ({ page, watch, baseURL }) => {
  await page.route('https://elsewhere.invalid/**', (route) => route.fulfill({ body: '' }));
  await page.goto(baseURL ?? '');
  await page.goto('https://elsewhere.invalid/');
  expect(watch.foreign).toEqual(['https://elsewhere.invalid/']);
});

test('on a phone the drawing stays in view while the rest scrolls under it', onPhone('the laptop has both side by side'), async ({ app, page }) => {
  await app.open();
  await page.getByRole('heading', { name: 'Findings' }).scrollIntoViewIfNeeded();
  await expect(app.drawing).toBeInViewport({ ratio: 0.9 });
});

test('the page’s policy lets nothing unsafe in, nothing from elsewhere, and no text become markup', onLaptop('the page is the same'), async ({ page }) => {
  await page.goto('');
  const policy = (await page.locator('meta[http-equiv=content-security-policy]').getAttribute('content'))!;
  expect(policy).not.toMatch(/unsafe|\*|https?:/);
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("require-trusted-types-for 'script'");
  await expect(page.locator('.ground-line')).toBeAttached();
  expect(await page.evaluate(() => { try { document.createElement('p').innerHTML = '<b>x</b>'; return 'let in'; } catch (e) { return (e as Error).name; } })).toBe('TypeError');
});

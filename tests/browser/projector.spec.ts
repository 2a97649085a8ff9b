import type { Page } from '@playwright/test';
import { expect, ofWidth, onLaptop, test, type App } from './app.ts';
import { clean, crowded as everyCrowded, wide } from './barriers.ts';

/** Words on words; the figures in the nozzles' own dots stand as near as the nozzles do. */
const crowded = async (page: Page) => (await everyCrowded(page, 'body')).filter((w) => !/^“\d+” on “\d+”$/.test(w));

/** Rendered sizes of all words that can be seen and are smaller than `least` px. */
const smallPrint = (page: Page, least: number) =>
  page.evaluate((least) => {
    const out: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let n = walker.nextNode(); n; n = walker.nextNode()) {
      const e = n.parentElement!;
      if (!n.textContent!.trim() || e.closest('.sr, option, style, script, title, noscript') || !e.checkVisibility()) continue;
      const svg = e.closest('svg');
      const grown = svg?.viewBox.baseVal?.width ? svg.getBoundingClientRect().width / svg.viewBox.baseVal.width : 1;
      const size = parseFloat(getComputedStyle(e).fontSize) * grown;
      if (size < least - 0.01) out.push(`${size.toFixed(1)} px: ${n.textContent!.trim().slice(0, 30)}`);
    }
    return out;
  }, least);

async function large(app: App, page: Page) {
  await app.menu();
  await page.getByLabel('Large figures').check();
  await app.menu();
}

const STATIONS = ['Section', 'Row', 'Headland', 'Strategies'] as const;
async function at(station: (typeof STATIONS)[number], page: Page) {
  await page.getByRole('link', { name: station, exact: true }).click();
  await expect(page.locator('.panel :is(h2, h3)').first()).toBeVisible();
  await page.waitForTimeout(300);
}

for (const [width, height] of [
  [1440, 900],
  [1024, 768]
] as const)
  test(`${width} × ${height}: figures for a room, and nothing sticks out`, onLaptop('a projector'), async ({ app, page }) => {
    await page.setViewportSize({ width, height });
    await app.open();
    const before = await page.locator('[data-figure=water] strong, [data-figure=water]').first().evaluate((e) => parseFloat(getComputedStyle(e).fontSize));
    await large(app, page);
    const after = await page.locator('[data-figure=water] strong, [data-figure=water]').first().evaluate((e) => parseFloat(getComputedStyle(e).fontSize));
    expect(after / before).toBeCloseTo(1.25, 2);
    for (const station of STATIONS) {
      await at(station, page);
      expect.soft(await wide(page), station).toEqual([]);
      expect.soft(await crowded(page), station).toEqual([]);
      expect.soft(await smallPrint(page, 13.5), station).toEqual([]);
    }
    // It is found again.
    await page.reload();
    await expect(page.locator('html')).toHaveAttribute('data-large');
    await clean(page, 'large figures');
  });

test('a handle follows the pointer as far as it went', onLaptop('a projector'), async ({ app, page }) => {
  await app.open();
  await large(app, page);
  const handle = app.handle('canopy top');
  const from = await app.centre(handle);
  await app.drag(handle, 0, 40);
  const to = await app.centre(handle);
  expect(to.y - from.y).toBeGreaterThan(30);
  expect(to.y - from.y).toBeLessThan(50);
});

for (const width of [320, 360, 480, 600, 820, 1001, 1280, 1920, 2560, 3840])
  test(`${width} px: no station sticks out`, ofWidth(width), async ({ app, page }) => {
    await page.setViewportSize({ width, height: width < 640 ? 800 : Math.min(Math.round(width * 0.625), 2160) });
    await app.open();
    for (const station of STATIONS) {
      await at(station, page);
      expect.soft(await wide(page), station).toEqual([]);
      expect.soft(await crowded(page), station).toEqual([]);
    }
  });

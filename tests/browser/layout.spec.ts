import type { Page } from '@playwright/test';
import { expect, ofWidth, onLaptop, test } from './app.ts';

const overflow = (page: Page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Words in the drawing and names of fields that lie on each other or are cut by the edge; polled, since the drawing takes its size after it stands. */
const crowded = (page: Page) =>
  page.evaluate(() => {
    const frame = document.querySelector('svg[role=img]')!.getBoundingClientRect();
    const words = [...document.querySelectorAll('svg[role=img] text:not(.number), .measure .name, .measure .box')].map((e) => ({ text: e.textContent?.trim() ?? '', box: e.getBoundingClientRect() }));
    const out: string[] = [];
    for (const [i, a] of words.entries()) {
      if (a.box.left < frame.left - 1 || a.box.right > frame.right + 1 || a.box.top < frame.top - 1 || a.box.bottom > frame.bottom + 1) out.push(`cut: ${a.text}`);
      for (const b of words.slice(i + 1)) {
        const x = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left);
        const y = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top);
        if (x > 1.5 && y > 3) out.push(`“${a.text}” on “${b.text}”`);
      }
    }
    return out;
  });

for (const width of [320, 390, 768, 1024, 1440])
  for (const system of ['metric', 'us'] as const)
    test(`${width} px, ${system}: nothing sticks out sideways, no word lies on another`, ofWidth(width), async ({ app, page }) => {
      await page.setViewportSize({ width, height: width < 640 ? 844 : 900 });
      await app.open();
      if (system === 'us') await app.units('us');
      expect(await overflow(page)).toBeLessThanOrEqual(0);
      await expect.poll(() => crowded(page)).toEqual([]);
      await app.toggle('L8').click();
      await app.pick('L7').click();
      await app.button('Working of Water').click();
      await page.locator('#working-water summary').first().click();
      expect(await overflow(page)).toBeLessThanOrEqual(0);
      await expect.poll(() => crowded(page)).toEqual([]);
      await app.to('Row');
      await page.locator('.panel details').evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
      await app.button('Tree-row volume').click();
      expect(await overflow(page)).toBeLessThanOrEqual(0);
      // Words inside boxes are not cut.
      const cut = await page.locator('button:visible, .chip span:visible, th:visible, td:visible, h2:visible, h3:visible').evaluateAll((all) => all.filter((e) => e.scrollWidth > e.clientWidth + 1 && getComputedStyle(e).display !== 'inline').map((e) => e.textContent?.trim()));
      expect(cut).toEqual([]);
    });

for (const [file, title] of [
  ['lower-bench', 'Lower bench, Full leaf'],
  ['citrus-globes', 'Globe grove, After hedging'],
  ['cherry-wall', 'East wall, Fruit colouring']
] as const)
  test(`${file}: no word lies on another at any rung`, async ({ app, page }) => {
    await app.open();
    await app.openFile(`demo-data/${file}.json`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
    const rungs = page.getByRole('group', { name: 'Season ladder' }).getByRole('button');
    await expect(rungs).toHaveCount(3);
    for (const rung of await rungs.all()) {
      await rung.click();
      await expect.poll(() => crowded(page), await rung.innerText()).toEqual([]);
      expect(await overflow(page)).toBeLessThanOrEqual(0);
    }
  });

test('text twice as large: still nothing sticks out sideways', async ({ app, page }) => {
  await app.open();
  await page.evaluate(() => (document.documentElement.style.fontSize = '200%'));
  await app.frame();
  expect(await overflow(page)).toBeLessThanOrEqual(0);
});

test('printed on A4, nothing sticks out sideways', onLaptop(), async ({ app, page }) => {
  await app.open();
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 720, height: 1000 });
  expect(await overflow(page)).toBeLessThanOrEqual(0);
});

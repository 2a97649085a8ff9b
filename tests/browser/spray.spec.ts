import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, isPhone, numberIn, ofWidth, onLaptop, test, type App } from './app.ts';
import { cleanInAll, crowded, wide } from './barriers.ts';

/** Where the spray goes, in the built page with the model in its worker. */

const drawn = (app: App) => app.drawing.locator('.on-trees-share');
const share = async (app: App) => numberIn((await drawn(app).textContent())!);
const toggle = (app: App) => app.button('Spray');

async function spray(app: App): Promise<void> {
  await app.open();
  await toggle(app).click();
  await expect(drawn(app)).toBeVisible({ timeout: 20_000 });
}
/** Words that lie on each other; the numbers of the nozzles stand inside the machine, as close as the nozzles. */
const words = async (page: Page) => (await crowded(page, '.view')).filter((each) => !/^“\d+” on “\d+”$/.test(each));
/** Requests of scripts, styles and workers from here on. */
function fetched(page: Page): string[] {
  const out: string[] = [];
  page.on('request', (r) => out.push(r.url()));
  return out;
}

test('off it loads nothing and draws nothing; on, the share stands in the drawing with its band; off again, the page is as it was', async ({ app, page }) => {
  await app.open();
  await page.waitForLoadState('networkidle');
  const before = await app.drawing.innerHTML();
  const requests = fetched(page);
  await app.frame();
  expect(requests).toEqual([]);
  await expect(page.locator('.spray-layer')).toHaveCount(0);

  await toggle(app).click();
  await expect(toggle(app)).toHaveAttribute('aria-pressed', 'true');
  await expect(drawn(app)).toBeVisible({ timeout: 20_000 });
  expect(requests.some((u) => /worker.*\.js$/.test(u))).toBe(true);
  await expect(app.drawing.locator('.on-trees-band')).toHaveText(/^\d+ to \d+\s%$/, { timeout: 20_000 });
  const [least, most] = (await app.drawing.locator('.on-trees-band').textContent())!.match(/\d+/g)!.map(Number);
  expect(await share(app)).toBeGreaterThan(least!);
  expect(await share(app)).toBeLessThan(most!);
  // The panel says the same.
  expect(numberIn(await page.locator('[data-figure=spray-on-trees]').innerText())).toBe(await share(app));
  await expect(app.drawing.locator('.spray-step').first()).toBeVisible();
  await expect(app.drawing.locator('.ray.over-top').first()).toBeHidden();

  await toggle(app).click();
  await expect(page.locator('.spray-layer')).toHaveCount(0);
  expect(await app.drawing.innerHTML()).toBe(before);
});

test('the figure follows a drag of the canopy top, and undo brings it back', async ({ app }) => {
  await spray(app);
  const before = await share(app);
  await app.pull(app.handle('canopy top'), 0, 90);
  await expect.poll(() => share(app), { timeout: 15_000 }).toBeLessThan(before);
  await app.undo.click();
  await expect.poll(() => share(app), { timeout: 15_000 }).toBe(before);
});

test('one nozzle alone: by pointer or focus on its chip or its dot, by choosing it on a phone', async ({ app, page }) => {
  await spray(app);
  const name = app.drawing.locator('.on-trees-name');
  await expect(name).toHaveText('on the trees');
  const all = await share(app);
  const dense = () => app.drawing.locator('.spray-step-1').getAttribute('d');
  const whole = await dense();
  if (isPhone(page)) {
    await app.pick('L7').tap();
    await expect(name).toHaveText('L7 alone, on the trees');
    expect(await dense()).not.toBe(whole);
    await app.pick('L7').tap();
  } else {
    await app.chip('L7').hover();
    await expect(name).toHaveText('L7 alone, on the trees');
    await expect.poll(() => share(app)).toBeLessThan(all);
    expect(await dense()).not.toBe(whole);
    await page.mouse.move(5, 5);
    await expect(name).toHaveText('on the trees');
    // By keyboard: from the switch of a nozzle to its settings stays on the same one.
    await app.toggle('L3').focus();
    await page.keyboard.press('Tab');
    await expect(name).toHaveText('L3 alone, on the trees');
    await toggle(app).focus();
    await expect(name).toHaveText('on the trees');
    const dot = await page.locator('.nozzle .dot').first().boundingBox();
    await page.mouse.move(dot!.x + dot!.width / 2, dot!.y + dot!.height / 2);
    await expect(name).toHaveText(/^L\d alone/);
    await page.mouse.move(5, 5);
  }
  await expect(name).toHaveText('on the trees');
  expect(await share(app)).toBe(all);
});

test('one pass is played and stopped', async ({ app, page }) => {
  await spray(app);
  const dots = () => app.drawing.locator('.drop').evaluateAll((all) => all.map((p) => p.getAttribute('d')).join(''));
  await app.button('Play one pass slowly').click();
  await expect.poll(dots, { timeout: 15_000 }).not.toBe('');
  const first = await dots();
  await expect.poll(dots).not.toBe(first);
  await app.button('Stop').click();
  await expect(app.drawing.locator('.drop')).toHaveCount(0);
  await expect(app.button('Play one pass slowly')).toBeVisible();
  expect(await wide(page)).toEqual([]);
});

test('with less motion asked for, drops stand still', async ({ app, page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await spray(app);
  await app.button('Show drops').click();
  const dots = () => app.drawing.locator('.drop').evaluateAll((all) => all.map((p) => p.getAttribute('d')).join(''));
  await expect.poll(dots, { timeout: 15_000 }).not.toBe('');
  const first = await dots();
  await page.waitForTimeout(400);
  expect(await dots()).toBe(first);
  await app.button('Hide drops').click();
  await expect(app.drawing.locator('.drop')).toHaveCount(0);
});

test('by keyboard alone: on, top lower, play, a picture', onLaptop('keyboard'), async ({ app, page }) => {
  await app.open();
  await toggle(app).focus();
  await page.keyboard.press('Space');
  await expect(drawn(app)).toBeVisible({ timeout: 20_000 });
  await expect(page.getByRole('region', { name: 'Spray in the drawing' }).getByRole('status')).toHaveText(/^On the trees: \d+\s%, /, { timeout: 20_000 });
  const before = await share(app);
  await app.handle('canopy top').focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('PageDown');
  await expect.poll(() => share(app), { timeout: 15_000 }).not.toBe(before);
  await app.button('Play one pass slowly').focus();
  await page.keyboard.press('Enter');
  await expect(app.button('Stop')).toBeFocused();
  await page.keyboard.press('Enter');
  const download = page.waitForEvent('download');
  await app.button('Save SVG').focus();
  await page.keyboard.press('Enter');
  const svg = await readFile((await (await download).path())!, 'utf8');
  expect(svg).toContain('Lower bench, Full leaf');
  expect(svg).not.toMatch(/var\(|calc\(/);
});

test('the picture is saved as PNG under the page’s own policy', async ({ app, page }) => {
  await spray(app);
  const download = page.waitForEvent('download');
  await app.button('Save PNG').click();
  const file = await download;
  expect(file.suggestedFilename()).toBe('lower-bench-full-leaf-spray.png');
  const bytes = await readFile((await file.path())!);
  // The signature, and width and height of the header chunk, in the byte order of the format.
  expect(bytes.subarray(1, 4).toString('latin1')).toBe('PNG');
  expect(bytes.readUInt32BE(16)).toBe(2400);
  expect(bytes.length).toBeGreaterThan(50_000);
});

test('a canopy that cannot be is refused in words, and nothing is drawn of it', async ({ app, page }) => {
  await spray(app);
  await app.field('skirt').fill('9');
  await expect(page.getByRole('region', { name: 'Spray in the drawing' }).getByRole('alert')).toBeVisible();
  await expect(drawn(app)).toHaveCount(0);
  await app.undo.click();
  await expect(drawn(app)).toBeVisible();
});

test('no barrier in any theme', async ({ app, page }) => {
  await spray(app);
  await page.getByText('How to read it', { exact: true }).click();
  await cleanInAll(page, 'spray');
});

for (const [file, title] of [
  ['lower-bench', 'Lower bench'],
  ['citrus-globes', 'Globe grove'],
  ['cherry-wall', 'East wall']
] as const)
  test(`${file}: no word of the drawing lies on another, none is cut`, async ({ app, page }) => {
    test.slow();
    await app.open();
    await app.openFile(`demo-data/${file}.json`);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(title);
    await toggle(app).click();
    const rungs = page.getByRole('group', { name: 'Season ladder' }).getByRole('button');
    for (const rung of await rungs.all()) {
      await rung.click();
      await expect(drawn(app)).toBeVisible({ timeout: 20_000 });
      await expect(app.drawing.locator('.on-trees-band')).toHaveText(/ to /, { timeout: 20_000 });
      // The answer of the rung before stands until the new one is there.
      await expect.poll(() => words(page), await rung.innerText()).toEqual([]);
      expect.soft(await wide(page), await rung.innerText()).toEqual([]);
    }
  });

for (const width of [320, 768, 1024])
  test(`${width} px: nothing sticks out sideways`, ofWidth(width), async ({ app, page }) => {
    await page.setViewportSize({ width, height: 900 });
    await spray(app);
    await page.getByText('How to read it', { exact: true }).click();
    expect(await wide(page)).toEqual([]);
    expect.soft(await crowded(page, '.spray-controls')).toEqual([]);
    expect.soft(await words(page)).toEqual([]);
  });

test('printed, the drawing keeps its spray and loses its buttons', onLaptop(), async ({ app, page }) => {
  await spray(app);
  await page.emulateMedia({ media: 'print' });
  await expect(app.drawing.locator('.on-trees-share')).toBeVisible();
  await expect(app.button('Play one pass slowly')).toBeHidden();
  await expect(page.getByText('It ranks settings', { exact: false }).first()).toBeVisible();
});

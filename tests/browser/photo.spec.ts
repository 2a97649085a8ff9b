import type { Page } from '@playwright/test';
import { expect, numberIn, test, type App } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';
import { png } from '../support/pictures.ts';
import { lehmer } from '../support/random.ts';

type File = { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };
const file = (name: string, bytes: Uint8Array): File => ({ name, mimeType: 'image/png', buffer: Buffer.from(bytes) });

/** A frame of leaf with gaps at random before a white sheet: in the upper half a pixel in two is a gap, in the lower one in ten. */
function sheet(width = 400, height = 300): Uint8Array {
  const next = lehmer(5);
  return png(width, height, (_, y) => (next() < (y < height / 2 ? 0.5 : 0.1) ? [235, 238, 240] : [60 + 40 * next(), 90, 40 + 30 * next()]));
}

async function opened(app: App, page: Page) {
  await app.open('#row');
  await page.getByText('Leaf from a photograph', { exact: true }).click();
  const panel = page.locator('.photo');
  const take = async (next: File): Promise<void> => {
    const chooser = page.waitForEvent('filechooser');
    await panel.getByRole('button', { name: /^Choose a/ }).press('Enter');
    await (await chooser).setFiles(next);
  };
  return { panel, take, density: async () => numberIn(await panel.locator('[data-figure=photo-density]').innerText()) };
}
const rungOf = async (app: App) => JSON.parse(await app.saveFile()).blocks[0].rungs.at(-1);

test('a picture gives leaf area density by height, by keys alone; the document keeps the counts and no picture', async ({ app, page }) => {
  const { panel, take, density } = await opened(app, page);
  await take(file('row.png', sheet()));
  await panel.locator('[data-figure=photo-density]').waitFor();
  // The whole picture is canopy.
  for (const [edge, key] of [['Top of the canopy', 'Home'], ['Lowest foliage', 'End'], ['Left side', 'Home'], ['Right side', 'End']] as const) await panel.getByRole('slider', { name: edge }).press(key);
  await expect(panel.getByRole('slider', { name: 'Right side' })).toHaveAttribute('aria-valuenow', '100');
  // A drag goes where the pointer goes, and a key brings it back.
  const left = panel.getByRole('slider', { name: 'Left side' });
  // Clear of the drawing that stays on top of a phone.
  await left.evaluate((e) => e.scrollIntoView({ block: 'end' }));
  await app.drag(left, 60, 0);
  await expect(left).not.toHaveAttribute('aria-valuenow', '0');
  await left.press('Home');
  await expect(left).toHaveAttribute('aria-valuenow', '0');
  await panel.getByRole('spinbutton', { name: 'Height of a band' }).fill('3');
  const rows = panel.locator('tbody tr');
  await expect(rows).toHaveCount(1);
  await expect(rows).toContainText(/30\s%/);
  // Beer–Lambert of a gap of three tenths in the width that the table names: −ln 0.3 / (0.5·W).
  const width = numberIn(await rows.locator('td').nth(1).innerText());
  expect(Math.abs((await density()) - -Math.log(0.3) / (0.5 * width))).toBeLessThan(0.06);

  await panel.getByRole('spinbutton', { name: 'Height of a band' }).fill('1.4');
  await expect(rows).toHaveCount(2);
  await expect(rows.first()).toContainText(/50\s%/);
  await expect(rows.last()).toContainText(/(9\.[5-9]|10(\.[0-4])?)\s%/);
  // Both assumptions are there to be changed.
  await panel.getByText('What is assumed of the leaves').click();
  const before = await density();
  await panel.getByRole('spinbutton', { name: 'Clumping of leaves' }).fill('0.5');
  await expect.poll(density).toBeGreaterThan(1.9 * before);
  await app.undo.first().click();
  await expect.poll(density).toBe(before);

  await panel.getByRole('checkbox', { name: 'With density by height' }).check();
  await panel.getByRole('button', { name: 'Use for this rung' }).press('Enter');
  await expect(panel.getByText('now comes from the photograph')).toBeVisible();
  const { canopy, photo } = await rungOf(app);
  expect(canopy.ladM2PerM3).toBeCloseTo(before, 1);
  expect(canopy.profile.filter((p: { relativeDensity?: number }) => p.relativeDensity !== undefined)).toHaveLength(2);
  expect(photo.bands.map((b: { pixels: number }) => b.pixels)).toEqual([60_000, 60_000]);
  expect(JSON.stringify(photo).length).toBeLessThan(500);
});

test('what is no picture, damaged or too large is named; a picture on its side is seen upright', async ({ app, page }) => {
  const { panel, take } = await opened(app, page);
  const alert = panel.getByRole('alert');
  await take(file('row.jpg', new TextEncoder().encode('tree,height_m\n1,3\n')));
  await expect(alert).toContainText('no JPEG, PNG or WebP picture');
  await take(file('dot.png', png(1, 1, () => [0, 0, 0])));
  await expect(alert).toContainText('at least 64 pixels each way');
  await take(file('bomb.png', png(50_000, 50_000, null)));
  await expect(alert).toContainText('at most 64 million pixels');
  await take(file('cut.png', png(200, 100, null)));
  await expect(alert).toContainText('The picture is damaged');
  await take(file('white.png', png(200, 100, () => [255, 255, 255])));
  await expect(alert).toContainText('one brightness alone');

  // A JPEG that the browser itself made, marked as turned by a quarter: 120 × 80 pixels are shown as 80 × 120.
  const jpeg = Buffer.from(await page.evaluate(() => {
    const canvas = Object.assign(document.createElement('canvas'), { width: 120, height: 80 });
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, 120, 80);
    pen.fillStyle = '#243';
    pen.fillRect(0, 0, 120, 40);
    return canvas.toDataURL('image/jpeg', 0.9).split(',')[1]!;
  }), 'base64');
  const exif = Buffer.from([0xff, 0xe1, 0, 34, ...Buffer.from('Exif\0\0MM\0*\0\0\0\x08', 'latin1'), 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0]);
  await take(file('turned.jpg', Buffer.concat([jpeg.subarray(0, 2), exif, jpeg.subarray(2)])));
  await expect(panel).toContainText('80 × 120 pixels');
  await take(file('half.jpg', jpeg.subarray(0, 60)));
  await expect(alert).toContainText(/ends before it tells its size|damaged/);
});

test('no barrier in the photograph; what can be pressed is 48 px high and wide', async ({ app, page }) => {
  const { panel, take } = await opened(app, page);
  await take(file('row.png', sheet()));
  await panel.locator('[data-figure=photo-density]').waitFor();
  await cleanInAll(page, 'photograph');
  expect.soft(await small(page, '.photo', 48)).toEqual([]);
  expect.soft(await wide(page)).toEqual([]);
});

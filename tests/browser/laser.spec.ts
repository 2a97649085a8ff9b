import { fileURLToPath } from 'node:url';
import { expect, test } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';
import { framePoints } from '../support/frame.ts';
import { laz } from '../support/laz.ts';
import type { App } from './app.ts';
import type { Page } from '@playwright/test';

const FRAME = fileURLToPath(new URL('../measured/data/lidar-fuji-frame-every-4th.csv', import.meta.url));
type File = string | { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };
const binary = (name: string, bytes: Uint8Array): File => ({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });

async function opened(app: App, page: Page, file: File) {
  await app.open('#row');
  await page.getByText('Laser points', { exact: true }).click();
  const panel = page.locator('.laser');
  const take = async (next: File): Promise<void> => {
    const chooser = page.waitForEvent('filechooser');
    await panel.getByRole('button', { name: /^Choose a/ }).press('Enter');
    await (await chooser).setFiles(next);
  };
  await take(file);
  return { panel, take };
}
const canopyOf = async (app: App) => JSON.parse(await app.saveFile()).blocks[0].rungs.at(-1).canopy;

test('a packed file of the measured frame becomes the canopy of the rung, by keys alone, and undo brings the old one back', async ({ app, page }) => {
  const { panel, take } = await opened(app, page, binary('frame.laz', laz(framePoints(), { chunk: 1000 })));
  await expect(panel).toContainText(/LAZ 1\.2, point format 0: 4\s968 points/);
  const says = panel.getByRole('region', { name: 'What the points say' });
  // The command line's figures of the same points (tests/measured/lidar.test.ts): 3.2 m high, from 0.55 m; rows 3.14 m apart by the row behind.
  await expect(says).toContainText(/Height\s*3\.20\sm/);
  await expect(says).toContainText(/The points show rows 3\.14\sm apart/);
  await panel.getByRole('checkbox', { name: 'Read the row spacing off the points' }).press('Space');
  await expect(says).toContainText(/Greatest width\s*1\.15\sm/);
  await expect(says).toContainText(/the stand or vehicle 116/);
  // The rule that leaves the stand out is the user's.
  await panel.getByRole('checkbox', { name: 'Leave out the scanner’s own stand or vehicle' }).press('Space');
  await expect(says).not.toContainText('the stand or vehicle');
  await panel.getByRole('checkbox', { name: 'Leave out the scanner’s own stand or vehicle' }).press('Space');
  await expect(says).toContainText(/the stand or vehicle 116/);
  await panel.getByRole('button', { name: 'Use for this rung' }).press('Enter');
  await expect(panel.getByText('The canopy of this rung now has the outline of the points.')).toBeVisible();
  expect(await canopyOf(app)).toMatchObject({ heightM: 3.2, skirtM: 0.55, widthM: 1.15 });
  await app.menu();
  await app.undo.first().click();
  expect((await canopyOf(app)).heightM).not.toBe(3.2);

  // The same canopy from the table of the same points; then files of which nothing can be made, named.
  await app.menu();
  await take(FRAME);
  await expect(panel).toContainText(/Table: 4\s968 points/);
  await expect(says).toContainText(/Greatest width\s*1\.15\sm/);
  const whole = laz(framePoints(), { chunk: 1000 });
  await take(binary('cut.laz', whole.subarray(0, whole.length / 2)));
  await expect(panel.getByRole('alert')).toContainText('ends before that');
  await take(binary('notes.las', new TextEncoder().encode('no points at all')));
  await expect(panel.getByRole('alert')).toContainText('neither LAS nor LAZ');
});

test('no barrier in the laser points; what can be pressed is 48 px high and wide', async ({ app, page }) => {
  const { panel } = await opened(app, page, FRAME);
  await expect(panel.getByRole('heading', { name: 'What the points say' })).toBeVisible();
  await cleanInAll(page, 'laser points');
  expect.soft(await small(page, '.laser', 48)).toEqual([]);
  expect.soft(await wide(page)).toEqual([]);
});

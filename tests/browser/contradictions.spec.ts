import { expect, test } from './app.ts';

/** Input that cannot be: the drawing stands, the first finding says what is wrong, and the way back is open. */

test('skirt above top', async ({ app }) => {
  await app.open();
  await app.field('skirt').fill('3.5');
  await expect(app.findings.locator('.stop').first()).toHaveText(/stop\s+The skirt \(3\.50\sm\) is not below the top \(3\.30\sm\)\. Correct one of the two\./);
  await expect(app.drawing.locator('.trunk')).toHaveCount(2);
  await expect(app.drawing.locator('.nozzle')).toHaveCount(16);
  await expect(app.drawing).not.toContainText('NaN');
  expect(await app.drawing.innerHTML()).not.toMatch(/NaN|Infinity|undefined/);
  // What rests on the crown has no figure; what does not, has.
  await expect(app.figure('wanted')).toHaveCount(0);
  await expect(app.figure('water')).toHaveText(/361/);
  await app.undo.click();
  await expect(app.findings.locator('.stop')).toHaveCount(0);
  await expect(app.figure('wanted')).toHaveText(/400/);
});

test('dragging the top below the skirt and out again', async ({ app, page }) => {
  await app.open();
  const top = app.handle('canopy top');
  await top.focus();
  await page.keyboard.press('Home');
  await expect(app.findings.locator('.stop').first()).toContainText('is not below the top');
  await page.keyboard.press('End');
  await expect(app.findings.getByText('is not below the top')).toHaveCount(0);
  await expect(app.drawing.locator('.crown').first()).toHaveAttribute('d', /^M/);
});

test('rows narrower than the canopy and the machine', async ({ app }) => {
  await app.open();
  await app.field('row spacing').fill('1.2');
  await expect(app.findings.locator('.stop').first()).toContainText('closes the alley');
  expect(await app.drawing.innerHTML()).not.toMatch(/NaN|Infinity|undefined/);
  await expect(app.drawing.locator('.crown')).toHaveCount(2);
  // Hand sum: 10 000 · (3.3 − 0.45) · 1.6 / 1.2 = 38 000 m³/ha.
  await app.to('Row');
  expect(await app.value('row-volume-crown')).toBe(38_000);
});

test('no nozzle open', async ({ app }) => {
  await app.open();
  for (let i = 1; i <= 8; i++) await app.toggle(`L${i}`).click();
  await expect(app.figure('nozzles')).toHaveText('0 of 16');
  await expect(app.findings.locator('.stop').first()).toContainText('No nozzle is open, so nothing is sprayed.');
  await expect(app.figure('water')).toHaveText('–');
  await expect(app.drawing.locator('.ray.in-leaf, .ray.over-top')).toHaveCount(0);
  await app.toggle('L1').click();
  await expect(app.findings.getByText('No nozzle is open')).toHaveCount(0);
});

test('a giant and a dwarf', async ({ app }) => {
  await app.open();
  for (const [top, skirt, width, spacing] of [['20', '15', '12', '20'], ['0.2', '0', '0.1', '0.5']] as const) {
    await app.field('skirt').fill('0');
    await app.field('canopy top').fill(top);
    await app.field('skirt').fill(skirt);
    await app.field('canopy width').fill(width);
    await app.field('row spacing').fill(spacing);
    await expect(app.field('row spacing')).toHaveAttribute('aria-invalid', 'false');
    expect(await app.drawing.innerHTML()).not.toMatch(/NaN|Infinity|undefined/);
    const frame = (await app.drawing.boundingBox())!;
    for (const crown of await app.drawing.locator('.crown-line').all()) {
      const box = (await crown.boundingBox())!;
      expect(box.x).toBeGreaterThanOrEqual(frame.x - 1);
      expect(box.x + box.width).toBeLessThanOrEqual(frame.x + frame.width + 1);
      expect(box.y).toBeGreaterThanOrEqual(frame.y - 1);
    }
  }
});

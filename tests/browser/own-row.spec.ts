import { expect, numberIn, test } from './app.ts';

test('three measurements give volume, water and drawing', async ({ app, page }) => {
  await app.open();
  await app.button('Your own row').click();
  const dialog = page.getByRole('dialog', { name: 'Your own row' });
  await expect(dialog).toBeVisible();
  const draw = dialog.getByRole('button', { name: 'Draw it' });
  await expect(draw).toBeDisabled();
  await app.field('tree height').fill('3');
  await dialog.getByRole('spinbutton', { name: 'canopy width' }).fill('1,2');
  await expect(draw).toBeDisabled();
  await dialog.getByRole('spinbutton', { name: 'row spacing' }).fill('4');
  await dialog.getByLabel('name of the block').fill('Behind the barn');
  await draw.click();

  await expect(dialog).toBeHidden();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Behind the barn, Today');
  await expect(app.drawing.locator('.crown').first()).toBeAttached();
  await expect(app.field('canopy top')).toHaveValue('3');
  // No skirt was asked for: the default is said to be one.
  await expect(app.field('skirt')).toHaveValue('');
  await expect(app.field('skirt')).toHaveAccessibleDescription('default');
  await expect(app.figure('water')).not.toHaveText('–');
  // The demo's 12 000 m³/ha ask for 400 L/ha; 10 000 × 3 × 1.2 / 4 = 9 000 m³/ha ask for three quarters of that.
  expect(await app.value('wanted')).toBe(300);
  await app.to('Row');
  expect(await app.value('row-volume-crown')).toBe(9000);

  await app.undo.click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lower bench, Full leaf');
  await app.redo.click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Behind the barn, Today');
});

test('a slip of the unit is told with field, value, range and remedy, and nothing is drawn', async ({ app, page }) => {
  await app.open();
  await app.button('Your own row').click();
  const height = app.field('tree height');
  await height.fill('320');
  const message = page.getByRole('alert');
  await expect(message).toHaveText('tree height: 320 is outside 0.2–20 m. Check the unit.');
  await expect(message).toBeInViewport({ ratio: 1 });
  await expect(height).toHaveAttribute('aria-invalid', 'true');
  await height.fill('three');
  await expect(message).toHaveText('tree height: “three” is no number. Type 0.2–20 m.');
  await height.fill('');
  await expect(message).toHaveText('tree height: type a number.');
  await height.fill('3.2');
  await expect(message).toHaveCount(0);
});

test('typed measurements: the figures follow each key, a bad one changes nothing and its message can be read', async ({ app, page }) => {
  await app.open();
  const before = await app.value('wanted');
  for (const name of ['canopy top', 'canopy width', 'skirt', 'row spacing']) {
    const field = app.field(name);
    await field.fill('99');
    const message = page.getByRole('alert');
    await expect(message).toContainText(`${name}: 99 is outside`);
    // All of it, not cut by the drawing's edge or by the screen's, nor under anything else.
    await expect(message).toBeInViewport({ ratio: 1 });
    const seen = await message.evaluate((m) => {
      const b = m.getBoundingClientRect();
      return [[b.left + 3, b.top + 3], [b.right - 3, b.top + 3], [b.left + 3, b.bottom - 3], [b.right - 3, b.bottom - 3]].every(([x, y]) => m.contains(document.elementFromPoint(x!, y!)));
    });
    expect(seen, `message of ${name} is uncovered`).toBe(true);
    expect(await app.value('wanted')).toBe(before);
    await field.press('Escape');
    await expect(message).toHaveCount(0);
  }
  await app.field('canopy width').fill('0.8');
  // Half the width, half the volume, half the water.
  expect(await app.value('wanted')).toBe(Math.round(before / 2));
  await app.field('canopy width').press('Escape');
  expect(await app.value('wanted')).toBe(before);
});

test('in the dialog the undo keys belong to the text', async ({ app, page }) => {
  await app.open();
  await app.field('canopy top').fill('3');
  await app.button('Your own row').click();
  const name = page.getByLabel('name of the block');
  await name.pressSequentially('Hill');
  await name.press('Control+z');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(app.field('canopy top')).toHaveValue('3');
  expect(numberIn(await app.field('canopy top').inputValue())).toBe(3);
});

import { expect, numberIn, onLaptop, test } from './app.ts';

test('the whole job by keyboard alone', onLaptop('a phone has no keyboard'), async ({ app, page }) => {
  const keys = page.keyboard;
  /** Tabs on to what has this name; what has the focus must be seen to have it. */
  const reach = async (name: string | RegExp, role: 'button' | 'slider' | 'spinbutton' | 'combobox' | 'link' | 'checkbox' | 'textbox' = 'button') => {
    const wanted = (await page.getByRole('dialog').isVisible() ? page.getByRole('dialog') : page).getByRole(role, { name, ...(typeof name === 'string' ? { exact: true } : {}) }).first();
    for (let i = 0; i < 160; i++) {
      if (await wanted.evaluate((e) => e === document.activeElement, undefined, { timeout: 2000 }).catch(() => false)) {
        await expect(wanted).toBeInViewport();
        const ring = await page.evaluate(() => {
          const e = document.activeElement!;
          const styles = [getComputedStyle(e), getComputedStyle(e, '::after'), ...(e.parentElement ? [getComputedStyle(e.parentElement)] : [])];
          return styles.some((s) => s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2);
        });
        expect(ring, `${name} shows its focus`).toBe(true);
        return wanted;
      }
      await keys.press('Tab');
    }
    throw new Error(`${name} was not reached by Tab`);
  };

  await app.open();
  // 1. Three measurements.
  await reach('Your own row');
  await keys.press('Enter');
  await reach('tree height', 'spinbutton');
  await keys.type('3.4');
  await reach('canopy width', 'spinbutton');
  await keys.type('1.5');
  await reach('row spacing', 'spinbutton');
  await keys.type('4');
  await reach('name of the block', 'textbox');
  await keys.type('Keyboard block');
  await keys.press('Enter');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Keyboard block, Today');
  // 2. The skirt by its handle.
  await reach('skirt', 'slider');
  for (let i = 0; i < 10; i++) await keys.press('ArrowUp');
  await expect(app.handle('skirt')).toHaveAttribute('aria-valuetext', '0.50\u00a0m');
  // 3. Shut the top nozzles and turn one.
  await reach(/^Nozzle L8 open; press to shut/);
  await keys.press('Space');
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
  await reach(/^Set nozzle R1,/);
  await keys.press('Enter');
  await reach('swivel', 'spinbutton');
  await keys.press('ArrowUp');
  await expect(app.field('swivel')).toHaveValue('1');
  // 4. Pressure, then hold the wanted water by speed.
  await reach('Pressure', 'spinbutton');
  await keys.press('ArrowUp');
  await expect(app.field('Pressure')).toHaveValue('8.1');
  const wanted = await app.value('wanted');
  await reach(/^Use: By (speed|nozzle size)/);
  await keys.press('Enter');
  expect(Math.abs((await app.value('water')) / wanted - 1)).toBeLessThan(0.04);
  // 5. A working, then undo from wherever the focus stands.
  await keys.press('Shift+Tab');
  await reach('Working of Air');
  await keys.press('Enter');
  await expect(page.locator('#working-air .working').first()).toBeVisible();
  await keys.press('Control+z');
  expect(numberIn(await app.figure('water').innerText())).not.toBe(wanted);
  // 6. Menu: open, choose, leave by Escape; the focus comes back.
  await keys.press('Control+Home');
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
  await reach('Undo');
  await keys.press('Tab');
  await keys.press('Tab');
  await keys.press('Enter');
  await reach('Units', 'combobox');
  await keys.press('End');
  await expect(app.figure('water')).toContainText('gal/ac');
  await keys.press('Escape');
  await expect(page.getByRole('combobox', { name: 'Units' })).toBeHidden();
  expect(await page.evaluate(() => document.activeElement?.tagName)).toBe('SUMMARY');
});

test('a dialog keeps the focus inside, leaves by Escape, and gives the focus back', onLaptop('a phone has no keyboard'), async ({ app, page }) => {
  await app.open();
  await app.button('Your own row').focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  // It is fetched when it is first asked for.
  await expect(dialog).toBeVisible();
  for (let i = 0; i < 14; i++) {
    await page.keyboard.press('Tab');
    const outside = await dialog.evaluate((d) => document.activeElement !== document.body && !d.contains(document.activeElement));
    expect(outside).toBe(false);
  }
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(app.button('Your own row')).toBeFocused();
});

test('a native select and a link change the station and keep the place', async ({ app, page }) => {
  await app.open('#row');
  await expect(page.getByRole('link', { name: 'Row' })).toHaveAttribute('aria-current', 'page');
  await expect(page.getByRole('heading', { name: 'What stands in the row' })).toBeVisible();
  await page.goBack().catch(() => null);
  await app.open();
  await expect(page.getByRole('link', { name: 'Section' })).toHaveAttribute('aria-current', 'page');
});

test('a station begins at its top, wherever the last was left', async ({ app, page }) => {
  await app.open('#row');
  for (const station of ['Strategies', 'Headland', 'Row', 'Section', 'Strategies'] as const) {
    await page.evaluate(() => scrollTo(0, 400));
    const link = page.getByRole('link', { name: station, exact: true });
    await link.dispatchEvent('click');
    await expect(link).toHaveAttribute('aria-current', 'page');
    // What the address names is looked for among the ids of the page too, and a station arrives a moment later.
    await page.waitForLoadState('networkidle');
    expect(await page.evaluate(() => scrollY), station).toBe(0);
  }
});

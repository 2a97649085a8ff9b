import { readFileSync } from 'node:fs';
import { readDocument } from '#job/read.ts';
import { expect, isPhone, numberIn, test } from './app.ts';

test('US units: figures change, the document does not; units and theme are kept across reloads', async ({ app, page }) => {
  await app.open();
  const file = await app.saveFile();
  const litres = await app.value('water');
  await app.units('us');
  await app.theme('shed');
  // 1 L/ha = 0.1069 gal/ac; the screen shows a tenth of a gallon.
  expect(await app.value('water')).toBeCloseTo(litres * 0.1069, 0);
  await expect(app.figure('water')).toContainText('gal/ac');
  await expect(app.field('canopy top')).toHaveValue('10.8');
  await expect(app.drawing.locator('.rule-figure').last()).toContainText('ft');
  await expect(page.locator('main')).not.toContainText('L/ha');
  expect(await app.saveFile()).toBe(file);

  await page.reload();
  await expect(app.figure('water')).toContainText('gal/ac');
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'shed');
  // A field typed in feet is kept in metres.
  await app.field('canopy top').fill('10');
  await app.field('canopy top').blur();
  await app.units('metric');
  await expect(app.field('canopy top')).toHaveValue('3.05');
});

test('the document is kept across reloads', async ({ app, page }) => {
  await app.open();
  await app.field('canopy top').fill('2.9');
  await app.toggle('L8').click();
  await app.kept();
  await page.reload();
  await expect(app.field('canopy top')).toHaveValue('2.9');
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
});

test('a reload comes back to the block, the rung and the ghost in view', async ({ app, page }) => {
  await app.open();
  await page.getByLabel('Block', { exact: true }).selectOption('upper-shelf');
  await page.getByRole('group', { name: 'Season ladder' }).getByRole('button', { name: 'Petal fall' }).click();
  const title = await page.getByRole('heading', { level: 1 }).textContent();
  expect(title).toContain('Petal fall');
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(title!);
  await expect(page.getByRole('group', { name: 'Season ladder' }).getByRole('button', { name: 'Petal fall' })).toHaveAttribute('aria-pressed', 'true');
});

test('each theme has its own paper, and says so to the browser', async ({ app, page }) => {
  await app.open();
  const seen = new Set<string>();
  for (const theme of ['paper', 'sun', 'shed'] as const) {
    await app.theme(theme);
    seen.add(await page.evaluate(() => getComputedStyle(document.body).backgroundColor));
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(theme === 'shed' ? 'dark' : 'light');
  }
  expect(seen.size).toBe(3);
});

test('a file with mistakes is refused with all of them, and what was open stays', async ({ app, page }) => {
  await app.open();
  await app.field('canopy top').fill('2.9');
  await app.openFile('demo-data/bad.json');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toHaveAccessibleName('This file was not opened; what was open stays.');
  const told = dialog.getByRole('listitem');
  expect(await told.count()).toBeGreaterThan(15);
  // Path, value, range, unit.
  await expect(told.filter({ hasText: '1250' })).toHaveText(/0\.5.*20/);
  await expect(dialog).toBeInViewport({ ratio: 0.99 });
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(dialog).toBeHidden();
  await expect(app.field('canopy top')).toHaveValue('2.9');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lower bench, Full leaf');
});

for (const [what, text, told] of [
  ['is no JSON', 'tree,height\n1,2', /JSON/],
  ['is empty', '', /empty/],
  ['comes from a newer version', '{"format":"rowtailor","version":99,"name":"x","blocks":[],"machines":[],"nozzleTables":[],"labels":[]}', /99/],
  ['has no block', '{"format":"rowtailor","version":1,"name":"x","blocks":[],"machines":[],"nozzleTables":[],"labels":[]}', /0 entries; at least 1/]
] as const)
  test(`a file that ${what} is told, not half opened`, async ({ app, page }, info) => {
    test.skip(isPhone(page), 'a file is a file');
    await app.open();
    const path = info.outputPath('file.json');
    const { writeFileSync } = await import('node:fs');
    writeFileSync(path, text);
    await app.openFile(path);
    await expect(page.getByRole('dialog').getByRole('listitem')).toHaveText([told]);
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Lower bench, Full leaf');
  });

for (const [file, title] of [
  ['citrus-globes', 'Globe grove, After hedging'],
  ['cherry-wall', 'East wall, Fruit colouring']
] as const)
  test(`open ${file}, save it: what comes out reads again and is the same`, async ({ app, page }) => {
    test.skip(isPhone(page), 'a file is a file');
    await app.open();
    await app.openFile(`demo-data/${file}.json`);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText(title);
    await expect(page.getByText('Demo: an invented orchard.')).toHaveCount(0);
    const saved = readDocument(await app.saveFile());
    expect(saved).toEqual(readDocument(readFileSync(`demo-data/${file}.json`, 'utf8')));
    expect(saved.ok).toBe(true);
  });

test('what a long session leaves reads again: fields, drags, chips, whole numbers, widths', async ({ app, page }) => {
  await app.open();
  await app.pull(app.handle('canopy top'), 0, 37);
  await app.pull(app.handle('row spacing'), -23, 0);
  await app.pick('L7').click();
  await app.pull(app.handle('swivel of L7'), 8, 9);
  await app.to('Row');
  const stage = app.field('growth stage (BBCH)');
  await stage.fill('71.5');
  await expect(page.getByRole('alert')).toHaveText('growth stage (BBCH): 71.5 is not a whole number. Leave out the decimals.');
  await stage.fill('71');
  await page.getByText(/^Widths by height/).click();
  await app.button('Add a width').click();
  await expect(app.field('at height')).toHaveCount(2);
  await app.button('Add a width').click();
  await app.field('at height').first().fill('1.15');
  await app.button('Remove width 2').click();
  await app.button('Remove width 1').click();
  await expect(app.field('at height')).toHaveCount(0);
  await app.button('Add a width').click();
  await page.getByLabel('sun low').check();
  await app.button('+ product label').click();
  const saved = readDocument(await app.saveFile());
  expect(saved.ok ? [] : saved.problems).toEqual([]);
  await app.kept();
  await page.reload();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(stage).toHaveValue('71');
});

test('a kept document that cannot be read is not lost: it is told and can be saved as a file', async ({ app, page }) => {
  await app.open();
  await app.field('canopy top').fill('2.9');
  await app.kept();
  const damaged = '{"format":"rowtailor","version":1,"name":';
  await page.evaluate(
    (text) =>
      new Promise<void>((done, fail) => {
        const open = indexedDB.open('rowtailor');
        open.onerror = () => fail(open.error);
        open.onsuccess = () => {
          const change = open.result.transaction('texts', 'readwrite');
          const keys = change.objectStore('texts').getAllKeys();
          keys.onsuccess = () => change.objectStore('texts').put(text, keys.result[0]);
          change.oncomplete = () => (open.result.close(), done());
        };
      }),
    damaged
  );
  await page.reload();
  const dialog = page.getByRole('dialog');
  await expect(dialog).toHaveAccessibleName(/could not be read/);
  const download = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save kept text' }).click();
  expect(readFileSync(await (await download).path(), 'utf8')).toBe(damaged);
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(app.drawing).toBeVisible();
});

test('a browser that forbids storage: the app works, and says that nothing is kept', async ({ app, page }) => {
  await page.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    Object.defineProperty(window, 'localStorage', { get: refuse });
    Object.defineProperty(window, 'indexedDB', { get: refuse });
  });
  await app.open();
  await app.field('canopy top').fill('2.9');
  await expect(page.getByRole('status')).toHaveText('Could not keep the document on this device: save it as a file.');
  expect(numberIn(await app.saveFile().then((t) => /"heightM": 2\.9/.exec(t)?.[0] ?? '0'))).toBe(2.9);
});

test('the menu of a phone stays on the screen', async ({ app, page }) => {
  test.skip(!isPhone(page), 'phone');
  await app.open();
  await app.menu();
  await expect(page.locator('.sheet')).toBeInViewport({ ratio: 1 });
});

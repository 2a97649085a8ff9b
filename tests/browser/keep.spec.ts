import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { readDocument } from '#job/read.ts';
import { crash } from '../crash/crash.ts';
import { App, expect, isPhone, numberIn, onLaptop, onPhone, test } from './app.ts';
import { cleanInAll, small, wide } from './barriers.ts';

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
  // Left at once, before anything was said to be kept.
  await app.field('canopy top').fill('3.1');
  await page.reload();
  await expect(app.field('canopy top')).toHaveValue('3.1');
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
  test(`a file that ${what} is told, not half opened`, onLaptop('a file is a file'), async ({ app, page }, info) => {
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
  test(`open ${file}, save it: what comes out reads again and is the same`, onLaptop('a file is a file'), async ({ app, page }) => {
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
  await clean('kept text that cannot be read', page, 'dialog');
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
  await expect(page.getByRole('banner').getByRole('status')).toHaveText('Could not keep the document on this device: save it as a file.');
  await clean('storage forbidden', page, '.bar');
  expect(numberIn(await app.saveFile().then((t) => /"heightM": 2\.9/.exec(t)?.[0] ?? '0'))).toBe(2.9);
});

test('what a page could not keep as it went is rescued beside the others, and said', async ({ app, page }) => {
  await app.open();
  await app.field('canopy top').fill('2.9');
  await app.kept();
  // Words of a page whose orchard is no longer kept here.
  const text = await app.saveFile();
  await page.evaluate((t) => localStorage.setItem('rowtailor-unsaved-gone', JSON.stringify({ id: 'elsewhere', follows: 3, text: t })), text);
  await page.reload();
  const bar = page.locator('.bar').filter({ hasText: ', rescued' });
  await expect(bar).toBeVisible();
  await clean('rescued', page, '.bar');
  await bar.getByRole('button', { name: 'Close' }).click();
  await expect(bar).toHaveCount(0);
  const sheet = await orchards(app, page);
  await expect(sheet.getByText(/, rescued$/)).toBeVisible();
});

test('the menu of a phone stays on the screen', onPhone(), async ({ app, page }) => {
  await app.open();
  await app.menu();
  await expect(page.locator('.sheet')).toBeInViewport({ ratio: 1 });
});

/** No barrier in any theme, nothing wider than the window, nothing too small for a finger. Colours and names are the same on a phone. */
const clean = async (where: string, page: Page, root: string) => {
  if (!isPhone(page)) await cleanInAll(page, where);
  expect.soft(await wide(page)).toEqual([]);
  expect.soft(await small(page, root, 44)).toEqual([]);
};
const orchards = async (app: App, page: Page) => {
  await app.menu();
  await app.button('Orchards kept here').click();
  const sheet = page.getByRole('dialog', { name: 'Orchards kept on this device' });
  await expect(sheet.getByText('used.')).toBeVisible();
  return sheet;
};

test('several orchards: opened, renamed, copied, deleted, taken back, deleted for good', async ({ app, page }) => {
  await app.open();
  await app.field('Speed').fill('5.4');
  await app.kept();
  await app.openFile('demo-data/cherry-wall.json');
  await app.kept();
  let sheet = await orchards(app, page);
  const row = (name: string) => sheet.getByRole('listitem').filter({ has: page.getByText(name, { exact: true }) });
  await expect(row('Cherry wall')).toContainText('open here');
  await expect(sheet).toBeInViewport();
  await clean('orchards', page, 'dialog');
  await sheet.getByRole('button', { name: 'Rename Bench orchard' }).click();
  await sheet.getByLabel('New name of Bench orchard').fill('Bench, north');
  await page.keyboard.press('Enter');
  await sheet.getByRole('button', { name: 'Copy Bench, north', exact: true }).click();
  await sheet.getByRole('button', { name: 'Delete Bench, north', exact: true }).click();
  await expect(row('Bench, north').getByRole('button')).toHaveText(['Take back', 'Delete for good']);
  page.once('dialog', (d) => void d.accept());
  await sheet.getByRole('button', { name: 'Delete Bench, north for good' }).click();
  await expect(row('Bench, north')).toHaveCount(0);
  // The open one is deleted too: the copy comes up, and the deleted one is taken back.
  await sheet.getByRole('button', { name: 'Delete Cherry wall' }).click();
  await expect(row('Bench, north, copy')).toContainText('open here');
  await sheet.getByRole('button', { name: 'Take back Cherry wall' }).click();
  await sheet.getByRole('button', { name: 'Close' }).click();
  await expect(app.field('Speed')).toHaveValue('5.4');
  await page.reload();
  await expect(app.field('Speed')).toHaveValue('5.4');
  sheet = await orchards(app, page);
  await sheet.getByRole('button', { name: 'Open Cherry wall' }).click();
  await expect(sheet).toBeHidden();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('East wall, Fruit colouring');
});

test('undo and redo go on after a reload, and a setting that was saved before is gone back to', async ({ app, page }) => {
  await app.open();
  const speed = app.field('Speed');
  await speed.fill('5');
  await app.button('Save setting').click();
  await speed.fill('7');
  await app.button('Save setting').click();
  await app.toggle('L8').click();
  await app.undo.click();
  await app.kept();
  await page.reload();
  await expect(speed).toHaveValue('7');
  await app.redo.click();
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
  await app.undo.click();
  await app.undo.click();
  await app.undo.click();
  await expect(speed).toHaveValue('5');
  await page.getByText('Settings saved before').click();
  await expect(page.getByRole('listitem').filter({ hasText: '7.0 km/h' })).toHaveCount(1);
  await page.getByRole('listitem').filter({ hasText: '7.0 km/h' }).getByRole('button').click();
  await expect(speed).toHaveValue('7');
  await app.undo.click();
  await expect(speed).toHaveValue('5');
});

test('a link holds the orchard: it is shown first, opens beside what is kept, and leaves the address', async ({ app, page, context, baseURL }) => {
  await app.open();
  await app.field('Speed').fill('5.4');
  await app.menu();
  await app.button('Share or link').click();
  const sheet = page.getByRole('dialog');
  const link = await sheet.getByLabel('Link').inputValue();
  expect(link).toMatch(new RegExp(`^${baseURL}#orchard/1/[A-Za-z0-9_-]{1000,}$`));
  await clean('send', page, 'dialog');
  await sheet.getByRole('button', { name: 'Close' }).click();
  await app.field('Speed').fill('6');
  await app.kept();

  // Into the page that is open: what is there stays until it is taken.
  await page.evaluate((hash) => (location.hash = hash), link.slice(link.indexOf('#')));
  const offer = page.getByRole('dialog', { name: 'An orchard from a link' });
  await expect(offer).toContainText('Bench orchard');
  await clean('link', page, 'dialog');
  await offer.getByRole('button', { name: 'Leave it' }).click();
  await expect(page).toHaveURL(`${baseURL}#section`);
  await expect(app.field('Speed')).toHaveValue('6');

  // On another device.
  const there = await context.browser()!.newContext();
  const other = await there.newPage();
  await other.goto(link);
  await other.getByRole('dialog').getByRole('button', { name: 'Open it' }).click();
  const speed = other.getByRole('spinbutton', { name: 'Speed', exact: true });
  await expect(speed).toHaveValue('5.4');
  await expect(other).toHaveURL(`${baseURL}#section`);
  await other.reload();
  await expect(speed).toHaveValue('5.4');
  // Cut short on its way, it is told so.
  await other.goto(link.slice(0, -40));
  await expect(other.getByRole('dialog')).toContainText('cut short');
  await there.close();
});

test('the share sheet gets the file, as text where it takes no other', async ({ app, page }) => {
  await page.addInitScript(() => {
    const got: string[] = [];
    Object.assign(navigator, {
      canShare: (data: ShareData) => data.files?.[0]?.type === 'text/plain',
      share: async (data: ShareData) => void got.push(data.files![0]!.name, await data.files![0]!.text())
    });
    Object.assign(window, { got });
  });
  await app.open();
  await app.menu();
  await app.button('Share or link').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Share file' }).click();
  const got = () => page.evaluate(() => (window as unknown as { got: string[] }).got);
  await expect.poll(async () => (await got()).length).toBe(2);
  const [name, text] = (await got()) as [string, string];
  expect(name).toBe('bench-orchard.json.txt');
  expect(readDocument(text).ok).toBe(true);
});

test('two pages on one orchard: the older one says so, and keeps its own as a copy or takes the newer', async ({ app, page, context }) => {
  await app.open();
  await app.field('Speed').fill('5');
  await app.kept();
  const two = new App(await context.newPage());
  await two.open();
  await expect(two.field('Speed')).toHaveValue('5');
  await two.field('Speed').fill('6');
  await two.kept();
  const bar = page.locator('.bar');
  await expect(bar).toContainText('Another page saved this orchard.');
  await app.field('Speed').fill('7');
  await expect(bar).toContainText('stands on this page alone');
  await clean('two pages', page, '.bar');
  await app.button('Keep mine as a copy').click();
  await app.kept();
  await expect(bar).toHaveCount(0);
  await two.page.reload();
  await expect(two.field('Speed')).toHaveValue('6');
  await page.reload();
  await expect(app.field('Speed')).toHaveValue('7');
});

test('site data cleared, and no room: it is said, the work stays, and is kept again', onLaptop('a store is a store'), async ({ app, page, context, baseURL }) => {
  await app.open();
  await app.field('Speed').fill('5');
  await app.kept();
  const cdp = await context.newCDPSession(page);
  const { origin } = new URL(baseURL!);
  await cdp.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
  await app.field('Speed').fill('6');
  const bar = page.locator('.bar');
  await expect(bar).toContainText('no longer kept on this device');
  await clean('gone', page, '.bar');
  await app.button('Keep it again').click();
  await app.kept();

  // The browser itself looks at its quota only now and then: what it says then is said here at once.
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    Object.assign(window, { room: () => (IDBObjectStore.prototype.put = put) });
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await app.field('Speed').fill('7');
  await expect(bar).toContainText('The last changes stand on this page alone.');
  await clean('no room', page, '.bar');
  const download = page.waitForEvent('download');
  await bar.getByRole('button', { name: 'Save as file' }).click();
  expect(readFileSync(await (await download).path(), 'utf8')).toContain('"speedKmH": 7,');
  await page.evaluate(() => (window as unknown as { room: () => void }).room());
  await app.field('Speed').fill('7.5');
  await app.kept();
});

test('a fault in the page: the work stays, the file is offered, and nothing is sent', onLaptop('a fault is a fault'), async ({ page, watch }) => {
  const app = await new App(page).open();
  await app.field('Speed').fill('7');
  await app.kept();
  let scanned = 0;
  for (const fault of [() => void setTimeout(() => { throw new Error('thrown on purpose'); }), () => void Promise.reject(new Error('thrown on purpose'))]) {
    await page.evaluate(fault);
    const panel = page.getByRole('alert').filter({ hasText: 'Something went wrong' });
    await expect(panel).toContainText('kept on this device');
    await panel.getByText('What the browser says').click();
    await expect(panel).toContainText('thrown on purpose');
    if (scanned++ === 0) await clean('fault', page, '.bar');
    const download = page.waitForEvent('download');
    await panel.getByRole('button', { name: 'Save as file' }).click();
    expect(readFileSync(await (await download).path(), 'utf8')).toContain('"speedKmH": 7,');
    await panel.getByRole('button', { name: 'Go on' }).click();
    await expect(panel).toBeHidden();
  }

  // A part that cannot be drawn gives way to a panel; what was typed is kept, and drawn again once it can be.
  await page.evaluate(() => {
    const { toFixed } = Number.prototype;
    Object.assign(window, { mend: () => (Number.prototype.toFixed = toFixed) });
    Number.prototype.toFixed = () => {
      throw new Error('thrown on purpose');
    };
  });
  await app.field('Speed').fill('6.5');
  const broken = page.locator('section.broken');
  await expect(broken.getByRole('heading')).toHaveText('This part of the page cannot be drawn.');
  await expect(broken).toContainText('is kept on this device');
  await page.evaluate(() => (window as unknown as { mend: () => void }).mend());
  await clean('broken', page, '.broken');
  await broken.getByRole('button', { name: 'Draw it again' }).click();
  await expect(app.field('Speed')).toHaveValue('6.5');
  await page.reload();
  await expect(app.field('Speed')).toHaveValue('6.5');
  expect(watch.foreign).toEqual([]);
});

test('killed at three moments, it has all that it said was kept', onLaptop('a kill is a kill'), async ({ page }) => {
  test.setTimeout(120_000);
  const { said, lost } = await crash({ runs: 3, seed: 5 });
  expect(lost).toEqual([]);
  expect(said).toBeGreaterThan(0);
});

import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, isPhone, test } from './app.ts';
import { cleanInAll } from './barriers.ts';

const open = async (page: Page): Promise<void> => {
  await page.goto('#headland/record');
  await expect(page.getByRole('heading', { name: 'Record', exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Treatment record/ })).toBeVisible();
};
const exported = async (page: Page, name: string): Promise<{ path: string; text: string; file: string }> => {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  const done = await download;
  const path = await done.path();
  return { path, text: readFileSync(path, 'utf8'), file: done.suggestedFilename() };
};
const take = async (page: Page, name: string, text: string): Promise<void> => {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Import CSV or JSON' }).click();
  await (await chooser).setFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) });
};

test('a record is written, survives a reload half done, is amended, exported and taken in again', async ({ app, page }) => {
  test.slow();
  await open(page);
  await page.getByLabel('European Union', { exact: true }).check();
  await page.getByRole('button', { name: /^Treatment record/ }).click();
  await expect(page.getByRole('heading', { name: 'New treatment record' })).toBeFocused();
  // One record for each product of the demo's mix; this one is about the first.
  await expect(page.getByRole('button', { name: 'Make 2 records, one for each product' })).toBeVisible();
  await page.getByRole('button', { name: 'Remove product 2' }).click();
  await page.getByLabel('operator').fill('=1+1; "operator"');
  await page.getByLabel('EPPO code of the crop').fill('MABSD');
  await app.kept();

  // A phone call, a reload: what was typed is there.
  await page.reload();
  await expect(page.getByLabel('operator')).toHaveValue('=1+1; "operator"');
  // The draft is there at once; what was chosen comes with the orchard, a moment later.
  await expect(page.getByLabel('European Union', { exact: true })).toBeChecked();
  await page.getByText(/Look through treatments with the lists of/).click();
  await page.getByLabel('Private standard').check();
  await page.getByLabel('start time').fill('06:30');
  await page.getByLabel('remarks').fill('wind turned,\nstopped for ten minutes');
  await expect(page.getByText(/Asked for: European Union/)).toContainText('8 of 11 there');
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.getByText('Record made.')).toBeVisible();

  // Undo leaves it alone, and so does another reload.
  await app.undo.click();
  await expect(page.getByLabel('Private standard')).not.toBeChecked();
  await expect(page.locator('details.entry')).toHaveCount(1);
  await app.redo.click();
  await app.kept();
  await page.reload();
  const entry = page.locator('details.entry');
  await expect(entry).toHaveCount(1);
  await entry.locator('summary').first().click();
  await page.getByRole('button', { name: /^Amend: / }).click();
  await app.field('area treated').fill('2.2');
  await page.getByRole('button', { name: 'Make the amendment' }).click();
  await expect(page.getByRole('alert')).toContainText('Write why');
  await page.getByLabel('Why is it amended?').fill('last two rows left out');
  await page.getByRole('button', { name: 'Make the amendment' }).click();
  await expect(entry).toHaveCount(1);
  if (!(await entry.getByRole('row', { name: /area treated/ }).isVisible())) await entry.locator('summary').first().click();
  const row = entry.getByRole('row', { name: /area treated/ });
  await expect(row.locator('del')).toContainText('2.4');
  await expect(row.locator('ins')).toContainText('2.2');
  await expect(entry).toContainText('last two rows left out');

  const csv = await exported(page, 'Export as CSV');
  expect(csv.file).toMatch(/^records-\d{4}-\d{2}-\d{2}\.csv$/);
  expect(csv.text.charCodeAt(0)).toBe(0xfeff);
  expect(csv.text).toContain(`"'=1+1; ""operator"""`);
  const json = await exported(page, 'Export as JSON');
  const file = JSON.parse(json.text) as { records: { id: string; fields: { operator: string } }[] };
  expect(file.records.map((r) => r.fields.operator)).toEqual(['=1+1; "operator"', '=1+1; "operator"']);

  // The same again adds nothing; something else under the same id is refused whole.
  await take(page, 'records.csv', csv.text);
  await expect(page.getByText('0 records added, 2 here already.')).toBeVisible();
  await take(page, 'records.csv', csv.text.replace('wind turned', 'no wind'));
  await expect(page.getByRole('alert')).toContainText('Line 2, id');
  const more = { ...file, records: [{ ...file.records[0], id: 'from-another-phone' }] };
  await take(page, 'records.json', JSON.stringify(more));
  await expect(page.getByText('1 record added.')).toBeVisible();
  await expect(entry).toHaveCount(2);

  // The file of the whole document carries them too.
  const saved = JSON.parse(await app.saveFile()) as { records: unknown[] };
  expect(saved.records).toHaveLength(3);
});

test('a file takes the place of no records: it opens beside them', async ({ app, page }) => {
  await open(page);
  await page.getByRole('button', { name: /^Calibration record/ }).click();
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.locator('details.entry')).toHaveCount(1);
  await app.openFile('demo-data/cherry-wall.json');
  await expect(page.getByRole('heading', { name: 'Records of East wall' })).toBeVisible();
  // The demo's own: a calibration, and a treatment that was amended.
  await expect(page.locator('details.entry')).toHaveCount(2);
  await expect(page.locator('details.entry').first()).toContainText('amended');
  await app.menu();
  await app.button('Orchards kept here').click();
  await page.getByRole('dialog').getByRole('button', { name: 'Open Bench orchard' }).click();
  await expect(page.getByRole('heading', { name: 'Records of Lower bench' })).toBeVisible();
  await expect(page.locator('details.entry')).toHaveCount(1);
});

test('by keyboard alone', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: /^Calibration record/ }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'New calibration record' })).toBeFocused();
  await page.getByLabel('operator').focus();
  await page.keyboard.type('operator 1');
  // Enter in a field does not make what cannot be taken back.
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'New calibration record' })).toBeVisible();
  await page.getByRole('button', { name: 'Make the record' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText('Record made.')).toBeVisible();
  await page.locator('details.entry > summary').focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('row', { name: /operator/ })).toContainText('operator 1');
});

test('fits a phone, a narrow one and a zoomed page; every target is 56 px; no barrier', async ({ page }) => {
  test.slow();
  await open(page);
  await page.getByLabel('US, commercial applicator').check();
  await page.getByRole('button', { name: /^Treatment record/ }).click();
  await page.locator('section.headland details').evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
  const small = await page.locator('section.headland :is(button, select, summary, textarea, .box, input[type=text]:not([role]), input[type=date], input[type=time], label:has(input[type=checkbox]))').evaluateAll((all) =>
    all.filter((e) => (e as HTMLElement).offsetParent && e.getBoundingClientRect().height < 55.5).map((e) => `${e.tagName} ${e.textContent?.trim().slice(0, 30)} ${e.getBoundingClientRect().height}`)
  );
  expect(small).toEqual([]);
  await cleanInAll(page, 'record');
  for (const width of isPhone(page) ? [390, 320] : [1440, 720]) {
    await page.setViewportSize({ width, height: 800 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth), `${width} px`).toBeLessThanOrEqual(width);
  }
});

test('on paper every record is open, and nothing that can only be pressed is printed', async ({ page }) => {
  await open(page);
  await page.getByRole('button', { name: /^Calibration record/ }).click();
  await page.getByRole('button', { name: 'Make the record' }).click();
  await expect(page.getByText('Record made.')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('details.entry table')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Export as CSV' })).toBeHidden();
  await expect(page.getByRole('button', { name: /^Amend: / })).toBeHidden();
});

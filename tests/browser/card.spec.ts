import type { Page } from '@playwright/test';
import { expect, isPhone, test, type App } from './app.ts';
import { bare, readPdf } from './pdf.ts';

const PAPERS = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
const MACHINES = {
  'lower-bench': { title: 'Lower bench, Full leaf', nozzles: 16 },
  'cherry-wall': { title: 'East wall, Fruit colouring', nozzles: 20 },
  'citrus-globes': { title: 'Globe grove, After hedging', nozzles: 24 }
} as const;

async function card(app: App, page: Page, file = 'lower-bench'): Promise<void> {
  await page.goto('#headland/card');
  if (file !== 'lower-bench') await app.openFile(`demo-data/${file}.json`);
  await expect(page.locator('.cab-card .card-nozzle').first()).toBeVisible();
}
const print = async (page: Page) => readPdf(await page.pdf({ preferCSSPageSize: true, tagged: true, printBackground: false }));

/** Every text that the card holds, as the screen has it, each on its own. */
const textsOf = (page: Page) =>
  page.locator('.cab-card').evaluate((card) => {
    const out: string[] = [];
    const walker = document.createTreeWalker(card, NodeFilter.SHOW_TEXT);
    for (let n = walker.nextNode(); n; n = walker.nextNode()) if (n.textContent!.trim() && !n.parentElement!.closest('.sr')) out.push(n.textContent!);
    return out;
  });

for (const [file, { title, nozzles }] of Object.entries(MACHINES))
  for (const paper of ['a4', 'letter'] as const)
    for (const system of ['metric', 'us'] as const)
      test(`${file} on ${paper}, ${system}: one tagged page that holds the whole card`, async ({ app, page }) => {
        test.skip(isPhone(page), 'the paper is the same for both');
        await card(app, page, file);
        await app.units(system);
        await expect(page.getByLabel('Paper')).toHaveValue(system === 'us' ? 'letter' : 'a4');
        await page.getByLabel('Paper').selectOption(paper);
        await expect(page.getByRole('heading', { name: title, level: 3 })).toBeVisible();
        const texts = await textsOf(page);
        expect(texts.length).toBeGreaterThan(nozzles * 2);

        const pdf = await print(page);
        expect(pdf.pages).toBe(1);
        expect(pdf.width).toBeCloseTo(PAPERS[paper].width, 0);
        expect(pdf.height).toBeCloseTo(PAPERS[paper].height, 0);

        expect(pdf.tagged).toBe(true);
        for (const role of ['H3', 'H4', 'Table', 'TH', 'TD', 'L', 'LI', 'Figure']) expect(pdf.roles, role).toContain(role);
        // The picture says in words what it draws: every nozzle by name.
        for (const side of ['L', 'R']) for (let n = 1; n <= nozzles / 2; n++) expect(pdf.alternatives.join(' ')).toMatch(new RegExp(`\\b${side}${n} (open|shut)`));

        // Nothing of the screen's card is missing on paper, and all of it is text that can be selected.
        for (const text of texts) expect(pdf.text).toContain(bare(text));
        // Nothing else of the page is printed.
        for (const other of ['Section', 'Unitstheme', 'Yourownrow', 'aimedflow', 'Printthecard']) expect(pdf.text).not.toContain(other);
        // Nothing runs into the margin that printers cannot reach.
        for (const w of pdf.words) {
          expect(w.left, w.text).toBeGreaterThan(8);
          expect(w.right, w.text).toBeLessThan(PAPERS[paper].width - 8);
          expect(w.base, w.text).toBeGreaterThan(8);
          expect(w.base, w.text).toBeLessThan(PAPERS[paper].height - 8);
        }
      });

test('the card says what the setting is, by the trade’s own sums', async ({ app, page }) => {
  await card(app, page);
  const shown = async () => (await page.locator('.cab-card').innerText()).replaceAll(/[\u00a0\u202f]/g, ' ');
  // 100 m at 6 km/h take a minute.
  expect(await shown()).toMatch(/6\.0 km\/h\s+60\.0 s per 100 m/);
  await app.units('us');
  // 88 ft at 1 mph take a minute; 6 km/h are 3.728 mph.
  expect(await shown()).toMatch(/3\.7 mph\s+16\.1 s per 88 ft\s+18\.3 s per 100 ft/);
  expect(await shown()).toContain('Not proven');
});

test('a shut and a turned nozzle are seen on the card', async ({ app, page }) => {
  await app.open();
  await app.toggle('L8').click();
  await app.pick('L7').click();
  await app.field('swivel').fill('-10');
  await page.goto('#headland/card');
  const line = (id: string) => page.locator('.cab-card .card-nozzle').filter({ has: page.locator('.card-id', { hasText: new RegExp(`^${id}$`) }) });
  for (const id of ['L8', 'R8']) await expect(line(id).locator('.card-said')).toHaveText('SHUT');
  for (const id of ['L7', 'R7']) await expect(line(id).locator('.card-more')).toHaveText(/green, down 10°$/);
  await expect(page.locator('.cab-card')).toContainText('14');
  await expect(page.getByRole('img', { name: /L8 shut/ })).toBeVisible();
});

test('a card with long names and a great deal to say still fits on its page', async ({ app, page }) => {
  test.skip(isPhone(page), 'the paper is the same for both');
  await app.open();
  const doc = JSON.parse(await app.saveFile());
  const long = (s: string) => `${s} with a very long name that somebody typed to tell it from all the others on the farm, the second`.slice(0, 118);
  doc.blocks[0].name = long('The lower bench');
  doc.blocks[0].rungs.at(-1).name = long('Full leaf');
  doc.machines[0].name = long('Arc');
  doc.labels[0].name = long('Fungicide');
  doc.machines[0].gears[1].name = long('Gear');
  const path = test.info().outputPath('long.json');
  await (await import('node:fs/promises')).writeFile(path, JSON.stringify(doc));
  await app.openFile(path);
  await page.goto('#headland/card');
  await expect(page.getByRole('heading', { level: 3, name: /^The lower bench with/ })).toBeVisible();
  const texts = await textsOf(page);
  const pdf = await print(page);
  expect(pdf.pages).toBe(1);
  for (const text of texts) expect(pdf.text).toContain(bare(text));
  for (const w of pdf.words) expect(w.base, w.text).toBeLessThan(PAPERS.a4.height - 8);
});

test('printed from a phone it is the same page', async ({ app, page }) => {
  test.skip(!isPhone(page), 'laptop');
  await card(app, page);
  const texts = await textsOf(page);
  const pdf = await print(page);
  expect(pdf.pages).toBe(1);
  expect(pdf.width).toBeCloseTo(210, 0);
  for (const text of texts.filter((t) => !/^Seen/.test(t))) expect(pdf.text).toContain(bare(text));
});

test('the button prints', async ({ app, page }) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', 'yes');
  });
  await card(app, page);
  await app.button('Print the card').click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', 'yes');
});

test('other stations print as they did', async ({ app, page }) => {
  test.skip(isPhone(page), 'laptop');
  await app.open();
  const pdf = await print(page);
  for (const part of ['Rowtailor', 'L7·015', 'rowspacing']) expect(pdf.text).toContain(part);
});

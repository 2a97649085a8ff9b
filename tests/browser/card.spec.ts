import { writeFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { expect, onLaptop, onPhone, test, type App } from './app.ts';
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
      test(`${file} on ${paper}, ${system}: one tagged page that holds the whole card`, onLaptop('the paper is the same for both'), async ({ app, page }) => {
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

/** Opens the demo after a change of its text. */
async function openChanged(app: App, page: Page, change: (doc: any) => void): Promise<void> {
  await app.open();
  const doc = JSON.parse(await app.saveFile());
  change(doc);
  const path = test.info().outputPath('changed.json');
  await writeFile(path, JSON.stringify(doc));
  await app.openFile(path);
  await page.goto('#headland/card');
  await expect(page.locator('.cab-card .card-nozzle').first()).toBeVisible();
}
const setting = { speedKmH: 6, pressureBar: 8, ptoRpm: 540, gear: 'high' };
/** A run of 100 m in a minute each way; litres of four minutes on the spot. */
const round = (litres: number, of = setting) => ({
  at: '2031-06-19T10:00:00.000Z',
  setting: of,
  displayKmH: 6.3,
  runs: [{ distanceM: 100, seconds: 60, direction: 'out' }, { distanceM: 100, seconds: 60, direction: 'back' }],
  refill: { kind: 'standing', seconds: 240, litres }
});
// 600 · Q / (6 km/h · 3.8 m) = 400 L/ha wanted: 15.2 L/min, 60.8 L in four minutes.
const PROOFS = {
  'the wanted water was measured: proven': [[round(60.8)], /^Proven on the headland on 2031-06-19\s*measured 400.L\/ha, wanted 400.L\/ha/],
  'less was measured: not as wanted': [[round(50)], /^Measured on 2031-06-19, and not what is wanted.*measured 329.L\/ha, wanted 400.L\/ha/s],
  'the litres are right and one nozzle is clogged': [
    [{ ...round(60.8), refill: undefined, catches: ['L', 'R'].flatMap((side) => [1, 2, 3, 4, 5, 6, 7, 8].map((n) => ({ position: `${side}${n}`, litres: side === 'L' && n === 4 ? 0.5 : n < 3 || n === 8 ? 0.76 : 1.14, seconds: 60 }))) }],
    /^Not proven: the litres are right, the nozzles are not/
  ],
  'the speed alone was measured': [[{ ...round(60.8), refill: undefined }], /^Not proven: the headland check lacks speed or output/],
  'another pressure was measured': [[round(60.8, { ...setting, pressureBar: 12, speedKmH: 5, gear: 'low' })], /^Not proven: what was measured belongs to another setting/],
  'nothing was measured': [[], /^Not proven: no headland check/]
} as const;
for (const [name, [rounds, said]] of Object.entries(PROOFS))
  test(`${name}: the card says so`, onLaptop('the card is the same for both'), async ({ app, page }) => {
    await openChanged(app, page, (doc) => {
      doc.blocks[0].rungs.at(-1).check = { rounds };
      doc.blocks[0].ownWaterLPerHa = 400;
    });
    await expect(page.locator('.cab-card .proof')).toHaveText(said, { useInnerText: true });
    const display = page.locator('.cab-card').getByText(/tractor display then shows 6\.3.km\/h/);
    await expect(display).toHaveCount(rounds.length > 0 && !name.startsWith('another') ? 1 : 0);
  });

test('loads: every product of the mix in the order of mixing, each load, and the product over all of them is area times dose', async ({ app, page }) => {
  await openChanged(app, page, (doc) => {
    doc.labels.push({ id: 'feed', name: 'Leaf feed', unit: 'L', basis: 'per-hectare', rate: 2.5, formulation: 'SL' });
    doc.labels[0].formulation = 'WG';
    doc.blocks[0].areaHa = 3;
    doc.blocks[0].rungs.at(-1).mix = { partners: [{ label: 'feed' }, { label: doc.labels[0].id }], fills: 'equal' };
    doc.machines[0].tankL = 400;
    delete doc.machines[0].residualL;
  });
  const table = page.locator('.cab-card table');
  await expect(table.locator('tbody th')).toContainText(['mix', 'Protective fungicide (invented)', 'Leaf feed']);
  const heads = await table.locator('thead th').allInnerTexts();
  // 3 ha at 361 L/ha are 1083 L: three loads of a 400 L tank.
  const counts = heads.slice(1).map((h) => Number(/each of (\d) loads/.exec(h)?.[1] ?? 1));
  expect(counts.reduce((a, b) => a + b, 0)).toBe(3);
  const sum = async (row: number) => (await table.locator('tbody tr').nth(row).locator('td').allInnerTexts()).reduce((s, t, i) => s + counts[i]! * parseFloat(t.replaceAll(/[\s\u202f\u00a0]/g, '')), 0);
  expect(await sum(0)).toBeCloseTo(1083, -1);
  expect(await sum(1)).toBeCloseTo(3 * 1.5, 2);
  expect(await sum(2)).toBeCloseTo(3 * 2.5, 2);
});

test('the driver of the newest record stands on the card, the tractor’s gear only where the speed is the same', async ({ app, page }) => {
  await openChanged(app, page, (doc) => {
    const fields = { date: '2031-06-19', operator: 'A. Driver', tractorGear: '2L', engineRpm: 1750, setSpeedKmH: 6, ptoRpm: 540 };
    doc.records = [{ id: 'r1', kind: 'calibration', block: doc.blocks[0].id, at: '2031-06-19T10:00:00+02:00', fields }];
  });
  await expect(page.locator('.cab-card .hand .driver')).toContainText('A. Driver');
  await expect(page.locator('.cab-card .write').first()).toContainText('2L');
  await page.goto('#section');
  await app.field('Speed').fill('5');
  await page.goto('#headland/card');
  await expect(page.locator('.cab-card .hand .driver')).toContainText('A. Driver');
  await expect(page.locator('.cab-card .write').first()).toHaveText('tractor gear');
});

test('a card with long names and a great deal to say still fits on its page', onLaptop('the paper is the same for both'), async ({ app, page }) => {
  const long = (s: string) => `${s} with a very long name that somebody typed to tell it from all the others on the farm, the second`.slice(0, 118);
  await openChanged(app, page, (doc) => {
    const rung = doc.blocks[0].rungs.at(-1);
    doc.blocks[0].name = long('The lower bench');
    rung.name = long('Full leaf');
    doc.machines[0].name = long('Arc');
    doc.machines[0].gears[1].name = long('Gear');
    for (let i = 1; i <= 6; i++) doc.labels.push({ ...doc.labels[0], id: `more-${i}`, name: long(`Product ${i}`) });
    rung.mix = { partners: doc.labels.map((l: { id: string }) => ({ label: l.id })) };
  });
  await expect(page.getByRole('heading', { level: 3, name: /^The lower bench with/ })).toBeVisible();
  const texts = await textsOf(page);
  const pdf = await print(page);
  expect(pdf.pages).toBe(1);
  for (const text of texts) expect(pdf.text).toContain(bare(text));
  for (const w of pdf.words) expect(w.base, w.text).toBeLessThan(PAPERS.a4.height - 8);
});

test('printed from a phone it is the same page', onPhone(), async ({ app, page }) => {
  await card(app, page);
  const texts = await textsOf(page);
  const pdf = await print(page);
  expect(pdf.pages).toBe(1);
  expect(pdf.width).toBeCloseTo(210, 0);
  for (const text of texts) expect(pdf.text).toContain(bare(text));
});

test('the button prints', async ({ app, page }) => {
  await page.addInitScript(() => {
    window.print = () => document.documentElement.setAttribute('data-printed', 'yes');
  });
  await card(app, page);
  await app.button('Print the card').click();
  await expect(page.locator('html')).toHaveAttribute('data-printed', 'yes');
});

test('other stations print as they did', onLaptop(), async ({ app, page }) => {
  await app.open();
  const pdf = await print(page);
  for (const part of ['Rowtailor', 'L7·015', 'rowspacing']) expect(pdf.text).toContain(part);
});

import type { Locator, Page } from '@playwright/test';
import { readDocument } from '#job/read.ts';
import { expect, numberIn, onLaptop, onPhone, test } from './app.ts';
import { clean } from './barriers.ts';

const TITLES = { before: 'Before you start', speed: 'Speed', output: 'Output', result: 'Result' } as const;
type Step = keyof typeof TITLES;

/** Opens a step by its address, as one who comes back to it does. */
async function open(page: Page, step: Step): Promise<void> {
  await page.goto(`#headland/${step}`);
  await expect(page.getByRole('heading', { level: 2, name: TITLES[step], exact: true })).toBeVisible();
  await expect(page.getByText('Loading …')).toHaveCount(0);
}
const next = async (page: Page, to: Step) => {
  await page.getByRole('button', { name: new RegExp(`^Next\\s*${TITLES[to]}$`) }).click();
  await expect(page.getByRole('heading', { level: 2, name: TITLES[to], exact: true })).toBeVisible();
};
const timeField = (page: Page) => page.getByLabel('or type a time, s or min:s');
const jug = (page: Page, id: string) => page.getByLabel(`jug of ${id}, mL`, { exact: true });
const strong = (page: Page, id: string) => page.locator(`[data-figure=${id}] strong`);

/** What the demo's sizes give in a minute at 8 bar, mL (0.40 and 0.60 L/min at 3 bar by the square root), as a machine 4 % under its tables gives it. */
const JUGS = [627, 627, 941, 941, 941, 941, 941, 627];

async function runs(page: Page, times: readonly string[]): Promise<void> {
  for (const t of times) {
    await timeField(page).fill(t);
    await page.keyboard.press('Enter');
  }
  await expect(page.locator('ol li')).toHaveCount(times.length);
}
async function jugs(page: Page, values: readonly number[]): Promise<void> {
  await jug(page, 'L1').click();
  for (const v of values) {
    await page.keyboard.type(String(v));
    await page.keyboard.press('Enter');
  }
}

test('a whole check with typed values; a reload in the middle of each step loses nothing', async ({ app, page }) => {
  test.slow();
  await open(page, 'before');
  for (const name of ['Machine is clean', 'No leaks', 'Guards on: shaft, fan, belts']) await app.button(`${name}: fine`).click();
  await app.button('No drips when shut: fault').click();
  await expect(page.getByText('4 of 13')).toBeVisible();
  await expect(page.getByText(/check valve that drips/)).toBeVisible();
  await app.kept();
  await page.reload();
  await expect(page.getByText('4 of 13')).toBeVisible();
  await expect(app.button('No drips when shut: fault')).toHaveAttribute('aria-pressed', 'true');

  await next(page, 'speed');
  await runs(page, ['66.7', '1:06.6']);
  await app.kept();
  await page.reload();
  await expect(page.locator('ol li')).toHaveCount(2);
  await timeField(page).fill('66.5');
  await page.keyboard.press('Enter');
  await timeField(page).fill('66,8');
  await app.button('Add run').click();
  await expect(page.locator('ol li')).toHaveCount(4);
  await app.field('tractor display shows').fill('5.9');
  await expect(page.getByText(/reads 9\.\d\s% high/)).toBeVisible();
  // 400 m in 266.6 s.
  await expect(strong(page, 'speed')).toHaveText('5.40');

  await next(page, 'output');
  await jugs(page, JUGS);
  await app.kept();
  await page.reload();
  await expect(jug(page, 'L8')).toHaveValue('627');
  await expect(page.getByText('8 of 16 nozzles caught.')).toBeVisible();
  await jug(page, 'R1').click();
  for (const v of JUGS) {
    await page.keyboard.type(String(v));
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText('All 16 nozzles caught.')).toBeVisible();
  // Twice 6.586 L in a minute.
  await expect(strong(page, 'output')).toHaveText('13.17');

  await next(page, 'result');
  // 13.17 · 600 / (5.40 · 3.8).
  await expect(strong(page, 'volume')).toHaveText('385');
  await expect(page.locator('.outcome .verdict')).toHaveText('within tolerance');
  await app.kept();
  await page.reload();
  await expect(strong(page, 'volume')).toHaveText('385');
  await expect(page.locator('tbody tr')).toHaveCount(1);
  const saved = readDocument(await app.saveFile());
  expect(saved.ok ? [] : saved.problems).toEqual([]);
});

test('too little: a remedy is taken, the new round proves it, the trail keeps both', async ({ app, page }) => {
  await open(page, 'speed');
  await runs(page, ['60', '60.2', '59.9', '60.1']);
  await open(page, 'output');
  await page.getByRole('radio', { name: 'Refill, on the spot' }).check();
  await app.field('time sprayed').fill('240');
  await app.field('refilled to the mark').fill('53');
  await open(page, 'result');
  // 13.25 · 600 / (6.00 · 3.8) is 349 L/ha where 400 is wanted.
  await expect(strong(page, 'volume')).toHaveText('349');
  await expect(page.locator('.outcome .verdict')).toHaveText('too far off');
  await app.button(/^Use: By speed/).click();
  await expect(page.getByText('Taken into the setting; a new round has begun.')).toBeVisible();
  await page.getByRole('link', { name: 'Go to Speed' }).first().click();
  // Measured over wanted volume, times the speed: 5.2 km/h, 69 s.
  await runs(page, ['68.8', '68.7', '68.9', '68.8']);
  await open(page, 'result');
  await expect(page.locator('tbody tr')).toHaveCount(2);
  await expect(page.locator('tbody tr').last()).toContainText('within tolerance');
  await app.undo.click();
  await expect(page.locator('tbody tr')).toHaveCount(2);
});

test('the stopwatch: a reload, a locked screen and a phone call cost nothing', async ({ app, page }) => {
  await page.clock.install({ time: new Date('2031-06-02T07:00:00Z') });
  await open(page, 'speed');
  const face = page.getByRole('timer');
  const shows = async (text: string | RegExp) => {
    await page.clock.runFor(50);
    await expect(face).toHaveText(text);
  };
  // The clock stands: a page that begins goes on with the next tick.
  const begun = (what: Locator) =>
    expect(async () => {
      await page.clock.runFor(1);
      await expect(what).toBeVisible({ timeout: 3_000 });
    }).toPass();
  await page.clock.pauseAt(new Date('2031-06-02T07:05:00Z'));
  await app.button('Start').click();
  await page.clock.runFor(20_000);
  await shows('00:20.0');
  await page.reload();
  await begun(app.button('Mark end'));
  // The last frame may be a sixtieth of a second old.
  await shows(/00:20\.[01]/);

  // The screen is locked: nothing is drawn, and the time is right when it comes back.
  const visible = (state: 'hidden' | 'visible') =>
    page.evaluate((s) => {
      Object.defineProperty(document, 'visibilityState', { configurable: true, get: () => s });
      document.dispatchEvent(new Event('visibilitychange'));
    }, state);
  const before = await face.innerText();
  await visible('hidden');
  await page.clock.runFor(30_000);
  await expect(face).toHaveText(before);
  await visible('visible');
  await shows(/00:50\.1/);

  // A call takes the page away altogether.
  await page.goto('about:blank');
  await page.clock.runFor(12_050);
  await page.goto('#headland/speed');
  await begun(app.button('Mark end'));
  await app.button('Mark end').click();
  await expect(page.locator('ol li')).toHaveCount(1);
  await expect(page.locator('ol li')).toContainText(/62\.2\ss/);
  await expect(face).toHaveText('00:00.0');

  // The next one goes back; a false start adds nothing.
  await expect(page.getByText('run 2, back')).toBeVisible();
  await app.button('Start').click();
  await page.clock.runFor(5_000);
  await app.button('Start over').click();
  await expect(page.getByText('False start: nothing was added.')).toBeVisible();
  await app.button('Start').click();
  await page.clock.runFor(61_900);
  await app.button('Mark end').click();
  await expect(page.locator('ol li').last()).toContainText(/61\.9\ss/);
  await page.clock.runFor(1_000);
  await app.kept();
  await page.reload();
  await begun(page.locator('ol li').last());
  await expect(page.locator('ol li')).toHaveCount(2);
});

test('the whole check by keyboard alone', onLaptop('a phone has no keyboard'), async ({ app, page }) => {
  test.slow();
  const keys = page.keyboard;
  const reach = async (name: string | RegExp, role: 'button' | 'spinbutton' | 'textbox' | 'radio' | 'link') => {
    const wanted = page.getByRole(role, { name, ...(typeof name === 'string' ? { exact: true } : {}) }).first();
    for (let i = 0; i < 200; i++) {
      if (await wanted.evaluate((e) => e === document.activeElement, undefined, { timeout: 2000 }).catch(() => false)) {
        await expect(wanted).toBeInViewport();
        const ring = await page.evaluate(() => {
          for (let e: Element | null = document.activeElement, up = 0; e && up < 3; e = e.parentElement, up++) {
            const s = getComputedStyle(e);
            if (s.outlineStyle !== 'none' && parseFloat(s.outlineWidth) >= 2) return true;
          }
          return false;
        });
        expect(ring, `${name} shows its focus`).toBe(true);
        return wanted;
      }
      await keys.press('Tab');
    }
    throw new Error(`${name} was not reached by Tab`);
  };
  const turn = async (to: Step) => {
    await reach(new RegExp(`^Next\\s*${TITLES[to]}$`), 'button');
    await keys.press('Enter');
    await expect(page.getByRole('heading', { level: 2, name: TITLES[to], exact: true })).toBeFocused();
  };

  await open(page, 'before');
  await reach('Machine is clean: fine', 'button');
  await keys.press('Space');
  await expect(page.getByText('1 of 13')).toBeVisible();
  await turn('speed');
  await reach('Start', 'button');
  await keys.press('Space');
  await page.waitForTimeout(1300);
  // The same button, still in focus, now marks the end.
  await expect(app.button('Mark end')).toBeFocused();
  await keys.press('Enter');
  await expect(page.locator('ol li')).toHaveCount(1);
  await reach('Delete run 1', 'button');
  await keys.press('Enter');
  await expect(page.locator('ol li')).toHaveCount(0);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await reach('or type a time, s or min:s', 'textbox');
  for (const t of ['66.7', '1:06.6', '66.6', '66.7']) {
    await keys.type(t);
    await keys.press('Enter');
  }
  await expect(strong(page, 'speed')).toHaveText('5.40');
  await turn('output');
  await reach('One jug per nozzle', 'radio');
  await keys.press('ArrowRight');
  await reach('time sprayed', 'spinbutton');
  await keys.type('180');
  await reach('refilled to the mark', 'spinbutton');
  await keys.type('39.5');
  await expect(strong(page, 'output')).toHaveText('13.17');
  await turn('result');
  await expect(strong(page, 'volume')).toHaveText('385');
  await reach('Working of Measured', 'button');
  await keys.press('Enter');
  await expect(page.getByText('V = 600·Q / (v·B)').first()).toBeVisible();
  await reach('Check again: new round', 'button');
  await keys.press('Enter');
  await expect(page.locator('tbody tr')).toHaveCount(2);
});

/** Every step with as much open as can be. */
async function filled(page: Page): Promise<void> {
  await open(page, 'before');
  await page.getByRole('button', { name: 'No leaks: fault' }).click();
  await page.getByRole('button', { name: 'Graduated jug: with me' }).click();
  await open(page, 'speed');
  await runs(page, ['60', '61', '60.2', '54', '60.1', '60.9']);
  await page.getByLabel('tractor display shows').fill('6.6');
  await page.getByRole('button', { name: 'In the alley, not on the road: no' }).click();
  await page.getByRole('button', { name: 'Start', exact: true }).click();
  await open(page, 'output');
  await jugs(page, [500, ...JUGS.slice(1), ...JUGS.slice(0, 7), 800]);
  await page.getByLabel('gauge, spraying').fill('9');
  await page.getByLabel('gauge at far nozzle').fill('7');
  await page.getByLabel('gauge at far nozzle').blur();
}
const STEPS = Object.keys(TITLES) as Step[];

test('no barrier in the first four steps with mistakes typed and workings open, contrast in the sun 7 : 1', onPhone(), async ({ app, page }) => {
  test.slow();
  await open(page, 'before');
  await filled(page);
  for (const step of STEPS) {
    await open(page, step);
    if (step === 'output') {
      await page.getByText('Does flow follow pressure?').click();
      await jug(page, 'R8').fill('x');
    }
    if (step === 'speed') await timeField(page).fill('x'), await page.keyboard.press('Enter');
    for (const working of await page.getByRole('button', { name: /^Working of/ }).all()) await working.click();
    await clean(page, step);
    await app.theme('sun');
    await clean(page, `${step} in the sun`, 'enhanced');
    await app.theme('paper');
  }
});

test('one thumb: every target is 56 px; nothing runs over at 320 px and at 200 % zoom', onPhone(), async ({ page }) => {
  test.slow();
  await open(page, 'before');
  await filled(page);
  for (const width of [390, 320, 195]) {
    await page.setViewportSize({ width, height: 844 });
    for (const step of STEPS) {
      await open(page, step);
      await page.locator('section.headland details').evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
      expect(await page.evaluate(() => document.documentElement.scrollWidth), `${step} at ${width} px`).toBeLessThanOrEqual(width);
      const small = await page.locator('section.headland :is(button, select, summary, fieldset label, .box, .line input, .ways a):visible').evaluateAll((all) =>
        all
          .map((e) => ({ name: e.getAttribute('aria-label') ?? e.textContent?.trim() ?? '', box: e.getBoundingClientRect(), inline: getComputedStyle(e).display === 'inline' }))
          // Words within a sentence may be as high as the sentence (WCAG 2.2, target size).
          .filter(({ box, inline }) => !inline && (box.height < 55.5 || box.width < 55.5))
          .map(({ name, box }) => `${name}: ${Math.round(box.width)}×${Math.round(box.height)}`)
      );
      expect(small, `${step} at ${width} px`).toEqual([]);
    }
  }
});

test('US units on every step: no metric is left', async ({ app, page }) => {
  await open(page, 'before');
  await filled(page);
  await app.units('us');
  for (const step of STEPS) {
    await open(page, step);
    await expect(page.locator('section.headland')).not.toContainText(/\d\s(L|mL|L\/ha|L\/min|km\/h|bar|ha\/h)\b/);
  }
  await open(page, 'speed');
  expect(numberIn(await strong(page, 'speed').innerText())).toBeLessThan(4.5);
});

test('a browser that forbids storage: the stopwatch runs, and says what a reload would cost', async ({ app, page }) => {
  await page.addInitScript(() => {
    const refuse = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    Object.defineProperty(window, 'localStorage', { get: refuse });
    Object.defineProperty(window, 'indexedDB', { get: refuse });
  });
  await open(page, 'speed');
  await app.button('Start').click();
  await expect(page.locator('.watch').getByRole('alert')).toContainText('keeps nothing');
  // Another station and back: the page itself still knows.
  await page.getByRole('link', { name: 'Section', exact: true }).click();
  await expect(app.drawing).toBeVisible();
  await open(page, 'speed');
  await expect(app.button('Mark end')).toBeVisible();
});

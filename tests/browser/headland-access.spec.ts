import type { Page } from '@playwright/test';
import { expect, isPhone, onPhone, test } from './app.ts';
import { cleanInAll, crowded, small, wide } from './barriers.ts';
import { speakLongWords } from './long-words.ts';

const ROOT = 'section.headland';

/** The steps as the station itself names them. */
async function steps(page: Page): Promise<string[]> {
  const select = page.locator(`${ROOT} .jump select`);
  await select.waitFor({ timeout: 60_000 });
  return select.locator('option').evaluateAll((all) => all.map((o) => (o as HTMLOptionElement).value));
}

/** Goes to a step and waits until it is there, with all that can be unfolded unfolded. */
async function show(page: Page, step: string): Promise<void> {
  await page.locator(`${ROOT} .jump select`).selectOption(step);
  await expect(page).toHaveURL(new RegExp(`#headland/${step}$`));
  await expect(page.locator(`${ROOT} > :not(.head, .turn, .quiet)`).first()).toBeVisible();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.locator(`${ROOT} details`).evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
}

const PHONE = onPhone('the headland is a phone’s');

const prefer = (page: Page, theme: string, system = 'metric') => page.addInitScript((kept) => localStorage.setItem('rowtailor-preferences', kept), JSON.stringify({ system, theme }));

test('no barrier in any step in any theme', PHONE, async ({ page }) => {
  test.slow();
  await page.goto('#headland');
  for (const step of await steps(page)) {
    await show(page, step);
    await cleanInAll(page, step);
  }
});

test('whatever can be pressed is 56 px high and wide', PHONE, async ({ page }) => {
  await page.goto('#headland');
  for (const step of await steps(page)) {
    await show(page, step);
    expect.soft(await small(page, ROOT, 56), step).toEqual([]);
  }
});

for (const [name, prepare] of [
  ['a window half as wide, as at a zoom of 200 %', (page: Page) => page.setViewportSize(isPhone(page) ? { width: 195, height: 422 } : { width: 720, height: 470 })],
  ['the narrowest phone', (page: Page) => page.setViewportSize({ width: 320, height: 640 })],
  ['text twice as large', (page: Page) => page.addInitScript(() => addEventListener('DOMContentLoaded', () => (document.documentElement.style.fontSize = '200%')))]
] as const)
  test(`${name}: nothing sticks out sideways, no word is cut or lies on another`, name.startsWith('a window half as wide') ? {} : PHONE, async ({ page }) => {
    test.slow();
    await prepare(page);
    await page.goto('#headland');
    for (const step of await steps(page)) {
      await show(page, step);
      expect.soft(await wide(page), step).toEqual([]);
      expect.soft(await crowded(page, ROOT), step).toEqual([]);
    }
  });

for (const system of ['metric', 'us'] as const)
  test(`in a language with longer words, ${system}: nothing is cut, lies on other words or sticks out`, PHONE, async ({ page }) => {
    test.slow();
    const trouble: string[] = [];
    page.on('pageerror', (e) => trouble.push(e.message));
    await speakLongWords(page);
    await prefer(page, 'paper', system);
    await page.goto('#headland');
    for (const step of await steps(page)) {
      await show(page, step);
      const words = await page.locator(ROOT).innerText();
      // The language is spoken at all: in the step's name, and in what the step itself says.
      expect(words, step).toMatch(/\[[^\]]*[áéíóú]{2}/);
      expect.soft(await wide(page), step).toEqual([]);
      expect.soft(await crowded(page, ROOT), step).toEqual([]);
    }
    expect(trouble).toEqual([]);
  });

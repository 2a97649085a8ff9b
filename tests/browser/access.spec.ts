import { expect, test } from './app.ts';
import { cleanInAll } from './barriers.ts';

test('no barrier in either station in any theme', async ({ app, page }) => {
  test.slow();
  await app.open();
  await cleanInAll(page, 'section');
  // With as much open as can be: a chosen nozzle, options, workings.
  await app.toggle('L8').click();
  // As it is heard: a figure under its name, and what a change came to, once, with units as they are spoken.
  await expect(page.getByRole('group', { name: 'Water', exact: true })).toMatchAriaSnapshot(`
    - group "Water":
      - strong: /\\d+/
      - text: L/ha wanted
      - strong: /400.L\\/ha/
      - button "Working of Water"
  `);
  await expect(page.getByRole('status').filter({ hasText: 'litres per hectare' })).toHaveText(/^Water \d+ litres per hectare, wanted 400 litres per hectare\. Protective fungicide \(invented\) [\d.]+ kilograms per hectare\. 14 of 16 nozzles open, \d+.% aimed in leaf\.$/);
  await app.pick('L7').click();
  for (const name of ['Water', 'Air']) await app.button(`Working of ${name}`).click();
  await page.locator('#working-water .working').first().waitFor();
  await page.locator('.working details').evaluateAll((all) => all.slice(0, 12).forEach((d) => ((d as HTMLDetailsElement).open = true)));
  await app.field('skirt').fill('9');
  // On a phone the drawing stays while the rest scrolls under it: what lies under it, and cannot be touched, would be taken for lying on it.
  await page.evaluate(() => scrollTo(0, 0));
  await cleanInAll(page, 'section, open, with a contradiction');
  await app.undo.click();
  await app.to('Row');
  await page.locator('.panel details').evaluateAll((all) => all.forEach((d) => ((d as HTMLDetailsElement).open = true)));
  await app.button('Tree-row volume').click();
  await app.field('air temperature').fill('999');
  await cleanInAll(page, 'row, open, with a mistake');
});

test('no barrier in the dialogs and the menu in any theme', async ({ app, page }) => {
  await app.open();
  await app.menu();
  await cleanInAll(page, 'menu');
  await app.menu();
  await app.button('Your own row').click();
  await app.field('tree height').fill('99');
  await cleanInAll(page, 'own row');
  await page.keyboard.press('Escape');
  await app.openFile('demo-data/bad.json');
  await page.getByRole('dialog').waitFor();
  await cleanInAll(page, 'problems');
});

test('what can be pressed is large enough for a thumb', async ({ app, page }) => {
  await app.open();
  await app.pick('L4').click();
  for (const station of ['Section', 'Row'] as const) {
    await app.to(station);
    const small = await page.locator('button:visible, select:visible, summary:visible, [role=slider]:visible, nav a:visible').evaluateAll((all) =>
      all
        .map((e) => ({ name: e.getAttribute('aria-label') ?? e.textContent?.trim() ?? '', box: e.getBoundingClientRect(), inline: getComputedStyle(e).display === 'inline' }))
        // WCAG 2.2 target size lets words in a sentence be as high as the sentence.
        .filter(({ box, inline }) => !inline && (box.height < 40 || box.width < 40))
        .map(({ name, box }) => `${name}: ${Math.round(box.width)}×${Math.round(box.height)}`)
    );
    expect(small).toEqual([]);
  }
});

test('nothing moves for those who ask for less motion', async ({ app, page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await app.open();
  const moving = await page.locator('body *').evaluateAll((all) => all.filter((e) => parseFloat(getComputedStyle(e).transitionDuration) > 0 || getComputedStyle(e).animationName !== 'none').length);
  expect(moving).toBe(0);
});

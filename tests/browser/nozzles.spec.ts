import { expect, isPhone, numberIn, test, type App } from './app.ts';

const flow = async (app: App): Promise<number> => numberIn(await app.page.getByText(/L\/min both sides/).innerText());

/** Taps a nozzle where it is drawn. */
async function tap(app: App, nth: number): Promise<void> {
  const at = await app.centre(app.drawing.locator('.nozzle .dot').nth(nth));
  await (isPhone(app.page) ? app.page.touchscreen.tap(at.x, at.y) : app.page.mouse.click(at.x, at.y));
}

test('tapping the top nozzle in the drawing shuts the pair; the options work the loss out', async ({ app, page }) => {
  await app.open();
  const before = { flow: await flow(app), water: await app.value('water') };
  await tap(app, 7);
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
  await expect(app.toggle('L8')).toHaveAttribute('aria-pressed', 'false');
  await expect(app.drawing.locator('.nozzle.shut .bar')).toHaveCount(2);
  await expect(app.drawing.getByText('8 shut')).toBeAttached();
  // Two ISO 01 nozzles at 8 bar: 0.4 L/min at 3 bar each, by the square root of 8/3 (the sizes' own definition).
  expect(before.flow - (await flow(app))).toBeCloseTo(2 * 0.4 * Math.sqrt(8 / 3), 1);
  expect(await app.value('water')).toBeLessThan(before.water);

  const options = page.getByRole('region', { name: `To hold the saved ${before.water} L/ha` });
  await expect(options.getByRole('rowheader')).toHaveText([/^Keep the setting/, /^By speed/, /^By pressure/, /^By nozzle size/]);
  await expect(options.getByText(/gives less than the dose; you have not stated/).first()).toBeVisible();
});

test('“use” by speed holds the litres per hectare; the speed falls as the flow fell', async ({ app, page }) => {
  await app.open();
  const before = { flow: await flow(app), water: await app.value('water') };
  await app.toggle('L8').click();
  const share = (await flow(app)) / before.flow;
  const options = page.getByRole('region', { name: /To hold the saved/ });
  await options.getByRole('button', { name: /^Use: By speed/ }).click();
  expect(await app.value('water')).toBe(before.water);
  expect(numberIn(await app.field('Speed').inputValue())).toBeCloseTo(6 * share, 1);
  await app.undo.click();
  await expect(app.field('Speed')).toHaveValue('6');
  await app.button('Back to saved').click();
  await expect(app.figure('nozzles')).toHaveText('16 of 16');
  expect(await app.value('water')).toBe(before.water);
});

test('“use” by pressure for a small correction: flow goes with the square root of pressure', async ({ app, page }) => {
  await app.open();
  const water = await app.value('water');
  await app.field('Speed').fill('6.3');
  expect(await app.value('water')).toBeLessThan(water);
  const use = page.getByRole('region', { name: /To hold the saved/ }).getByRole('button', { name: /^Use: By pressure/ });
  await use.click();
  // 5 % more flow wants 1.05² the pressure.
  expect(numberIn(await app.field('Pressure').inputValue())).toBeCloseTo(8 * 1.05 ** 2, 1);
  expect(await app.value('water')).toBe(water);
});

test('pressure is refused for a large correction, with its reason', async ({ app, page }) => {
  await app.open();
  await app.toggle('L7').click();
  await app.toggle('L8').click();
  const options = page.getByRole('region', { name: /To hold the saved/ });
  await expect(options.getByText(/A flow change of .* is too large for pressure: use speed or nozzle size\./)).toBeVisible();
  await expect(options.getByRole('button', { name: /^Use: By pressure/ })).toHaveCount(0);
});

test('“use” by nozzle size: the chips carry the new sizes, the rate is near the saved one', async ({ app, page }) => {
  await app.open();
  const water = await app.value('water');
  await app.toggle('L8').click();
  const use = page.getByRole('region', { name: /To hold the saved/ }).getByRole('button', { name: /^Use: By nozzle size/ });
  await use.click();
  await expect(page.locator('.chip .id').filter({ hasText: '02' })).not.toHaveCount(0);
  expect(Math.abs((await app.value('water')) / water - 1)).toBeLessThan(0.03);
});

test('saving the setting makes it the one that later changes are held against', async ({ app, page }) => {
  await app.open();
  await app.toggle('L8').click();
  const now = await app.value('water');
  await app.button('Save setting').click();
  await expect(page.getByText('setting saved')).toBeVisible();
  await expect(page.getByRole('region', { name: /To hold the saved/ })).toHaveCount(0);
  await app.toggle('L7').click();
  await expect(page.getByRole('region', { name: `To hold the saved ${now} L/ha` })).toBeVisible();
});

test('a chip shuts and opens; sides together or one by one', async ({ app, page }) => {
  await app.open();
  await app.toggle('L3').click();
  await expect(app.figure('nozzles')).toHaveText('14 of 16');
  await app.toggle('L3').click();
  await expect(app.figure('nozzles')).toHaveText('16 of 16');
  await page.getByRole('checkbox', { name: 'left and right together' }).uncheck();
  await app.toggle('R3').click();
  await expect(app.figure('nozzles')).toHaveText('15 of 16');
  await expect(app.toggle('L3')).toHaveAttribute('aria-pressed', 'true');
  await expect(app.findings.getByText(/^mind.*Left gives|Left gives/)).toBeVisible();
});

test('the card: a larger size gives more, a turn brings the nozzle into leaf', async ({ app, page }) => {
  await app.open();
  await app.pick('L7').click();
  const before = await app.value('water');
  await page.getByLabel('size', { exact: true }).selectOption('03');
  expect(await app.value('water')).toBeGreaterThan(before);
  await app.undo.click();

  const lost = () => app.page.locator('.card dl div').filter({ hasText: 'over the top' }).locator('dd').innerText();
  const over = numberIn(await lost());
  await app.button(/^Turn −\d+° into leaf/).click();
  expect(numberIn(await lost())).toBeLessThan(over);
  await expect(app.handle('swivel of L7')).toHaveAttribute('aria-valuetext', /^−1[0-5](\.\d)?°$/);
});

test('the swivel handle turns both sides, stays within the nozzle’s range, and follows keys', async ({ app }) => {
  await app.open();
  await app.pick('L4').click();
  const swivel = app.handle('swivel of L4');
  await expect(swivel).toHaveAttribute('aria-valuetext', /^0(\.0)?°$/);
  await app.pull(swivel, 0, -12);
  const turned = Number(await swivel.getAttribute('aria-valuenow'));
  expect(turned).toBeGreaterThan(0);
  expect(numberIn(await app.field('swivel').inputValue())).toBeCloseTo(turned, 1);
  await swivel.focus();
  await swivel.press('End');
  await expect(swivel).toHaveAttribute('aria-valuenow', '15');
  await swivel.press('ArrowUp');
  await expect(swivel).toHaveAttribute('aria-valuenow', '15');
  await swivel.press('ArrowDown');
  await expect(swivel).toHaveAttribute('aria-valuenow', '14.5');
  // Both sides were turned: still alike.
  await app.pick('L4').click();
  await expect(swivel).toHaveCount(0);
});

test('fan and PTO: the air follows the fan law, and the advice with it', async ({ app, page }) => {
  await app.open();
  const air = await app.value('air');
  await app.field('PTO speed').fill('405');
  // Air goes with speed: 405/540 = 3/4.
  expect(await app.value('air')).toBeCloseTo(air * 0.75, -1);
  await page.getByLabel('Fan gear').selectOption('low');
  // 24 000 m³/h at 540.
  expect(await app.value('air')).toBeCloseTo(18_000, -1);
});

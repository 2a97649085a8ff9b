import { expect, numberIn, test, type App } from './app.ts';

const unfold = async (app: App, name: string) => {
  const button = app.button(`Working of ${name}`);
  await button.click();
  await expect(button).toHaveAttribute('aria-expanded', 'true');
  const id = await button.getAttribute('aria-controls');
  return app.page.locator(`#${id}`);
};

test('every figure of the section unfolds: formula, values, source or certainty', async ({ app }) => {
  await app.open();
  for (const name of ['Water', 'Protective fungicide (invented)', 'Open nozzles', 'Speed', 'Pressure', 'Air']) {
    const working = await unfold(app, name);
    // The formula in symbols, and again with the values.
    await expect(working.locator('.working:has(> .formula + .formula)')).not.toHaveCount(0);
    for (const each of await working.locator('.working').all()) await expect(each.locator(':scope > .from')).not.toHaveText('');
  }
});

test('the working of the water is the trade’s formula with the values that stand on screen', async ({ app }) => {
  await app.open();
  const working = await unfold(app, 'Water');
  const text = await working.locator('.working').first().innerText();
  expect(text).toContain('600');
  expect(text).toContain('3.8');
  // Down to the single nozzle, and to the law that its flow rests on.
  await working.locator('summary').filter({ hasText: 'flow' }).first().click();
  await working.locator('summary').filter({ hasText: 'L₁' }).first().click();
  await expect(working.getByText('q = q₁·√(P / P₁) / √(SG)').first()).toBeVisible();
  await expect(working.getByText(/Flow goes with the square root of pressure\. Scaling pressure in proportion to flow is wrong/).first()).toBeVisible();
});

test('every canopy figure of the row unfolds; its interval stands beside it', async ({ app }) => {
  await app.open();
  await app.to('Row');
  const names = await app.page.getByRole('button', { name: /^Working of/ }).evaluateAll((all) => all.map((b) => b.getAttribute('aria-label')!.replace('Working of ', '')));
  expect(names.length).toBeGreaterThanOrEqual(7);
  for (const name of names) await expect((await unfold(app, name)).locator('.working').first()).toBeVisible();
  await expect(app.page.getByText(/TRVc.*95 %/)).toBeVisible();
});

test('a finding shows its source when asked', async ({ app }) => {
  await app.open();
  const first = app.findings.getByRole('listitem').filter({ hasText: 'over the top' }).first();
  await first.getByText('source', { exact: true }).click();
  await expect(first.locator('details')).toContainText(/\d{4}/);
});

test('an assumption changed moves the figure that rests on it, and can be given back', async ({ app }) => {
  await app.open();
  const air = numberIn(await app.page.getByText(/^needed/).innerText());
  await app.to('Row');
  await app.page.getByText(/^Assumptions \(\d+\)$/).click();
  const k = app.field('Air carried along, medium');
  await expect(k).toHaveValue('');
  await expect(k).toHaveAttribute('placeholder', '3');
  await k.fill('4');
  await k.blur();
  await app.to('Section');
  // Air that is carried along four times instead of three is needed three quarters.
  expect(numberIn(await app.page.getByText(/^needed/).innerText()) / air).toBeCloseTo(0.75, 3);
  await app.to('Row');
  await app.page.getByText(/^Assumptions \(\d+\)$/).click();
  await k.fill('');
  await app.to('Section');
  expect(numberIn(await app.page.getByText(/^needed/).innerText())).toBe(air);
});

test('the strategy table: thirteen side by side, each with its working; choosing one moves water', async ({ app, page }) => {
  await app.open();
  await app.to('Row');
  const table = page.getByRole('region', { name: 'What the published strategies say' }).getByRole('table');
  await expect(table.getByRole('rowheader')).toHaveCount(13);
  const row = table.getByRole('row').filter({ has: page.getByRole('button', { name: 'US tree-row volume' }) });
  const litres = numberIn(await row.getByRole('cell').first().innerText());
  // 0.7 gal per 1000 ft³ is 0.0936 L/m³ (the factor that the field beside shows): times 13 895 m³/ha from the ground.
  expect(litres / (13_895 * 0.0936)).toBeCloseTo(1, 2);
  await row.getByRole('button').click();
  await expect(table.locator('.working').first()).toBeVisible();
  await page.getByLabel('water and dose follow').selectOption({ label: 'US tree-row volume' });
  await app.field('concentration wanted').fill('1');
  await app.to('Section');
  // The label's most water acts, and says so, until there is no label.
  expect(await app.value('wanted')).toBe(1000);
  await expect(page.getByText('held at the label’s most water')).toBeVisible();
  await app.to('Row');
  await page.getByLabel('product label').selectOption('');
  await app.to('Section');
  expect(await app.value('wanted')).toBe(litres);
});

test('the day: warmer and drier air raises delta T, strong wind is told', async ({ app, page }) => {
  await app.open();
  await app.to('Row');
  const deltaT = async () => numberIn((await page.locator('summary').filter({ hasText: 'delta T' }).innerText()).replace('delta T', ''));
  const before = await deltaT();
  await app.field('air temperature').fill('30');
  await app.field('relative humidity').fill('30');
  // Wet bulb at 30 °C and 30 % is about 18 °C.
  expect(await deltaT()).toBeGreaterThan(before);
  expect(await deltaT()).toBeGreaterThan(11);
  expect(await deltaT()).toBeLessThan(13);
  await app.field('wind').fill('9');
  await app.to('Section');
  await expect(app.findings.getByText(/^Wind|Wind 9/)).toBeVisible();
  await expect(app.findings.getByText(/Delta T 1\d/)).toBeVisible();
});

test('the label: the dose stays as printed until the user states that it may follow the canopy, and never exceeds the maximum', async ({ app, page }) => {
  await app.open();
  expect(await app.value('product')).toBe(1.5);
  // A small canopy alone changes nothing of the dose.
  await app.field('canopy width').fill('0.8');
  expect(await app.value('product')).toBe(1.5);
  await app.to('Row');
  await page.getByLabel('the label lets the dose').selectOption('downward');
  await app.to('Section');
  // 6 000 of the reference 10 000 m³/ha.
  expect(await app.value('product')).toBeCloseTo(1.5 * 0.6, 2);
  await app.field('canopy width').fill('3');
  expect(await app.value('product')).toBe(1.5);
});

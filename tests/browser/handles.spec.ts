import { expect, numberIn, onLaptop, test, type App } from './app.ts';

const spoken = async (app: App, name: string): Promise<number> => numberIn((await app.handle(name).getAttribute('aria-valuetext'))!);
const drawn = (app: App) => app.drawing.locator('.crown-line').first().getAttribute('d');

for (const { name, dx, dy, figure } of [
  { name: 'canopy top', dx: 0, dy: 40, figure: 'wanted' },
  { name: 'skirt', dx: 0, dy: -30, figure: 'wanted' },
  { name: 'canopy width', dx: -24, dy: 0, figure: 'wanted' },
  { name: 'row spacing', dx: -30, dy: 0, figure: 'water' }
])
  test(`drag: ${name}; drawing and figures follow, one drag is one step back`, async ({ app }) => {
    await app.open();
    const before = { value: await spoken(app, name), figure: await app.value(figure), path: await drawn(app), frame: await app.drawing.innerHTML() };
    await app.pull(app.handle(name), dx, dy);

    const after = await spoken(app, name);
    expect(Math.sign(after - before.value)).toBe(dx === 0 ? -Math.sign(dy) : Math.sign(dx));
    expect(numberIn(await app.field(name).inputValue())).toBeCloseTo(after, 2);
    expect(await app.value(figure)).not.toBe(before.figure);
    expect(await app.drawing.innerHTML()).not.toBe(before.frame);

    await app.undo.click();
    expect(await spoken(app, name)).toBe(before.value);
    expect(await app.value(figure)).toBe(before.figure);
    expect(await drawn(app)).toBe(before.path);
    await expect(app.undo).toBeDisabled();
    await app.redo.click();
    expect(await spoken(app, name)).toBe(after);
    await expect(app.redo).toBeDisabled();
  });

test('a handle stays under the pointer while it is dragged', onLaptop('by mouse'), async ({ app, page }) => {
  await app.open();
  const handle = app.handle('canopy top');
  const from = await app.centre(handle);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (const dy of [20, 60, 120, 90, -40]) {
    await page.mouse.move(from.x, from.y + dy, { steps: 4 });
    await app.frame();
    const now = await app.centre(handle);
    // The value moves in steps of 5 cm.
    expect(Math.abs(now.y - from.y - dy)).toBeLessThan(5);
  }
  await page.mouse.up();
});

test('Ctrl+Z, Ctrl+Shift+Z and Ctrl+Y step back and forth', onLaptop('keyboard'), async ({ app, page }) => {
  await app.open();
  await app.drag(app.handle('canopy width'), -20, 0);
  await app.drag(app.handle('canopy top'), 0, 30);
  const [width, top] = [await spoken(app, 'canopy width'), await spoken(app, 'canopy top')];
  await page.keyboard.press('Control+z');
  expect([await spoken(app, 'canopy width'), await spoken(app, 'canopy top')]).toEqual([width, 3.3]);
  await page.keyboard.press('Control+z');
  expect([await spoken(app, 'canopy width'), await spoken(app, 'canopy top')]).toEqual([1.6, 3.3]);
  await page.keyboard.press('Control+Shift+z');
  await page.keyboard.press('Control+y');
  expect([await spoken(app, 'canopy width'), await spoken(app, 'canopy top')]).toEqual([width, top]);
});

test('undo while a field is being typed in shows the value that came back', async ({ app }) => {
  await app.open();
  const field = app.field('canopy top');
  await field.fill('2.5');
  await field.press('Control+z');
  await expect(field).toHaveValue('3.3');
  await field.fill('nonsense');
  await field.press('Control+z');
  await expect(field).toHaveValue('3.3');
});

test('keys on the handles: arrows, pages, ends; the value is spoken with its unit', async ({ app }) => {
  await app.open();
  const top = app.handle('canopy top');
  await expect(top).toHaveAttribute('aria-valuetext', '3.30\u00a0m');
  await top.focus();
  await top.press('ArrowUp');
  await expect(top).toHaveAttribute('aria-valuetext', '3.35\u00a0m');
  await top.press('ArrowDown');
  await top.press('ArrowDown');
  await expect(top).toHaveAttribute('aria-valuetext', '3.25\u00a0m');
  await top.press('PageUp');
  await expect(top).toHaveAttribute('aria-valuetext', '3.75\u00a0m');
  await top.press('End');
  await expect(top).toHaveAttribute('aria-valuenow', '20');
  await top.press('Home');
  await expect(top).toHaveAttribute('aria-valuenow', '0.2');
  // Keys in one stay are one step.
  await app.undo.click();
  await expect(top).toHaveAttribute('aria-valuetext', '3.30\u00a0m');
  await expect(app.undo).toBeDisabled();

  const width = app.handle('canopy width');
  await expect(width).toHaveAttribute('aria-orientation', 'horizontal');
  await width.focus();
  await width.press('ArrowRight');
  await expect(width).toHaveAttribute('aria-valuetext', '1.65\u00a0m');
  await expect(app.field('canopy width')).toHaveValue('1.65');
});

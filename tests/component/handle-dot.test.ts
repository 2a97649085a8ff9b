import { expect, it, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import HandleDot from '../../src/ui/section/HandleDot.svelte';

const handle = async (more: Record<string, unknown> = {}) => {
  const change = vi.fn();
  const begin = vi.fn();
  const rest = vi.fn();
  const screen = await render(HandleDot, {
    handle: { id: 'height', x: 200, y: 300, perX: 0, perY: -0.01, value: 3 },
    label: 'canopy top',
    text: '3.00 m',
    range: { least: 0.2, most: 20 },
    step: 0.05,
    horizontal: false,
    change,
    begin,
    rest,
    ...more
  });
  const dot = screen.getByRole('slider', { name: 'canopy top' });
  const values = () => change.mock.calls.map(([v]) => v as number);
  return { change, begin, rest, dot, values, element: dot.element() as HTMLElement };
};
const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
const pointer = (type: string, clientX: number, clientY: number, more: PointerEventInit = {}) => new PointerEvent(type, { clientX, clientY, pointerId: 1, bubbles: true, button: 0, ...more });
/** A made-up pointer cannot be captured. */
const uncaptured = (e: HTMLElement) => ((e.setPointerCapture = () => undefined), e);

it('speaks as a slider: name, value with unit, ends, direction', async () => {
  const { dot } = await handle();
  await expect.element(dot).toHaveAttribute('aria-valuetext', '3.00 m');
  await expect.element(dot).toHaveAttribute('aria-valuenow', '3');
  await expect.element(dot).toHaveAttribute('aria-valuemin', '0.2');
  await expect.element(dot).toHaveAttribute('aria-valuemax', '20');
  await expect.element(dot).toHaveAttribute('aria-orientation', 'vertical');
});

it('steps by key on the step’s own grid, without binary crumbs', async () => {
  const { element, values } = await handle({ handle: { id: 'height', x: 0, y: 0, perX: 0, perY: 0, value: 3.25 } });
  element.focus();
  await userEvent.keyboard('{ArrowUp}{ArrowDown}{PageUp}{PageDown}{Home}{End}');
  expect(values()).toEqual([3.3, 3.2, 3.75, 2.75, 0.2, 20]);
});

it('never leaves its range', async () => {
  const { element, values } = await handle({ handle: { id: 'height', x: 0, y: 0, perX: 0, perY: 0, value: 20 } });
  element.focus();
  await userEvent.keyboard('{ArrowUp}{PageUp}');
  expect(values()).toEqual([20, 20]);
});

it('one redraw a frame, however many moves; the last one counts', async () => {
  const { element, values, begin, rest, change } = await handle();
  uncaptured(element).dispatchEvent(pointer('pointerdown', 10, 100));
  expect(begin).toHaveBeenCalledTimes(1);
  for (let y = 99; y >= 80; y--) element.dispatchEvent(pointer('pointermove', 10, y));
  expect(values()).toEqual([]);
  await frame();
  // Twenty pixels up at a centimetre each.
  expect(values()).toEqual([3.2]);
  element.dispatchEvent(pointer('pointermove', 10, 60));
  element.dispatchEvent(pointer('pointerup', 10, 60));
  expect(values()).toEqual([3.2, 3.4]);
  expect(rest).toHaveBeenCalledTimes(1);
  element.dispatchEvent(pointer('pointermove', 10, 0));
  await frame();
  expect(change).toHaveBeenCalledTimes(2);
});

it('another button than the first does nothing', async () => {
  const { element, begin } = await handle();
  uncaptured(element).dispatchEvent(pointer('pointerdown', 10, 100, { button: 2 }));
  expect(begin).not.toHaveBeenCalled();
});

it('a turning handle follows the pointer around its pivot, mirrored on the left', async () => {
  for (const [mirrored, x] of [[false, 100], [true, -100]] as const) {
    const { element, values } = await handle({
      handle: { id: 'swivel', x: 500 + x, y: 300, perX: 0, perY: 0, pivot: { x: 500, y: 300, mirrored }, value: 0 },
      range: { least: -90, most: 90 },
      step: 0.5
    });
    const box = element.parentElement!.getBoundingClientRect();
    const at = (px: number, py: number) => [box.left + px, box.top + py] as const;
    uncaptured(element).dispatchEvent(pointer('pointerdown', ...at(500 + x, 300)));
    // As far up as out: 45° above horizontal.
    element.dispatchEvent(pointer('pointermove', ...at(500 + x, 200)));
    await frame();
    expect(values()).toEqual([45]);
    element.remove();
  }
});

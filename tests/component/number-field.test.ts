import { describe, expect, it, vi } from 'vitest';
import { render } from 'vitest-browser-svelte';
import { userEvent } from 'vitest/browser';
import NumberField from '../../src/ui/parts/NumberField.svelte';

const field = async (more: Record<string, unknown> = {}) => {
  const change = vi.fn();
  const screen = await render(NumberField, { id: 'top', label: 'canopy top', value: 3.2, unit: 'm', system: 'metric', range: { least: 0.2, most: 20 }, step: 0.1, change, ...more });
  return { change, screen, box: screen.getByRole('spinbutton') };
};
const last = (change: ReturnType<typeof vi.fn>): unknown => change.mock.calls.at(-1)?.[0];

describe('a field for a number', () => {
  it('shows the value in the unit of the system', async () => {
    const { box } = await field({ value: 3.048, system: 'us' });
    await expect.element(box).toHaveValue('10');
  });
  it('takes a decimal comma', async () => {
    const { box, change } = await field();
    await box.fill('2,75');
    expect(last(change)).toBe(2.75);
  });
  it('turns feet into metres', async () => {
    const { box, change } = await field({ system: 'us', range: { least: 0.2, most: 20 } });
    await box.fill('12');
    expect(last(change)).toBeCloseTo(3.6576, 10);
  });
  it('steps by arrows and stays inside its range', async () => {
    const { box, change } = await field({ value: 19.95 });
    await box.click();
    await userEvent.keyboard('{ArrowUp}');
    expect(last(change)).toBeCloseTo(20, 10);
  });
  it('names field, value and range where a number is outside, and changes nothing', async () => {
    const { box, change, screen } = await field();
    await box.fill('40');
    expect(change).not.toHaveBeenCalled();
    const alert = screen.getByRole('alert');
    await expect.element(alert).toHaveTextContent('canopy top');
    await expect.element(alert).toHaveTextContent('40');
    await expect.element(alert).toHaveTextContent('0.2');
    await expect.element(box).toHaveAttribute('aria-invalid', 'true');
  });
  it('says which default acts where nothing was given', async () => {
    const { screen } = await field({ value: undefined, fallback: 0, optional: true });
    await expect.element(screen.getByText('default')).toBeVisible();
  });
});

describe('leaving and stepping', () => {
  it('Escape puts back the value that stood when the field was entered', async () => {
    const { box, change, screen } = await field();
    await box.fill('2');
    await screen.rerender({ value: 2 });
    await userEvent.keyboard('{Escape}');
    expect(last(change)).toBe(3.2);
  });
  it('Escape drops what is no number, without an edit', async () => {
    const { box, change } = await field();
    await box.fill('abc');
    await userEvent.keyboard('{Escape}');
    await expect.element(box).toHaveValue('3.2');
    expect(change).not.toHaveBeenCalled();
  });
  it('left while refused, puts back what stood there, not what was accepted on the way, and still says why', async () => {
    const { box, change, screen } = await field();
    await box.click();
    await userEvent.keyboard('9');
    expect(last(change)).toBe(9);
    await screen.rerender({ value: 9 });
    await userEvent.keyboard('9{Tab}');
    expect(last(change)).toBe(3.2);
    await screen.rerender({ value: 3.2 });
    await expect.element(box).toHaveValue('3.2');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('canopy top: 99 is outside');
    await screen.rerender({ value: 3 });
    await expect.element(screen.getByRole('alert')).not.toBeInTheDocument();
    // It was mended: it is not told again when the value comes back, as by a drag or an undo.
    await screen.rerender({ value: 3.2 });
    await expect.element(box).toHaveValue('3.2');
    await expect.element(screen.getByRole('alert')).not.toBeInTheDocument();
  });
  it('an arrow lands on the next value of the grid, not one further', async () => {
    const { box, change } = await field({ value: 3.17 });
    await box.click();
    await userEvent.keyboard('{ArrowUp}');
    expect(last(change)).toBe(3.2);
    await userEvent.keyboard('{ArrowDown}');
    expect(last(change)).toBe(3.1);
  });
  it('a whole number takes no decimals', async () => {
    const { box, change, screen } = await field({ label: 'trees', value: 20, unit: '1', range: { least: 2, most: 100, whole: true }, step: 1 });
    await box.fill('20.5');
    await expect.element(screen.getByRole('alert')).toHaveTextContent('trees: 20.5 is not a whole number.');
    expect(change).not.toHaveBeenCalled();
    await box.fill('21');
    expect(last(change)).toBe(21);
  });
  it('emptied, an optional field gives its value up; another asks for a number', async () => {
    const optional = await field({ optional: true, fallback: 0 });
    await optional.box.fill('');
    expect(optional.change.mock.calls.at(-1)?.[0]).toBeUndefined();
    await optional.screen.unmount();
    const needed = await field();
    await needed.box.fill('');
    expect(needed.change).not.toHaveBeenCalled();
    await expect.element(needed.screen.getByRole('alert')).toHaveTextContent('canopy top: type a number.');
  });
  it('shows what came back by undo, not what was typed', async () => {
    const { box, screen } = await field();
    await box.fill('2.5');
    await screen.rerender({ value: 2.5 });
    await expect.element(box).toHaveValue('2.5');
    await screen.rerender({ value: 3.2 });
    await expect.element(box).toHaveValue('3.2');
  });
  it('its name is its label alone, whatever else it says', async () => {
    const { box, screen } = await field();
    await box.fill('99');
    await expect.element(screen.getByRole('spinbutton', { name: 'canopy top', exact: true })).toBeVisible();
    await expect.element(box).toHaveAccessibleDescription(/99 is outside/);
  });
});

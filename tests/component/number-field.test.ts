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

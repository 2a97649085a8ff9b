import { describe, expect, test } from 'vitest';
import { pressureFor } from '#core/sprayer/pressure.ts';
import { given, refused, type Figure } from '#core/working/answer.ts';

/** 1 L/min at 10 bar; flow goes with a power of the pressure. */
const towards = (flow: number, exponent: number) => pressureFor(given(flow, 'L/min'), given(10, 'bar', 'stated', { path: 'setting.pressureBar' }), given(1, 'L/min'), (bar) => (bar / 10) ** exponent);

describe('the pressure for a flow', () => {
  test('by the square law at once, from what is set', () => {
    const p = towards(2, 0.5) as Figure;
    expect(p).toMatchObject({ value: 40, unit: 'bar' });
    expect(p.inputs['P1']).toMatchObject({ value: 10, certainty: 'stated', path: 'setting.pressureBar' });
  });
  test('where a table bends the law, by steps: each from the pressure reached, which leads to where pressure is set', () => {
    const p = towards(2, 0.7) as Figure;
    expect(p.value).toBeCloseTo(10 * 2 ** (1 / 0.7), 6);
    expect(p.inputs['P1']).toMatchObject({ unit: 'bar', certainty: 'derived', path: 'setting.pressureBar' });
    expect(p.inputs['Q1']).toMatchObject({ unit: 'L/min', certainty: 'derived' });
  });
  test('that goes to and fro for ever is refused with the flow that it was for', () =>
    // 40 bar give 4 L/min, so 10 again.
    expect(towards(2, 1)).toEqual({ kind: 'refused', code: 'no-pressure', path: 'setting.pressureBar', parameters: { flow: 2 } }));
  test('for a flow, or from one, that is not known is refused by its name', () => {
    const no = refused('no', 'here');
    expect(pressureFor(no, given(10, 'bar'), given(1, 'L/min'), () => 1)).toBe(no);
    expect(pressureFor(given(1, 'L/min'), given(10, 'bar'), no, () => 1)).toBe(no);
  });
});

import { describe, expect, it } from 'vitest';
import type { Result } from '#core/setting/result.ts';
import { airLines, optionSetTitle, optionWords, remarkSentence } from '#words/index.ts';
import { onlyOpen, result, shut } from '../../support/sample.ts';

const seen = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');
const LABEL = { rate: 2, maxPerHa: 2 };

describe('optionWords', () => {
  const r = result({ label: LABEL, saved: {}, setting: { nozzles: shut('L7', 'R7', 'L8', 'R8') } });
  const set = r.options.find((s) => s.against === 'saved')!;
  const said = set.rows.map((row) => optionWords(row, set, 'metric'));

  it('tells what is held', () => {
    expect(seen(optionSetTitle(set, 'metric'))).toBe('To hold the saved 438 L/ha');
    expect(seen(optionSetTitle(r.options[1]!, 'us'))).toBe('To reach the wanted 80.2 gal/ac');
  });
  it('titles each way with its new value', () => {
    // Three quarters of the speed; sixteen ninths of the pressure.
    expect(said.slice(0, 3).map((w) => seen(w.title))).toEqual(['Keep the setting', 'By speed: 4.5 km/h', 'By pressure: 17.8 bar']);
    expect(seen(said[3]!.title)).toMatch(/^By nozzle size, at \d+\.\d bar$/);
  });
  it('tells volume, work rate and what becomes of the product', () => {
    // Twelve of sixteen like nozzles: three quarters of the volume and of the product.
    expect(seen(said[0]!.consequence)).toBe('329 L/ha, 2.40 ha/h.');
    expect(seen(said[0]!.product)).toContain('leaves 1.50 kg/ha');
    expect(said[0]!.standing).toContain('less than the dose; you have not stated');
    expect(said[1]!.standing).toBe('That mix keeps the dose.');
  });
  it('lists size changes by pairs of sizes', () => expect(said[3]!.sizes.join(' ')).toMatch(/^L\d.* and R\d.*: from 015 to \d+\.$/));
  it('never calls more than the dose fine', () => {
    const more = result({ label: LABEL, block: { ownWaterLPerHa: 300 } });
    const keep = more.options[0]!.rows[0]!;
    expect(keep.label).toBe('above');
    expect(optionWords(keep, more.options[0]!, 'metric').standing).toContain('never above the label');
  });
  it('says nothing of product where there is no label', () => {
    const bare = result();
    expect(optionWords(bare.options[0]!.rows[0]!, bare.options[0]!, 'metric')).toMatchObject({ product: '', standing: '' });
  });
  it('fills every remark', () => {
    for (const [code, parameters, text] of [
      ['below-speed-range', { limit: 3 }, 'Slower than the machine’s 3.0 km/h.'],
      ['above-pressure-range', { limit: 18 }, 'Above the most pressure of machine or nozzles, 18.0 bar.'],
      ['air-per-metre', { change: 0.25 }, 'Air per metre of row changes by +25 %: check the ribbon.'],
      ['coarse-for-pressure', { change: -0.2 }, 'A flow change of −20 % is too large for pressure: use speed or nozzle size.']
    ] as const)
      expect(seen(remarkSentence({ code, parameters }, 'metric'))).toBe(text);
  });
});

describe('airLines', () => {
  const lines = (r: Result) => airLines(r, 'metric').map((l) => ({ ...l, text: seen(l.text) }));

  it('balances air needed and given, and ends at the ribbon', () => {
    // 1000 · 6 km/h · 4 m · 3 m / 3 = 24 000 m³/h.
    const all = lines(result());
    expect(all[0]).toEqual({ kind: 'balance', feasible: true, text: 'Air needed about 24 000 m³/h, given 30 000 m³/h: 25 % too much.' });
    expect(all.at(-1)!.kind).toBe('judge');
    expect(all.at(-1)!.text).toContain('ribbons');
  });
  it('tells which speed would match and what the same flow then gives', () => {
    // 6 km/h · 30 000 / 24 000 = 7.5; 438.2 L/ha · 6 / 7.5 = 351.
    expect(lines(result()).find((l) => l.kind === 'speed')!.text).toBe('Speed 7.5 km/h would match; the same flow then gives 351 L/ha.');
  });
  it('tells another gear, and PTO speeds with what they do to the pump', () => {
    const all = lines(result());
    expect(all.find((l) => l.kind === 'gear')!.text).toContain('Gear Low gives 22 500 m³/h at this PTO speed, 94 % of the need');
    // 540 · 24 000 / 30 000 = 432; in the low gear 576, above the machine's 560.
    const pto = all.filter((l) => l.kind === 'pto');
    expect(pto.map((l) => [l.text.match(/\d+ rpm/)![0], l.feasible])).toEqual([['576 rpm', false], ['432 rpm', true]]);
    expect(pto[1]!.text).toContain('pump');
    expect(pto[0]!.text).toContain('560 rpm');
  });
  it('offers nothing where it matches', () => expect(lines(result({ setting: { gear: 'low' } })).map((l) => l.kind)).toEqual(['balance', 'rule', 'judge']));
  it('takes the user’s own tolerance', () => expect(lines(result({ assumptions: { 'air.tolerance': 0.3 } }))[0]!.text).toContain('matched within 30 %'));
  it('says why there is no figure', () => expect(lines(result({ setting: { gear: 'fifth' } }))[0]!.text).toBe('Air is not worked out: The machine has no fan gear “fifth”.'));
  it('gives no volume where no nozzle is open', () => {
    const speed = lines(result({ setting: { nozzles: onlyOpen() } })).find((l) => l.kind === 'speed')!;
    expect(speed.text).not.toMatch(/–/);
  });
});

import { describe, expect, it } from 'vitest';
import { editBlock, editRung, patchCanopy, patched, patchNozzles, patchSetting } from '#workspace/edits.ts';
import { document } from '../../support/sample.ts';

/** Freezes all the way down: an edit that writes into what it was given throws. */
function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null) Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}
const two = () => {
  const d = document();
  return frozen({ ...d, blocks: [d.blocks[0]!, { ...d.blocks[0]!, id: 'other' }] });
};

describe('edits', () => {
  it('leave the old document as it was and share what did not change', () => {
    const before = two();
    const text = JSON.stringify(before);
    const after = editRung(before, 'block', 'now', (r) => patchCanopy(r, { heightM: 2 }));
    expect(JSON.stringify(before)).toBe(text);
    expect(after.blocks[0]!.rungs[0]!.canopy.heightM).toBe(2);
    expect(after.blocks[1]).toBe(before.blocks[1]);
    expect(after.machines).toBe(before.machines);
  });
  it('touch only the block and the rung that are named', () => {
    const before = two();
    const after = editBlock(before, 'other', (b) => ({ ...b, rowSpacingM: 9 }));
    expect(after.blocks.map((b) => b.rowSpacingM)).toEqual([4, 9]);
    expect(editRung(before, 'block', 'none', (r) => ({ ...r, name: 'x' }))).toEqual(before);
  });
  it('take a field away where the value is undefined, for a file has no undefined', () => {
    const after = patched<{ a: number; b?: number }>(frozen({ a: 1, b: 2 }), { b: undefined });
    expect(after).toStrictEqual({ a: 1 });
    expect('b' in after).toBe(false);
  });
  it('set nozzles by position, and keep what they had besides', () => {
    const rung = frozen(two().blocks[0]!.rungs[0]!);
    const shut = patchNozzles(rung, ['L1', 'R1'], { open: false });
    const turned = patchNozzles(frozen(shut), ['L1'], { swivelDeg: 5 });
    expect(turned.setting.nozzles).toEqual([
      { position: 'L1', open: false, swivelDeg: 5 },
      { position: 'R1', open: false }
    ]);
    expect(patchNozzles(turned, ['L1'], { swivelDeg: undefined }).setting.nozzles![0]).toStrictEqual({ position: 'L1', open: false });
  });
  it('leave the saved setting alone', () => {
    const rung = frozen({ ...two().blocks[0]!.rungs[0]!, saved: { speedKmH: 6, pressureBar: 10, gear: 'high', ptoRpm: 540 } });
    expect(patchSetting(rung, { speedKmH: 4 }).saved).toBe(rung.saved);
  });
});

import { describe, expect, it } from 'vitest';
import type { Document } from '#core/setting/document.ts';
import { packed, unpacked } from '#workspace/keep/steps.ts';
import demo from '../../../../demo-data/lower-bench.json';

const DEMO = demo as unknown as Document;
const place = { block: 'lower-bench', rung: 'full-leaf', ghost: null };
const named = (name: string) => ({ document: { ...DEMO, name }, place });

describe('steps that outlive a reload', () => {
  const steps = { past: ['a', 'b', 'c'].map(named), future: ['z', 'y'].map(named) };
  it('come back as they were, with all that they share being one and the same', () => {
    const back = unpacked(packed(DEMO, steps), DEMO)!;
    expect(back).toEqual(steps);
    for (const { document } of [...back.past, ...back.future]) expect(document.blocks).toBe(DEMO.blocks);
  });
  it('are short, whatever the length of the document', () => {
    expect(packed(DEMO, steps).length).toBeLessThan(1000);
  });
  it('are the hundred nearest', () => {
    const back = unpacked(packed(DEMO, { past: Array.from({ length: 150 }, (_, i) => named(String(i))), future: [] }), DEMO)!;
    expect(back.past.map((s) => s.document.name)).toEqual(Array.from({ length: 100 }, (_, i) => String(i + 50)));
  });
  it('stay within their room: the far ones go first, and those forward before those back', () => {
    const heavy = (i: number) => named(String(i).repeat(50_000));
    const text = packed(DEMO, { past: [1, 2, 3, 4, 5, 6].map(heavy), future: [7, 8, 9, 1, 2, 3].map(heavy) });
    expect(text.length).toBeLessThan(410_000);
    const back = unpacked(text, DEMO)!;
    expect(back.past.map((s) => s.document.name[0])).toEqual(['1', '2', '3', '4', '5', '6']);
    expect(back.future.map((s) => s.document.name[0])).toEqual(['3']);
  });
  it.each(['', '{}', 'null', '{"past":[[[["set",["blocks"],[]]],{}]],"future":[]}', '{"past":[[[["set",["nowhere","x"],1]],{}]],"future":[]}', '{"past":[[[["set",[],7]],{}]],"future":[]}'])('that do not fit are none: %s', (text) => {
    expect(unpacked(text, DEMO)).toBeUndefined();
  });
});

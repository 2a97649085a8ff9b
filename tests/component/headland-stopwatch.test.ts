import { describe, expect, it } from 'vitest';
import { Stopwatch } from '../../src/workspace/stopwatch.svelte.ts';
import type { WatchStore } from '../../src/store/watch.ts';

/** A device whose page may go away and come back, with a clock of our own. */
function device(keeps = true) {
  let text: string | null = null;
  let now = Date.parse('2031-06-02T07:00:00Z');
  const store: WatchStore = { load: () => text, save: (t) => (keeps && (text = t), keeps) };
  return { page: () => new Stopwatch(store, () => now), pass: (s: number) => (now += s * 1000), lose: (t: string | null) => (text = t) };
}
const RUN = { what: 'run', block: 'lower-bench', rung: 'full-leaf' } as const;

describe('a stopwatch', () => {
  it('counts from the tap, whatever the page did meanwhile', () => {
    const d = device();
    d.page().start(RUN);
    d.pass(20.04);
    const again = d.page();
    expect(again.running).toMatchObject(RUN);
    d.pass(42.16);
    expect(again.end()).toBe(62.2);
    expect(d.page().running).toBeNull();
  });
  it('a false start is given up, and can be taken up again from the same instant', () => {
    const d = device();
    const w = d.page();
    w.start(RUN);
    d.pass(10);
    w.drop();
    expect([w.running, w.seconds()]).toEqual([null, 0]);
    d.pass(5);
    w.resume();
    expect(w.seconds()).toBe(15);
    expect(d.page().seconds()).toBe(15);
  });
  it('a new start forgets the one that was given up', () => {
    const d = device();
    const w = d.page();
    w.start(RUN);
    w.drop();
    w.start(RUN);
    expect(w.dropped).toBeNull();
  });
  it('says when the browser keeps nothing', () => {
    const w = device(false).page();
    w.start(RUN);
    expect(w.kept).toBe(false);
  });
  it('a clock that was set back gives no time below zero', () => {
    const d = device();
    const w = d.page();
    w.start(RUN);
    d.pass(-3600);
    expect(w.end()).toBe(0);
  });
  it.each(['', '{', 'null', '3', '{"what":"run"}', '{"what":"nap","block":"a","rung":"b","startedMs":1}', '{"what":"run","block":"a","rung":"b","startedMs":"x"}'])('what is no start is none: %s', (text) => {
    const d = device();
    d.lose(text);
    expect(d.page().running).toBeNull();
  });
});

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '#workspace/autosave.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const setUp = (save: (text: string) => Promise<void> = async () => undefined) => {
  const saved: string[] = [];
  const told: string[] = [];
  const autosave = new Autosave(
    async (text) => {
      await save(text);
      saved.push(text);
    },
    (state) => told.push(state)
  );
  return { autosave, saved, told };
};

describe('autosave', () => {
  it('waits for a pause and writes the latest text once', async () => {
    const { autosave, saved, told } = setUp();
    for (const text of ['a', 'b', 'c']) {
      autosave.later(() => text);
      await vi.advanceTimersByTimeAsync(300);
    }
    expect(saved).toEqual([]);
    await vi.advanceTimersByTimeAsync(100);
    expect(saved).toEqual(['c']);
    expect(told).toEqual(['saved']);
    await vi.advanceTimersByTimeAsync(5000);
    expect(saved).toEqual(['c']);
  });
  it('makes the text only when it is written', async () => {
    const { autosave } = setUp();
    const text = vi.fn(() => 'x');
    for (let i = 0; i < 50; i++) autosave.later(text);
    expect(text).not.toHaveBeenCalled();
    await vi.runAllTimersAsync();
    expect(text).toHaveBeenCalledTimes(1);
  });
  it('writes at once when the page is about to go, and not again later', async () => {
    const { autosave, saved } = setUp();
    autosave.later(() => 'last words');
    await autosave.now();
    expect(saved).toEqual(['last words']);
    await vi.runAllTimersAsync();
    expect(saved).toEqual(['last words']);
  });
  it('writes nothing where nothing changed', async () => {
    const { autosave, saved, told } = setUp();
    await autosave.now();
    expect([saved, told]).toEqual([[], []]);
  });
  it('tells a failure, whether of the disk or of the text, and goes on', async () => {
    let full = true;
    const { autosave, saved, told } = setUp(async () => {
      if (full) throw new Error('disk full');
    });
    autosave.later(() => 'a');
    await vi.runAllTimersAsync();
    autosave.later(() => {
      throw new Error('no text');
    });
    await vi.runAllTimersAsync();
    expect(told).toEqual(['failed', 'failed']);
    full = false;
    autosave.later(() => 'b');
    await vi.runAllTimersAsync();
    expect(told).toEqual(['failed', 'failed', 'saved']);
    expect(saved).toEqual(['b']);
  });
});

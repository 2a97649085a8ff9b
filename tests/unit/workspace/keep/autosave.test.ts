import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '#workspace/keep/autosave.ts';

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** Saves take so long; each notes when it began. */
const setUp = (takesMs = 0) => {
  const began: number[] = [];
  let running = 0;
  let most = 0;
  const start = performance.now();
  const autosave = new Autosave(async () => {
    began.push(performance.now() - start);
    most = Math.max(most, ++running);
    if (takesMs > 0) await new Promise((done) => setTimeout(done, takesMs));
    running--;
  });
  return { autosave, began, most: () => most };
};

describe('autosave', () => {
  it('waits for a pause and saves once', async () => {
    const { autosave, began } = setUp();
    for (let i = 0; i < 3; i++) {
      autosave.later();
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(began).toEqual([]);
    await vi.advanceTimersByTimeAsync(5000);
    expect(began).toHaveLength(1);
  });
  it('saves within a second of the first edit where edits never pause', async () => {
    const { autosave, began } = setUp();
    for (let i = 0; i < 300; i++) {
      autosave.later();
      await vi.advanceTimersByTimeAsync(16);
    }
    expect(began.length).toBeGreaterThanOrEqual(4);
    for (const [i, at] of began.entries()) expect(at - (began[i - 1] ?? 0)).toBeLessThan(1000);
  });
  it('saves at once when the page is about to go, and not again later', async () => {
    const { autosave, began } = setUp();
    autosave.later();
    await autosave.now();
    expect(began).toEqual([0]);
    await vi.runAllTimersAsync();
    expect(began).toHaveLength(1);
  });
  it('saves nothing where nothing changed, or where it was dropped', async () => {
    const { autosave, began } = setUp();
    await autosave.now();
    autosave.later();
    autosave.drop();
    await autosave.now();
    await vi.runAllTimersAsync();
    expect(began).toEqual([]);
  });
  it('runs one save at a time; what is edited meanwhile is saved after it', async () => {
    const { autosave, began, most } = setUp(900);
    autosave.later();
    void autosave.now();
    autosave.later();
    const both = Promise.all([autosave.now(), autosave.now()]);
    await vi.runAllTimersAsync();
    await both;
    expect(began).toEqual([0, 900]);
    expect(most()).toBe(1);
    expect(autosave.pending).toBe(false);
  });
});

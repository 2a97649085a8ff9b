import { describe, expect, it } from 'vitest';
import { watchStore } from '#store/watch.ts';

function memory() {
  const kept = new Map<string, string>();
  return { kept, getItem: (k: string) => kept.get(k) ?? null, setItem: (k: string, v: string) => void kept.set(k, v), removeItem: (k: string) => void kept.delete(k) };
}
const forbidden = () => {
  throw new DOMException('denied', 'SecurityError');
};

describe('where a running stopwatch is kept', () => {
  it('another page on the same storage finds what was kept', () => {
    const storage = memory();
    expect(watchStore(() => storage).save('started')).toBe(true);
    expect(watchStore(() => storage).load()).toBe('started');
    watchStore(() => storage).save(null);
    expect(watchStore(() => storage).load()).toBeNull();
    expect(storage.kept.size).toBe(0);
  });
  it('forbidden storage is told, and the page itself still knows', () => {
    expect(watchStore(forbidden).load()).toBeNull();
    expect(watchStore(forbidden).save('started')).toBe(false);
    expect(watchStore(forbidden).load()).toBe('started');
    watchStore(forbidden).save(null);
    expect(watchStore(forbidden).load()).toBeNull();
  });
  it('full storage keeps the newer start on the page, not the older one', () => {
    const storage = memory();
    watchStore(() => storage).save('old');
    const full = { ...storage, setItem: forbidden };
    expect(watchStore(() => full).save('new')).toBe(false);
    expect(watchStore(() => full).load()).toBe('new');
    watchStore(() => storage).save(null);
  });
});

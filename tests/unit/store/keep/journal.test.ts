import { describe, expect, it } from 'vitest';
import { readLast, writeLast } from '#store/keep/journal.ts';

function memory(): Storage {
  const kept = new Map<string, string>();
  return { get length() { return kept.size; }, key: (i) => [...kept.keys()][i] ?? null, getItem: (k) => kept.get(k) ?? null, setItem: (k, v) => void kept.set(k, v), removeItem: (k) => void kept.delete(k), clear: () => kept.clear() };
}

describe('last words', () => {
  it('of each page are found by the next visit, until they are taken back', () => {
    const area = memory();
    expect(writeLast(area, 'one', { id: 'a', follows: 3, text: '{}' })).toBe(true);
    writeLast(area, 'two', { id: 'b', follows: 0, text: '{"x":1}' });
    writeLast(area, 'one', { id: 'a', follows: 4, text: '{"y":1}' });
    expect(readLast(area)).toEqual([{ page: 'one', id: 'a', follows: 4, text: '{"y":1}' }, { page: 'two', id: 'b', follows: 0, text: '{"x":1}' }]);
    writeLast(area, 'one', null);
    expect(readLast(area).map((w) => w.page)).toEqual(['two']);
  });
  it('that are none are passed over', () => {
    const area = memory();
    for (const [i, text] of ['', 'null', '[]', '{"id":1,"follows":1,"text":""}', '{"id":"a","follows":1.5,"text":""}', '{"id":"a"}'].entries()) area.setItem(`rowtailor-unsaved-${i}`, text);
    area.setItem('somebody-elses', '{"id":"a","follows":1,"text":"x"}');
    expect(readLast(area)).toEqual([]);
  });
  it('a storage that is full, forbidden or not there says so', () => {
    const full = { ...memory(), setItem: () => { throw new DOMException('full', 'QuotaExceededError'); } };
    expect(writeLast(full, 'one', { id: 'a', follows: 1, text: '' })).toBe(false);
    expect(writeLast(null, 'one', { id: 'a', follows: 1, text: '' })).toBe(false);
    expect(readLast(null)).toEqual([]);
  });
});

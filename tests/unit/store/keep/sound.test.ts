import { describe, expect, it } from 'vitest';
import { isSoundSaved, soundOrchard } from '#store/keep/sound.ts';
import { wordIn } from '#store/keep/tabs.ts';

const ROW = { id: 'a', name: 'Bench', revision: 3, changedMs: 1_900_000_000_000, turn: 2, length: 7000 };
const SAVED = { orchard: 'a', block: 'b', rung: 'r', atMs: 1_900_000_000_000, setting: { speedKmH: 5, pressureBar: 8, ptoRpm: 540, gear: 'I' } };

describe('a row of an orchard', () => {
  it('that is sound stays as it is', () => {
    expect(soundOrchard(ROW)).toEqual(ROW);
    expect(soundOrchard({ ...ROW, away: true })).toEqual({ ...ROW, away: true });
  });
  it('with fields that cannot be has them as they must be', () => {
    expect(soundOrchard({ id: 'a', name: 7, revision: NaN, changedMs: 1e300, turn: -1, length: 'x', away: 'yes', more: 1 })).toEqual({ id: 'a', name: '', revision: 1, changedMs: 0, turn: 0, length: 0 });
  });
  it.each([null, undefined, 'a', [], {}, { ...ROW, id: 7 }])('that is none is passed over: %j', (row) => expect(soundOrchard(row)).toBeNull());
});
describe('a saved setting', () => {
  it('has what its list shows', () => expect(isSoundSaved(SAVED)).toBe(true));
  it.each([null, {}, { ...SAVED, atMs: NaN }, { ...SAVED, setting: null }, { ...SAVED, setting: { ...SAVED.setting, speedKmH: 'x' } }, { ...SAVED, setting: { ...SAVED.setting, nozzles: [null] } }])('or is passed over: %j', (row) => expect(isSoundSaved(row)).toBe(false));
});
it('a word from another tab is an id and a revision, or none', () => {
  expect(wordIn({ id: 'a', revision: 0, more: 1 })).toEqual({ id: 'a', revision: 0 });
  for (const none of [null, 'a', {}, { id: 'a' }, { id: 1, revision: 1 }, { id: 'a', revision: NaN }, { id: 'a', revision: -1 }]) expect(wordIn(none)).toBeNull();
});

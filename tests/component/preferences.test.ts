import { describe, expect, it } from 'vitest';
import { UNIT_SYSTEMS } from '../../src/core/quantity/units.ts';
import { THEMES } from '../../src/workspace/look.ts';
import { Preferences } from '../../src/workspace/preferences.svelte.ts';

/** A storage of one text. */
const box = (text: string | null = null) => ({
  text,
  getItem() {
    return this.text;
  },
  setItem(_: string, value: string) {
    this.text = value;
  }
});

describe('preferences', () => {
  it('come back as they were kept', () => {
    for (const theme of THEMES)
      for (const system of UNIT_SYSTEMS) {
        const storage = box();
        const p = new Preferences(storage);
        p.theme = theme;
        p.system = system;
        p.large = system === 'us';
        p.keep();
        const again = new Preferences(storage);
        expect([again.theme, again.system, again.large]).toEqual([theme, system, system === 'us']);
      }
  });
  it.each([['nothing', null], ['no JSON', '{'], ['another kind', '[1]'], ['a null', 'null'], ['unknown values', '{"theme":"neon","system":"cubits"}'], ['wrong types', '{"theme":3,"system":{}}']])('%s in storage gives the defaults', (_, text) => {
    const p = new Preferences(box(text));
    expect([p.theme, p.system]).toEqual(['paper', 'metric']);
  });
  it('one bad value does not cost the other', () => {
    const p = new Preferences(box('{"theme":"sun","system":"cubits","large":1,"tried":["shut","fly"]}'));
    expect([p.theme, p.system, p.large, p.tried]).toEqual(['sun', 'metric', false, ['shut']]);
  });
  it.each([
    [['en-US', 'en'], 'us', 'US'],
    [['en', 'es-PR'], 'us', 'PR'],
    [['en-GB'], 'metric-mph', 'GB'],
    [['de-DE', 'en-US'], 'metric', 'DE'],
    [['zh-Hant-US-x-own'], 'us', 'US'],
    [['en', 'sr-Latn'], 'metric', undefined],
    [['constructor', '-', ''], 'metric', undefined],
    [[], 'metric', undefined]
  ] as const)('units of %j are %s until others are chosen', (languages, system, region) => {
    const storage = box('{"theme":"sun"}');
    const p = new Preferences(storage, languages);
    expect([p.system, p.region, p.guessed]).toEqual([system, region, true]);
    // Another preference is kept: no units were chosen by that.
    p.keep();
    expect(new Preferences(storage, ['en-GB']).system).toBe('metric-mph');
    p.system = 'acres';
    p.keep();
    const again = new Preferences(storage, ['en-US']);
    expect([again.system, again.guessed]).toEqual(['acres', false]);
  });
  it('serve for this visit where storage is missing, forbidden or full', () => {
    const refuse = () => {
      throw new DOMException('denied', 'SecurityError');
    };
    for (const storage of [null, { getItem: refuse, setItem: refuse }, { getItem: () => null, setItem: refuse }]) {
      const p = new Preferences(storage);
      p.theme = 'shed';
      p.keep();
      expect(p.theme).toBe('shed');
    }
  });
});

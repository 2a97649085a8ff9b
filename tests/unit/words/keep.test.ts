import { describe, expect, it } from 'vitest';
import { NAME_LENGTH } from '#job/limits.ts';
import { keepNames } from '#words/en/keep/names.ts';
import { bytesText, spanText } from '#words/en/keep/time.ts';

describe('words of keeping', () => {
  it.each([[60, '1 min'], [3540, '59 min'], [3600, '1 h'], [7500, '2 h 5 min'], [86_400, '1 d'], [93_600, '1 d 2 h'], [864_000, '10 d']])('%d s are %s', (s, text) => expect(spanText(s)).toBe(text));
  it.each([[0, '0 B'], [999, '999 B'], [27_041, '27 kB'], [2_540_000, '2.5 MB'], [10_737_491_968, '10.7 GB']])('%d bytes are %s', (n, text) => expect(bytesText(n)).toBe(text));
  it('a name given by the store is one that a document may have, and breaks no letter', () => {
    for (const name of ['x'.repeat(NAME_LENGTH), '🍎'.repeat(NAME_LENGTH / 2), '']) {
      for (const made of [keepNames.copy(name), keepNames.rescued(keepNames.copy(keepNames.copy(name)))]) {
        expect(made.length).toBeLessThanOrEqual(NAME_LENGTH);
        expect(made.isWellFormed()).toBe(true);
      }
    }
  });
});

import { expect, test } from 'vitest';
import { CHECK } from '#words/en/headland/check.ts';
import { ENGLISH } from '#words/en/english.ts';
import { FITTING } from '#words/en/headland/fitting.ts';
import { MIX } from '#words/en/headland/mix.ts';
import { RECORD } from '#words/en/headland/record.ts';
import { SPRAY_ADVICE } from '#words/en/spray/advice.ts';
import { SPRAY } from '#words/en/spray/spray.ts';

/** Parts are joined one after the other: words that two of them bring would be the last one's for both. */
test('no part takes the words of another, or of the first screen', () => {
  const parts = { ENGLISH, CHECK, FITTING, MIX, RECORD, SPRAY, SPRAY_ADVICE };
  const owners = new Map<string, string[]>();
  for (const [part, catalogues] of Object.entries(parts))
    for (const catalogue of ['findings', 'refusals', 'remarks', 'fields', 'formulas', 'symbols', 'assumptions'] as const)
      for (const key of Object.keys((catalogues as typeof MIX)[catalogue] ?? {})) owners.set(`${catalogue} ${key}`, [...(owners.get(`${catalogue} ${key}`) ?? []), part]);
  expect([...owners].filter(([, by]) => by.length > 1)).toEqual([]);
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { broken, inputsOf } from '../fuzz/door.ts';
import { DOORS } from '../fuzz/doors.ts';

/** The same as `npm run fuzz`, with fewer inputs; how long one takes is looked at there. */
test.each(DOORS)('$name: takes or refuses whatever it is given, with a reason', { timeout: 120_000 }, async (door) => {
  let taken = 0;
  for (const bytes of fc.sample(inputsOf(door), { seed: 20, numRuns: 2000 })) {
    if (await door.read(bytes)) taken++;
    const wrong = broken();
    if (wrong) expect.fail(wrong);
  }
  // Not all of it is rubbish: some inputs come through, and are then used.
  expect(taken).toBeGreaterThan(20);
});

import { expect, it } from 'vitest';
import { rowtailor, rowtailorFromSources } from '../support/command.ts';
import { framePoints } from '../support/frame.ts';
import { laz } from '../support/laz.ts';

const LINES = `block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,tree_height_se_m\n${Array.from({ length: 400 }, (_, i) => `b${i},4,${2 + (i % 20) / 10},0.5,${1 + (i % 9) / 10},0.1\n`).join('')}`;
const CHERRY = ['demo-data/cherry-wall.json', '--rung', 'green-fruit'];
const CASES: [string, string[], (string | Uint8Array)?][] = [
  ['advise', ['demo-data/lower-bench.json', '--units', 'us']],
  ['check', ['demo-data/lower-bench.json']],
  ['fit', ['demo-data/lower-bench.json', '--rung', 'full-leaf']],
  ['loads', ['tests/cli/documents/loads.json', '--block', 'bare']],
  ['season', ['demo-data/citrus-globes.json']],
  ['strategies', CHERRY],
  ['spray', [...CHERRY, '--json']],
  ['laser', ['-', '--json'], laz(framePoints())],
  ['survey', ['tests/cli/documents/trees.csv', '--block-trees', '400']],
  ['sql', ['--dialect', 'duckdb']],
  // Over several threads, of which each starts from its sources as well.
  ['table', ['-', '--intervals', '--draws', '100', '--threads', '3'], LINES],
  ['table', ['-'], 'block,height\na,3\n']
];

/** The other tests run the command as `build-command.ts` made it. */
it.each(CASES)('%s %j: from its sources it is what it is when made before', async (verb, args, input) => {
  const [made, told] = [await rowtailor([verb, ...args], input), await rowtailorFromSources([verb, ...args], input)];
  expect(made).toEqual(told);
  // It is the answer, or a refusal in words, of the verb itself.
  expect(told.code).toBeLessThan(2);
  expect(told.out + told.err).not.toBe('');
});

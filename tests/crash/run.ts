/** `npm run crash -- 200 --seed 7`: kills the browser that often and tells what was lost. It needs the built page (`npm run build`). */
import { parseArgs } from 'node:util';
import { ensureBrowser } from '../tools/browser.mjs';
import { crash } from './crash.ts';

const { values, positionals } = parseArgs({ allowPositionals: true, options: { seed: { type: 'string', default: '1' } } });
const runs = Number(positionals[0] ?? 200);
const seed = Number(values.seed);
if (!(Number.isInteger(runs) && runs > 0 && Number.isInteger(seed))) {
  console.error('npm run crash -- [how often, a whole number above 0] [--seed whole number]');
  process.exit(2);
}
ensureBrowser();
const { kinds, said, lost, seconds } = await crash({ runs, seed, log: console.log });
console.log(Object.entries(kinds).map(([kind, count]) => `${count} in ${kind}`).join(', '));
for (const line of lost) console.log(`LOST: ${line}`);
console.log(`killed ${runs} times in ${Math.round(seconds)} s with seed ${seed}: ${said} saves were said to be kept, ${lost.length} lost`);
// Where nothing was kept, nothing was tried.
process.exit(lost.length === 0 && said > 0 ? 0 : 1);

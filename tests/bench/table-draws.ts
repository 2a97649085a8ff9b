/** `rowtailor table --intervals`: canopies a second as a whole process, for 10 000 lines, by formula alone and with 1000 draws each. */
import { spawn } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { once } from 'node:events';

const LINES = 10_000;
const DRAWS = 1000;
const dir = '.cache/bench/table-draws-data';
mkdirSync(dir, { recursive: true });

/** Invented canopies and errors, no random source: the same file every time. */
const file = `${dir}/${LINES}.csv`;
const lines = ['block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,height_se_m,skirt_se_m,width_se_m,row_spacing_se_m,height_width_correlation,trees'];
for (let i = 0; i < LINES; i++) {
  const u = (i * 0.6180339887498949) % 1;
  const v = (i * 0.7548776662466927) % 1;
  // Every second canopy tells how many trees were measured.
  lines.push(`block-${i},${(2.5 + 4 * u).toFixed(2)},${(1.8 + 3 * v).toFixed(2)},${(0.3 + 0.5 * u).toFixed(2)},${(0.8 + 2 * v).toFixed(2)},${(0.05 + 0.1 * u).toFixed(3)},0.05,${(0.03 + 0.1 * v).toFixed(3)},0.02,${(0.6 * u).toFixed(2)},${i % 2 ? 5 + (i % 40) : ''}`);
}
writeFileSync(file, `${lines.join('\n')}\n`);

async function run(options: readonly string[]): Promise<number> {
  const start = performance.now();
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', 'table', file, '--out', `${file}.out`, '--intervals', ...options], { stdio: ['inherit', 'inherit', 'ignore'] });
  const [code] = (await once(child, 'exit')) as [number];
  if (code !== 0) throw new Error(`table ended with ${code}`);
  return (performance.now() - start) / 1000;
}

for (const [what, options] of [['by formula', []], [`with ${DRAWS} draws`, ['--draws', String(DRAWS)]]] as const) {
  const seconds = await run(options);
  console.log(`table --intervals, ${LINES} lines, ${what}`.padEnd(52) + `${Math.round(LINES / seconds)} lines/s (${seconds.toFixed(2)} s, one run, start included)`);
}
rmSync(dir, { recursive: true, force: true });

/** `rowtailor table`: canopies a second as a whole process, and the most memory it held, for 10 000 and 1 000 000 lines. */
import { spawn } from 'node:child_process';
import { createWriteStream, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { once } from 'node:events';

const dir = '.cache/bench/table-data';
mkdirSync(dir, { recursive: true });

/** Invented canopies, no random source: the same file every time. */
async function write(file: string, lines: number): Promise<void> {
  const out = createWriteStream(file);
  out.write('block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m,density_gal_per_1000ft3,lad_m2_per_m3,filled_fraction\n');
  for (let i = 0; i < lines; i++) {
    const u = (i * 0.6180339887498949) % 1;
    const v = (i * 0.7548776662466927) % 1;
    const line = `block-${i},${(2.5 + 4 * u).toFixed(2)},${(1.8 + 3 * v).toFixed(2)},${(0.3 + 0.5 * u).toFixed(2)},${(0.8 + 2 * v).toFixed(2)},${(0.7 + 0.3 * u).toFixed(2)},${(0.5 + 3 * v).toFixed(2)},${(0.8 + 0.2 * u).toFixed(3)}\n`;
    if (!out.write(line)) await once(out, 'drain');
  }
  out.end();
  await once(out, 'finish');
}

interface Run {
  readonly seconds: number;
  readonly peakMb: number;
}

async function run(file: string): Promise<Run> {
  const start = performance.now();
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/main.ts', 'table', file, '--out', `${file}.out`], { stdio: 'inherit' });
  let peak = NaN;
  const watch = setInterval(() => {
    try {
      const held = Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1024;
      if (!(peak >= held) && held > 0) peak = held;
    } catch {
      // Not Linux, or it has just ended: the last reading stands.
    }
  }, 20);
  const [code] = (await once(child, 'exit')) as [number];
  clearInterval(watch);
  if (code !== 0) throw new Error(`table ended with ${code}`);
  return { seconds: (performance.now() - start) / 1000, peakMb: peak };
}

for (const lines of [10_000, 1_000_000]) {
  const file = `${dir}/${lines}.csv`;
  await write(file, lines);
  const runs: Run[] = [];
  for (let i = 0; i < 3; i++) runs.push(await run(file));
  runs.sort((a, b) => a.seconds - b.seconds);
  const { seconds } = runs[1]!;
  const peak = Math.max(...runs.map((r) => r.peakMb));
  console.log(`table, ${String(lines).padStart(9)} lines`.padEnd(44) + `${Math.round(lines / seconds)} lines/s (${seconds.toFixed(2)} s, median of 3, start included), peak ${peak.toFixed(0)} MB`);
}
rmSync(dir, { recursive: true, force: true });

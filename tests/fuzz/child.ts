import { mkdirSync, openSync, writeFileSync, writeSync } from 'node:fs';
import fc from 'fast-check';
import { inputsOf } from './door.ts';
import { DOORS } from './doors.ts';
import { give } from './one.ts';
import { LOT, type Lot, type LotDone } from './lots.ts';

/** A process that takes lots of inputs and tells what became of each lot; see `run.mjs`. */
const [placePath, foundDir] = process.argv.slice(2) as [string, string];
const place = openSync(placePath, 'w');
const at = Buffer.alloc(4);

async function run({ door: name, seed, lot, from, runs }: Lot): Promise<LotDone> {
  const door = DOORS.find((d) => d.name === name)!;
  const done = { given: 0, taken: 0, slowestMs: 0, wrong: [] as string[] };
  // Each lot is made from a seed of its own, so that any input can be made again.
  const inputs = fc.sample(inputsOf(door), { seed: seed + lot, numRuns: Math.min(LOT, runs - lot * LOT) });
  for (let i = from; i < inputs.length; i++) {
    // Before, not after, and where a hang does not hold it back: a reader that hangs is known by the input that it was given last.
    at.writeInt32LE(i);
    writeSync(place, at, 0, 4, 0);
    const { wrong, taken, ms } = await give(door, inputs[i]!);
    done.given++;
    if (taken) done.taken++;
    done.slowestMs = Math.max(done.slowestMs, ms);
    if (wrong === null) continue;
    mkdirSync(foundDir, { recursive: true });
    const path = `${foundDir}/${name.replaceAll(' ', '-')}-${seed + lot}-${i}`;
    writeFileSync(path, inputs[i]!);
    done.wrong.push(`${wrong.split('\n').slice(0, 4).join(' ')}\n  the input: ${path}`);
  }
  return done;
}

process.on('message', (lot: Lot | null) => {
  if (lot === null) return process.exit(0);
  void run(lot).then((done) => process.send!(done));
});
process.send!('ready');

/**
 * Where the spray goes, for the whole section: drops flown anew along every ray (canopy, air or weather changed), and only weighed anew
 * (a nozzle, a size or a flow changed). Milliseconds by the clock and in processor time; the very first call; memory after 10 000 runs.
 */
import { readFileSync } from 'node:fs';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { balance } from '#core/spray/balance.ts';
import { band } from '#core/spray/band.ts';
import { sprayCase } from '#core/spray/case.ts';
import { picture } from '#core/spray/picture.ts';
import { transport } from '#core/spray/transport.ts';
import type { SprayCase } from '#core/spray/types.ts';
import { percentiles, report } from './report.ts';

function caseOf(file: string, block: string, rung: string, per = 1): SprayCase {
  const document = JSON.parse(readFileSync(`demo-data/${file}.json`, 'utf8')) as Document;
  const found = sprayCase(document, evaluate(document, block, rung) as Result);
  if ('kind' in found) throw new Error(found.code);
  // More nozzles between those that are there: the same machine with a denser boom.
  const nozzles = found.nozzles.flatMap((n) => Array.from({ length: per }, (_, i) => ({ ...n, position: `${n.position}-${i}`, angleDeg: n.angleDeg + i }))).slice(0, 40);
  return { ...found, nozzles };
}

const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

function measure(name: string, runs: number, work: (i: number) => unknown): void {
  for (let i = 0; i < runs; i++) work(i);
  const clock: number[] = [];
  const start = cpu();
  for (let i = 0; i < runs; i++) {
    const t = performance.now();
    work(i);
    clock.push(performance.now() - t);
  }
  report(`spray, ${name}`, percentiles(clock), 'ms');
  console.log(`  processor time, mean`.padEnd(44) + ` ${((cpu() - start) / runs).toFixed(3)} ms`);
}

/** The same case with another top each time, as in a drag. */
const dragged = (c: SprayCase, i: number): SprayCase => ({ ...c, canopy: { ...c.canopy, outline: c.canopy.outline.map((p) => ({ ...p, heightM: p.heightM * (1 + 0.002 * (i % 50)) })) } });

const arc = caseOf('lower-bench', 'lower-bench', 'full-leaf');
const first = performance.now();
balance(arc, transport(arc));
console.log(`spray, the very first call`.padEnd(44) + ` ${(performance.now() - first).toFixed(1)} ms`);

for (const [name, c] of [
  [`arc, ${arc.nozzles.length} nozzles`, arc],
  ['arc, 40 nozzles', caseOf('lower-bench', 'lower-bench', 'full-leaf', 3)],
  ['arc, bare trees', caseOf('lower-bench', 'lower-bench', 'mouse-ear')],
  ['tower', caseOf('cherry-wall', 'east-wall', 'colouring')],
  ['tall globes', caseOf('citrus-globes', 'globe-grove', 'fruit-fill')]
] as const) {
  // As the worker does it: the last flights' lists are used again.
  let t = transport(c);
  measure(`${name}: all anew`, 200, (i) => {
    const d = dragged(c, i);
    t = transport(d, t);
    return balance(d, t);
  });
  t = transport(c);
  measure(`  a nozzle shut`, 1000, (i) => balance({ ...c, nozzles: c.nozzles.filter((_, n) => n !== i % c.nozzles.length) }, t));
  measure(`  another drop size`, 1000, (i) => balance({ ...c, nozzles: c.nozzles.map((n) => ({ ...n, vmdUm: 150 + (i % 7) * 40 })) }, t));
}
{
  const t = transport(arc);
  measure('picture', 100, () => picture(arc, t));
  measure('picture with tracks', 50, () => picture(arc, t, null, true));
  measure('band', 10, () => band(arc));
}
const held = (): number => {
  globalThis.gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 1e6;
};
const before = held();
for (let i = 0, t = transport(arc); i < 10_000; i++) balance(arc, (t = transport(dragged(arc, i), t)));
console.log(`spray, memory after 10 000 runs`.padEnd(44) + ` ${(held() - before).toFixed(1)} MB more than before, ${(process.memoryUsage().rss / 1e6).toFixed(0)} MB resident`);

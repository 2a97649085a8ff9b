/**
 * The spray model in its worker, in Chromium, in the built page: from asking to hearing, milliseconds by the clock, with the way there
 * and back. What is drawn flies the drops once more than the balance alone. The first call holds the start of the worker; once more with
 * a worker that had half a second to warm up, as it has when the pointer comes near the switch.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { sprayCase } from '#core/spray/case.ts';
import { percentiles, report } from './report.ts';

const RUNS = 300;
const WARM = 60;
const WORKERS = 'build/_app/immutable/workers';

if (!existsSync('build/index.html')) {
  console.error('There is no built page. Run `npm run build` first.');
  process.exit(1);
}
const worker = readdirSync(WORKERS).find((f) => readFileSync(`${WORKERS}/${f}`, 'utf8').includes('kind:`balance`'));
if (worker === undefined) throw new Error('the spray’s worker was not found in the build');

// Told at run time, so that the bundle of this benchmark holds neither a browser driver nor a server.
const { chromium } = await import('playwright');
const { preview } = await import('vite');
const { browserPath, LAUNCH_ARGS } = (await import(/* @vite-ignore */ `${process.cwd()}/tests/tools/browser.mjs`)) as typeof import('../tools/browser.mjs');

const document = JSON.parse(readFileSync('demo-data/lower-bench.json', 'utf8')) as Document;
const found = sprayCase(document, evaluate(document, 'lower-bench', document.blocks[0]!.rungs.at(-1)!.id) as Result);
if ('kind' in found) throw new Error(found.code);

const server = await preview({ logLevel: 'error', preview: { port: 4281, host: '127.0.0.1' } });
const executablePath = browserPath();
const browser = await chromium.launch({ args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) });
try {
  const page = await browser.newPage();
  await page.goto(server.resolvedUrls!.local[0]!);
  const times = await page.evaluate(
    async ({ url, c, runs, warm }) => {
      let number = 0;
      const begun = performance.now();
      const w = new Worker(url, { type: 'module' });
      const ask = (kind: string, asked: object) =>
        new Promise<number>((done, failed) => {
          const t = performance.now();
          const mine = ++number;
          w.onmessage = ({ data }) => (data.kind === 'failed' ? failed(new Error(data.why)) : data.number === mine && done(performance.now() - t));
          w.postMessage({ kind, number: mine, asked });
        });
      // Another top each time, as in a drag.
      const dragged = (i: number) => ({ ...c, canopy: { ...c.canopy, outline: c.canopy.outline.map((p) => ({ ...p, heightM: p.heightM * (1 + 0.002 * (i % 50)) })) } });
      // Another flow each time: the drops need not fly anew for the balance.
      const weighed = (i: number) => ({ ...c, nozzles: c.nozzles.map((n, k) => (k === 0 ? { ...n, flowLPerMin: 1 + 0.01 * (i % 50) } : n)) });
      await ask('answer', { case: c, position: null, tracks: false });
      const first = performance.now() - begun;
      const other = new Worker(url, { type: 'module' });
      await new Promise((done) => setTimeout(done, 500));
      const warmed = await new Promise<number>((done) => {
        const t = performance.now();
        other.onmessage = () => done(performance.now() - t);
        other.postMessage({ kind: 'answer', number: 1, asked: { case: c, position: null, tracks: false } });
      });
      other.terminate();
      const series = async (kind: string, make: (i: number) => object, more: object) => {
        const out: number[] = [];
        for (let i = 0; i < warm + runs; i++) {
          const t = await ask(kind, { case: make(i), ...more });
          if (i >= warm) out.push(t);
        }
        return out;
      };
      const answer = { position: null, tracks: false };
      const out = { first: [first], warmed: [warmed], balance: await series('balance', dragged, {}), drag: await series('answer', dragged, answer), nozzle: await series('answer', weighed, answer) };
      w.terminate();
      return out;
    },
    { url: `/_app/immutable/workers/${worker}`, c: found, runs: RUNS, warm: WARM }
  );
  report('spray worker, first call with its start', percentiles(times.first), 'ms');
  report('  first call of a worker that had time to warm up', percentiles(times.warmed), 'ms');
  report('  balance of another canopy', percentiles(times.balance), 'ms');
  report('  balance and picture of another canopy', percentiles(times.drag), 'ms');
  report('  balance and picture, a nozzle changed', percentiles(times.nozzle), 'ms');
} finally {
  await browser.close();
  await server.close();
}

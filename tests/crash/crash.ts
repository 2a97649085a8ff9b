import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { Page } from 'playwright';
import { serveBuild } from '../browser/serve-build.ts';
import { Mortal } from './browser.ts';
import { Chance } from './chance.ts';
import { drive, keptTexts, layOld, laySecond } from './page.ts';

/** What the browser was killed in. */
const KINDS = ['edits', 'edits', 'edits', 'imports', 'imports', 'migration', 'opening'] as const;
export type Kind = (typeof KINDS)[number];

/** What is known of one orchard: the highest number that the page said was kept, and the highest that was typed. */
interface Known {
  said: number;
  typed: number;
}

export interface Outcome {
  readonly runs: number;
  readonly kinds: Readonly<Partial<Record<Kind, number>>>;
  /** Saves that the page said were kept. */
  readonly said: number;
  readonly lost: readonly string[];
  readonly seconds: number;
}

const DEMO = JSON.parse(readFileSync('demo-data/lower-bench.json', 'utf8')) as { name: string; blocks: { ownWaterLPerHa?: number }[] };
/** A document that carries a number: the water that the user wants on its first block, L/ha. */
const numbered = (name: string, n: number): string => JSON.stringify({ ...DEMO, name, blocks: DEMO.blocks.map((b, i) => (i === 0 ? { ...b, ownWaterLPerHa: n } : b)) });
const numberIn = (text: string): number => (JSON.parse(text) as typeof DEMO).blocks[0]?.ownWaterLPerHa ?? 0;

/**
 * Kills the browser at moments drawn from a seed, while it is edited, fed files, lifted from a store of the first or the second version, or
 * opened; starts it again on the same profile and looks whether whatever the page said was kept is there, and opens.
 * The numbers that are typed only rise, so that what is found can be compared with what was said.
 */
export async function crash({ runs, seed, log = () => undefined }: { runs: number; seed: number; log?: (line: string) => void }): Promise<Outcome> {
  const chance = new Chance(seed);
  const server = await serveBuild();
  const profile = mkdtempSync(join(tmpdir(), 'rowtailor-crash-'));
  const began = performance.now();
  const origins = new Map<string, Map<string, Known>>();
  const kinds: Partial<Record<Kind, number>> = {};
  const lost: string[] = [];
  let n = 1000;
  let said = 0;
  let last = server.url;

  /** What the last kill left on an origin. */
  async function verify(page: Page, url: string, run: number): Promise<void> {
    const known = origins.get(url);
    await page.goto(`${url}#row`);
    await page.locator('h1').waitFor({ state: 'attached', timeout: 20_000 });
    const water = page.locator('#own-water');
    await water.waitFor({ timeout: 20_000 });
    if (!known) return;
    const texts = await page.evaluate(keptTexts);
    for (const [name, knew] of known) {
      const { said: least, typed } = knew;
      const found = texts.filter((t) => t.name === name).map((t) => numberIn(t.text));
      const best = Math.max(-1, ...found);
      if (least > 0 && best < least) lost.push(`run ${run}: ${name} was said to be kept at ${least}, found ${best}`);
      // Lost once is told once.
      knew.said = Math.min(least, best);
      if (best > typed) lost.push(`run ${run}: ${name} has ${best}, but no more than ${typed} was typed`);
    }
    // It opens: what is on the screen is one of those that are kept.
    if (texts.length > 0) {
      const there = texts.map((t) => numberIn(t.text));
      const shown = async () => there.includes(Number(await water.inputValue()));
      for (let wait = 0; wait < 100 && !(await shown()); wait++) await pause(100);
      if (!(await shown())) lost.push(`run ${run}: ${await water.inputValue()} on the screen is kept nowhere`);
    }
    if (await page.locator('dialog').count()) lost.push(`run ${run}: ${await page.locator('dialog').first().innerText()}`);
  }

  try {
    for (let run = 1; run <= runs + 1; run++) {
      const mortal = await Mortal.launch(profile);
      try {
        await verify(mortal.page, last, run - 1);
        if (run > runs) break;
        const kind = chance.one(KINDS);
        kinds[kind] = (kinds[kind] ?? 0) + 1;
        last = kind === 'migration' ? server.url.replace('127.0.0.1', `m${run}.localhost`) : server.url;
        const known = origins.get(last) ?? new Map<string, Known>();
        origins.set(last, known);
        const knows = (name: string): Known => known.get(name) ?? known.set(name, { said: 0, typed: 0 }).get(name)!;
        const { page } = mortal;
        // Half of the kills come right upon the word that something is kept: a word given too early is found out.
        const uponWord = kind !== 'migration' && kind !== 'opening' && chance.next() < 0.5 ? 1 + Math.floor(chance.next() * 3) : Infinity;
        const heard = new AbortController();
        let words = 0;
        await page.exposeFunction('rowtailorTyped', (name: string, number: number) => {
          n = Math.max(n, number);
          knows(name).typed = Math.max(knows(name).typed, number);
        });
        await page.exposeFunction('rowtailorSaid', (name: string, number: number) => {
          said++;
          if (++words === uponWord) setImmediate(() => heard.abort());
          knows(name).said = Math.max(knows(name).said, number);
        });
        let killAfterMs: number;
        if (kind === 'migration') {
          const name = `Kept before ${run}`;
          await page.goto(`${last}icon.svg`);
          await page.evaluate(chance.next() < 0.5 ? layOld : laySecond, numbered(name, ++n));
          known.set(name, { said: n, typed: n });
          killAfterMs = chance.between(0, 900);
          void page.goto(`${last}#row`).catch(() => undefined);
        } else if (kind === 'opening') {
          killAfterMs = chance.between(0, 700);
          void page.goto(`${last}#row`).catch(() => undefined).then(() => page.reload()).catch(() => undefined);
        } else {
          await page.goto(`${last}#row`);
          await page.locator('#own-water').waitFor();
          killAfterMs = chance.between(100, 2600);
          const name = kind === 'imports' ? `Orchard ${run}` : null;
          const from = ++n;
          void page.evaluate(drive, { from, seed: Math.floor(chance.next() * 2 ** 31), file: name === null ? null : { name, text: numbered(name, from) } }).catch((error: unknown) => {
            if (!mortal.dead) lost.push(`run ${run}: the page could not be driven: ${String(error)}`);
          });
        }
        await pause(uponWord < Infinity ? 8000 : killAfterMs, undefined, { signal: heard.signal }).catch(() => undefined);
        await mortal.kill();
        log(`${run}/${runs} ${kind}, killed ${heard.signal.aborted ? `upon word ${words}` : `after ${Math.round(killAfterMs)} ms`}; ${said} saves said to be kept so far, ${lost.length} lost`);
      } finally {
        await mortal.kill();
      }
    }
  } finally {
    await server.close();
    rmSync(profile, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
  return { runs, kinds, said, lost, seconds: (performance.now() - began) / 1000 };
}

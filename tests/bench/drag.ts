/**
 * A drag of the tree's top in the built page, on a laptop's screen: script time of one frame, milliseconds.
 *
 * Each move of the mouse is followed by one drawn frame. Chromium's own counter of script time (CDP `Performance.getMetrics`,
 * `ScriptDuration`, which holds everything that JavaScript does: event handlers, the engine, the scene, Svelte's updates) is read
 * before and after, in processor time of the page's own thread, so that what else the machine does is not counted; and once more by
 * the clock, which counts it. The reading itself runs no script of the page; what the loop of the measurement costs is measured by frames in
 * which the pointer rests, and printed beside. Style, layout and paint are read by the same way and are not script.
 */
import { existsSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright';
import { percentiles, report } from './report.ts';

const MOVES = 240;
const WARM = 40;

if (!existsSync('build/index.html')) {
  console.error('There is no built page. Run `npm run build` first.');
  process.exit(1);
}
// Told at run time, so that the bundle of this benchmark holds neither a browser driver nor a server.
const { chromium } = await import('playwright');
const { preview } = await import('vite');
const { browserPath, LAUNCH_ARGS } = (await import(/* @vite-ignore */ `${process.cwd()}/tests/tools/browser.mjs`)) as typeof import('../tools/browser.mjs');

const server = await preview({ logLevel: 'error', preview: { port: 4280, host: '127.0.0.1' } });
const executablePath = browserPath();
const browser = await chromium.launch({ args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) });

interface Cost {
  readonly script: number;
  /** Style and layout. */
  readonly layout: number;
}

const read = async (cdp: CDPSession): Promise<Cost> => {
  const { metrics } = await cdp.send('Performance.getMetrics');
  const of = (name: string) => 1000 * (metrics.find((m) => m.name === name)?.value ?? NaN);
  return { script: of('ScriptDuration'), layout: of('LayoutDuration') + of('RecalcStyleDuration') };
};
/** Lets the page draw: its script for this frame is done once the second callback runs. */
const drawn = (page: Page) => page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

async function measure(name: string, clock: 'threadTicks' | 'timeTicks', more: (page: Page) => Promise<void> = async () => undefined): Promise<void> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 940 } });
  await page.goto(server.resolvedUrls!.local[0]!);
  const handle = page.getByRole('slider', { name: 'canopy top' });
  await handle.waitFor();
  await more(page);
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: clock });
  const box = (await handle.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const drag: Cost[] = [];
  const still: Cost[] = [];
  const before = await handle.getAttribute('aria-valuenow');
  let changed = 0;
  let last = before;
  for (let i = 1; i <= MOVES + WARM; i++) {
    // Up and down by a metre and more, every move a new value: a step of 5 cm is about six pixels.
    const dy = 110 * Math.sin(i / 5);
    const a = await read(cdp);
    await page.mouse.move(x, y + dy);
    await drawn(page);
    const b = await read(cdp);
    await drawn(page);
    const c = await read(cdp);
    if (i <= WARM) continue;
    drag.push({ script: b.script - a.script, layout: b.layout - a.layout });
    still.push({ script: c.script - b.script, layout: c.layout - b.layout });
    const now = await handle.getAttribute('aria-valuenow');
    if (now !== last) changed++;
    last = now;
  }
  await page.mouse.up();
  if (changed < MOVES / 2) throw new Error(`only ${changed} of ${MOVES} moves changed the value: nothing was measured`);
  report(`drag, ${name}: script per frame`, percentiles(drag.map((d) => d.script)), 'ms');
  report('  of it, the measurement itself', percentiles(still.map((d) => d.script)), 'ms');
  report('  style and layout per frame', percentiles(drag.map((d) => d.layout)), 'ms');
  report('  script and layout, the frame after counted in', percentiles(drag.map((d, i) => d.script + d.layout + still[i]!.script + still[i]!.layout)), 'ms');
  await page.close();
}

try {
  await measure('demo block, 16 nozzles', 'threadTicks');
  await measure('options and workings open', 'threadTicks', async (page) => {
    await page.getByRole('button', { name: 'Nozzle L8 open; press to shut' }).click();
    await page.getByRole('button', { name: /^Set nozzle L7,/ }).click();
    for (const name of ['Water', 'Air']) await page.getByRole('button', { name: `Working of ${name}`, exact: true }).click();
    await page.locator('#working-water .working').first().waitFor();
  });
  // The model answers beside the page; what it said is drawn in the frame in which it comes, which may be the one after the move.
  await measure('spray shown', 'threadTicks', async (page) => {
    await page.getByRole('button', { name: 'Spray', exact: true }).click();
    await page.locator('.on-trees-band').getByText(' to ').waitFor();
  });
  await measure('demo block, by the clock', 'timeTicks');
} finally {
  await browser.close();
  await server.close();
}

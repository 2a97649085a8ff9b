/**
 * The Strategies station in the built page, on a workstation's screen: script time of one frame, milliseconds, while a measure is moved and
 * everything on the page follows; and while a table of ten thousand canopies is scrolled. Measured as `drag.ts` measures: Chromium's own
 * counter, in processor time of the page's own thread, read before and after each move that is followed by one drawn frame.
 */
import { existsSync } from 'node:fs';
import type { CDPSession, Page } from 'playwright';
import { percentiles, report } from './report.ts';

const MOVES = 120;
const WARM = 20;
const LINES = 10_000;

if (!existsSync('build/index.html')) {
  console.error('There is no built page. Run `npm run build` first.');
  process.exit(1);
}
// Told at run time, so that the bundle of this benchmark holds neither a browser driver nor a server.
const { chromium } = await import('playwright');
const { preview } = await import('vite');
const { browserPath, LAUNCH_ARGS } = (await import(/* @vite-ignore */ `${process.cwd()}/tests/tools/browser.mjs`)) as typeof import('../tools/browser.mjs');

const server = await preview({ logLevel: 'error', preview: { port: 4281, host: '127.0.0.1' } });
const executablePath = browserPath();
const browser = await chromium.launch({ args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) });

interface Cost {
  readonly script: number;
  readonly layout: number;
}
const read = async (cdp: CDPSession): Promise<Cost> => {
  const { metrics } = await cdp.send('Performance.getMetrics');
  const of = (name: string) => 1000 * (metrics.find((m) => m.name === name)?.value ?? NaN);
  return { script: of('ScriptDuration'), layout: of('LayoutDuration') + of('RecalcStyleDuration') };
};
const drawn = (page: Page) => page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));

async function open(view: string): Promise<Page> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 940 } });
  await page.goto(`${server.resolvedUrls!.local[0]!}#strategies/${view}`);
  return page;
}
/** Each move, then one frame; `seen` tells whether something changed. */
async function measure(name: string, page: Page, move: (i: number) => Promise<void>, seen: () => Promise<string | null>): Promise<void> {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const costs: Cost[] = [];
  let changed = 0;
  let last = await seen();
  for (let i = 1; i <= MOVES + WARM; i++) {
    const a = await read(cdp);
    await move(i);
    await drawn(page);
    const b = await read(cdp);
    const now = await seen();
    if (i <= WARM) continue;
    costs.push({ script: b.script - a.script, layout: b.layout - a.layout });
    if (now !== last) changed++;
    last = now;
  }
  if (changed < MOVES / 2) throw new Error(`only ${changed} of ${MOVES} moves changed anything: nothing was measured`);
  report(`${name}: script per frame`, percentiles(costs.map((c) => c.script)), 'ms');
  report('  style and layout per frame', percentiles(costs.map((c) => c.layout)), 'ms');
  await page.close();
}

try {
  const block = await open('block');
  const slider = block.getByRole('slider', { name: 'canopy width', exact: true });
  await slider.waitFor();
  await block.locator('.plots .curve').first().waitFor();
  const box = (await slider.boundingBox())!;
  await block.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await block.mouse.down();
  await measure('what if, all of one block follows', block, (i) => block.mouse.move(box.x + box.width * (0.5 + 0.4 * Math.sin(i / 5)), box.y + box.height / 2), () => slider.getAttribute('aria-valuetext'));

  const table = await open('table');
  const lines = Array.from({ length: LINES }, (_, i) => `Block ${i + 1},${3 + (i % 20) / 10},${2 + (i % 37) / 10},0.5,${1 + (i % 11) / 10}`);
  const chooser = table.waitForEvent('filechooser');
  await table.getByRole('button', { name: 'Open a table of canopies' }).click();
  await (await chooser).setFiles({ name: 'blocks.csv', mimeType: 'text/csv', buffer: Buffer.from(`block,row_spacing_m,tree_height_m,skirt_height_m,canopy_width_m\n${lines.join('\n')}\n`) });
  const grid = table.getByRole('grid');
  await grid.waitFor();
  await grid.hover();
  await measure(`table of ${LINES}, scrolled`, table, () => table.mouse.wheel(0, 700), () => grid.locator('.lines [role=row]').first().getAttribute('aria-rowindex'));
} finally {
  await browser.close();
  await server.close();
}

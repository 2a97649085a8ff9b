/**
 * The built page on a poor phone: Chromium with a processor six times slower and a slow network, nothing kept from before. From the start of
 * the navigation until the section is drawn and the water stands beside it; then the time from a press to what it shows (Event Timing), for
 * every kind of thing that can be pressed on the way. The page is served packed as static hosts do: all know gzip, most know brotli.
 */
import { existsSync } from 'node:fs';
import type { Page } from 'playwright';

const SLOWER = 6;
const RUNS = 5;
/** What developers call so: of the browser's own presets, and of its audit for phones. Bits a second down and up, and the way there and back. */
const NETWORKS = {
  'slow 3G (400 kbit/s, 400 ms)': { down: 400_000, up: 400_000, latency: 400 },
  'slow 4G (1.6 Mbit/s, 150 ms)': { down: 1_600_000, up: 750_000, latency: 150 }
};

if (!existsSync('build/index.html')) {
  console.error('There is no built page. Run `npm run build` first.');
  process.exit(1);
}
const { chromium } = await import('playwright');
const { browserPath, LAUNCH_ARGS } = (await import(/* @vite-ignore */ `${process.cwd()}/tests/tools/browser.mjs`)) as typeof import('../tools/browser.mjs');

const { servePacked } = (await import(/* @vite-ignore */ `${process.cwd()}/tests/tools/serve-packed.mjs`)) as typeof import('../tools/serve-packed.mjs');

const server = await servePacked();
const { url } = server;
const executablePath = browserPath();
const browser = await chromium.launch({ args: LAUNCH_ARGS, ...(executablePath ? { executablePath } : {}) });
const middle = (all: readonly number[]): number => [...all].sort((a, b) => a - b)[Math.floor(all.length / 2)]!;

/** A page of a context of its own: nothing is kept from the one before. */
async function phone(slower: number, network?: { readonly down: number; readonly up: number; readonly latency: number }): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2, serviceWorkers: 'block' });
  const page = await context.newPage();
  const cdp = await context.newCDPSession(page);
  await cdp.send('Network.enable');
  if (network) await cdp.send('Network.emulateNetworkConditions', { offline: false, downloadThroughput: network.down / 8, uploadThroughput: network.up / 8, latency: network.latency });
  if (slower > 1) await cdp.send('Emulation.setCPUThrottlingRate', { rate: slower });
  return page;
}

/** Told by the page itself, by its own clock, which begins with the navigation: a driver that asks for it would be run by the slowed processor too. */
const TELLS = `(() => {
  const look = () => {
    const water = document.querySelector('[data-figure=water]')?.textContent ?? '';
    if (document.querySelector('.ground-line') && /\\d/.test(water)) usableNow(String(performance.now()));
    else setTimeout(look, 8);
  };
  look();
})()`;

async function cold(name: string, network: (typeof NETWORKS)[keyof typeof NETWORKS], pack: 'gzip' | 'br'): Promise<void> {
  const host = await servePacked({ pack });
  const times: number[] = [];
  let bytes = 0;
  // The first is not counted: files are packed for it.
  for (let i = 0; i <= RUNS; i++) {
    const page = await phone(SLOWER, network);
    const cdp = await page.context().newCDPSession(page);
    for (const domain of ['Runtime.enable', 'Page.enable'] as const) await cdp.send(domain);
    await cdp.send('Runtime.addBinding', { name: 'usableNow' });
    await cdp.send('Page.addScriptToEvaluateOnNewDocument', { source: TELLS });
    host.sentSince();
    const told = new Promise<number>((done) => cdp.on('Runtime.bindingCalled', ({ payload }) => done(Number(payload))));
    await cdp.send('Page.navigate', { url: host.url });
    const time = await told;
    if (i > 0) times.push(time);
    bytes = host.sentSince();
    await page.context().close();
  }
  host.close();
  console.log(`phone, ${name}, processor ÷ ${SLOWER}, packed by ${pack === 'br' ? 'brotli' : pack}, cold: section and water after ${(middle(times) / 1000).toFixed(2)} s (${times.map((t) => (t / 1000).toFixed(2)).join(', ')}), ${(bytes / 1000).toFixed(0)} kB asked for by then`);
}

/** Presses a little of everything, and reads how long each took to show. */
async function pressed(slower: number): Promise<void> {
  const page = await phone(slower);
  await page.addInitScript(() => {
    const all: Record<number, number> = {};
    (globalThis as { pressed?: typeof all }).pressed = all;
    new PerformanceObserver((list) => {
      for (const e of list.getEntries() as (PerformanceEntry & { interactionId: number })[]) if (e.interactionId) all[e.interactionId] = Math.max(all[e.interactionId] ?? 0, e.duration);
    }).observe({ type: 'event', durationThreshold: 16, buffered: true } as PerformanceObserverInit);
  });
  await page.goto(url);
  await page.locator('.ground-line').waitFor({ state: 'attached' });
  await page.waitForTimeout(1500);
  let count = 0;
  const tap = async (what: import('playwright').Locator): Promise<void> => {
    await what.tap();
    count++;
    await page.waitForTimeout(250);
  };
  const keys = async (what: import('playwright').Locator, all: readonly string[]): Promise<void> => {
    await what.focus();
    for (const key of all) {
      await page.keyboard.press(key);
      count++;
      await page.waitForTimeout(200);
    }
  };
  const button = (name: RegExp) => page.getByRole('button', { name }).first();
  for (const rung of await page.getByRole('group', { name: 'Season ladder' }).getByRole('button').all()) await tap(rung);
  for (const slider of ['canopy top', 'skirt', 'canopy width', 'row spacing']) await keys(page.getByRole('slider', { name: slider }).first(), ['ArrowUp', 'ArrowUp', 'ArrowDown', 'PageUp', 'PageDown']);
  for (let i = 0; i < 4; i++) await tap(button(/^Nozzle (L8|L7 and R7|L8 and R8|R8) (open|shut); press to/).or(page.locator('.chip button').first()).first());
  for (const field of ['Speed', 'Pressure']) await keys(page.getByRole('spinbutton', { name: field, exact: true }), ['ArrowUp', 'ArrowDown', '5', 'Tab']);
  for (const name of [/^Working of Water/, /^Working of Air/]) for (let i = 0; i < 2; i++) await tap(button(name));
  await tap(button(/^Undo/));
  for (const station of ['Row', 'Strategies', 'Headland', 'Section']) {
    await tap(page.getByRole('link', { name: station, exact: true }));
    await page.waitForTimeout(1200);
  }
  const seen = Object.values(await page.evaluate(() => (globalThis as unknown as { pressed: Record<number, number> }).pressed));
  // What took less than 16 ms is not told by the browser: it counts as 16.
  const all = [...seen, ...Array.from({ length: Math.max(0, count - seen.length) }, () => 16)].sort((a, b) => a - b);
  const at = (p: number) => all[Math.min(Math.floor(p * all.length), all.length - 1)]!;
  console.log(`phone, processor ÷ ${slower}: ${all.length} presses, from press to what it shows p50 ${at(0.5)} ms, p98 ${at(0.98)} ms, longest ${all.at(-1)} ms`);
  await page.context().close();
}

try {
  for (const [name, network] of Object.entries(NETWORKS)) for (const pack of ['gzip', 'br'] as const) await cold(name, network, pack);
  await pressed(1);
  await pressed(SLOWER);
} finally {
  await browser.close();
  server.close();
}

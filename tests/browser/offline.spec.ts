import type { Page } from '@playwright/test';
import { expect, onLaptop, test } from './app.ts';
import { cleanInAll } from './barriers.ts';
import { serveBuild } from './serve-build.ts';

test.use({ serviceWorkers: 'allow' });

/** The worker is in charge once it has kept the whole page. */
const inCharge = (page: Page) => page.evaluate(() => navigator.serviceWorker.ready.then(() => new Promise<void>((done) => (navigator.serviceWorker.controller ? done() : navigator.serviceWorker.addEventListener('controllerchange', () => done())))));

test('loaded once, it opens with no signal, goes to every step, and keeps what is typed', async ({ app, page, context }) => {
  await app.open();
  await inCharge(page);
  await context.setOffline(true);
  await page.reload();
  await expect(app.drawing).toBeVisible();
  await app.field('Speed').fill('5.4');
  await app.kept();

  await page.getByRole('link', { name: 'Headland', exact: true }).click();
  const steps = page.locator('section.headland .jump select');
  const names = await steps.locator('option').evaluateAll((all) => all.map((o) => (o as HTMLOptionElement).value));
  expect(names.length).toBeGreaterThan(0);
  for (const name of names) {
    await steps.selectOption(name);
    await expect(page).toHaveURL(new RegExp(`#headland/${name}$`));
    await expect(page.locator('section.headland > [role=alert]')).toHaveCount(0);
    await expect(page.locator('section.headland > :not(.head, .turn, .quiet)').first()).toBeVisible();
  }
  await steps.selectOption('speed');
  const shows = page.getByRole('spinbutton', { name: 'tractor display shows', exact: true });
  await shows.fill('5.9');
  await app.kept();
  await page.reload();
  await expect(shows).toHaveValue('5.9');
  // Modules that no step needed yet come from the device as well.
  await app.to('Row');
  await page.reload();
  await expect(page.getByRole('heading', { name: 'What stands in the row' })).toBeVisible();
  await page.getByRole('link', { name: 'Section', exact: true }).click();
  await expect(app.field('Speed')).toHaveValue('5.4');
  await context.setOffline(false);
});

test('what the page does not own is not kept, and not answered for', async ({ page, baseURL }) => {
  await page.goto('');
  await inCharge(page);
  const kept = await page.evaluate(async () => {
    const out: string[] = [];
    for (const name of await caches.keys()) for (const r of await (await caches.open(name)).keys()) out.push(r.url);
    return out;
  });
  expect(kept).toContain(`${new URL(baseURL!).origin}/`);
  expect(kept.every((url) => url.startsWith(new URL(baseURL!).origin))).toBe(true);
  // A file that is not part of the page is asked of the network, not made up.
  expect(await page.evaluate(() => fetch('no-such-file.txt').then((r) => r.status))).toBe(404);
});

test('a new version serves from the next load on; what is open and typed stays, and so do the files it may still need', onLaptop('a worker is a worker'), async ({ browser }) => {
  test.slow();
  const server = await serveBuild();
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  const page = await context.newPage();
  const speed = page.getByRole('spinbutton', { name: 'Speed', exact: true });
  const names = () => page.evaluate(() => caches.keys());
  await page.goto(server.url);
  await inCharge(page);
  const [before] = (await names()) as [string];
  const first = before.replace('rowtailor-page-', '');
  const update = async (version: string) => {
    server.change((worker) => worker.replaceAll(first, version + first));
    await page.evaluate(async () => {
      const changed = new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
      await (await navigator.serviceWorker.ready).update();
      await changed;
    });
  };
  await page.evaluate(() => caches.open('somebody-elses'));
  await speed.fill('5.2');

  // Its name sorts after the first one's, as a later time does.
  await update('y');
  await expect(speed).toHaveValue('5.2');
  expect(await names()).toEqual(expect.arrayContaining([before, 'somebody-elses', expect.stringMatching(/^rowtailor-page-y\d/)]));
  // The open page, now served by the new worker, goes on with no signal, with modules it had not asked for before.
  await context.setOffline(true);
  await page.getByRole('link', { name: 'Row', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'What stands in the row' })).toBeVisible();
  await page.goto(`${server.url}#section`);
  await page.reload();
  await expect(speed).toHaveValue('5.2');
  await context.setOffline(false);

  // It is said, quietly; not while something is timed.
  const notice = page.getByText('A new version of this page is here.');
  await expect(notice).toHaveCount(0);
  await page.evaluate(() => localStorage.setItem('rowtailor-watch', JSON.stringify({ what: 'run', block: 'lower-bench', rung: 'full-leaf', startedMs: Date.now() })));

  // After another one the first is dropped; what is not ours is never touched.
  await update('z');
  await expect.poll(names).toEqual(expect.not.arrayContaining([before]));
  expect(await names()).toEqual(expect.arrayContaining(['somebody-elses', expect.stringMatching(/^rowtailor-page-y\d/), expect.stringMatching(/^rowtailor-page-z\d/)]));
  await page.waitForTimeout(1500);
  await expect(notice).toHaveCount(0);
  await page.evaluate(() => localStorage.removeItem('rowtailor-watch'));
  await expect(notice).toBeVisible();
  await cleanInAll(page, 'a new version');
  await speed.fill('5.3');
  // On a busy machine the worker may have been stopped meanwhile, and starts anew before it answers.
  const loaded = page.waitForEvent('load');
  await page.getByRole('button', { name: 'Reload', exact: true }).click();
  await loaded;
  await expect(notice).toHaveCount(0);
  await expect(speed).toHaveValue('5.3');
  await context.close();
  await server.close();
});

test('from a folder under a path of any host: it works, keeps, and opens with no signal', async ({ browser }) => {
  const server = await serveBuild('/some/path/');
  const context = await browser.newContext({ serviceWorkers: 'allow' });
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('response', (r) => r.status() >= 400 && wrong.push(r.url()));
  page.on('pageerror', (e) => wrong.push(e.message));
  const speed = page.getByRole('spinbutton', { name: 'Speed', exact: true });
  await page.goto(server.url);
  await inCharge(page);
  await speed.fill('5.2');
  await expect(page.getByRole('banner').getByRole('status')).toHaveText('kept on this device');
  await context.setOffline(true);
  await page.reload();
  await expect(speed).toHaveValue('5.2');
  await page.getByRole('link', { name: 'Row', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'What stands in the row' })).toBeVisible();
  await page.getByText('Units, theme, files', { exact: true }).click();
  await page.getByRole('button', { name: 'Share or link' }).click();
  const link = await page.getByRole('dialog').getByLabel('Link').inputValue();
  expect(link.startsWith(`${server.url}#orchard/1/`)).toBe(true);
  await page.goto('about:blank');
  await page.goto(link);
  await expect(page.getByRole('dialog', { name: 'An orchard from a link' })).toBeVisible();
  expect(wrong).toEqual([]);
  await context.close();
  await server.close();
});

test('it is served with the headers of a careful host, and works under them with nothing said against it', async ({ page, request, baseURL }) => {
  const said: string[] = [];
  page.on('console', (m) => ['error', 'warning'].includes(m.type()) && said.push(m.text()));
  const answer = await page.goto('');
  const headers = answer!.headers();
  expect(headers).toMatchObject({ 'referrer-policy': 'no-referrer', 'x-content-type-options': 'nosniff', 'cross-origin-opener-policy': 'same-origin', 'cache-control': 'no-cache' });
  expect(headers['content-security-policy']).toContain("frame-ancestors 'none'");
  expect(headers['permissions-policy']).toContain('camera=()');
  await inCharge(page);
  const lasting = await page.locator('link[rel=stylesheet]').first().getAttribute('href');
  expect((await request.get(new URL(lasting!, baseURL).href)).headers()['cache-control']).toContain('immutable');
  // The browser holds the page to them.
  expect(await page.evaluate(() => navigator.permissions.query({ name: 'geolocation' }).then((p) => p.state))).toBe('denied');
  expect(said).toEqual([]);
});

test('it can be kept on a home screen', async ({ app, page, request, baseURL }) => {
  await app.open();
  const href = await page.locator('link[rel=manifest]').getAttribute('href');
  const answer = await request.get(new URL(href!, baseURL).href);
  expect(answer.headers()['content-type']).toContain('manifest');
  const manifest = (await answer.json()) as { name: string; display: string; icons: { src: string; sizes: string; type: string; purpose?: string }[] };
  expect(manifest).toMatchObject({ name: 'Rowtailor', display: 'standalone', start_url: './' });
  for (const icon of manifest.icons.filter((i) => i.type === 'image/png')) {
    const bytes = await (await request.get(new URL(icon.src, answer.url()).href)).body();
    // Width and height stand at the head of a PNG.
    expect(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`).toBe(icon.sizes);
  }
  expect(manifest.icons.some((i) => i.purpose === 'maskable')).toBe(true);
});

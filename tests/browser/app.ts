import { expect, test as base, type Locator, type Page } from '@playwright/test';

export { expect };

/** What a page did that it must never do. */
interface Watch {
  readonly foreign: string[];
  readonly trouble: string[];
}

/** What the runner itself says where these tests keep the service worker out. */
const BLOCKED = 'Service Worker registration blocked by Playwright';

/** The page itself gave it up: it was left, or its worker ended, before a file had come. */
const GIVEN_UP = 'net::ERR_ABORTED';

const SPACES = /[\s\u00a0\u202f,]/g;

/** The first number of a text as it is shown: groups, a real minus and the unit are left out. */
export function numberIn(text: string): number {
  const found = /-?\d+(\.\d+)?/.exec(text.replaceAll('−', '-').replace(SPACES, ''));
  if (!found) throw new Error(`no number in “${text}”`);
  return Number(found[0]);
}

/** The open app, spoken to as a user would. */
export class App {
  constructor(readonly page: Page) {}

  async open(path = ''): Promise<this> {
    await this.page.goto(path);
    await expect(this.drawing.locator('.ground-line')).toBeAttached();
    await expect(this.drawing).toBeVisible();
    return this;
  }

  get drawing(): Locator {
    return this.page.locator('.view svg[role=img]');
  }
  /** One of the six large figures, by its id: water, product, nozzles, air. */
  figure(id: string): Locator {
    return this.page.locator(`[data-figure="${id}"]`);
  }
  async value(id: string): Promise<number> {
    return numberIn(await this.figure(id).innerText());
  }
  handle(name: string): Locator {
    return this.page.getByRole('slider', { name, exact: true });
  }
  field(name: string | RegExp): Locator {
    return this.page.getByRole('spinbutton', { name, ...(typeof name === 'string' ? { exact: true } : {}) });
  }
  button(name: string | RegExp): Locator {
    return this.page.getByRole('button', { name, ...(typeof name === 'string' ? { exact: true } : {}) });
  }
  get undo(): Locator {
    return this.button('Undo');
  }
  get redo(): Locator {
    return this.button('Redo');
  }
  get findings(): Locator {
    return this.page.getByRole('list', { name: 'Findings' });
  }
  /** The chip of a nozzle; on a phone one chip may stand for both sides. */
  chip(position: string): Locator {
    return this.page.locator('.chip').filter({ has: this.page.getByRole('button', { name: `Set nozzle ${position},` }) });
  }
  toggle(position: string): Locator {
    return this.button(new RegExp(`^Nozzle ${position} (open|shut); press to`));
  }
  pick(position: string): Locator {
    return this.button(new RegExp(`^Set nozzle ${position},`));
  }

  async to(station: 'Row' | 'Section'): Promise<void> {
    await this.page.getByRole('link', { name: station, exact: true }).click();
    // A station is fetched when it is first asked for; its heading tells that it is there.
    await expect(this.page.getByRole('heading', { name: station === 'Row' ? 'What stands in the row' : /^Setting for/ })).toBeVisible();
  }
  async menu(): Promise<void> {
    await this.page.getByText('Units, theme, files', { exact: true }).click();
  }
  async theme(name: 'paper' | 'sun' | 'shed'): Promise<void> {
    await this.menu();
    await this.page.getByLabel('Theme').selectOption(name);
    await this.menu();
  }
  async units(system: 'metric' | 'us'): Promise<void> {
    await this.menu();
    await this.page.getByLabel('Units', { exact: true }).selectOption(system);
    await this.menu();
  }
  async openFile(path: string): Promise<void> {
    await this.menu();
    const chooser = this.page.waitForEvent('filechooser');
    await this.button('Open file').click();
    await (await chooser).setFiles(path);
  }
  async saveFile(): Promise<string> {
    await this.menu();
    const download = this.page.waitForEvent('download');
    await this.button('Save file').click();
    const stream = await (await download).createReadStream();
    const parts: Buffer[] = [];
    for await (const part of stream) parts.push(part as Buffer);
    return Buffer.concat(parts).toString('utf8');
  }
  /** Waits until the last change is kept. */
  async kept(): Promise<void> {
    await expect(this.page.getByRole('banner').getByRole('status')).toHaveText('kept on this device');
  }

  /** Middle of something, in the window. */
  async centre(of: Locator): Promise<{ x: number; y: number }> {
    await of.scrollIntoViewIfNeeded();
    const box = await of.boundingBox();
    if (!box) throw new Error('nothing to be seen there');
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** Drags with the mouse, in so many moves. */
  async drag(what: Locator, dx: number, dy: number, moves = 12): Promise<void> {
    const from = await this.centre(what);
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    for (let i = 1; i <= moves; i++) {
      await this.page.mouse.move(from.x + (dx * i) / moves, from.y + (dy * i) / moves);
      await this.frame();
    }
    await this.page.mouse.up();
  }

  /** Drags with one finger. */
  async swipe(what: Locator, dx: number, dy: number, moves = 12): Promise<void> {
    const from = await this.centre(what);
    const cdp = await this.page.context().newCDPSession(this.page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', x: number, y: number) =>
      cdp.send('Input.dispatchTouchEvent', { type, touchPoints: type === 'touchEnd' ? [] : [{ x, y }] });
    await touch('touchStart', from.x, from.y);
    for (let i = 1; i <= moves; i++) {
      await touch('touchMove', from.x + (dx * i) / moves, from.y + (dy * i) / moves);
      await this.frame();
    }
    await touch('touchEnd', 0, 0);
    await cdp.detach();
  }

  /** Lets the page draw once. */
  frame(): Promise<void> {
    return this.page.evaluate(() => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));
  }

  /** A drag by whatever this device has. */
  async pull(what: Locator, dx: number, dy: number): Promise<void> {
    const touch = await this.page.evaluate(() => navigator.maxTouchPoints > 0);
    await (touch ? this.swipe(what, dx, dy) : this.drag(what, dx, dy));
  }
}

/** Every journey runs under watch: nothing leaves the page's own origin, and the page never complains. */
export const test = base.extend<{ app: App; watch: Watch; firstVisit: boolean }>({
  /** Whether this device was never here: first steps are then marked on the demo block. */
  firstVisit: [false, { option: true }],
  watch: async ({ page, baseURL }, use) => {
    const watch: Watch = { foreign: [], trouble: [] };
    const origin = new URL(baseURL ?? '').origin;
    page.on('request', (r) => {
      const url = r.url();
      if (!url.startsWith(`${origin}/`) && !url.startsWith('data:') && !url.startsWith(`blob:${origin}/`)) watch.foreign.push(url);
    });
    page.on('websocket', (s) => watch.foreign.push(s.url()));
    page.on('console', (m) => {
      if (m.text() === BLOCKED) return;
      if (m.type() === 'error' || m.type() === 'warning') watch.trouble.push(m.text());
    });
    page.on('pageerror', (e) => watch.trouble.push(e.message));
    page.on('requestfailed', (r) => {
      const why = r.failure()?.errorText;
      if (why !== GIVEN_UP) watch.trouble.push(`${r.url()}: ${why}`);
    });
    await page.addInitScript(() => addEventListener('securitypolicyviolation', (e) => console.error(`policy: ${e.violatedDirective} ${e.blockedURI}`)));
    await use(watch);
  },
  app: async ({ page, watch, firstVisit }, use) => {
    if (!firstVisit)
      await page.addInitScript(() => {
        try {
          localStorage['rowtailor-preferences'] ??= JSON.stringify({ tried: ['top', 'shut', 'why'] });
        } catch {
          // A blank page, or a device that forbids storage.
        }
      });
    await use(new App(page));
    expect(watch.foreign, 'requests that left the page').toEqual([]);
    expect(watch.trouble, 'errors of the page').toEqual([]);
  }
});

export const isPhone = (page: Page): boolean => (page.viewportSize()?.width ?? 0) < 640;

/** A journey that runs on one of the two devices alone is not begun on the other (see the projects of `playwright.config.ts`); this says why. */
const only = (device: 'laptop' | 'phone') => (why?: string) => ({ tag: `@${device}`, ...(why ? { annotation: { type: 'only here', description: why } } : {}) });
export const onLaptop = only('laptop');
export const onPhone = only('phone');
/** Sizes of a phone on the phone, others on the laptop. */
export const ofWidth = (width: number) => (width < 640 ? onPhone() : onLaptop());

import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { chromium, type Browser, type Page } from 'playwright';
import { browserPath, LAUNCH_ARGS } from '../tools/browser.mjs';

/** A page behind others counts time in whole seconds: what is tried here is the page that is looked at. */
const AWAKE = ['--disable-background-timer-throttling', '--disable-renderer-backgrounding', '--disable-backgrounding-occluded-windows'];

/** A browser of our own on a profile that stays, so that it can be killed as a flat battery would. */
export class Mortal {
  private constructor(
    private readonly child: ChildProcess,
    private readonly browser: Browser,
    readonly page: Page
  ) {}

  static async launch(profile: string): Promise<Mortal> {
    const child = spawn(browserPath() ?? chromium.executablePath(), [...LAUNCH_ARGS, '--headless=new', '--disable-gpu', ...AWAKE, '--window-size=1440,940', '--accept-lang=en', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'], {
      detached: true,
      stdio: ['ignore', 'ignore', 'pipe']
    });
    const address = await new Promise<string>((done, fail) => {
      let said = '';
      child.stderr!.on('data', (part: Buffer) => {
        said += part.toString('utf8');
        const found = /DevTools listening on (ws:\S+)/.exec(said)?.[1];
        if (found) done(found);
      });
      child.once('exit', () => fail(new Error(`the browser did not start: ${said.slice(-400)}`)));
    });
    const browser = await chromium.connectOverCDP(address);
    const context = browser.contexts()[0]!;
    const page = context.pages()[0] ?? (await context.newPage());
    // The loader of TypeScript wraps functions in a helper that a page does not have.
    await page.addInitScript('globalThis.__name ??= (f) => f');
    await page.bringToFront();
    return new Mortal(child, browser, page);
  }

  get dead(): boolean {
    return this.dying;
  }
  private dying = false;

  /** SIGKILL to the browser and all its processes, which are a group of their own. */
  async kill(): Promise<void> {
    if (this.child.exitCode !== null || this.child.signalCode !== null) return;
    this.dying = true;
    const gone = once(this.child, 'exit');
    process.kill(-this.child.pid!, 'SIGKILL');
    await gone;
    await this.browser.close().catch(() => undefined);
  }
}

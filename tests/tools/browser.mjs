import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright';

/**
 * What Chromium does without. Every window would draw the list under its address bar as two pages of their own, which costs more than loading
 * ours. Only the last such list counts, so it holds what Playwright leaves out as well (`chromiumSwitches` of playwright-core 1.65).
 */
const WITHOUT = [
  ...['WebUIOmniboxPopup', 'WebUIOmniboxAimPopup'],
  ...['AimEnabled', 'AvoidCorsURLLoaderRestartOnRedirect', 'AvoidUnnecessaryBeforeUnloadCheckSync', 'DestroyProfileOnBrowserClose', 'HttpsFirstBalancedModeAutoEnable', 'HttpsUpgrades', 'LensOverlay', 'MediaRouter'],
  ...['NetworkTimeServiceQuerying', 'OptimizationHints', 'PaintHolding', 'PreconnectToSearch', 'TcpPortRandomizationWin', 'ThirdPartyStoragePartitioning', 'msEdgeUpdateLaunchServicesPreferredVersion', 'msForceBrowserSignIn']
];

/** Chromium makes no calls of its own, and runs where there is no user namespace. */
export const LAUNCH_ARGS = ['--no-sandbox', '--disable-background-networking', '--disable-component-update', '--disable-sync', '--no-first-run', '--disable-quic', `--disable-features=${WITHOUT.join(',')}`];

const PLACES = [
  process.env.CHROME_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe'
];

/** A browser that is installed already; undefined where Playwright's own serves. */
export function browserPath() {
  const found = PLACES.find((p) => p && existsSync(p));
  return found ?? undefined;
}

/** Makes sure that there is a browser: an installed one, Playwright's, or, failing both, Playwright's after a download. */
export function ensureBrowser() {
  const found = browserPath();
  if (found) return found;
  if (existsSync(chromium.executablePath())) return chromium.executablePath();
  console.log('No Chromium found; fetching the one that Playwright brings …');
  try {
    execFileSync(process.execPath, ['node_modules/playwright/cli.js', 'install', 'chromium'], { stdio: 'inherit' });
  } catch {
    console.error('No browser could be had. Install Chromium or Chrome, or set CHROME_PATH to one, and run the tests again.');
    process.exit(1);
  }
  return chromium.executablePath();
}

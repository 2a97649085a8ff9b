/**
 * `npm run lighthouse`: the audit of pages that Chromium's developers publish, on the built page as a phone with a slow network sees it. It is
 * fetched when it is run and is no dependency: where there is no network it cannot be run. Its times are those of this machine.
 */
import { spawnSync, spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync } from 'node:fs';
import { browserPath } from './browser.mjs';
import { servePacked } from './serve-packed.mjs';

if (!existsSync('build/index.html') && spawnSync('npx', ['vite', 'build'], { stdio: 'inherit' }).status !== 0) process.exit(1);
mkdirSync('.cache', { recursive: true });
const out = '.cache/lighthouse.json';
const server = await servePacked();
const flags = ['--headless=new', '--no-sandbox', '--disable-background-networking'].join(' ');
const child = spawn('npx', ['--yes', 'lighthouse@12', server.url, '--quiet', '--output=json', `--output-path=${out}`, `--chrome-flags=${flags}`, '--only-categories=performance,accessibility,best-practices'], {
  stdio: 'inherit',
  env: { ...process.env, CHROME_PATH: browserPath() ?? process.env.CHROME_PATH ?? '' }
});
child.on('exit', (code) => {
  server.close();
  if (code !== 0) process.exit(code ?? 1);
  const { categories, audits } = JSON.parse(readFileSync(out, 'utf8'));
  for (const [name, { score, auditRefs }] of Object.entries(categories)) {
    const short = auditRefs.filter((a) => a.weight > 0 && audits[a.id].score !== null && audits[a.id].score < 1).map((a) => `${a.id} ${audits[a.id].displayValue ?? audits[a.id].score}`);
    console.log(`${name}: ${Math.round(score * 100)}${short.length > 0 ? ` (${short.join(', ')})` : ''}`);
  }
});

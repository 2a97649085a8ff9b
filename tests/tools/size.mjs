/**
 * JavaScript that the first screen loads: everything that the built page names, and what those modules import at once, gzipped.
 * Modules behind import() are fetched when asked for and do not count.
 */
import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const LIMIT = 76_000;
const root = 'build';
const html = readFileSync(join(root, 'index.html'), 'utf8');
const wanted = [...html.matchAll(/["'](?:\.\/|\/)?(_app\/immutable\/[^"']+\.js)["']/g)].map((m) => m[1]);
const seen = new Map();
while (wanted.length > 0) {
  const file = normalize(wanted.pop());
  if (seen.has(file)) continue;
  const code = readFileSync(join(root, file), 'utf8');
  seen.set(file, gzipSync(code, { level: 9 }).length);
  for (const m of code.matchAll(/(?:from|import)\s*["'](\.{1,2}\/[^"']+\.js)["']/g)) wanted.push(join(dirname(file), m[1]));
}
// The page's own node is fetched by the start script for this route: it is part of the first screen.
for (const m of [...seen.keys()].flatMap((f) => [...readFileSync(join(root, f), 'utf8').matchAll(/["']\.\.?\/(nodes\/[02]\.[^"']+\.js)["']/g)])) {
  const file = join('_app/immutable', m[1]);
  if (!seen.has(file)) {
    wanted.push(file);
    while (wanted.length > 0) {
      const next = normalize(wanted.pop());
      if (seen.has(next)) continue;
      const code = readFileSync(join(root, next), 'utf8');
      seen.set(next, gzipSync(code, { level: 9 }).length);
      for (const i of code.matchAll(/(?:from|import)\s*["'](\.{1,2}\/[^"']+\.js)["']/g)) wanted.push(join(dirname(next), i[1]));
    }
  }
}
const total = [...seen.values()].reduce((s, n) => s + n, 0);
if (process.argv.includes('--list')) for (const [f, n] of [...seen].sort((a, b) => b[1] - a[1])) console.log(String(n).padStart(8), f);
console.log(`${seen.size} modules, ${total} bytes of JavaScript gzipped; the limit is ${LIMIT}`);
// A module that the page does not name is asked for only when another has come and been read: one more way there and back.
const late = [...seen.keys()].filter((file) => !html.includes(file));
for (const file of late) console.log(`${file} is not named in the page`);
process.exit(seen.size > 0 && total <= LIMIT && late.length === 0 ? 0 : 1);

/**
 * JavaScript that the first screen loads, gzipped: the scripts that stand in the built page. Modules behind import() are fetched when asked for
 * and do not count; one that was asked for at once would be one more way there and back.
 */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { parseAst } from 'vite';

const LIMIT = 74_000;
const html = readFileSync('build/index.html', 'utf8');
const scripts = [...html.matchAll(/<script([^>]*)>([\s\S]*?)<\/script>/g)].map(([, attributes, code]) => ({ attributes, code }));
const total = scripts.reduce((sum, { code }) => sum + gzipSync(code, { level: 9 }).length, 0);
console.log(`${scripts.length} scripts in the page, ${total} bytes of JavaScript gzipped; the limit is ${LIMIT}. The page: ${gzipSync(html, { level: 9 }).length} bytes gzipped`);
const late = [
  ...scripts.filter(({ attributes }) => /\bsrc=/.test(attributes)).map(({ attributes }) => attributes.trim()),
  ...scripts.flatMap(({ code }) => parseAst(code).body.filter((node) => node.type === 'ImportDeclaration').map((node) => node.source.value))
];
for (const file of late) console.log(`${file} is asked for at once, and does not stand in the page`);
process.exit(scripts.length > 0 && total <= LIMIT && late.length === 0 ? 0 : 1);

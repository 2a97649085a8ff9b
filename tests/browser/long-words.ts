import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { parseAst } from 'vite';

/**
 * A language that nobody speaks, to see whether words that are two fifths longer than English still fit: every vowel is doubled and
 * carries an accent, every phrase stands in brackets, so that one that is cut or that is typed into a view is seen. It is made while the
 * page is served to a test; nothing of it is part of the product.
 */
const PAGE = fileURLToPath(new URL('../../build/index.html', import.meta.url));

/** Runs in the page: no imports, plain JavaScript. */
const LENGTHEN = `
const LONG = { a: 'áá', e: 'éé', i: 'íí', o: 'óó', u: 'úú', A: 'ÁÁ', E: 'ÉÉ', I: 'ÍÍ', O: 'ÓÓ', U: 'ÚÚ' };
/* Places for values, what is long already, and figures with their units stay. */
const KEPT = /\\{[^}]*\\}|\\[[^\\]]*\\]|[\\d–−][\\s\\u00a0\\u202f]*[\\w/²³%°·]*/g;
const longer = (s) => s.replace(/[aeiou]/gi, (v) => LONG[v]);
function text(s) {
  if (!/[aeiou]/i.test(s.replace(KEPT, ''))) return s;
  let out = '';
  let from = 0;
  for (const m of s.matchAll(KEPT)) {
    out += longer(s.slice(from, m.index)) + m[0];
    from = m.index + m[0].length;
  }
  out += longer(s.slice(from));
  return out.startsWith('[') ? out : '[' + out + ']';
}
function lengthen(value, key) {
  if (typeof value === 'string') return key === 'code' ? value : text(value);
  if (typeof value === 'function') return (...given) => lengthen(value(...given));
  if (Array.isArray(value)) return value.map((v) => lengthen(v));
  if (value !== null && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, lengthen(v, k)]));
  return value;
}
`;

/** What the build makes of `translated` in `src/words/translation.ts`, through which every constant of the words goes. */
const TRANSLATED = /function (\w+)\(\w+,\w+\)\{if\([^{]+\{let \w+=\{\};for\(let \w+ of Object\.keys\(\{\.\.\./;
const SCRIPT = /(<script type="module">)([\s\S]*?)<\/script>/;

const hash = (text: string): string => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;

/** The built page, with what makes its words long; its policy names the script that it then holds. */
async function lengthened(): Promise<string> {
  const html = await readFile(PAGE, 'utf8');
  const script = SCRIPT.exec(html)?.[2] ?? '';
  const name = TRANSLATED.exec(script)?.[1];
  const made = parseAst(script).body.find((node) => node.type === 'FunctionDeclaration' && node.id?.name === name);
  if (!made || !name) throw new Error('The built page has no function that the words go through: TRANSLATED in long-words.ts no longer tells it.');
  const whole = script.slice(made.start, made.end);
  const short = whole.replaceAll(new RegExp(`(?<![\\w$.])${name.replace('$', '\\$')}\\(`, 'g'), 'short(');
  const long = `${LENGTHEN}\n${script.replace(whole, () => `${short};function ${name}(...given){return lengthen(short(...given))}`)}`;
  return html.replace(SCRIPT, (_, open: string) => `${open}${long}</script>`).replace(hash(script), hash(long));
}

/** The page speaks that language from its next load on. */
export async function speakLongWords(page: Page): Promise<void> {
  const body = await lengthened();
  await page.route((url) => url.pathname === '/', (route) => route.fulfill({ body, contentType: 'text/html; charset=utf-8' }));
}

import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';

/**
 * A language that nobody speaks, to see whether words that are two fifths longer than English still fit: every vowel is doubled and
 * carries an accent, every phrase stands in brackets, so that one that is cut or that is typed into a view is seen. It is made while the
 * page is served to a test; nothing of it is part of the product.
 */
const CHUNKS = fileURLToPath(new URL('../../build/_app/immutable/chunks', import.meta.url));

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

/** What the build makes of `translated` in `src/words/translation.ts`, through which every constant of the words goes, and its name outside its file. */
const TRANSLATED = /function (\w+)\(\w+,\w+\)\{if\([^{]+\{let \w+=\{\};for\(let \w+ of Object\.keys\(\{\.\.\./;

/** The file of the built page that all words go through, and its text with what makes them long. */
async function lengthened(): Promise<{ readonly name: string; readonly body: string }> {
  const found: { name: string; body: string }[] = [];
  for (const name of await readdir(CHUNKS)) {
    if (!name.endsWith('.js')) continue;
    const text = await readFile(join(CHUNKS, name), 'utf8');
    const translated = TRANSLATED.exec(text)?.[1];
    const exported = translated && new RegExp(`(export\\{[^}]*?)\\b${translated} as `);
    if (exported && exported.test(text)) found.push({ name, body: `${text.replace(exported, '$1long as ')}\n${LENGTHEN}\nfunction long(...given) { return lengthen(${translated}(...given)); }` });
  }
  if (found.length !== 1) throw new Error(`The build has ${found.length} files that the words go through, not one: TRANSLATED in long-words.ts no longer tells it.`);
  return found[0]!;
}

/** The page speaks that language from its next load on. */
export async function speakLongWords(page: Page): Promise<void> {
  const { name, body } = await lengthened();
  await page.route(`**/chunks/${name}`, (route) => route.fulfill({ body, contentType: 'text/javascript' }));
}

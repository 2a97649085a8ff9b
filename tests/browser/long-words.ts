import { fileURLToPath } from 'node:url';
import { createServer, type Plugin } from 'vite';

/**
 * A language that nobody speaks, to see whether words that are two fifths longer than English still fit: every vowel is doubled and
 * carries an accent, every phrase stands in brackets, so that one that is cut or that is typed into a view is seen. It is made while the
 * page is served to a test; nothing of it is part of the product.
 */
const ID = '\0long-words';
const WORDS = /\/src\/words\/en\/.+\.ts$/;

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
export function lengthen(value, key) {
  if (typeof value === 'string') return key === 'code' ? value : text(value);
  if (typeof value === 'function') return (...given) => lengthen(value(...given));
  if (Array.isArray(value)) return value.map((v) => lengthen(v));
  if (value !== null && typeof value === 'object') return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, lengthen(v, k)]));
  return value;
}
`;

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly declaration?: { readonly type: string; readonly declarations?: readonly { readonly init: Node | null }[] } | null;
}

/** Puts every exported constant of the words' modules through \`lengthen\`. */
const longWords = (): Plugin => ({
  name: 'long-words',
  enforce: 'post',
  resolveId: (id) => (id === 'virtual:long-words' ? ID : null),
  load: (id) => (id === ID ? LENGTHEN : null),
  transform(code, id) {
    if (!WORDS.test(id.split('?')[0]!)) return null;
    const body = this.parse(code).body as unknown as readonly Node[];
    const inits = body.flatMap((n) => (n.type === 'ExportNamedDeclaration' && n.declaration?.type === 'VariableDeclaration' ? (n.declaration.declarations ?? []).flatMap((d) => (d.init ? [d.init] : [])) : []));
    let out = code;
    for (const { start, end } of [...inits].sort((a, b) => b.start - a.start)) out = `${out.slice(0, start)}lengthen(${out.slice(start, end)})${out.slice(end)}`;
    return { code: `import { lengthen } from 'virtual:long-words';\n${out}`, map: null };
  }
});

/** The page in that language, on a port of its own. */
export async function serveLongWords(): Promise<{ readonly url: string; close(): Promise<void> }> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const server = await createServer({
    root,
    cacheDir: fileURLToPath(new URL(`../../.cache/long-words-${process.pid}`, import.meta.url)),
    plugins: [longWords()],
    logLevel: 'error',
    server: { host: '127.0.0.1', port: 0, hmr: false },
    optimizeDeps: { include: ['zod/mini', 'papaparse', 'idb', 'd3-shape'] }
  });
  await server.listen();
  return { url: server.resolvedUrls!.local[0]!, close: () => server.close() };
}

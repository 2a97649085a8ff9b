/**
 * The page's shell. The framework builds all modules; what the first screen needs of them is named here and nothing else, and it comes with
 * the page itself: the rules of its look, what is said meanwhile, and the modules as one script. What stands in the page is named by its hash.
 */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { inlined } from './inline.mjs';

const ENTRY = 'entry/start';
const EARLY = 'src/routes/early.ts';

/** The entry and what it stands on, each after what it imports: modules and rules; those that are asked for later are left out. */
function firstOf(manifest) {
  const start = Object.values(manifest).find((chunk) => chunk.isEntry && chunk.name === ENTRY);
  if (!start) throw new Error(`the build has no ${ENTRY}`);
  const seen = new Set();
  const modules = new Set();
  const visit = (chunk) => {
    if (seen.has(chunk)) return;
    seen.add(chunk);
    for (const key of chunk.imports ?? []) visit(manifest[key]);
    modules.add(chunk);
  };
  visit(start);
  // The page's own rules before those of its parts.
  return { modules: [...modules].map((chunk) => chunk.file), rules: [...new Set([...modules].reverse().flatMap((chunk) => chunk.css ?? []))] };
}

/** Files that say the first screen in each other language. */
const wordsOf = (manifest) =>
  Object.fromEntries(
    Object.values(manifest).flatMap(({ name, file }) => {
      const code = /^words-(\w+)$/.exec(name ?? '')?.[1];
      return code ? [[code, [`./${manifest['src/words/twins.ts'].file}`, `./${file}`]]] : [];
    })
  );

async function earlyScript(words) {
  const [{ output }] = [await build({
    configFile: false,
    logLevel: 'error',
    define: { __WORDS__: JSON.stringify(words) },
    build: { write: false, modulePreload: false, rolldownOptions: { input: EARLY, output: { format: 'iife' } } }
  })].flat();
  return output[0].code.trim();
}

/** Wraps an adapter: before it takes the prerendered page, that is written anew from the same template. */
export const shell = (adapter, template, policy) => ({
  name: 'shell',
  async adapt(builder) {
    const client = builder.getClientDirectory();
    const manifest = JSON.parse(readFileSync(join(client, '.vite/manifest.json'), 'utf8'));
    const { modules, rules } = firstOf(manifest);
    const early = await earlyScript(wordsOf(manifest));
    const script = await inlined(client, modules);
    const style = rules.map((file) => readFileSync(join(client, file), 'utf8').trim().replaceAll('url(./', `url(./${file.slice(0, file.lastIndexOf('/'))}/`)).join('');
    const hashed = (text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
    const own = { 'script-src': [early, script], 'style-src': [style] };
    const content = Object.entries(policy).map(([name, values]) => [name, ...values, ...(own[name] ?? []).map(hashed)].join(' ')).join('; ');
    const head = [
      `<meta http-equiv="content-security-policy" content="${content}">`,
      `<style>${style}</style>`,
      // What is asked for later stands on these rules too, and need not fetch them again.
      ...rules.map((file) => `<link rel="stylesheet" href="./${file}" disabled>`)
    ];
    const parts = {
      '%sveltekit.assets%': '.',
      '%sveltekit.head%': head.join('\n    '),
      '%sveltekit.body%': '',
      '<!--early-->': `<script>${early}</script>`,
      '<!--script-->': `<script type="module">${script}</script>`
    };
    const html = readFileSync(template, 'utf8').replace(new RegExp(Object.keys(parts).join('|'), 'g'), (place) => parts[place]);
    writeFileSync(join(client, '../prerendered/pages/index.html'), html);
    await adapter.adapt(builder);
  }
});

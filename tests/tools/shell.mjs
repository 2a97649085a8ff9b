/**
 * The page's shell. The framework builds all modules; what the first screen needs of them is named here and nothing else: the rules of its
 * look stand in the page, every module is asked for at once, the largest first, and no script stands in the page itself.
 */
import { createHash } from 'node:crypto';
import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const ENTRY = 'entry/start';

/** The entry and what it stands on: modules and rules, the page's own rules before those of its parts; those that are asked for later are left out. */
function firstOf(manifest) {
  const start = Object.values(manifest).find((chunk) => chunk.isEntry && chunk.name === ENTRY);
  if (!start) throw new Error(`the build has no ${ENTRY}`);
  const seen = new Set();
  const visit = (chunk) => {
    if (seen.has(chunk)) return;
    seen.add(chunk);
    for (const key of chunk.imports ?? []) visit(manifest[key]);
  };
  visit(start);
  return { start: start.file, modules: [...seen].map((chunk) => chunk.file), rules: [...new Set([...seen].flatMap((chunk) => chunk.css ?? []))] };
}

/** Wraps an adapter: before it takes the prerendered page, that is written anew from the same template. */
export const shell = (adapter, template, policy) => ({
  name: 'shell',
  async adapt(builder) {
    const client = builder.getClientDirectory();
    const { start, modules, rules } = firstOf(JSON.parse(readFileSync(join(client, '.vite/manifest.json'), 'utf8')));
    const size = (file) => statSync(join(client, file)).size;
    const style = rules.map((file) => readFileSync(join(client, file), 'utf8').trim().replaceAll('url(./', `url(./${file.slice(0, file.lastIndexOf('/'))}/`)).join('');
    const hash = createHash('sha256').update(style).digest('base64');
    const content = Object.entries({ ...policy, 'style-src': [...policy['style-src'], `'sha256-${hash}'`] }).map(([name, values]) => `${name} ${values.join(' ')}`).join('; ');
    const head = [
      `<meta http-equiv="content-security-policy" content="${content}">`,
      ...modules.sort((a, b) => size(b) - size(a)).map((file) => `<link rel="modulepreload" href="./${file}">`),
      `<script type="module" src="./${start}"></script>`,
      `<style>${style}</style>`,
      // What is asked for later stands on these rules too, and need not fetch them again.
      ...rules.map((file) => `<link rel="stylesheet" href="./${file}" disabled>`)
    ];
    const html = readFileSync(template, 'utf8').replaceAll('%sveltekit.assets%', '.').replace('%sveltekit.head%', () => head.join('\n    ')).replace('%sveltekit.body%', '');
    writeFileSync(join(client, '../prerendered/pages/index.html'), html);
    await adapter.adapt(builder);
  }
});

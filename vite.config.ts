import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig, type Plugin } from 'vite';
import { headersFor } from './tests/tools/headers.mjs';
import { licences } from './tests/tools/licences.ts';

/** What every station stands on. Cut into many small files, as the bundler would by itself, it compresses worse. */
const SPINE = [
  // Comparisons, tables and plain data are asked for later.
  String.raw`core/(quantity|working|sprayer|dose|air|weather|advice|setting)/(?!compare/|own/|table/|(nearest|column|plain|under|days|degree-days)\.)`,
  // Laser points and surveys of trees are asked for later.
  String.raw`core/canopy/\w+\.ts`,
  String.raw`words/(bidi|demo|format|language|fill|names|naming|sentences|options|air)\.ts`,
  String.raw`words/en/(english|findings|refusals|options|sprayer|strategies|differences|formulas|screen|section)\.ts`,
  String.raw`workspace/(edits|history|preferences|workspace)\.`,
  String.raw`section/(frame|machine|measures|palette|scene|section|spray|tree)\.ts`,
  String.raw`ui/parts/(NumberField|Choice)\.`,
  String.raw`ui/section/`,
  String.raw`ui/nozzles/`,
  String.raw`ui/row/(RungStrip|Differences)\.`,
  String.raw`ui/setting/(AirPanel|FindingsList|OptionsTable|SettingPanel|FigureRow)\.`,
  String.raw`ui/shell/(Header|stations)\.`,
  String.raw`ui/spray/SpraySwitch\.`,
  String.raw`words/en/spray/switch\.`
];

/** Words of the first screen, in one file for each language. */
const FIRST_WORDS = String.raw`(english|findings|refusals|options|sprayer|strategies|differences|formulas|screen|section|demo|spray/switch)\.ts`;
const OTHERS = ['de', 'es', 'fr', 'it', 'pt'];

interface Node {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly declaration?: { readonly type: string; readonly declarations?: readonly { readonly id: { readonly name: string }; readonly init: Node | null }[] } | null;
}

/** Every exported constant of an English module takes what its twin in the spoken language says; see `src/words/translation.ts`. */
const translations = (): Plugin => ({
  name: 'translations',
  enforce: 'post',
  transform(code, id) {
    const module = /\/src\/words\/en\/(.+)\.ts$/.exec(id.split('?')[0]!)?.[1];
    if (!module) return null;
    const body = this.parse(code).body as unknown as readonly Node[];
    const constants = body.flatMap((n) => (n.type === 'ExportNamedDeclaration' && n.declaration?.type === 'VariableDeclaration' ? (n.declaration.declarations ?? []) : []));
    let out = code;
    for (const { id: { name }, init } of [...constants].reverse()) if (init) out = `${out.slice(0, init.start)}translated(${out.slice(init.start, init.end)}, twin?.${name})${out.slice(init.end)}`;
    return { code: `import { translated, twinOf } from '#words/translation.ts';\nconst twin = await twinOf('${module}');\n${out}`, map: null };
  }
});

/** Kit's announcer of page changes carries a style attribute, which a strict policy does not let act: our own class hides it from eyes alone. */
const announcer = (): Plugin => ({
  name: 'announcer',
  enforce: 'pre',
  transform: (code, id) => (id.endsWith('/generated/root.svelte') ? { code: code.replace(/(id="svelte-announcer"[^>]*) style="[^"]*"/, '$1 class="sr"'), map: null } : null)
});

/** The built page is served as a host is to serve it. */
const hostHeaders = (): Plugin => ({
  name: 'host-headers',
  configurePreviewServer({ middlewares }) {
    middlewares.use((request, response, next) => {
      for (const [name, value] of Object.entries(headersFor(new URL(request.url ?? '/', 'http://here').pathname))) response.setHeader(name, value);
      next();
    });
  }
});

const groups = [
  // What fetches other files must stand before the spine, which waits for its words.
  { name: 'fetch', test: /vite\/preload-helper|\/src\/words\/translation\.ts/ },
  { name: 'ground', test: /node_modules\/(svelte|@sveltejs\/kit|esm-env|clsx)\// },
  { name: 'spine', test: new RegExp(`/src/(${SPINE.join('|')})`) },
  ...OTHERS.map((code) => ({ name: `words-${code}`, test: new RegExp(`/src/words/${code}/${FIRST_WORDS}`) }))
];

const { page, worker } = licences(import.meta.dirname);

export default defineConfig({
  plugins: [announcer(), sveltekit(), translations(), page, hostHeaders()],
  worker: { plugins: () => [worker] },
  build: {
    assetsInlineLimit: 0,
    rolldownOptions: { output: { codeSplitting: { groups } } }
  }
});

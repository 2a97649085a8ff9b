import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig, type Plugin } from 'vite';
import { headersFor } from './tests/tools/headers.mjs';
import { licences } from './tests/tools/licences.ts';

/** What follows from a setting: asked for when the drawing stands. */
const FOLLOWS = [
  String.raw`core/advice/(advise|\w+-rules)\.`,
  String.raw`core/setting/evaluate\.`,
  String.raw`core/sprayer/(options|pressure)\.`,
  String.raw`words/(advice|air|options)\.`,
  String.raw`words/en/(findings|options)\.`,
  String.raw`ui/setting/(AirPanel|FindingsList|Follows|OptionsTable)\.`
];

/** What every station stands on. Cut into many small files, as the bundler would by itself, it compresses worse. */
const SPINE = [
  // Comparisons, tables and plain data are asked for later.
  String.raw`core/(quantity|working|sprayer|dose|air|weather)/(?!compare/|own/|table/|(nearest|column|plain|under|days|degree-days|options|pressure)\.)`,
  String.raw`core/(advice/(difference|finding)|setting/(assumptions|result-of))\.`,
  // Laser points and surveys of trees are asked for later.
  String.raw`core/canopy/\w+\.ts`,
  String.raw`words/(bidi|demo|format|language|fill|names|naming|sentences)\.ts`,
  String.raw`words/en/(english|refusals|sprayer|strategies|differences|formulas|screen|section|demo)\.ts`,
  String.raw`workspace/(edits|history|look|preferences|workspace)\.`,
  String.raw`section/(frame|machine|measures|palette|scene|section|spray|tree)\.ts`,
  String.raw`ui/parts/(NumberField|Choice)\.`,
  String.raw`ui/section/`,
  String.raw`ui/nozzles/`,
  String.raw`ui/row/(RungStrip|Differences)\.`,
  String.raw`ui/setting/(SettingPanel|FigureRow)\.`,
  String.raw`ui/shell/(Header|stations)\.`,
  String.raw`ui/spray/SpraySwitch\.`,
  String.raw`ui/guide/FirstSteps\.`,
  String.raw`words/en/(spray/switch|guide/first)\.ts`,
  // The page itself, and the little that it shares with what is asked for later.
  String.raw`routes/(\+page|soon)`,
  String.raw`job/first-limits\.`,
  String.raw`(store/files|ui/guide/open|workspace/place)\.`
];

/** Words of the first screen, in one file for each language. */
const FIRST_WORDS = String.raw`(english|refusals|sprayer|strategies|differences|formulas|screen|section|demo|spray/switch|guide/first)\.ts`;
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

/** One page needs no router, and stations are told apart behind the `#`: our own start stands in the place of the framework's, its list of pages is empty, and so are its page of errors and elements of our own making, which would keep parts of the library that nobody else asks for. */
const start = (): Plugin => ({
  name: 'start',
  enforce: 'pre',
  load(id) {
    if (id.endsWith('/kit/src/runtime/client/entry.js')) return `export { start } from '${import.meta.dirname}/src/routes/start.ts';`;
    if (/\/kit\/src\/runtime\/components\/.*error\.svelte$/.test(id)) return '';
    if (id.endsWith('/svelte/src/internal/client/dom/elements/custom-element.js')) return 'export const create_custom_element = undefined;';
    return id.endsWith('/generated/client-optimized/app.js') ? 'export {};' : null;
  }
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
  { name: 'ground', test: /vite\/preload-helper|\/src\/words\/(translation|spoken)\.ts|node_modules\/(svelte|esm-env|clsx)\/|rolldown\/runtime/ },
  { name: 'spine', test: new RegExp(`/src/(${SPINE.join('|')})|/demo-data/lower-bench`) },
  { name: 'follows', test: new RegExp(`/src/(${FOLLOWS.join('|')})`) },
  ...OTHERS.map((code) => ({ name: `words-${code}`, test: new RegExp(`/src/words/${code}/${FIRST_WORDS}`) }))
];

const { page, worker } = licences(import.meta.dirname);

export default defineConfig({
  plugins: [start(), sveltekit(), translations(), page, hostHeaders()],
  worker: { plugins: () => [worker] },
  build: {
    assetsInlineLimit: 0,
    rolldownOptions: { output: { codeSplitting: { groups } } }
  }
});

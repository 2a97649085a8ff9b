/** Who may import whom. Data flows one way; nothing imports a route; the engine imports only itself. */
const only = (from, to, comment) => ({
  name: `${from}-imports-only`,
  comment,
  severity: 'error',
  from: { path: `^src/${from}/` },
  to: { pathNot: [`^src/${from}/`, ...to] }
});
/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    { name: 'no-circular', severity: 'error', from: {}, to: { circular: true } },
    { name: 'nothing-imports-routes', severity: 'error', from: { path: '^src', pathNot: '^src/routes/' }, to: { path: '^src/routes/' } },
    { name: 'not-to-unresolvable', severity: 'error', from: {}, to: { couldNotResolve: true, pathNot: '^\\$service-worker$' } },
    only('core', ['node_modules/jsep/'], 'The engine is pure: it imports only itself, and one parser of arithmetic.'),
    { name: 'jsep-in-one-place', severity: 'error', from: { path: '^src', pathNot: '^src/core/dose/own/parse[.]ts$' }, to: { path: 'node_modules/jsep/' } },
    only('job', ['^src/core/', 'node_modules/(zod|papaparse|hyparquet|hyparquet-compressors|@types)/', '^(node:)?(fs|url|path)'], 'The door for foreign data knows the engine’s types and zod.'),
    only('section', ['^src/core/', 'node_modules/(@types/)?d3-'], 'Drawings know results and d3’s pure modules.'),
    only('words', ['^src/core/', '^src/job/problem'], 'Words know the engine’s types and the codes of the reader.'),
    only('store', ['^src/core/', '^src/job/', 'node_modules/(idb|laz-perf|hyparquet-writer)/'], 'Ports know the document, the reader and what unpacks laser files.'),
    only('workspace', ['^src/core/', '^src/job/', '^src/store/', '^package[.]json$', 'node_modules/svelte/'], 'The open job knows the engine, the reader and the ports.'),
    only('ui', ['^src/core/', '^src/job/(limits|problem)', '^src/section/', '^src/words/', '^src/workspace/', 'node_modules/svelte/'], 'Views know results, drawings, words and the workspace.'),
    only('cli', ['^src/core/', '^src/job/', '^src/words/', '^src/section/', '^src/store/', 'node_modules/(papaparse|laz-perf|hyparquet|hyparquet-writer|tsx|@types)/', '^(node:)?[a-z_/]+$'], 'The command line knows no browser code.'),
    only('service-worker', ['^\\$service-worker$'], 'The worker that keeps the page on the device knows the list of its files and nothing else.'),
    { name: 'routes-without-cli', severity: 'error', from: { path: '^src/routes/' }, to: { path: '^src/cli/' } }
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    extraExtensionsToScan: ['.svelte'],
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'require', 'node', 'default', 'svelte'], extensions: ['.ts', '.js', '.svelte', '.mjs', '.json'] }
  }
};

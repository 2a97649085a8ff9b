import { headerRules, type HeaderRule } from './headers.mjs';

const quoted = (value: string): string => `"${value}"`;

const add = ([name, value]: readonly [string, string]): string => `add_header ${name} ${quoted(value)} always;`;
const COMMON = 'rowtailor-headers.conf';

/** nginx forgets the headers of all where a location has its own: each location takes them in again. */
function nginx(rules: readonly HeaderRule[]): string {
  return rules
    .map(({ path, headers }) => {
      if (path === '/*') return `location / {\n    include ${COMMON};\n}`;
      // A deeper path is in no location but its own.
      const above = rules.filter((r) => r.path !== '/*' && r.path !== path && r.path.endsWith('*') && path.startsWith(r.path.slice(0, -1))).flatMap((r) => r.headers);
      const place = path.endsWith('*') ? `^~ ${path.slice(0, -1)}` : `= ${path}`;
      return [`location ${place} {`, `    include ${COMMON};`, ...[...above, ...headers].map((h) => `    ${add(h)}`), '}'].join('\n');
    })
    .join('\n');
}

function apache(rules: readonly HeaderRule[]): string {
  return rules
    .map(({ path, headers }) => {
      const lines = headers.map(([name, value]) => `${name === 'Content-Security-Policy' && path !== '/*' ? 'Header always add' : 'Header always set'} ${name} ${quoted(value)}`);
      if (path === '/*') return lines.join('\n');
      const pattern = path.endsWith('*') ? `^${path.slice(0, -1)}` : `^${path}$`;
      return [`<LocationMatch ${quoted(pattern.replaceAll('.', '\\.'))}>`, ...lines.map((l) => `    ${l}`), '</LocationMatch>'].join('\n');
    })
    .join('\n');
}

/** docs/hosting.md */
export function hostingPage(): string {
  const rules = headerRules();
  return `# Hosting

Written by \`npm run docs\` from \`static/_headers\`; do not edit.

\`npm run build\` makes the folder \`build\`: plain files, to be put on any static host, at its root or under a path. Nothing runs on the host. HTTPS is needed for working offline; the host must serve \`.js\` as a script, \`.webmanifest\` as \`application/manifest+json\` and \`.wasm\` as \`application/wasm\`.

Give the page an origin of its own where you can: pages of the same origin share storage, caches and channels.

## Headers

The page carries a strict policy of its own: every source is its own origin, the scripts and the style that stand in it are named by their hashes, trusted types are on. (A host that adds a \`script-src\` of its own must name them too: they change with each build.) What a page cannot say of itself the host says with headers: that nobody may frame it, what workers may do, that it uses neither camera nor place nor any other device, that no address is told to anyone, and which files never change. It works without them too. (Sharing is not named: its default is the page itself, and browsers that do not know it complain.)

Several static hosts read them from the file \`_headers\`, which the build holds. Under a path, put the path before each of the file's own. \`npm start\` and all journeys of the tests serve with the same file.

For nginx, a file \`${COMMON}\` beside its configuration:

\`\`\`nginx
${rules[0]!.headers.map(add).join('\n')}
\`\`\`

and in the \`server\` block:

\`\`\`nginx
${nginx(rules)}
\`\`\`

For Apache, with \`mod_headers\`, in the virtual host:

\`\`\`apache
${apache(rules)}
\`\`\`
`;
}

/**
 * The headers that the page is to be served with. They stand in `static/_headers`, in the plain form that several static hosts read; our own
 * servers read the same file, so that whatever is tried is tried under them, and docs/hosting.md says the same for other hosts.
 */
import { readFileSync } from 'node:fs';

/** Rules in their order: a path, `*` at its end standing for anything, and the headers that it adds. */
export function headerRules(text = readFileSync(new URL('../../static/_headers', import.meta.url), 'utf8')) {
  const rules = [];
  for (const line of text.split('\n')) {
    const header = /^\s+([A-Za-z-]+): (.+)$/.exec(line);
    if (header) rules.at(-1).headers.push([header[1], header[2]]);
    else if (line.startsWith('/')) rules.push({ path: line.trim(), headers: [] });
    else if (line.trim() !== '') throw new Error(`_headers: ${line}`);
  }
  return rules;
}

const RULES = headerRules();
const matches = (rule, path) => (rule.endsWith('*') ? path.startsWith(rule.slice(0, -1)) : rule === path);

/** Headers of one path, counted from the page's own root; where several rules say something of one header, each holds. */
export function headersFor(path, rules = RULES) {
  const headers = {};
  for (const rule of rules) if (matches(rule.path, path)) for (const [name, value] of rule.headers) headers[name.toLowerCase()] = name.toLowerCase() in headers ? `${headers[name.toLowerCase()]}, ${value}` : value;
  return headers;
}

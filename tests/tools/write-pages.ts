import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { PAGES } from './pages.ts';
import { validityFiles } from './validity/page.ts';

const files = { ...Object.fromEntries(Object.entries(PAGES).map(([name, make]) => [name, make()])), ...validityFiles() };
for (const [name, text] of Object.entries(files)) {
  const path = join('docs', name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, text);
}

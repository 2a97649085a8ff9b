import { mkdirSync, writeFileSync } from 'node:fs';
import { PAGES } from './pages.ts';

mkdirSync('docs/generated', { recursive: true });
for (const [name, make] of Object.entries(PAGES)) writeFileSync(`docs/generated/${name}`, make());

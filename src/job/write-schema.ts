import { mkdirSync, writeFileSync } from 'node:fs';
import { jsonSchema, SCHEMA_FILE } from './json-schema.ts';

// Run by `npm run schema`: the schema that is published beside the page.
const folder = new URL('../../static/schema/', import.meta.url);
mkdirSync(folder, { recursive: true });
writeFileSync(new URL(SCHEMA_FILE, folder), JSON.stringify(jsonSchema(), null, 2) + '\n');

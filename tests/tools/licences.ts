import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import type { Bundled } from '../../src/ui/guide/bundled.ts';

const PLACE = /(["'`])__LICENCES__\1/;

/** Folder of the package that a module lies in; null for our own. */
export function packageOf(id: string): string | null {
  const path = id.replace(/^\0/, '').split('?')[0]!.replaceAll('\\', '/');
  const found = /^(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path);
  return found ? found[1]! : null;
}

/** What a package says of itself, with its licence word for word. */
export function licenceOf(folder: string): Bundled {
  const about = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as { name: string; version: string; license?: unknown };
  const files = readdirSync(folder).filter((f) => /^(licen[cs]e|copying|notice)/i.test(f)).sort();
  return { name: about.name, version: about.version, licence: typeof about.license === 'string' ? about.license : '', text: files.map((f) => readFileSync(join(folder, f), 'utf8').trim()).join('\n\n') };
}

interface Part {
  readonly type: string;
  readonly moduleIds?: readonly string[];
  readonly originalFileNames?: readonly string[];
  code?: string;
}

/** Puts the licences of all that is bundled, in workers and as fonts too, into the page that shows them. */
export function licences(root: string): { page: Plugin; worker: Plugin } {
  const inWorkers = new Set<string>();
  const collect = (bundle: Readonly<Record<string, Part>>, into: Set<string>) => {
    for (const part of Object.values(bundle))
      for (const id of [...(part.moduleIds ?? []), ...(part.originalFileNames ?? []).map((f) => join(root, f))]) {
        const folder = packageOf(id);
        if (folder) into.add(folder);
      }
  };
  return {
    worker: { name: 'licences-of-workers', generateBundle: (_, bundle) => collect(bundle as unknown as Record<string, Part>, inWorkers) },
    page: {
      name: 'licences',
      enforce: 'post',
      generateBundle(_, output) {
        const bundle = output as unknown as Record<string, Part>;
        const place = Object.values(bundle).find((part) => part.code !== undefined && PLACE.test(part.code));
        if (!place) return;
        const folders = new Set(inWorkers);
        collect(bundle, folders);
        const all = new Map([...folders].map((f) => licenceOf(f)).map((l) => [l.name, l]));
        const text = JSON.stringify([...all.values()].sort((a, b) => (a.name < b.name ? -1 : 1)));
        place.code = place.code!.replace(PLACE, () => JSON.stringify(text));
      }
    }
  };
}

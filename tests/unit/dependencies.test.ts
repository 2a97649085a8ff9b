import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

interface Locked {
  readonly version?: string;
  readonly resolved?: string;
  readonly integrity?: string;
  readonly dev?: true;
  readonly optional?: true;
  readonly license?: string;
}
const about = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly dependencies: Readonly<Record<string, string>> };
const lock = JSON.parse(readFileSync('package-lock.json', 'utf8')) as { readonly packages: Readonly<Record<string, Locked>> };
const installed = Object.entries(lock.packages).filter(([path]) => path !== '');
const source = (readdirSync('src', { recursive: true }) as string[]).filter((f) => /\.(ts|mjs|svelte)$/.test(f)).map((f) => readFileSync(`src/${f}`, 'utf8')).join('\n');

describe('what is installed', () => {
  it('is named by what is in it, from whatever registry: another package of the same name and version is refused', () => {
    expect(installed.length).toBeGreaterThan(100);
    for (const [path, { resolved, integrity }] of installed) {
      expect(resolved ?? 'https://registry.npmjs.org/', path).toMatch(/^https:\/\/registry\.npmjs\.org\//);
      expect(integrity, path).toMatch(/^sha512-/);
    }
  });
  it('that goes to users is little, and may be passed on', () => {
    const theirs = installed.filter(([, p]) => !p.dev && !p.optional);
    expect(theirs.length).toBeLessThan(40);
    for (const [path, { license }] of theirs) expect(license, path).toMatch(/^(MIT|ISC|Apache-2\.0|BSD-[23]-Clause|0BSD)$/);
  });
});

it.each(Object.keys(about.dependencies))('%s is needed', (name) => {
  // The command line is run by it, and nothing imports it but a thread.
  if (name === 'tsx') return expect(JSON.parse(readFileSync('package.json', 'utf8')) as unknown).toHaveProperty('scripts.rowtailor', 'tsx src/cli/main.ts');
  expect(new RegExp(`['"]${name}(/[^'"]*)?['"]`).test(source), name).toBe(true);
});

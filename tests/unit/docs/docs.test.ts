import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PAGES } from '../../tools/pages.ts';
import { validityFiles } from '../../tools/validity/page.ts';

describe('generated pages', () => {
  it.each(Object.entries(PAGES))('%s is what the engine says today (npm run docs)', (name, make) => {
    expect(readFileSync(join('docs', name), 'utf8')).toBe(make());
  });
  it('the page of validity and its plots are what the spray model gives today (npm run docs)', () => {
    for (const [name, text] of Object.entries(validityFiles())) expect(readFileSync(join('docs', name), 'utf8'), name).toBe(text);
  }, 180_000);
});

describe('links of the written pages', () => {
  const pages = ['README.md', 'DEVELOPERS.md', ...(readdirSync('docs', { recursive: true }) as string[]).filter((f) => f.endsWith('.md')).map((f) => join('docs', f))];
  it.each(pages)('%s leads to files and anchors that are there', (page) => {
    const text = readFileSync(page, 'utf8');
    for (const [, target] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
      if (/^[a-z]+:/.test(target!)) continue;
      const [file, anchor] = target!.split('#');
      const path = file ? normalize(join(dirname(page), file)) : page;
      expect(existsSync(path), `${page}: ${target}`).toBe(true);
      if (anchor && path.endsWith('.md')) {
        const there = readFileSync(path, 'utf8');
        const headings = [...there.matchAll(/^#+ (.+)$/gm)].map((m) => m[1]!.toLowerCase().replace(/[^\p{L}\p{N} -]/gu, '').replaceAll(' ', '-'));
        expect(headings.includes(anchor) || there.includes(`id="${anchor}"`), `${page}: ${target}`).toBe(true);
      }
    }
  });
});

import { Cite } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import '@citation-js/plugin-csl';
import { describe, expect, it } from 'vitest';
import { ALL_SOURCES, bibtex, cslJson, isWork } from '#core/sources/cite.ts';
import type { SourceId } from '#core/sources/bibliography.ts';

/** Read back by a citation library that is not ours. */
const read = (text: string) => new Cite(text).data;
const IDS = Object.keys(ALL_SOURCES) as SourceId[];
const WORKS = IDS.filter(isWork);

/** A name as one word, whether the reader took it for a person's or a body's. */
const nameOf = (n: { family?: string; given?: string; literal?: string }): string => n.literal ?? [n.family, n.given].filter(Boolean).join(', ');
/** The names of a source as they stand in it. */
const namesIn = (authors: string): string[] => authors.split('; ').map((n) => (n === 'et al.' ? 'others' : n));
const plain = (title: string): string => title.replace(/<\/?span[^>]*>/g, '');

describe.each([['BibTeX', bibtex], ['CSL-JSON', cslJson]] as const)('%s', (_, write) => {
  const back = read(write(IDS));
  it('holds every work once, under its id, and nothing that is no work', () => {
    expect(back.map((x) => x.id)).toEqual(WORKS);
    expect(WORKS.length).toBeGreaterThan(80);
    expect(write(['habit', 'arithmetic', 'geometry']).trim()).toBe(write === bibtex ? '' : '[]');
    expect(read(write(['furness-1998', 'furness-1998'])).length).toBe(1);
  });
  it.each(WORKS)('%s comes back with its title, names and year', (id) => {
    const s = ALL_SOURCES[id];
    const x = back.find((each) => each.id === id)!;
    expect(plain(x.title!)).toBe(s.title);
    expect(x.author!.map(nameOf)).toEqual(namesIn(s.authors));
    expect(x.issued?.['date-parts']?.[0]?.[0]).toBe(/^\d{4}$/.test(s.year) ? Number(s.year) : undefined);
    expect(x.note ?? '').toMatch(s.read === 'memory' ? /Quoted from memory/ : s.read === 'summary' ? /the work itself was not read/ : /^$/);
  });
  it('an article has its journal, volume, issue and pages, a standard its number', () => {
    const of = (id: SourceId) => back.find((x) => x.id === id)!;
    expect(of('sutton-unrath-1984')).toMatchObject({ type: 'article-journal', 'container-title': 'Plant Disease', volume: '68', page: '480-484' });
    expect(of('forshey-1987')).toMatchObject({ 'container-title': 'HortScience', volume: '22', issue: '5', page: '881' });
    expect(of('furness-1998')).toMatchObject({ DOI: '10.1016/S0261-2194(98)00064-7', volume: '17', issue: '8' });
    expect(of('herrington-1981')).toMatchObject({ type: 'article-journal', 'container-title': 'Pesticide Science' });
    expect(of('iso-10625')).toMatchObject({ number: 'ISO 10625' });
    expect(['report', 'standard']).toContain(of('iso-10625').type);
    expect(of('fao-56').type).toBe('document');
  });
});

describe('what TeX would take for its own', () => {
  it('is written so that it does not', () => {
    const text = bibtex(['texas-worksheet']);
    expect(text).toContain('Texas A\\&M');
    // Braces in pairs, no bare special signs outside a command.
    for (const entry of bibtex(IDS).split(/^@/m).slice(1)) {
      const depth = [...entry.replace(/\\[{}]/g, '')].reduce((d, c) => d + (c === '{' ? 1 : c === '}' ? -1 : 0), 0);
      expect(depth).toBe(0);
      expect(entry.replace(/\\./g, '')).not.toMatch(/[&%$#_~^]/);
    }
  });
  it('keys are unique and plain', () => {
    const keys = [...bibtex(IDS).matchAll(/^@\w+\{([^,]+),$/gm)].map((m) => m[1]!);
    expect(new Set(keys).size).toBe(keys.length);
    for (const key of keys) expect(key).toMatch(/^[a-z0-9-]+$/);
  });
});

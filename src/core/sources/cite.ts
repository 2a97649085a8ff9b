import { SOURCES, type SourceId } from './bibliography.ts';
import { CANOPY_SOURCES } from './canopy.ts';
import { COMPARISON_SOURCES } from './comparison.ts';
import { HEADLAND_SOURCES } from './headland.ts';
import { SEASON_SOURCES } from './season.ts';
import type { Source } from './source.ts';
import { SPRAY_SOURCES } from './spray.ts';

/** The bibliography for reference managers: BibTeX and CSL-JSON. Loaded where it is asked for. */

/** Every work, by id. */
export const ALL_SOURCES: Readonly<Record<SourceId, Source>> = { ...SOURCES, ...HEADLAND_SOURCES, ...SPRAY_SOURCES, ...SEASON_SOURCES, ...CANOPY_SOURCES, ...COMPARISON_SOURCES };

/** Definitions and habits: named beside what rests on them, but no works that could be cited. */
const NO_WORKS: ReadonlySet<string> = new Set(['geometry', 'arithmetic', 'habit', 'sqrt-law', 'fan-laws']);
export const isWork = (id: SourceId): boolean => !NO_WORKS.has(id);

/** Journals whose volume we do not know; the others are known by their volume. */
const JOURNALS: ReadonlySet<string> = new Set([
  'Agricultural Aviation', 'Annals of Applied Biology', 'Atmospheric Environment', 'Boundary-Layer Meteorology', 'Crop Protection', 'Erwerbs-Obstbau',
  'Journal of Aerosol Science', 'Journal of Agricultural Engineering Research', 'Journal of Fluid Mechanics', 'Journal of Meteorology', 'Pesticide Science', 'Zeitschrift des VDI'
]);
const PUBLISHERS: ReadonlySet<string> = new Set(['Cambridge University Press', 'Elsevier']);
/** Standards and guides of standards bodies, by the body. */
const STANDARD = /^(ISO|EPPO|ASABE|JCGM|GUM)\b/;

type Kind = 'article' | 'book' | 'standard' | 'other';

/** A work in fields of its own, as far as they are known. */
interface Work {
  readonly id: SourceId;
  readonly kind: Kind;
  /** Family and given names of people; a body or a name alone is `literal`. */
  readonly authors: readonly ({ readonly family: string; readonly given: string } | { readonly literal: string })[];
  readonly andOthers: boolean;
  readonly title: string;
  readonly year: string | null;
  readonly container: string;
  readonly volume?: string | undefined;
  readonly issue?: string | undefined;
  readonly pages?: string | undefined;
  readonly doi?: string | undefined;
  /** Number of a standard or another locator. */
  readonly number?: string | undefined;
  /** How we know it. */
  readonly note: string | null;
  readonly taken: string;
}

const VOLUME = /^(?<journal>.+?) (?<volume>\d+)(?:\((?<issue>[\w-]+)\))?(?::(?<pages>[\w–-]+)|(?=$))(?<rest>.*)$/u;
const PERSON = /^(?<family>[\p{L}’' -]+), (?<given>\p{Lu}[\p{L}.\- ]*\.)$/u;

const NOTES: Readonly<Record<Source['read'], string | null>> = {
  work: null,
  summary: 'Known from a summary or an abstract; the work itself was not read.',
  memory: 'Quoted from memory; not checked against the work.'
};

function workOf(id: SourceId): Work {
  const s = ALL_SOURCES[id];
  const names = s.authors.split('; ');
  const volume = VOLUME.exec(s.container ?? '')?.groups;
  // A number behind a series is no volume, unless pages or an issue stand with it.
  const numbered = !STANDARD.test(s.authors) && volume && (volume['pages'] || volume['issue']) ? volume : undefined;
  const doi = s.locator?.startsWith('doi:') ? s.locator.slice(4) : undefined;
  const container = s.container ?? '';
  const kind: Kind = STANDARD.test(s.authors) ? 'standard' : numbered || JOURNALS.has(container) ? 'article' : PUBLISHERS.has(container) ? 'book' : 'other';
  return {
    id,
    kind,
    authors: names.filter((n) => n !== 'et al.').map((name) => {
      const person = PERSON.exec(name)?.groups;
      return person ? { family: person['family']!, given: person['given']! } : { literal: name };
    }),
    andOthers: names.includes('et al.'),
    title: s.title,
    year: /^\d{4}$/.test(s.year) ? s.year : null,
    container: numbered ? numbered['journal']! : container,
    ...(numbered ? { volume: numbered['volume'], issue: numbered['issue'], pages: numbered['pages']?.replace('–', '-') } : {}),
    doi,
    number: doi ? undefined : s.locator,
    note: NOTES[s.read],
    taken: s.taken
  };
}

/** The works of some sources in the order given, each once; what is no work is passed over. */
const worksOf = (ids: readonly SourceId[]): readonly Work[] => [...new Set(ids)].filter(isWork).map(workOf);

/** What TeX would take for its own, and signs that its fonts need a command for. Letters stay as they are: the file is UTF-8. */
const TEX: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}', '{': '\\{', '}': '\\}', '&': '\\&', '%': '\\%', $: '\\$', '#': '\\#', _: '\\_', '~': '\\textasciitilde{}', '^': '\\textasciicircum{}'
};
const tex = (text: string): string => text.replace(/[\\{}&%$#_~^]/g, (c) => TEX[c]!);

/**
 * BibTeX, UTF-8; the key of a work is its id. Titles are in braces of their own, so that no style changes their capitals. A note says how we know
 * the work, `annote` what was taken from it.
 * @returns '' for no work
 */
export function bibtex(ids: readonly SourceId[]): string {
  return worksOf(ids).map(bibtexEntry).join('\n');
}

const TYPES: Readonly<Record<Kind, string>> = { article: 'article', book: 'book', standard: 'techreport', other: 'misc' };
/** Where a work stands. */
const CONTAINERS: Readonly<Record<Kind, string>> = { article: 'journal', book: 'publisher', standard: 'howpublished', other: 'howpublished' };

function bibtexEntry(w: Work): string {
  const names = w.authors.map((a) => ('literal' in a ? `{${tex(a.literal)}}` : `${tex(a.family)}, ${tex(a.given)}`));
  const fields: [string, string | null | undefined][] = [
    ['author', [...names, ...(w.andOthers ? ['others'] : [])].join(' and ')],
    ['title', `{${tex(w.title)}}`],
    [CONTAINERS[w.kind], tex(w.container)],
    ['institution', w.kind === 'standard' ? names.join(' and ') : null],
    ['type', w.kind === 'standard' ? 'Standard' : null],
    ['number', w.issue ?? (w.number === undefined ? undefined : tex(w.number))],
    ['volume', w.volume],
    ['pages', w.pages?.replace('-', '--')],
    ['year', w.year],
    ['doi', w.doi],
    ['note', w.note === null ? null : tex(w.note)],
    ['annote', tex(w.taken)]
  ];
  const lines = fields.flatMap(([name, value]) => (value ? [`  ${name} = {${value}}`] : []));
  return `@${TYPES[w.kind]}{${w.id},\n${lines.join(',\n')}\n}\n`;
}

const CSL: Readonly<Record<Kind, string>> = { article: 'article-journal', book: 'book', standard: 'standard', other: 'document' };

/** CSL-JSON, the list that citation processors read; ids and notes as in `bibtex`. */
export function cslJson(ids: readonly SourceId[]): string {
  return JSON.stringify(worksOf(ids).map(cslItem), null, 1) + '\n';
}

function cslItem(w: Work): Record<string, unknown> {
  const fields: Record<string, unknown> = {
    id: w.id,
    type: CSL[w.kind],
    author: [...w.authors, ...(w.andOthers ? [{ literal: 'others' }] : [])],
    title: w.title,
    [w.kind === 'book' ? 'publisher' : 'container-title']: w.container,
    volume: w.volume,
    issue: w.issue,
    page: w.pages,
    number: w.number,
    issued: w.year === null ? undefined : { 'date-parts': [[Number(w.year)]] },
    DOI: w.doi,
    note: w.note ?? undefined,
    annote: w.taken
  };
  return Object.fromEntries(Object.entries(fields).filter(([, v]) => v !== undefined && v !== ''));
}

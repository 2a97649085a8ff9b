import { SOURCES, type Source, type SourceId } from '#core/sources/bibliography.ts';
import { language } from './language.ts';

/** One line of a work: authors, year, title, where, what kind of reading it rests on. */
export function sourceLine(id: SourceId): string {
  const s: Source = SOURCES[id];
  const read = language().working.readFrom[s.read];
  return [`${[s.authors, s.year].filter(Boolean).join(' ')}: ${s.title}`, s.container, s.locator].filter(Boolean).join(', ') + (read ? ` (${read})` : '') + '.';
}

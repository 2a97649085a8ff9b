import { SOURCES, type Source, type SourceId } from '#core/sources/bibliography.ts';
import { NO_WORKS } from './en/works.ts';
import { language, look, workOf } from './language.ts';

/** One line of a work: authors, year, title, where, what kind of reading it rests on. */
export function sourceLine(id: SourceId): string {
  const s = look<Source>(SOURCES, id) ?? workOf(id);
  if (!s) return id;
  const read = language().working.readFrom[s.read];
  const where = [s.container, s.locator].filter((part) => part && part !== s.title);
  const line = look(NO_WORKS, id) ?? `${s.authors}${s.year ? ` (${s.year})` : ''}: ${[s.title, ...new Set(where)].join(', ')}`;
  return `${line}${read ? ` [${read}]` : ''}`;
}

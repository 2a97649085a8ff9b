/** In which order the parts of a date stand in a file. */
export type DateOrder = 'ymd' | 'mdy' | 'dmy';

export interface WrittenDate {
  readonly parts: readonly [string, string, string];
  /** The order, where it can be told from the date itself; dots are German and Swiss, day first. */
  readonly order: DateOrder | null;
}

const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/;
const TOGETHER = /^(\d{4})(\d{2})(\d{2})$/;
const YEAR_LAST = /^(\d{1,2})([-/.])(\d{1,2})\2(\d{4})$/;

/** The parts of a date as written; null where none stands. */
export function writtenDate(text: string): WrittenDate | null {
  const first = YEAR_FIRST.exec(text) ?? TOGETHER.exec(text);
  if (first) return { parts: [first[1]!, first[2]!, first[3]!], order: 'ymd' };
  const last = YEAR_LAST.exec(text);
  if (!last) return null;
  const [, a, mark, b, year] = last as unknown as [string, string, string, string, string];
  const order = mark === '.' ? 'dmy' : Number(a) > 12 ? 'dmy' : Number(b) > 12 ? 'mdy' : null;
  return { parts: [a, b, year], order };
}

/** The ISO date of the parts in an order; null where there is no such day. */
export function isoDate({ parts: [a, b, c], order: own }: WrittenDate, order: DateOrder): string | null {
  const [y, m, d] = own === 'ymd' ? [a, b, c] : (own ?? order) === 'mdy' ? [c, a, b] : [c, b, a];
  const iso = `${y.padStart(4, '0')}-${m.padStart(2, '0')}-${d.padStart(2, '0')}`;
  const time = Date.parse(`${iso}T00:00:00Z`);
  return Number.isFinite(time) && new Date(time).toISOString().startsWith(iso) ? iso : null;
}

const CLOCK = /^(\d{1,2})(?::(\d{2})(?::(\d{2})(?:\.\d+)?)?)?\s*(am|pm)?$/i;
/** Time zones are passed over: what counts is the day at the block. */
const ZONE = /(?:z|[+-]\d{2}:?\d{2})$/i;

/** Minutes of the day, 0…1440: 24:00 is the end of a day, as typical years write it. Null where no time stands. */
export function minutesOf(text: string): number | null {
  const found = CLOCK.exec(text.replace(ZONE, '').trim());
  if (!found) return null;
  const [, h, m = '0', , half] = found;
  let hour = Number(h);
  if (half) {
    if (hour < 1 || hour > 12) return null;
    hour = (hour % 12) + (half.toLowerCase() === 'pm' ? 12 : 0);
  }
  const minutes = hour * 60 + Number(m);
  return Number(m) < 60 && minutes <= 1440 ? minutes : null;
}

/** `2031-04-27T13:00` → its date and its time. */
export function partsOf(text: string): readonly [date: string, time: string] {
  const at = /[T ]/.exec(text);
  return at ? [text.slice(0, at.index), text.slice(at.index + 1)] : [text, ''];
}

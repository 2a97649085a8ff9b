/**
 * Marks of the Unicode bidirectional algorithm (UAX 9): where a page is read from the right, a figure keeps its order inside the
 * sentence, and a name of the user's that is written from the right, or that holds marks of its own, turns nothing but itself. Only a
 * page has them: files and terminals get text without.
 */
const [LRI, FSI, PDI] = ['\u2066', '\u2068', '\u2069'];

/** Letters that are written from the right, and marks that turn or close. */
const TURNS = /[\u0590-\u08ff\u200f\u202a-\u202e\u2066-\u2069\ufb1d-\ufdff\ufe70-\ufefc\ud802\ud803\ud83a\ud83b]/;
/** Embeddings, overrides, isolates and what ends them. */
const MARKS = /[\u202a-\u202e\u2066-\u2069]/g;
const LETTER = /\p{L}/u;
/** A number without sign, unit or span: it keeps its order by itself. */
const BARE_NUMBER = /^[\d.,\u202f]*$/;

/** Without isolates: for what leaves the page. */
export const unmarked = (text: string): string => text.replace(/[\u2066-\u2069]/g, '');

const onPage = (): boolean => typeof document !== 'undefined';
const fromRight = (): boolean => onPage() && document.documentElement.dir === 'rtl';

/** A figure with sign, unit, span or sum. */
export const ltr = (text: string): string => (fromRight() && /\d/.test(text) && !BARE_NUMBER.test(text) ? LRI + unmarked(text) + PDI : text);

/** Whether it would turn the sentence that it is put into: an id or a code never does. */
const turns = (text: string): boolean => onPage() && TURNS.test(text);

/** Text that was given, before it is put into a sentence. Isolates that stand in it in pairs stay; what would reach beyond it goes. */
export const given = (text: string): string => (turns(text) || (fromRight() && LETTER.test(text)) ? FSI + paired(text) + PDI : text);

/** The same for what may be an id or a code as well: it must stay as it is. */
export const kept = <T>(value: T): T | string => (typeof value === 'string' && turns(value) ? given(value) : value);

function paired(text: string): string {
  let open = 0;
  const whole = text.replace(MARKS, (mark) => {
    if (mark < LRI) return '';
    if (mark !== PDI) open++;
    else if (open === 0) return '';
    else open--;
    return mark;
  });
  return whole + PDI.repeat(open);
}


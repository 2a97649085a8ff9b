/**
 * Last words. A page that is closed may be gone before its save has begun, for that must first ask for the revision. So what is not
 * kept yet is written down at once, where writing does not wait; the next visit takes it up.
 */
export interface LastWords {
  readonly id: string;
  /** Revision that this text follows; 0 where the orchard was not kept yet. */
  readonly follows: number;
  readonly text: string;
}
type Area = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const PREFIX = 'rowtailor-unsaved-';

/** Says whether it is written. */
export function writeLast(area: Area | null, page: string, words: LastWords | null): boolean {
  try {
    if (words) area?.setItem(PREFIX + page, JSON.stringify(words));
    else area?.removeItem(PREFIX + page);
    return area !== null;
  } catch {
    return false;
  }
}

/** The last words of pages, each with the page's own name. What is no such thing is passed over. */
export function readLast(area: Area | null): (LastWords & { readonly page: string })[] {
  const found: (LastWords & { readonly page: string })[] = [];
  try {
    for (let i = 0; i < (area?.length ?? 0); i++) {
      const key = area?.key(i);
      if (!key?.startsWith(PREFIX)) continue;
      const words = parsed(area?.getItem(key) ?? '');
      if (words) found.push({ ...words, page: key.slice(PREFIX.length) });
    }
  } catch {
    // Forbidden: there are none.
  }
  return found;
}

function parsed(text: string): LastWords | null {
  try {
    const value: unknown = JSON.parse(text);
    if (!value || typeof value !== 'object') return null;
    const { id, follows, text: document } = value as Record<string, unknown>;
    return typeof id === 'string' && Number.isInteger(follows) && typeof document === 'string' ? { id, follows: follows as number, text: document } : null;
  } catch {
    return null;
  }
}

/**
 * Where a running stopwatch is kept: the instant at which it was started, and what it times. Written at the tap, so that a locked
 * screen, a reload or a phone call cost nothing.
 */
export interface WatchStore {
  load(): string | null;
  /** Says whether the text will outlive the page. */
  save(text: string | null): boolean;
}

const KEY = 'rowtailor-watch';
/** What the browser would not keep, for as long as the page lives: views come and go. */
let refused: string | null | undefined;

export function watchStore(storage: () => Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> = () => localStorage): WatchStore {
  return {
    load() {
      if (refused !== undefined) return refused;
      try {
        return storage().getItem(KEY);
      } catch {
        return null;
      }
    },
    save(text) {
      try {
        if (text === null) storage().removeItem(KEY);
        else storage().setItem(KEY, text);
        refused = undefined;
        return true;
      } catch {
        refused = text;
        return false;
      }
    }
  };
}

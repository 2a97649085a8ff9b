/** Block, rung and ghost in view. */
export interface Place {
  readonly block: string;
  readonly rung: string;
  readonly ghost: string | null;
}

const KEY = 'rowtailor-place';

/** Keeps the place in view, so that a reload comes back to it: the reader's, not the document's. A forbidden storage loses the place, nothing else. */
export function keepPlace(storage: Pick<Storage, 'setItem'> | null, place: Place): void {
  try {
    storage?.setItem(KEY, JSON.stringify(place));
  } catch {
    // Full or forbidden.
  }
}

export function keptPlace(storage: Pick<Storage, 'getItem'> | null): Place | null {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(KEY) ?? 'null');
    if (!kept || typeof kept !== 'object') return null;
    const { block, rung, ghost } = kept as Record<string, unknown>;
    return typeof block === 'string' && typeof rung === 'string' && (ghost === null || typeof ghost === 'string') ? { block, rung, ghost } : null;
  } catch {
    return null;
  }
}

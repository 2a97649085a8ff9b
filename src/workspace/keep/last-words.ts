import { readLast, writeLast } from '#store/keep/journal.ts';
import * as store from '#store/keep/orchards.ts';

interface Outside {
  readonly nowMs: () => number;
  /** Some random letters, never the same twice. */
  readonly letters: () => string;
  readonly local: Storage | null;
  readonly names: { readonly rescued: (name: string) => string };
}

/**
 * Brings into the store what pages wrote down as they went. Where the orchard has gone on since, the words become an orchard of their own.
 * Rejects where the store takes nothing: the words then stay where they are.
 * @returns names of those orchards
 */
export async function takeLastWords({ nowMs, letters, local, names }: Outside): Promise<readonly string[]> {
  const rescued: string[] = [];
  for (const { page, id, follows, text } of readLast(local)) {
    const stands = await store.kept(id);
    if (stands?.text !== text) {
      const name = nameOf(text);
      const base = { name, text, steps: null, settings: [], nowMs: nowMs(), ...formatOf(text) };
      const answer = follows === 0 || stands ? await store.save({ ...base, id, follows }) : null;
      if (answer?.kind !== 'saved') {
        const own = names.rescued(name);
        await store.save({ ...base, id: letters(), follows: 0, name: own, text: withName(text, own) });
        rescued.push(own);
      }
    }
    writeLast(local, page, null);
  }
  return rescued;
}

/** A page of an older version left words of its own version. */
function formatOf(text: string): { readonly format?: number } {
  try {
    const { version } = JSON.parse(text) as { version?: unknown };
    return Number.isSafeInteger(version) ? { format: version as number } : {};
  } catch {
    return {};
  }
}
function nameOf(text: string): string {
  try {
    const { name } = JSON.parse(text) as { name?: unknown };
    return typeof name === 'string' ? name : '';
  } catch {
    return '';
  }
}
function withName(text: string, name: string): string {
  try {
    return JSON.stringify({ ...(JSON.parse(text) as object), name });
  } catch {
    return text;
  }
}

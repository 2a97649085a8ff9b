import { broken, type Door } from './door.ts';

/** Longest that one input may take, ms. */
export const LONGEST_MS = 1000;

/**
 * Gives a door one input; once more where it took too long, for a hang comes again, and what the machine had to do meanwhile does not.
 */
export async function give(door: Door, bytes: Uint8Array): Promise<Given> {
  const first = await once(door, bytes);
  return first.ms > LONGEST_MS ? once(door, bytes) : first;
}

interface Given {
  readonly wrong: string | null;
  readonly taken: boolean;
  readonly ms: number;
}

/**
 * Gives a door one input. Returns what is wrong, null where nothing is, and how long it took: by the clock, or by the processor where other
 * work held it up meanwhile.
 */
async function once(door: Door, bytes: Uint8Array): Promise<Given> {
  const begin = performance.now();
  const before = process.cpuUsage();
  let wrong: string | null = null;
  let taken = false;
  try {
    taken = await door.read(bytes);
  } catch (error) {
    wrong = error instanceof Error ? (error.stack ?? error.message) : String(error);
  }
  const { user, system } = process.cpuUsage(before);
  const ms = Math.min(performance.now() - begin, (user + system) / 1000);
  return { wrong: wrong ?? broken() ?? (ms > LONGEST_MS ? `took ${Math.round(ms)} ms` : null), taken, ms };
}

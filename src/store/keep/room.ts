/** How safely, and in how much room, this browser keeps data. Unknown where it does not tell. */
export interface Room {
  /** The browser will not clear it by itself when space runs short. */
  readonly lasting: boolean | null;
  readonly usedBytes: number | null;
  readonly mostBytes: number | null;
}

const manager = (): StorageManager | null => (typeof navigator === 'undefined' ? null : ((navigator.storage as StorageManager | undefined) ?? null));

export async function room(): Promise<Room> {
  const storage = manager();
  const [lasting, estimate] = await Promise.all([storage?.persisted?.().catch(() => null) ?? null, storage?.estimate?.().catch(() => null) ?? null]);
  return { lasting, usedBytes: estimate?.usage ?? null, mostBytes: estimate?.quota ?? null };
}

/** Asks the browser not to clear what is kept. Some browsers ask the user in turn. */
export const askToLast = async (): Promise<boolean> => (await manager()?.persist?.().catch(() => false)) ?? false;

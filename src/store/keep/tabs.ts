/** Word to the other pages of this browser that an orchard has changed. */
export interface Word {
  readonly id: string;
  /** 0 where it was put away or deleted. */
  readonly revision: number;
}

export interface Tabs {
  say(word: Word): void;
  close(): void;
}

const CHANNEL = 'rowtailor-kept';

/** A word in what came over the channel; null for anything else. */
export function wordIn(data: unknown): Word | null {
  if (typeof data !== 'object' || data === null || !('id' in data && 'revision' in data)) return null;
  const { id, revision } = data;
  return typeof id === 'string' && typeof revision === 'number' && revision >= 0 ? { id, revision } : null;
}

/** A browser without channels has its pages find out at their next save. */
export function tabs(heard: (word: Word) => void): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { say: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    const word = wordIn(data);
    if (word) heard(word);
  };
  return { say: (word) => channel.postMessage(word), close: () => channel.close() };
}

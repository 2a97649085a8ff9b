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

/** A browser without channels has its pages find out at their next save. */
export function tabs(heard: (word: Word) => void): Tabs {
  if (typeof BroadcastChannel === 'undefined') return { say: () => undefined, close: () => undefined };
  const channel = new BroadcastChannel(CHANNEL);
  channel.onmessage = ({ data }: MessageEvent<unknown>) => {
    if (data && typeof data === 'object' && 'id' in data && 'revision' in data && typeof data.id === 'string' && typeof data.revision === 'number') heard({ id: data.id, revision: data.revision });
  };
  return { say: (word) => channel.postMessage(word), close: () => channel.close() };
}

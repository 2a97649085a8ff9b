/** How a verb ends. */
export const EXIT = { done: 0, refused: 1, usage: 2, unreadable: 3 } as const;
export type Exit = (typeof EXIT)[keyof typeof EXIT];

/** Ends a verb with a message on standard error. */
export class Stop extends Error {
  constructor(
    readonly exit: Exit,
    message: string
  ) {
    super(message);
  }
}

/** Where a verb reads and writes. */
export interface Streams {
  readonly stdin: AsyncIterable<Uint8Array>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

export type Verb = (args: readonly string[], streams: Streams) => Promise<Exit>;

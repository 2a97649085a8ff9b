import { open, type FileHandle } from 'node:fs/promises';
import { cli } from '#words/en/cli.ts';
import { EXIT, Stop } from '../exit.ts';
import type { Done } from './piece.ts';

/** Where lines go. */
export interface Sink {
  write(part: string | Uint8Array): Promise<void>;
  close(): Promise<void>;
}

/** Writes a table that is made, piece by piece. */
export interface Writer {
  begin(): Promise<void>;
  add(done: Done): Promise<void>;
  /** What only the end can tell. */
  end(): Promise<void>;
}

/** Standard output; waits for its reader. */
export const standardOutput: Sink = {
  async write(part) {
    // Only what has been handed on may be written over by its owner. What fails is told where the stream is listened to.
    if (part.length > 0) await new Promise<void>((done) => process.stdout.write(part, () => done()));
  },
  async close() {}
};

/** A file, opened with the first write: a table that is refused as a whole leaves alone what stands there. */
export function fileSink(path: string): Sink {
  let file: FileHandle | null = null;
  const told = async (act: () => Promise<void>): Promise<void> => {
    try {
      await act();
    } catch (error) {
      throw new Stop(EXIT.unreadable, cli.unwritable(path, whyUnwritable(error as NodeJS.ErrnoException)));
    }
  };
  return {
    write: (part) =>
      told(async () => {
        file ??= await open(path, 'w');
        await file.writeFile(part);
      }),
    close: () => told(async () => file?.close())
  };
}

const { noFolder, folder, denied, full } = cli.whyUnwritable;
const WHY: Readonly<Record<string, string>> = { ENOENT: noFolder, ENOTDIR: noFolder, EISDIR: folder, EACCES: denied, EPERM: denied, EROFS: denied, ENOSPC: full };

export const whyUnwritable = ({ code, message }: NodeJS.ErrnoException): string => WHY[code ?? ''] ?? message;

import { createReadStream } from 'node:fs';
import { cli } from '#words/en/cli.ts';
import { EXIT, Stop, type Streams } from './exit.ts';

const WHY: Readonly<Record<string, string>> = { ENOENT: cli.why.missing, ENOTDIR: cli.why.missing, EISDIR: cli.why.folder, EACCES: cli.why.denied, EPERM: cli.why.denied };

/** The text of a file, or of standard input for `-`; stops with `unreadable` where it is none, or longer than `most` bytes. */
export async function readText(file: string, most: number, streams: Streams): Promise<string> {
  const bytes = await readBytes(file, most, streams);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch (error) {
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error as Error)));
  }
}

/** The bytes of a file, or of standard input for `-`; stops with `unreadable` where there are none, or more than `most`. */
export async function readBytes(file: string, most: number, { stdin }: Streams): Promise<Buffer> {
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for await (const part of file === '-' ? stdin : (createReadStream(file) as AsyncIterable<Uint8Array>)) {
      length += part.length;
      if (length > most) throw new Stop(EXIT.unreadable, cli.unreadable(file, cli.why.tooLarge(most)));
      parts.push(part);
    }
    return Buffer.concat(parts);
  } catch (error) {
    if (error instanceof Stop) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error as Error)));
  }
}

/** Whether the system refused the file, by its calls or by its name; all else is a fault of ours. */
export const isUnreadable = (error: unknown): error is Error => error instanceof Error && ('syscall' in error || (error as NodeJS.ErrnoException).code === 'ERR_INVALID_ARG_VALUE');

/** Why a file could not be read or written, in words. */
export function whyUnreadable(error: Error): string {
  const { code, message } = error as NodeJS.ErrnoException;
  return code === 'ERR_ENCODING_INVALID_ENCODED_DATA' ? cli.why.encoding : (WHY[code ?? ''] ?? message);
}

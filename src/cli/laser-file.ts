import { open } from 'node:fs/promises';
import createLazPerf from 'laz-perf/lib/node/laz-perf.js';
import type { Unpacker } from '#job/laser/las/unpack.ts';
import type { Source } from '#job/laser/source.ts';

const quiet = (): void => {};
/** The library that unpacks LAZ. */
export const startUnpacker = async (): Promise<Unpacker> => (await createLazPerf({ print: quiet, printErr: quiet })) as unknown as Unpacker;

/** A file on disk, read in pieces. */
export async function fileSource(path: string): Promise<Source & { close(): Promise<void> }> {
  const file = await open(path, 'r');
  const stat = await file.stat();
  // Reading a folder fails by name; its size would say nothing.
  if (stat.isDirectory()) await file.read(new Uint8Array(1), 0, 1, 0);
  return {
    name: path,
    size: stat.size,
    async read(from, to) {
      const room = new Uint8Array(Math.max(0, to - from));
      const { bytesRead } = await file.read(room, 0, room.length, from);
      return room.subarray(0, bytesRead);
    },
    close: () => file.close()
  };
}

/** All that comes in, held at once. */
export async function memorySource(name: string, chunks: AsyncIterable<Uint8Array>): Promise<Source> {
  const parts: Uint8Array[] = [];
  for await (const chunk of chunks) parts.push(chunk);
  const all = Buffer.concat(parts);
  return { name, size: all.length, read: (from, to) => Promise.resolve(new Uint8Array(all.subarray(from, to))) };
}

import { refused, type Refused } from '#core/working/answer.ts';
import { piecesOf, type Source } from '../source.ts';
import type { LasHeader } from './header.ts';

/** What is needed of the library that unpacks LAZ (laz-perf, compiled to WebAssembly). */
export interface Unpacker {
  readonly HEAPU8: Uint8Array;
  _malloc(bytes: number): number;
  _free(at: number): void;
  readonly LASZip: new () => { open(at: number, bytes: number): void; getPoint(to: number): void; getCount(): number; delete(): void };
}
export type StartUnpacker = () => Promise<Unpacker>;

/** A compressed file is held whole while it is unpacked. */
export const MOST_LAZ_BYTES = 800_000_000;
/** Records that are handed on at a time. */
const BATCH = 10_000;
const MEGABYTE = 1e6;

/** Records of a plain file, some at a time. */
export async function* plainRecords(source: Source, { pointsAt, recordBytes, count }: LasHeader): AsyncGenerator<Uint8Array> {
  const step = Math.max(1, Math.floor((1 << 20) / recordBytes));
  for (let i = 0; i < count; i += step) yield await source.read(pointsAt + i * recordBytes, pointsAt + Math.min(count, i + step) * recordBytes);
}

/** Records of a compressed file, some at a time. What cannot be unpacked ends with a refusal. */
export async function* unpackedRecords(source: Source, header: LasHeader, start: StartUnpacker): AsyncGenerator<Uint8Array | Refused> {
  const { pointsAt, recordBytes, count } = header;
  if (source.size > MOST_LAZ_BYTES) return yield refused('las-laz-large', 'points', { size: Math.ceil(source.size / MEGABYTE), most: MOST_LAZ_BYTES / MEGABYTE });
  const first = await source.read(pointsAt, pointsAt + 8);
  const table = new DataView(first.buffer, first.byteOffset, first.byteLength).getBigInt64(0, true);
  // −1: it was written in one go, and the place stands at the very end.
  if (table !== -1n && (table < BigInt(pointsAt) + 8n || table + 8n > BigInt(source.size))) return yield refused('las-cut-short', 'points', { wanted: count, found: 0 });

  const damaged = (found: number): Refused => refused('las-damaged', 'points', { found, wanted: count });
  const z = await start();
  const file = z._malloc(source.size);
  const record = z._malloc(recordBytes);
  if (file === 0 || record === 0) return yield refused('las-laz-large', 'points', { size: Math.ceil(source.size / MEGABYTE), most: MOST_LAZ_BYTES / MEGABYTE });
  let at = 0;
  for await (const piece of piecesOf(source)) {
    z.HEAPU8.set(piece, file + at);
    at += piece.length;
  }
  let read = 0;
  let reader: InstanceType<Unpacker['LASZip']> | null = null;
  try {
    reader = new z.LASZip();
    reader.open(file, source.size);
    if (reader.getCount() !== count) return yield damaged(0);
    while (read < count) {
      const some = Math.min(BATCH, count - read);
      const batch = new Uint8Array(some * recordBytes);
      for (let i = 0; i < some; i++) {
        reader.getPoint(record);
        // The memory may have grown meanwhile, and with it where it is seen.
        batch.set(z.HEAPU8.subarray(record, record + recordBytes), i * recordBytes);
      }
      read += some;
      yield batch;
    }
  } catch {
    // What the library throws is a place in its own memory, or that it gave up.
    yield damaged(read);
  } finally {
    try {
      reader?.delete();
      z._free(record);
      z._free(file);
    } catch {
      // It gave up; its memory goes with it.
    }
  }
}

import type { RawPoints } from '#core/canopy/laser/place.ts';
import { refused, type Refused } from '#core/working/answer.ts';
import type { Source } from '../source.ts';
import { HEADER_BYTES, readLasHeader, type LasHeader } from './header.ts';
import { plainRecords, unpackedRecords, type StartUnpacker } from './unpack.ts';

/** Points of a file, and what came of the others. */
export interface LasPoints {
  readonly raw: RawPoints;
  readonly header: LasHeader;
  /** Every so many points were kept. */
  readonly every: number;
  /** Points that the file itself marks as withheld or as noise. */
  readonly marked: number;
}

/** Point formats from here on have a whole byte for the class. */
const NEW_FORMATS = 6;
/** Low point and high noise. */
const NOISE: ReadonlySet<number> = new Set([7, 18]);

function isMarked(records: DataView, at: number, format: number): boolean {
  const flags = records.getUint8(at + 15);
  return format < NEW_FORMATS ? (flags & 0x80) !== 0 || NOISE.has(flags & 0x1f) : (flags & 0x04) !== 0 || NOISE.has(records.getUint8(at + 16));
}

/**
 * Reads a LAS or LAZ file: coordinates in the file's own unit, x·scale + offset. Memory is bounded: of more than `most` points every second,
 * third … is kept.
 * @param progress hears the part that is read, 0…1
 */
export async function readLas(source: Source, start: StartUnpacker, most: number, progress: (done: number) => void = () => {}): Promise<LasPoints | Refused> {
  const header = readLasHeader(await source.read(0, Math.min(source.size, HEADER_BYTES)), source.size);
  if ('kind' in header) return header;
  const { count, recordBytes, format, scale, offset } = header;
  const every = Math.ceil(count / most);
  const room = Math.ceil(count / every);
  const [x, y, z] = [new Float64Array(room), new Float64Array(room), new Float64Array(room)];
  let seen = 0;
  let kept = 0;
  let marked = 0;
  for await (const batch of header.compressed ? unpackedRecords(source, header, start) : plainRecords(source, header)) {
    if ('kind' in batch) return batch;
    const v = new DataView(batch.buffer, batch.byteOffset, batch.byteLength);
    for (let at = 0; at + recordBytes <= batch.length; at += recordBytes, seen++) {
      if (seen % every !== 0) continue;
      if (isMarked(v, at, format)) {
        marked++;
        continue;
      }
      x[kept] = v.getInt32(at, true) * scale[0] + offset[0];
      y[kept] = v.getInt32(at + 4, true) * scale[1] + offset[1];
      z[kept] = v.getInt32(at + 8, true) * scale[2] + offset[2];
      kept++;
    }
    progress(seen / count);
  }
  if (seen < count) return refused('las-cut-short', 'points', { wanted: count, found: seen });
  if (kept === 0) return refused('las-no-points', 'points');
  return { raw: { x: x.subarray(0, kept), y: y.subarray(0, kept), z: z.subarray(0, kept) }, header, every, marked };
}

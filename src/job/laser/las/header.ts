import { refused, type Refused } from '#core/working/answer.ts';

/** What the header of a LAS or LAZ file says that is needed here (ASPRS LAS 1.2 to 1.4, public header block). */
export interface LasHeader {
  readonly version: string;
  readonly format: number;
  readonly compressed: boolean;
  readonly recordBytes: number;
  readonly pointsAt: number;
  readonly count: number;
  readonly scale: readonly [number, number, number];
  readonly offset: readonly [number, number, number];
}

/** Longest public header, that of 1.4. */
export const HEADER_BYTES = 375;
/** Header of 1.2. */
const SHORTEST = 227;
/** Least length of a record, by point format. */
const RECORD_BYTES = [20, 28, 26, 34, 57, 63, 30, 36, 38, 59, 67];
/** A compressed file marks its format with 128, or both upper bits. */
const COMPRESSED = 0x80;
const FORMAT_BITS = 0x3f;
/** A step of the whole numbers that coordinates are written in, in the file's unit: coarser than this, no canopy is to be seen. */
const COARSEST = 1;
const MAGIC = 'LASF';

export const startsAsLas = (head: Uint8Array): boolean => String.fromCharCode(...head.subarray(0, 4)) === MAGIC;

/**
 * Reads the public header. Refused by name: another kind of file, a version or a point format that is not known, a record too short for its
 * format, a scale or an offset that cannot be, no points, a file that ends before its points do.
 * @param head the first `HEADER_BYTES` of the file, or all of it
 */
export function readLasHeader(head: Uint8Array, fileBytes: number): LasHeader | Refused {
  if (!startsAsLas(head)) return refused('las-not-las', 'points');
  if (head.length < SHORTEST) return refused('las-header-short', 'points', { found: fileBytes, least: SHORTEST });
  const v = new DataView(head.buffer, head.byteOffset, head.byteLength);
  const [major, minor] = [v.getUint8(24), v.getUint8(25)];
  const version = `${major}.${minor}`;
  if (major !== 1 || minor > 4) return refused('las-version', 'points', { version });
  if (minor === 4 && head.length < HEADER_BYTES) return refused('las-header-short', 'points', { found: fileBytes, least: HEADER_BYTES });
  const kind = v.getUint8(104);
  const format = kind & FORMAT_BITS;
  const least = RECORD_BYTES[format];
  if (least === undefined) return refused('las-format', 'points', { format: String(format), most: String(RECORD_BYTES.length - 1) });
  const recordBytes = v.getUint16(105, true);
  if (recordBytes < least) return refused('las-record-short', 'points', { found: recordBytes, least, format: String(format) });
  const three = (at: number): readonly [number, number, number] => [v.getFloat64(at, true), v.getFloat64(at + 8, true), v.getFloat64(at + 16, true)];
  const scale = three(131);
  const bad = scale.findIndex((s) => !(s > 0 && s <= COARSEST));
  if (bad >= 0) return refused('las-scale', 'points', { axis: 'xyz'[bad]!, found: String(scale[bad]), most: COARSEST });
  const offset = three(155);
  const badOffset = offset.findIndex((o) => !Number.isFinite(o));
  if (badOffset >= 0) return refused('las-offset', 'points', { axis: 'xyz'[badOffset]!, found: String(offset[badOffset]) });

  const count = minor === 4 && v.getBigUint64(247, true) > 0n ? Number(v.getBigUint64(247, true)) : v.getUint32(107, true);
  const pointsAt = v.getUint32(96, true);
  if (count === 0) return refused('las-no-points', 'points');
  const compressed = (kind & COMPRESSED) !== 0;
  const room = fileBytes - pointsAt;
  // A compressed file begins with the place of its table of chunks.
  if (compressed ? room < 8 : room < count * recordBytes)
    return refused('las-cut-short', 'points', { wanted: count, found: compressed ? 0 : Math.max(0, Math.floor(room / recordBytes)) });
  return { version, format, compressed, recordBytes, pointsAt, count, scale, offset };
}

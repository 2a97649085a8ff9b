/** A point of a LAS file that these tests write; whole numbers of steps are made of the coordinates. */
export interface LasPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly intensity?: number;
  readonly class?: number;
  readonly withheld?: boolean;
}

export interface LasOptions {
  readonly minor?: 2 | 3 | 4;
  readonly format?: number;
  readonly scale?: number;
  readonly offset?: readonly [number, number, number];
  /** Bytes behind each record. */
  readonly extra?: number;
}

const RECORD = [20, 28, 26, 34, 57, 63, 30, 36, 38, 59, 67];
const HEADER = { 2: 227, 3: 235, 4: 375 };

/** A LAS file, written by the ASPRS specification: public header, no variable records, the points. */
export function las(points: readonly LasPoint[], { minor = 2, format = 0, scale = 0.001, offset = [0, 0, 0], extra = 0 }: LasOptions = {}): Uint8Array {
  const head = HEADER[minor];
  const record = RECORD[format]! + extra;
  const bytes = new Uint8Array(head + points.length * record);
  const v = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode('LASF'));
  v.setUint8(24, 1);
  v.setUint8(25, minor);
  v.setUint16(94, head, true);
  v.setUint32(96, head, true);
  v.setUint8(104, format);
  v.setUint16(105, record, true);
  if (minor < 4 || format < 6) v.setUint32(107, points.length, true);
  for (let a = 0; a < 3; a++) {
    v.setFloat64(131 + 8 * a, scale, true);
    v.setFloat64(155 + 8 * a, offset[a]!, true);
  }
  (['x', 'y', 'z'] as const).forEach((axis, a) => {
    const all = points.map((p) => p[axis]);
    v.setFloat64(179 + 16 * a, all.reduce((m, c) => Math.max(m, c), -Infinity), true);
    v.setFloat64(187 + 16 * a, all.reduce((m, c) => Math.min(m, c), Infinity), true);
  });
  if (minor === 4) v.setBigUint64(247, BigInt(points.length), true);
  points.forEach((p, i) => {
    const at = head + i * record;
    v.setInt32(at, Math.round((p.x - offset[0]) / scale), true);
    v.setInt32(at + 4, Math.round((p.y - offset[1]) / scale), true);
    v.setInt32(at + 8, Math.round((p.z - offset[2]) / scale), true);
    v.setUint16(at + 12, p.intensity ?? 0, true);
    if (format < 6) {
      v.setUint8(at + 14, 0b00001001);
      v.setUint8(at + 15, (p.class ?? 0) | (p.withheld ? 0x80 : 0));
    } else {
      v.setUint8(at + 14, 0x11);
      v.setUint8(at + 15, p.withheld ? 0x04 : 0);
      v.setUint8(at + 16, p.class ?? 0);
    }
  });
  return bytes;
}

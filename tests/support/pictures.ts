import { crc32, deflateSync } from 'node:zlib';

const u32 = (v: number): number[] => [(v >>> 24) & 255, (v >>> 16) & 255, (v >>> 8) & 255, v & 255];
const u16 = (v: number): number[] => [v >> 8, v & 255];

/** A PNG, 8 bits a channel, of pixels by place; without them a header that promises them and nothing behind it. */
export function png(width: number, height: number, pixel: ((x: number, y: number) => readonly [number, number, number]) | null): Uint8Array {
  const chunk = (type: string, data: Uint8Array): Uint8Array => {
    const body = Buffer.concat([Buffer.from(type, 'latin1'), data]);
    return Buffer.concat([Buffer.from(u32(data.length)), body, Buffer.from(u32(crc32(body)))]);
  };
  const rows = new Uint8Array(pixel ? height * (1 + 3 * width) : 0);
  if (pixel) for (let y = 0, at = 0; y < height; y++) {
    at++;
    for (let x = 0; x < width; x++) {
      rows.set(pixel(x, y), at);
      at += 3;
    }
  }
  const head = Uint8Array.from([...u32(width), ...u32(height), 8, 2, 0, 0, 0]);
  return new Uint8Array(Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 13, 10, 26, 10]), chunk('IHDR', head), chunk('IDAT', deflateSync(rows)), chunk('IEND', new Uint8Array(0))]));
}

/** The beginning of a JPEG: its mark, the JFIF note, a table and the frame that tells its size. */
export const JPEG = (width: number, height: number): Uint8Array =>
  Uint8Array.from([
    0xff, 0xd8, 0xff, 0xe0, ...u16(16), 0x4a, 0x46, 0x49, 0x46, 0, 1, 1, 0, 0, 1, 0, 1, 0, 0,
    0xff, 0xdb, ...u16(67), 0, ...new Array<number>(64).fill(1),
    0xff, 0xc4, ...u16(4), 0, 0,
    0xff, 0xc0, ...u16(17), 8, ...u16(height), ...u16(width), 3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0
  ]);

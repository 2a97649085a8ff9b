import { refused, type Refused } from '#core/working/answer.ts';

/** What a picture says of itself before it is decoded. */
export interface PictureHeader {
  readonly type: 'image/jpeg' | 'image/png' | 'image/webp';
  /** As stored: an orientation that the file tells may swap the two. */
  readonly width: number;
  readonly height: number;
}

export const MOST_BYTES = 60_000_000;
export const MOST_PIXELS = 64_000_000;
export const LEAST_SIDE = 64;
/** Enough of a file to hold the size of any picture but one behind several megabytes of notes. */
export const HEAD_BYTES = 4_000_000;

const MILLION = 1e6;

/**
 * Looks at the first bytes of a picture: its kind by its own mark, never by its name, and its size, so that a small file that unfolds into a
 * huge picture is refused before it is decoded.
 * @param head the first `HEAD_BYTES` of the file, or all of it
 * @param fileBytes length of the whole file
 */
export function readPictureHeader(head: Uint8Array, fileBytes: number): PictureHeader | Refused {
  if (fileBytes === 0) return refused('photo-empty', 'photo');
  if (fileBytes > MOST_BYTES) return refused('photo-file-large', 'photo', { size: Math.ceil(fileBytes / MILLION), most: MOST_BYTES / MILLION });
  const found = sizeIn(new DataView(head.buffer, head.byteOffset, head.byteLength));
  if ('kind' in found) return found;
  const { width, height } = found;
  if (width < LEAST_SIDE || height < LEAST_SIDE) return refused('photo-too-small', 'photo', { width, height, least: LEAST_SIDE });
  if (width * height > MOST_PIXELS) return refused('photo-too-large', 'photo', { width, height, most: MOST_PIXELS / MILLION });
  return found;
}

function sizeIn(v: DataView): PictureHeader | Refused {
  try {
    if (ascii(v, 1, 3) === 'PNG' && v.getUint8(0) === 0x89) return { type: 'image/png', width: v.getUint32(16), height: v.getUint32(20) };
    if (v.getUint16(0) === 0xffd8) return jpegSize(v);
    if (ascii(v, 0, 4) === 'RIFF' && ascii(v, 8, 4) === 'WEBP') return webpSize(v);
  } catch (error) {
    // Read beyond the end.
    if (!(error instanceof RangeError)) throw error;
    return v.byteLength < 16 && !startsAsPicture(v) ? refused('photo-not-picture', 'photo') : refused('photo-cut-short', 'photo');
  }
  return refused('photo-not-picture', 'photo');
}

const ascii = (v: DataView, at: number, length: number): string => String.fromCharCode(...Array.from({ length }, (_, i) => v.getUint8(at + i)));
const startsAsPicture = (v: DataView): boolean => v.byteLength >= 2 && [0x8950, 0xffd8, 0x5249].includes(v.getUint16(0));

/** Frame headers of JPEG: SOF0 to SOF15 without DHT, JPG and DAC. */
const isFrame = (marker: number): boolean => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** Markers without a length: padding, restarts, start. */
const standsAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8);

/** Walks from segment to segment until the frame header, which tells height and width. */
function jpegSize(v: DataView): PictureHeader | Refused {
  let at = 2;
  for (;;) {
    while (v.getUint8(at) !== 0xff) at++;
    while (v.getUint8(at) === 0xff) at++;
    const marker = v.getUint8(at++);
    if (standsAlone(marker)) continue;
    if (isFrame(marker)) return { type: 'image/jpeg', height: v.getUint16(at + 3), width: v.getUint16(at + 5) };
    // The picture itself, or its end, before its frame.
    if (marker === 0xda || marker === 0xd9) return refused('photo-cut-short', 'photo');
    at += Math.max(2, v.getUint16(at));
  }
}

/** The three kinds of WebP: extended, lossy, lossless. */
function webpSize(v: DataView): PictureHeader | Refused {
  const type = 'image/webp' as const;
  const u24 = (at: number): number => v.getUint16(at, true) + 65536 * v.getUint8(at + 2);
  switch (ascii(v, 12, 4)) {
    case 'VP8X':
      return { type, width: 1 + u24(24), height: 1 + u24(27) };
    case 'VP8 ':
      return { type, width: v.getUint16(26, true) & 0x3fff, height: v.getUint16(28, true) & 0x3fff };
    case 'VP8L': {
      const bits = v.getUint32(21, true);
      return { type, width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
    }
    default:
      return refused('photo-not-picture', 'photo');
  }
}

/** The decoder could make nothing of it. */
export const UNDECODABLE = refused('photo-undecodable', 'photo');

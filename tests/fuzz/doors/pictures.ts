import fc from 'fast-check';
import { canopyOfPhoto } from '#core/canopy/photo/canopy.ts';
import { bandEdges, photoOf } from '#core/canopy/photo/counts.ts';
import { photoDensity } from '#core/canopy/photo/density.ts';
import { histogramsOf } from '#core/canopy/photo/frame.ts';
import { otsu } from '#core/canopy/photo/otsu.ts';
import { LEVELS } from '#core/canopy/photo/types.ts';
import { outlineOf } from '#core/canopy/outline.ts';
import { isRefused } from '#core/working/answer.ts';
import { LEAST_SIDE, MOST_PIXELS, readPictureHeader } from '#job/photo/header.ts';
import '#words/row/join.ts';
import { JPEG, png } from '../../support/pictures.ts';
import { finite, reasons, utf8, type Door } from '../door.ts';
import { said } from './points.ts';
import { DEMO, taken } from './rung.ts';
import { head } from './tables.ts';

const webp = (kind: string, body: readonly number[]): Uint8Array => Uint8Array.from([...utf8('RIFF'), 0, 0, 0, 0, ...utf8(`WEBP${kind}`), 0, 0, 0, 0, ...body, ...new Array<number>(8).fill(0)]);
/** A JPEG with a note of its orientation before the frame. */
const turned = (orientation: number): Uint8Array => {
  const exif = [...utf8('Exif'), 0, 0, 0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0];
  const plain = JPEG(640, 480);
  return Uint8Array.from([...plain.subarray(0, 2), 0xff, 0xe1, 0, exif.length + 2, ...exif, ...plain.subarray(2)]);
};
const { canopy } = DEMO.blocks[0]!.rungs.at(-1)!;
/** Sizes that promise what no picture has. */
const huge = fc.tuple(fc.nat(0xffff), fc.nat(0xffff)).map(([w, h]) => JPEG(w, h));
const svg = fc.constantFrom('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>', '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY a "aaaaaaaa"><!ENTITY b "&a;&a;&a;">]><svg>&b;</svg>', 'GIF89a').map(utf8);

/** Pixels with the frame that the user laid: the first ten bytes say where it lies and how wide the picture is. */
const pixels = (of: (i: number) => number, n = 2500): Uint8Array => Uint8Array.from([50, 5, 250, 5, 250, 3, 40, 200, 0, 0, ...Array.from({ length: n }, (_, i) => of(i))]);

export const PICTURE_DOORS: readonly Door[] = [
  {
    name: 'head of a photograph',
    files: [head('static/icon-192.png', 4000), head('static/icon-touch-180.png', 2000), png(320, 200, null), JPEG(640, 480), turned(6), turned(255), webp('VP8X', [0, 0, 0, 0, 0x7f, 2, 0, 0xdf, 1, 0]), webp('VP8 ', [0, 0, 0, 0x9d, 1, 0x2a, 0x80, 2, 0xe0, 1]), webp('VP8L', [0x2f, 0x7f, 0xc2, 0x77, 0])],
    hostile: fc.oneof(huge, svg),
    read(bytes) {
      const r = readPictureHeader(bytes, bytes.length);
      if (isRefused(r as never)) return reasons([r as never], said);
      const { type, width, height } = r as { type: string; width: number; height: number };
      // Nothing else goes on to the browser's decoder, under no other name.
      if (!['image/jpeg', 'image/png', 'image/webp'].includes(type)) throw new Error(`a picture of the kind ${type}`);
      if (!(width >= LEAST_SIDE && height >= LEAST_SIDE && width * height <= MOST_PIXELS)) throw new Error(`${width} × ${height} pixels`);
      return true;
    }
  },
  {
    name: 'pixels of a photograph',
    files: [pixels((i) => (i % 30 < 12 ? 40 : 220)), pixels(() => 7), pixels((i) => (i * 37) % 256)],
    read(bytes) {
      const at = (i: number): number => bytes[i] ?? 0;
      const levels = bytes.subarray(10);
      const width = Math.max(1, at(0));
      const height = Math.floor(levels.length / width);
      const edge = (a: number, b: number): [number, number] => [Math.min(a, b) / 255, Math.max(a, b) / 255];
      const [[left, right], [top, bottom]] = [edge(at(1), at(2)), edge(at(3), at(4))];
      const edges = bandEdges(at(5) / 20, at(5) / 20 + 0.05 + at(6) / 20, 0.05 + at(7) / 100);
      const all = histogramsOf(levels, width, height, { left, right, top, bottom }, edges.length - 1);
      const bands = Array.from({ length: edges.length - 1 }, (_, k) => all.subarray(k * LEVELS, (k + 1) * LEVELS));
      const sum = new Float64Array(LEVELS);
      for (const b of bands) b.forEach((n, level) => (sum[level]! += n));
      const parted = otsu(sum);
      finite(parted);
      if (!('threshold' in parted)) return reasons([parted], said);
      const photo = photoOf(bands, edges, outlineOf(canopy), parted.threshold);
      const density = photoDensity(photo);
      finite(density);
      if (isRefused(density.density)) return reasons([density.density], said);
      taken(canopyOfPhoto(canopy, density, true)!, { photo });
      return true;
    }
  }
];

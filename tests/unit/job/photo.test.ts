import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEAD_BYTES, readPictureHeader } from '#job/photo/header.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/row/join.ts';
import { JPEG, png } from '../../support/pictures.ts';

const read = (bytes: Uint8Array, size = bytes.length) => readPictureHeader(bytes.subarray(0, HEAD_BYTES), size);
const said = (bytes: Uint8Array, size?: number): string => {
  const r = read(bytes, size);
  return 'kind' in r ? refusalSentence(r, 'metric') : `${r.type} ${r.width} × ${r.height}`;
};
const text = (s: string) => new TextEncoder().encode(s);

describe('a picture tells its kind and size', () => {
  it('as PNG', () => expect(said(png(320, 200, () => [1, 2, 3]))).toBe('image/png 320 × 200'));
  it('as JPEG, behind whatever stands before its frame', () => {
    expect(said(JPEG(640, 480))).toBe('image/jpeg 640 × 480');
    // A note of the greatest length, and padding.
    const note = new Uint8Array(2 + 65535).fill(0xff, 0, 1);
    note.set([0xff, 0xfe, 0xff, 0xff]);
    const plain = JPEG(640, 480);
    expect(said(Uint8Array.from([...plain.subarray(0, 2), ...note, 0xff, 0xff, ...plain.subarray(2)]))).toBe('image/jpeg 640 × 480');
  });
  it('as WebP of each kind', () => {
    const webp = (kind: string, body: readonly number[]) => Uint8Array.from([...text('RIFF'), 0, 0, 0, 0, ...text(`WEBP${kind}`), 0, 0, 0, 0, ...body, 0, 0, 0, 0, 0, 0, 0, 0]);
    expect(said(webp('VP8X', [0, 0, 0, 0, 0x7f, 0x02, 0, 0xdf, 0x01, 0]))).toBe('image/webp 640 × 480');
    expect(said(webp('VP8 ', [0, 0, 0, 0x9d, 0x01, 0x2a, 0x80, 0x02, 0xe0, 0x01]))).toBe('image/webp 640 × 480');
    expect(said(webp('VP8L', [0x2f, 0x7f, 0xc2, 0x77, 0]))).toBe('image/webp 640 × 480');
  });
});

describe('what is none, or too much, is refused by name before anything is decoded', () => {
  it.each([
    ['text that is called a picture', text('tree,height_m\n1,3\n'), 'The file is no JPEG, PNG or WebP picture.'],
    ['a short text', text('x'), 'The file is no JPEG, PNG or WebP picture.'],
    ['another kind', text('GIF89a\x40\x01\xc8\x00\x00\x00\x00\x00\x00\x00\x00'), 'The file is no JPEG, PNG or WebP picture.'],
    ['nothing', new Uint8Array(0), 'The file is empty.'],
    ['one pixel', png(1, 1, () => [0, 0, 0]), 'The picture is 1 × 1 pixels; at least 64 pixels each way are needed.'],
    ['a small file that unfolds into a huge picture', png(60_000, 60_000, null), 'The picture is 60000 × 60000 pixels; at most 64 million pixels are read.'],
    ['a JPEG cut off before its frame', JPEG(640, 480).subarray(0, 15), 'The picture ends before it tells its size.'],
    ['a JPEG without a frame', Uint8Array.from([0xff, 0xd8, 0xff, 0xd9, ...new Uint8Array(40)]), 'The picture ends before it tells its size.'],
    ['a PNG cut off', png(320, 200, null).subarray(0, 18), 'The picture ends before it tells its size.']
  ])('%s', (_, bytes, sentence) => expect(said(bytes)).toContain(sentence));
  it('a file that is too long', () => expect(said(JPEG(640, 480), 70_000_001)).toContain('The file has 71 MB; at most 60 MB are read.'));
  it('whatever the bytes, there is an answer', () => {
    const whole = JPEG(640, 480);
    fc.assert(
      fc.property(fc.oneof(fc.uint8Array({ maxLength: 400 }), fc.tuple(fc.nat(whole.length - 1), fc.nat(255)).map(([at, b]) => Object.assign(whole.slice(), { [at]: b })), fc.nat(whole.length).map((n) => whole.subarray(0, n))), (bytes) => {
        const r = read(bytes);
        if (!('kind' in r)) expect(r.width * r.height).toBeLessThanOrEqual(64e6);
        else expect(r.code).toMatch(/^photo-/);
      })
    );
  });
});


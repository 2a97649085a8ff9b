import { randomBytes } from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isLink, linkOf, linkText, LONGEST_LINK, LONGEST_UNFOLDED } from '#store/keep/link.ts';
import demo from '../../../../demo-data/lower-bench.json';

const text = JSON.stringify(demo);
/** A fragment as another program would make it. */
const foreign = (bytes: Uint8Array, version = 1): string => `#orchard/${version}/${Buffer.from(bytes).toString('base64url')}`;

describe('a document as a link', () => {
  it('comes back as it went, with signs that need no escape in an address', async () => {
    const made = await linkOf(text);
    if (!made.ok) throw new Error(made.fault);
    expect(made.hash).toMatch(/^#orchard\/1\/[A-Za-z0-9_-]+$/);
    expect(isLink(made.hash)).toBe(true);
    expect(await linkText(made.hash)).toEqual({ ok: true, text });
    // Raw DEFLATE, as another program reads it.
    expect(inflateRawSync(Buffer.from(made.hash.split('/')[2]!, 'base64url')).toString('utf8')).toBe(text);
  });
  it('whatever the text', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 300 }), async (any) => {
        fc.pre(any.isWellFormed());
        const made = await linkOf(any);
        expect(made.ok && (await linkText(made.hash))).toEqual({ ok: true, text: any });
      }),
      { numRuns: 100 }
    );
  });
  it('that another program made is read too', async () => {
    expect(await linkText(foreign(deflateRawSync(Buffer.from('{"é":"…"}'))))).toEqual({ ok: true, text: '{"é":"…"}' });
  });
  it('of another version is refused by name', async () => {
    expect(await linkText(foreign(deflateRawSync(Buffer.from(text)), 2))).toEqual({ ok: false, fault: 'other-version' });
  });
  it('cut short anywhere, or altered, is refused or gives another text, and never throws', async () => {
    const made = await linkOf(text);
    if (!made.ok) throw new Error(made.fault);
    const { hash } = made;
    for (let length = 0; length < hash.length; length += 97) {
      const found = await linkText(hash.slice(0, length));
      expect(found.ok).toBe(false);
    }
    for (const odd of ['', '#', '#orchard/', '#orchard/1/', '#orchard/1/%00', '#orchard/x/AAAA', '#orchard/1/AAAA AAAA', `${hash}=`, '#orchard/99999999999999/AA']) expect((await linkText(odd)).ok, odd).toBe(false);
  });
  it('that is no text inside is damaged', async () => {
    expect(await linkText(foreign(deflateRawSync(Buffer.from([0xff, 0xfe, 0x80]))))).toEqual({ ok: false, fault: 'damaged' });
  });
  it('that unfolds without end is given up while it unfolds', async () => {
    const bomb = deflateRawSync(Buffer.alloc(40_000_000), { level: 9 });
    const hash = foreign(bomb);
    expect(hash.length).toBeLessThan(LONGEST_LINK);
    const before = process.memoryUsage().arrayBuffers;
    expect(await linkText(hash)).toEqual({ ok: false, fault: 'unfolds-too-far' });
    // Nowhere near the forty megabytes that it unfolds to.
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(12_000_000);
  });
  it('too long to be written or read is refused either way', async () => {
    // Letters by chance do not compress.
    expect(await linkOf(randomBytes(60_000).toString('hex'))).toMatchObject({ ok: false, fault: 'too-long' });
    expect(await linkOf('a'.repeat(LONGEST_UNFOLDED + 1))).toMatchObject({ ok: false, fault: 'too-long' });
    expect(await linkText(`#orchard/1/${'A'.repeat(LONGEST_LINK + 1)}`)).toEqual({ ok: false, fault: 'too-long' });
  });
});

/**
 * A document in the fragment of an address: it is read by the page alone and is sent to no host. `#orchard/1/…`: the version of the
 * link, then the document's text, compressed (raw DEFLATE, RFC 1951) and written in base64url (RFC 4648, section 5).
 */
const WORD = 'orchard';
const VERSION = 1;

/** Characters of the data in a link. Longer ones are cut by mail programs and refused by some browsers. */
export const LONGEST_LINK = 60_000;
/** Characters, at most, of what a link unfolds to: a few characters can be made to unfold to gigabytes. */
export const LONGEST_UNFOLDED = 4_000_000;

export type LinkFault = 'other-version' | 'too-long' | 'damaged' | 'unfolds-too-far' | 'no-means';
export type Link = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly fault: LinkFault };

export const isLink = (hash: string): boolean => hash.startsWith(`#${WORD}/`);

/** The fragment for a text; too long a one is refused. */
export async function linkOf(text: string): Promise<{ readonly ok: true; readonly hash: string } | { readonly ok: false; readonly fault: LinkFault; readonly length: number }> {
  if (typeof CompressionStream === 'undefined') return { ok: false, fault: 'no-means', length: 0 };
  const packed = await new Response(new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'))).arrayBuffer();
  const data = toBase64Url(new Uint8Array(packed));
  if (data.length > LONGEST_LINK || text.length > LONGEST_UNFOLDED) return { ok: false, fault: 'too-long', length: data.length };
  return { ok: true, hash: `#${WORD}/${VERSION}/${data}` };
}

/** The text of a fragment, or why there is none. Never throws. What it holds is foreign data still. */
export async function linkText(hash: string): Promise<Link> {
  const refuse = (fault: LinkFault): Link => ({ ok: false, fault });
  const [, version, data = ''] = /^#orchard\/(\d{1,9})\/(.*)$/s.exec(hash) ?? [];
  if (version === undefined) return refuse('damaged');
  if (Number(version) !== VERSION) return refuse('other-version');
  if (data.length > LONGEST_LINK) return refuse('too-long');
  if (typeof DecompressionStream === 'undefined') return refuse('no-means');
  const packed = fromBase64Url(data);
  if (!packed) return refuse('damaged');
  try {
    return await unfolded(packed);
  } catch {
    return refuse('damaged');
  }
}

/** Fed in small pieces, so that it never holds much more than what is allowed before it is given up. */
const PIECE = 256;

async function unfolded(packed: Uint8Array<ArrayBuffer>): Promise<Link> {
  let at = 0;
  const source = new ReadableStream<Uint8Array<ArrayBuffer>>(
    {
      pull(to) {
        if (at >= packed.length) return to.close();
        to.enqueue(packed.subarray(at, (at += PIECE)));
      }
    },
    { highWaterMark: 0 }
  );
  const reader = source.pipeThrough(new DecompressionStream('deflate-raw')).getReader();
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let text = '';
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return { ok: true, text: text + decoder.decode() };
    text += decoder.decode(value, { stream: true });
    if (text.length > LONGEST_UNFOLDED) {
      await reader.cancel().catch(() => undefined);
      return { ok: false, fault: 'unfolds-too-far' };
    }
  }
}

function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (let i = 0; i < bytes.length; i += 0x8000) binary += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(data: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[A-Za-z0-9_-]+$/.test(data)) return null;
  try {
    return Uint8Array.from(atob(data.replaceAll('-', '+').replaceAll('_', '/')), (c) => c.charCodeAt(0));
  } catch {
    return null;
  }
}

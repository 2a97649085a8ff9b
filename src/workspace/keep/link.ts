import type { Document } from '#core/setting/document.ts';
import type { Reading } from '#job/read.ts';
import { linkOf, linkText, LONGEST_LINK, type LinkFault } from '#store/keep/link.ts';
import { patched } from '../edits.ts';
import { read } from './reading.ts';

export type { LinkFault };
export { LONGEST_LINK };

/** What a link holds: a document that was judged like any foreign data, or why there is none. */
export type Linked = { readonly kind: 'document'; readonly document: Document } | { readonly kind: 'fault'; readonly fault: LinkFault } | { readonly kind: 'unread'; readonly reading: Extract<Reading, { ok: false }>; readonly text: string };

export async function linked(hash: string): Promise<Linked> {
  const link = await linkText(hash);
  if (!link.ok) return { kind: 'fault', fault: link.fault };
  const reading = await read(link.text);
  return reading.ok ? { kind: 'document', document: reading.document } : { kind: 'unread', reading, text: link.text };
}

/** The fragment for a document. Records name people: they go along only if that is wanted. */
export const linkFor = (document: Document, records: boolean): ReturnType<typeof linkOf> => linkOf(JSON.stringify(records ? document : patched(document, { records: undefined })));

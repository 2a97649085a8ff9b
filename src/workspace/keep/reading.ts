import type { Document } from '#core/setting/document.ts';
import type { Reading } from '#job/read.ts';

/** The reader of foreign data is fetched when it is first needed. A file may hold machines and labels alone; there is nothing to draw in it. */
export async function read(text: string): Promise<Reading> {
  const [{ readDocument }, { problem }] = await Promise.all([import('#job/read.ts'), import('#job/problem.ts')]);
  const reading = readDocument(text);
  return reading.ok && reading.document.blocks.length === 0 ? { ok: false, problems: [problem(['blocks'], 'too-few', [], { length: 0, bound: 1 })], more: 0 } : reading;
}

/** What judges a document in memory as it would judge a file: made of kept steps, or of a kept setting, it may be none. */
export async function judge(): Promise<{ judged(document: Document): Reading; fits(document: Document): boolean }> {
  const { checkDocument } = await import('#job/read.ts');
  return { judged: checkDocument, fits: (document) => document.blocks.length > 0 && checkDocument(document).ok };
}

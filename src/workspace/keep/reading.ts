import type { Reading } from '#job/read.ts';

/** The reader of foreign data is fetched when it is first needed. A file may hold machines and labels alone; there is nothing to draw in it. */
export async function read(text: string): Promise<Reading> {
  const [{ readDocument }, { problem }] = await Promise.all([import('#job/read.ts'), import('#job/problem.ts')]);
  const reading = readDocument(text);
  return reading.ok && reading.document.blocks.length === 0 ? { ok: false, problems: [problem(['blocks'], 'too-few', [], { length: 0, bound: 1 })], more: 0 } : reading;
}

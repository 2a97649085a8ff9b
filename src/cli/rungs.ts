import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Advised } from '#core/setting/result.ts';
import { LONGEST_FILE } from '#job/limits.ts';
import { readDocument } from '#job/read.ts';
import { cli } from '#words/en/cli.ts';
import { moreProblems, problemSentence } from '#words/en/problems.ts';
import { refusalSentence } from '#words/index.ts';
import { EXIT, Stop, type Streams } from './exit.ts';
import { readText } from './read-text.ts';
import type { Wish } from './wish.ts';

/** The document and every wanted rung of it worked out, in the order of the file. Stops where there is nothing to work out. */
export async function rungsOf(wish: Wish, streams: Streams): Promise<{ readonly document: Document; readonly results: readonly Advised[] }> {
  const document = documentIn(await readText(wish.file, LONGEST_FILE, streams), wish.file);
  return { document, results: chosen(document, wish) };
}

/** Faults of the text as a whole: there is nothing in it that could be judged. */
const UNREADABLE: ReadonlySet<string> = new Set(['too-large', 'empty', 'not-json', 'too-deep', 'too-many-values']);

/** The document in a text; stops with every reason where there is none. */
export function documentIn(text: string, file: string): Document {
  const reading = readDocument(text);
  if (reading.ok) return reading.document;
  const lines = reading.problems.map((p) => `${file}: ${problemSentence(p)}`);
  if (reading.more > 0) lines.push(moreProblems(reading.more));
  throw new Stop(reading.problems.some((p) => UNREADABLE.has(p.code)) ? EXIT.unreadable : EXIT.refused, lines.join('\n'));
}

/** The wanted rungs worked out, in the order of the file. */
export function chosen(document: Document, { block, rung }: Pick<Wish, 'block' | 'rung'>): Advised[] {
  const blocks = document.blocks.filter((b) => block === undefined || b.id === block);
  if (blocks.length === 0) throw new Stop(EXIT.usage, cli.noBlock(block ?? '', document.blocks.map((b) => b.id)));
  const pairs = blocks.flatMap((b) => b.rungs.filter((r) => rung === undefined || r.id === rung).map((r) => [b.id, r.id] as const));
  if (pairs.length === 0) throw new Stop(EXIT.usage, cli.noRung(rung ?? '', [...new Set(blocks.flatMap((b) => b.rungs.map((r) => r.id)))]));
  return pairs.map(([b, r]) => {
    const result = evaluate(document, b, r);
    if ('kind' in result) throw new Stop(EXIT.refused, refusalSentence(result, 'metric'));
    return result;
  });
}

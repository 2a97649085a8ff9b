import type { Canopy } from '#core/canopy/types.ts';
import type { Document, Rung } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { checkDocument, readDocument } from '#job/read.ts';
import { editRung, patchCanopy } from '#workspace/edits.ts';
import { finite } from '../door.ts';
import { demos } from './documents.ts';

const read = readDocument(demos[1]!);
if (!read.ok) throw new Error('the demo is not read');
export const DEMO: Document = read.document;
const block = DEMO.blocks[0]!;
const rung = block.rungs.at(-1)!;

/** Takes what was measured into a rung, as the page does: what comes of it must be a document that opens again. */
export function taken(canopy: { readonly [K in keyof Canopy]?: Canopy[K] | undefined }, more: Partial<Rung> = {}): void {
  const next = editRung(DEMO, block.id, rung.id, (r) => ({ ...patchCanopy(r, canopy), ...more }));
  const judged = checkDocument(next);
  if (!judged.ok) throw new Error(`what was measured makes a document that is refused: ${JSON.stringify(judged.problems[0])}`);
  finite(evaluate(next, block.id, rung.id));
}

import type { Canopy } from '#core/canopy/types.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { sprayCase } from '#core/spray/case.ts';
import type { SprayCase } from '#core/spray/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { EXIT, Stop, type Streams } from '../exit.ts';
import { rungsOf } from '../rungs.ts';

/** The machine and setting that stand in front of every canopy of a table: a document of one block with one rung. Plain data, for threads as well. */
export type Front = Document;

/** Where the setting is written: a document, and its block and rung where it has several. */
export interface Written {
  readonly file: string;
  readonly block: string | undefined;
  readonly rung: string | undefined;
}

/** A canopy that no setting is refused for: what is refused in front of it is refused in front of all. */
const ORDINARY: Canopy = { heightM: 3, widthM: 1, skirtM: 0.5, ladM2PerM3: 2 };
const ORDINARY_ROWS_M = 4;

/** The one setting that is meant. Stops where there are several, and where it sprays in front of no canopy at all. */
export async function frontOf({ file, block, rung }: Written, usage: (message: string) => Stop, streams: Streams): Promise<Front> {
  const { document, results } = await rungsOf({ file, block, rung, system: 'metric', json: false }, streams);
  const [one, ...more] = results;
  if (!one || more.length > 0) throw usage(words.table.whichRung(results.map((r) => `${r.block.id} ${r.rung.id}`)));
  // The stage belongs to the trees of the document, not to those of the table.
  const { bbch: _, ...own } = one.rung;
  const { records: _records, ...rest } = document;
  const front: Front = { ...rest, blocks: [{ ...one.block, rungs: [own] }] };
  const refused = inFrontOf(front, ORDINARY, ORDINARY_ROWS_M);
  if ('kind' in refused) throw new Stop(EXIT.refused, words.table.refused(`${one.block.name}, ${one.rung.name}`, refusalSentence(refused, 'metric')));
  return front;
}

/** What the model is told of the setting in front of a canopy, or why it is told nothing. */
export function inFrontOf(front: Front, canopy: Canopy, rowSpacingM: number): SprayCase | Refused {
  const block = front.blocks[0]!;
  const rung = block.rungs[0]!;
  const document: Document = { ...front, blocks: [{ ...block, rowSpacingM, rungs: [{ ...rung, canopy }] }] };
  const result = evaluate(document, block.id, rung.id);
  return 'kind' in result ? result : sprayCase(document, result);
}

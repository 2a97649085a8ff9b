import { createHash } from 'node:crypto';
import type { Canopy } from '#core/canopy/types.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { sprayCase } from '#core/spray/case.ts';
import type { SprayCase } from '#core/spray/types.ts';
import { isRefused, type Refused } from '#core/working/answer.ts';
import { LONGEST_FILE } from '#job/limits.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { tableCli } from '#words/en/table-cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { EXIT, Stop, type Streams } from '../exit.ts';
import { readBytes } from '../read-text.ts';
import { chosen, documentIn } from '../rungs.ts';
import type { StrategiesWish } from './figure-columns.ts';

/** The machine and setting that stand in front of every canopy of a table: a document of one block with one rung. Plain data, for threads as well. */
export type Front = Document;

/** Where the setting is written: a document, and its block and rung where it has several. */
export interface Written {
  readonly file: string;
  readonly block: string | undefined;
  readonly rung: string | undefined;
}

/** The one setting of a document that is meant. */
export interface SettingRead {
  readonly document: Document;
  readonly result: Result;
  /** Of the file, for the manifest. */
  readonly sha256: string;
  readonly bytes: number;
}

/** Stops where the file holds no document, and where several of its settings may be meant. */
export async function settingOf({ file, block, rung }: Written, usage: (message: string) => Stop, streams: Streams): Promise<SettingRead> {
  const bytes = await readBytes(file, LONGEST_FILE, streams);
  const document = documentIn(decoded(bytes, file), file);
  const results = chosen(document, { block, rung });
  const [one, ...more] = results;
  if (!one || more.length > 0) throw usage(words.table.whichRung(results.map((r) => `${r.block.id} ${r.rung.id}`)));
  return { document, result: one, sha256: createHash('sha256').update(bytes).digest('hex'), bytes: bytes.length };
}

/** A canopy that no setting is refused for: what is refused in front of it is refused in front of all. */
const ORDINARY: Canopy = { heightM: 3, widthM: 1, skirtM: 0.5, ladM2PerM3: 2 };
const ORDINARY_ROWS_M = 4;

/** The setting for the balance. Stops where it sprays in front of no canopy at all. */
export function frontOf({ document, result }: SettingRead): Front {
  // The stage belongs to the trees of the document, not to those of the table.
  const { bbch: _, ...own } = result.rung;
  const { records: _records, ...rest } = document;
  const front: Front = { ...rest, blocks: [{ ...result.block, rungs: [own] }] };
  const refused = inFrontOf(front, ORDINARY, ORDINARY_ROWS_M);
  if ('kind' in refused) throw new Stop(EXIT.refused, words.table.refused(`${result.block.name}, ${result.rung.name}`, refusalSentence(refused, 'metric')));
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

/**
 * What the strategies are told of a document: the product with this id or name (without one, the block's own), the water that the setting
 * applies, how the rows are driven, the user's assumptions and strategies. Stops where there is no such product.
 */
export function strategiesWishOf({ document, result }: SettingRead, name: string | undefined, usage: (message: string) => Stop, note: (text: string) => void): StrategiesWish {
  const label = name === undefined ? document.labels.find((l) => l.id === result.block.label) : document.labels.find((l) => l.id === name) ?? document.labels.find((l) => l.name === name);
  if (name !== undefined && !label) throw usage(tableCli.noLabel(name, document.labels.map((l) => l.id)));
  const { flow } = result.sprayer;
  if (isRefused(flow)) note(tableCli.noWater(refusalSentence(flow, 'metric')));
  return {
    ...(label ? { label } : {}),
    ...(isRefused(flow) ? {} : { applied: { flowLPerMin: flow.value, speedKmH: result.setting.speedKmH, pattern: result.pattern } }),
    faces: result.pass.faces,
    ...(document.assumptions ? { assumptions: document.assumptions } : {}),
    ...(document.ownStrategies ? { own: document.ownStrategies } : {})
  };
}

function decoded(bytes: Uint8Array, file: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Stop(EXIT.unreadable, tableCli.notText(file));
  }
}

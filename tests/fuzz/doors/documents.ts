import { readdirSync, readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { seasonOf } from '#core/season/season.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { readDocument } from '#job/read.ts';
import { readRecords } from '#job/record/read.ts';
import { recordsCsv, recordsJson } from '#job/record/write.ts';
import { writeDocument } from '#job/write.ts';
import { linkOf, linkText } from '#store/keep/link.ts';
import { problemSentence } from '#words/en/problems.ts';
import '#words/headland/join.ts';
import { calibration, treatment } from '../../support/records.ts';
import { finite, reasons, text, utf8, type Door } from '../door.ts';

export const demos = readdirSync('demo-data').filter((f) => f.endsWith('.json')).map((f) => readFileSync(`demo-data/${f}`, 'utf8'));

/** Goes on with a document as the page does, and gives it back as a file would. */
export function used(document: Document): void {
  for (const b of document.blocks) {
    for (const [i, g] of b.rungs.entries()) {
      const result = evaluate(document, b.id, g.id);
      finite(result);
      if (i === 0 && !('kind' in result)) finite(strategyRows(document, result as Result));
    }
    finite(seasonOf(document, b.id));
  }
  const written = writeDocument(document);
  const again = readDocument(written);
  if (!again.ok) throw new Error(`what was taken and written is not taken again: ${JSON.stringify(again.problems[0])}`);
  if (writeDocument(again.document) !== written) throw new Error('what was taken and written comes back as another');
}

const records = [calibration(), treatment(), treatment({ id: 't2', amends: 't1', reason: 'a slip of the pen' })];
/** Keys in thousands, in one object and in one within another, and the names by which objects are reached. */
const manyKeys = fc.tuple(fc.nat(6000), fc.constantFrom('', 'x', '__proto__', 'constructor', 'toString')).map(([n, key]) => utf8(`{"format":"rowtailor","version":1,${Array.from({ length: n }, (_, i) => `"${key}${i}":{"__proto__":null}`).join(',')}}`));
const deep = fc.tuple(fc.nat(50_000), fc.constantFrom('[', '{"a":', '{"blocks":[')).map(([n, open]) => utf8(open.repeat(n)));
const link = async (t: string): Promise<Uint8Array> => {
  const made = await linkOf(t);
  if (!made.ok) throw new Error(made.fault);
  return utf8(made.hash);
};
const bomb = (bytes: number, of: number): Uint8Array => utf8(`#orchard/1/${deflateRawSync(Buffer.alloc(bytes, of)).toString('base64url')}`);
const BOMBS = [bomb(43_000_000, 0), bomb(3_900_000, 91), bomb(4_100_000, 32)];
/** What unfolds to a text of our own making. */
const folded = fc.oneof(manyKeys, deep, fc.uint8Array({ maxLength: 3000 })).map((inner) => utf8(`#orchard/1/${deflateRawSync(inner).toString('base64url')}`));

export const DOCUMENT_DOORS: readonly Door[] = [
  {
    name: 'document',
    files: demos.map(utf8),
    hostile: fc.oneof(manyKeys, deep),
    read(bytes) {
      const r = readDocument(text(bytes));
      if (!r.ok) return reasons(r.problems, problemSentence);
      used(r.document);
      return true;
    }
  },
  {
    name: 'link',
    files: [await link('{"format":"rowtailor","version":1}'), await link(demos[1]!), bomb(40_000_000, 48)],
    hostile: fc.oneof(folded, fc.constantFrom(...BOMBS)),
    async read(bytes) {
      const r = await linkText(text(bytes));
      if (!r.ok) return reasons([r.fault], (f) => `refused: ${f}`);
      const d = readDocument(r.text);
      return d.ok || reasons(d.problems, problemSentence);
    }
  },
  {
    name: 'records',
    files: [utf8(recordsJson(records)), utf8(recordsCsv(records))],
    hostile: deep,
    read(bytes) {
      const r = readRecords(text(bytes), records);
      if (!r.ok) return reasons(r.problems, problemSentence);
      finite(r.added);
      const table = recordsCsv(r.added);
      // What a spreadsheet would take for a formula leaves as text.
      for (const line of table.split(/\r?\n/).slice(1)) for (const cell of line.split(',')) if (/^"?[=@]/.test(cell)) throw new Error(`a formula leaves: ${cell.slice(0, 40)}`);
      for (const written of [table, recordsJson(r.added)]) {
        if (r.added.length === 0) break;
        const again = readRecords(written, records);
        if (!again.ok || recordsJson(again.added) !== recordsJson(r.added)) throw new Error('records come back as others');
      }
      return true;
    }
  }
];

import { readdirSync, readFileSync } from 'node:fs';
import { deflateRawSync } from 'node:zlib';
import { compileOwn } from '#core/dose/own/own.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { isRefused } from '#core/working/answer.ts';
import { openCanopyTable } from '#job/csv/table.ts';
import { readLaserFile } from '#job/laser/open.ts';
import { readPoints } from '#job/laser/points.ts';
import { readPictureHeader } from '#job/photo/header.ts';
import { readDocument } from '#job/read.ts';
import { readRecords } from '#job/record/read.ts';
import { recordsCsv, recordsJson } from '#job/record/write.ts';
import { readSurvey } from '#job/survey/table.ts';
import { readWeather } from '#job/weather/read.ts';
import { writeDocument } from '#job/write.ts';
import { linkOf, linkText } from '#store/keep/link.ts';
import { problemSentence } from '#words/en/problems.ts';
import '#words/headland/join.ts';
import { refusalSentence } from '#words/sentences.ts';
import { calibration, treatment } from '../support/records.ts';
import { memorySource, startUnpacker } from '#cli/laser-file.ts';
import { las } from '../support/las.ts';
import { reasons, text, type Door } from './door.ts';

const file = (path: string): Uint8Array => new Uint8Array(readFileSync(path));
const head = (path: string, bytes: number): Uint8Array => file(path).slice(0, bytes);
const utf8 = (t: string): Uint8Array => new TextEncoder().encode(t);
const demos = readdirSync('demo-data').filter((f) => f.endsWith('.json')).map((f) => file(`demo-data/${f}`));
const records = [calibration(), treatment(), treatment({ id: 't2', amends: 't1', reason: 'a slip of the pen' })];
const said = (r: { readonly code: string; readonly parameters: Readonly<Record<string, number | string>> }): string => refusalSentence(r, 'metric');
const FORMULAS = ['TRVc / 10000', 'min(1, max(0.4, LWA / 16000))', '0.5 + TRVg / 20000', 'sqrt(h * W) ^ 1.5 - exp(-LAI)', '-(H - Hs) / R + abs(log(f))', '02 +', 'a.b', 'x => 1', 'constructor("x")'];

const link = async (t: string): Promise<Uint8Array> => {
  const made = await linkOf(t);
  if (!made.ok) throw new Error(made.fault);
  return utf8(made.hash);
};
const some = Array.from({ length: 60 }, (_, i) => ({ x: 1 + (i % 7) * 0.2, y: i * 0.1, z: (i % 11) * 0.3 }));

/** Every door of the program that takes what a stranger may have written. */
export const DOORS: readonly Door[] = [
  {
    name: 'document',
    files: demos,
    read(bytes) {
      const r = readDocument(text(bytes));
      if (!r.ok) return reasons(r.problems, problemSentence);
      for (const b of r.document.blocks) for (const g of b.rungs) evaluate(r.document, b.id, g.id);
      const again = readDocument(writeDocument(r.document));
      if (!again.ok) throw new Error('what was taken and written is not taken again');
      return true;
    }
  },
  {
    name: 'records',
    files: [utf8(recordsJson(records)), utf8(recordsCsv(records))],
    read(bytes) {
      const r = readRecords(text(bytes), records);
      if (!r.ok) return reasons(r.problems, problemSentence);
      // What a spreadsheet would take for a formula leaves as text.
      for (const line of recordsCsv(r.added).split(/\r?\n/).slice(1)) for (const cell of line.split(',')) if (/^"?[=@]/.test(cell)) throw new Error(`a formula leaves: ${cell.slice(0, 40)}`);
      return true;
    }
  },
  {
    name: 'canopies',
    files: [head('demo-data/sixty-blocks.csv', 3000), head('demo-data/sixty-blocks-us.csv', 3000)],
    async read(bytes) {
      const table = await openCanopyTable([bytes]);
      if (!table.ok) return reasons(table.problems, problemSentence);
      let rows = 0;
      for await (const batch of table.batches) {
        rows += batch.count;
        for (const p of batch.problems) reasons([p], problemSentence);
        for (let i = 0; i < batch.count; i++) if (!(batch.treeHeightM[i]! > batch.skirtHeightM[i]!) || !(batch.canopyWidthM[i]! > 0)) throw new Error('a canopy that cannot be was taken');
      }
      return rows > 0;
    }
  },
  {
    name: 'trees',
    files: [file('tests/cli/documents/trees.csv')],
    read(bytes) {
      const r = readSurvey(text(bytes));
      for (const p of r.problems) reasons([p], problemSentence);
      return r.trees.length > 0;
    }
  },
  {
    name: 'laser points',
    files: [head('tests/measured/data/lidar-fuji-frame-every-4th.csv', 4000)],
    async read(bytes) {
      const r = await readPoints([bytes], (p) => void reasons([p], problemSentence));
      return r.ok ? r.points.lateralM.length > 0 : reasons(r.problems, problemSentence);
    }
  },
  {
    name: 'head of a photograph',
    files: [head('static/icon-192.png', 4000), head('static/icon-touch-180.png', 2000)],
    read(bytes) {
      const r = readPictureHeader(bytes, bytes.length);
      return !isRefused(r as never) || reasons([r as never], said);
    }
  },
  {
    name: 'formula',
    files: FORMULAS.map(utf8),
    read(bytes) {
      const r = compileOwn({ id: 'x', name: 'x', index: text(bytes) });
      if ('kind' in r) return reasons([r], said);
      r.index.compute(Object.fromEntries(Object.keys(r.index.inputs).map((name, i) => [name, i + 0.5])));
      return true;
    }
  },
  {
    name: 'weather',
    files: [head('tests/measured/data/weather-tmy3-greensboro-every-7th.csv', 3000), utf8('date,temp_c\n2031-03-01,4.5\n2031-03-02,6\n2031-03-03,5\n'), utf8('date;tmin;tmax\n01.03.2031;-1,5;9\n02.03.2031;0;11\n')],
    read(bytes) {
      const r = readWeather(text(bytes));
      for (const p of r.problems) reasons([p], problemSentence);
      return r.weather !== null || reasons(r.problems, problemSentence);
    }
  },
  {
    name: 'laser file',
    files: [las(some), las(some, { minor: 4, format: 6 }), las(some, { extra: 8 })],
    async read(bytes) {
      const r = await readLaserFile(await memorySource('scan.las', one(bytes)), startUnpacker, 100_000, (p) => void reasons([p], problemSentence));
      if (!r.ok) return r.refused ? reasons([r.refused], said) : reasons(r.problems, problemSentence);
      for (const v of r.raw.z) if (!Number.isFinite(v)) throw new Error('a point without a height was taken');
      return true;
    }
  },
  {
    name: 'link',
    files: [await link('{"format":"rowtailor","version":1}'), await link(text(demos[1]!)), utf8(`#orchard/1/${deflateRawSync(Buffer.alloc(40_000_000, 48)).toString('base64url')}`)],
    async read(bytes) {
      const r = await linkText(text(bytes));
      if (!r.ok) return reasons([r.fault], (f) => `refused: ${f}`);
      const d = readDocument(r.text);
      return d.ok || reasons(d.problems, problemSentence);
    }
  }
];

async function* one(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

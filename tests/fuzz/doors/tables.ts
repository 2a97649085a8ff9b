import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { parquetWriteBuffer } from 'hyparquet-writer';
import { canopyOfSurvey } from '#core/canopy/survey/canopy.ts';
import { surveyOf } from '#core/canopy/survey/survey.ts';
import { SEASON_REGISTRY } from '#core/season/assumptions.ts';
import { DegreeDays } from '#core/weather/degree-days.ts';
import { Assumptions } from '#core/working/assumption.ts';
import type { CanopyBatch } from '#job/csv/batch.ts';
import { openCanopyTable } from '#job/csv/table.ts';
import { openParquetTable } from '#job/parquet/table.ts';
import { readSurvey } from '#job/survey/table.ts';
import { readWeather } from '#job/weather/read.ts';
import { problemSentence } from '#words/en/problems.ts';
import { finite, reasons, text, utf8, type Door } from '../door.ts';
import { taken } from './rung.ts';

export const head = (path: string, bytes: number): Uint8Array => new Uint8Array(readFileSync(path)).slice(0, bytes);

/** Headers of thousands of columns, quotes left open, lines without an end. */
export const wide = fc
  .tuple(fc.constantFrom(',', ';', '\t'), fc.constantFrom('', 'note_x', 'block', 'tree_height_m', '"', '=1', '\u202e'), fc.nat(20_000), fc.nat(2))
  .map(([by, name, n, lines]) => utf8(`${Array.from({ length: n }, () => name).join(by)}\n`.repeat(lines + 1)));

/** Every canopy is one that can be. */
async function through(batches: AsyncIterable<CanopyBatch>): Promise<boolean> {
  let rows = 0;
  for await (const batch of batches) {
    rows += batch.count;
    if (batch.problems.length > 0) reasons(batch.problems, problemSentence);
    for (let i = 0; i < batch.count; i++) if (!(batch.treeHeightM[i]! > batch.skirtHeightM[i]!) || !(batch.canopyWidthM[i]! > 0) || !(batch.rowSpacingM[i]! > 0)) throw new Error('a canopy that cannot be was taken');
  }
  return rows > 0;
}

type Codec = 'UNCOMPRESSED' | 'SNAPPY';
const parquet = (rows: number, codec: Codec, more: readonly { readonly name: string; readonly data: unknown[]; readonly type: 'STRING' | 'DOUBLE' | 'INT32' }[] = []): Uint8Array => {
  const column = (name: string, of: (i: number) => unknown, type: 'STRING' | 'DOUBLE' | 'INT32' = 'DOUBLE') => ({ name, data: Array.from({ length: rows }, (_, i) => of(i)), type, codec });
  return new Uint8Array(
    parquetWriteBuffer({
      columnData: [
        column('block', (i) => `b ${i % 7}`, 'STRING'),
        column('row_spacing_m', () => 3.5),
        column('tree_height_m', (i) => 2 + (i % 9) / 10),
        column('canopy_width_m', (i) => 1 + (i % 5) / 10),
        ...more
      ],
      codec,
      rowGroupSize: 16
    } as never)
  );
};

export const TABLE_DOORS: readonly Door[] = [
  {
    name: 'canopies',
    files: [head('demo-data/sixty-blocks.csv', 3000), head('demo-data/sixty-blocks-us.csv', 3000)],
    hostile: wide,
    async read(bytes) {
      const table = await openCanopyTable([bytes]);
      return table.ok ? through(table.batches) : reasons(table.problems, problemSentence);
    }
  },
  {
    name: 'canopies in Parquet',
    files: [parquet(5, 'UNCOMPRESSED'), parquet(40, 'SNAPPY'), parquet(20, 'SNAPPY', [{ name: 'note_x', data: Array.from({ length: 20 }, (_, i) => i), type: 'INT32' }])],
    async read(bytes) {
      const own = bytes.slice().buffer;
      const table = await openParquetTable({ byteLength: own.byteLength, slice: (from, to) => own.slice(from, to) });
      return table.ok ? through(table.batches) : reasons(table.problems, problemSentence);
    }
  },
  {
    name: 'trees',
    files: [new Uint8Array(readFileSync('tests/cli/documents/trees.csv'))],
    hostile: wide,
    read(bytes) {
      const { trees, problems } = readSurvey(text(bytes));
      if (problems.length > 0) reasons(problems, problemSentence);
      if (trees.length === 0) return false;
      for (const by of [undefined, 'variety'] as const) {
        const survey = surveyOf(trees, by ? { by } : {});
        finite(survey);
        if (!('kind' in survey)) taken(canopyOfSurvey(survey, trees), { survey: { trees } });
      }
      return true;
    }
  },
  {
    name: 'weather',
    files: [head('tests/measured/data/weather-tmy3-greensboro-every-7th.csv', 3000), utf8('date,temp_c\n2031-03-01,4.5\n2031-03-02,6\n2031-03-03,5\n'), utf8('date;tmin;tmax\n01.03.2031;-1,5;9\n02.03.2031;0;11\n')],
    hostile: wide,
    read(bytes) {
      const r = readWeather(text(bytes));
      if (r.problems.length > 0) reasons(r.problems, problemSentence);
      if (r.weather === null) return reasons(r.problems, problemSentence);
      const days = new DegreeDays(r.weather, new Assumptions(SEASON_REGISTRY, {}).take('growth.base-temperature'));
      const [first, last] = [r.weather.days[0]!.date, r.weather.days.at(-1)!.date];
      finite(days.span(first, last));
      return true;
    }
  }
];

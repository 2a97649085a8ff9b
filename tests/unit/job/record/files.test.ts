import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { CALIBRATION_FIELDS, TREATMENT_FIELDS, type RecordField } from '#core/record/fields.ts';
import type { WorkRecord } from '#core/record/types.ts';
import { guarded, unguarded } from '#job/csv/formulas.ts';
import { readRecords } from '#job/record/read.ts';
import { recordsCsv, recordsJson } from '#job/record/write.ts';
import { problemSentence } from '#words/en/problems.ts';
import { calibration, treatment } from '../../../support/records.ts';

const all = [calibration(), treatment(), treatment({ id: 't2', amends: 't1', reason: 'area measured again', fields: { treatedAreaHa: 1.75 } })];
const read = (text: string, kept: readonly WorkRecord[] = []): readonly WorkRecord[] => {
  const r = readRecords(text, kept);
  if (!r.ok) throw new Error(r.problems.map(problemSentence).join('\n'));
  return r.added;
};
const told = (text: string, kept: readonly WorkRecord[] = []): string[] => {
  const r = readRecords(text, kept);
  if (r.ok) return [];
  for (const p of r.problems) expect(problemSentence(p)).not.toContain('undefined');
  return r.problems.map((p) => (p.line === undefined ? `${p.path} ${p.code}` : `${p.line} ${p.column} ${p.code}`));
};
const table = (...lines: string[]): string => ['id,kind,at,date,product_name,treated_area_ha,remarks', ...lines].join('\n');

describe('a table of records', () => {
  const rows = Papa.parse<string[]>(recordsCsv(all).slice(1).trimEnd()).data;
  const cell = (row: number, column: string): string => rows[row]![rows[0]!.indexOf(column)]!;
  it('has a line each and a column for every field, with its unit', () => {
    expect(rows).toHaveLength(4);
    expect(new Set(rows.map((r) => r.length)).size).toBe(1);
    expect(rows[0]!.slice(0, 6)).toEqual(['id', 'kind', 'block', 'at', 'amends', 'reason']);
    for (const c of ['date', 'start_time', 'treated_area_ha', 'product_kg_per_ha', 'product_total_l', 'volume_l_per_ha', 'speed_km_h', 'set_pressure_bar', 'humidity_pct', 'wind_m_per_s', 'pto_rpm', 'crop_eppo'])
      expect(rows[0], c).toContain(c);
    expect([cell(1, 'volume_l_per_ha'), cell(2, 'treated_area_ha'), cell(2, 'product_name'), cell(3, 'reason'), cell(3, 'amends')]).toEqual(['559', '1.8', 'Sample', 'area measured again', 't1']);
    expect(cell(1, 'speed_runs')).toBe('100 m 66.8 s out\n100 m 66.5 s back');
  });
  it('begins with a byte order mark and ends its lines as the standard for such files has it', () => {
    expect(recordsCsv([]).charCodeAt(0)).toBe(0xfeff);
    expect(recordsCsv([])).toMatch(/^[^\n]*\r\n$/);
  });
  it('comes back as it was, from bytes with other line ends too', () => {
    expect(read(recordsCsv(all))).toEqual(all);
    expect(read(recordsCsv(all).replaceAll('\r\n', '\n'))).toEqual(all);
    expect(read(recordsCsv(all).replaceAll('\n', '\r\n').replaceAll('\r\r', '\r'))).toEqual(all);
    expect(read(recordsCsv([]))).toEqual([]);
  });
  it('columns in another order, capitals, notes, blank lines, semicolons with a decimal comma', () => {
    const text = '\n KIND ;note_mine;At;treated_area_ha;Id\n\ntreatment;x;2031-05-12T21:40:00+02:00;1,8;t7\n;;;;\n';
    expect(read(text)).toEqual([{ id: 't7', kind: 'treatment', at: '2031-05-12T21:40:00+02:00', fields: { treatedAreaHa: 1.8 } }]);
  });
});

describe('a file of records', () => {
  it('names its format and version, and comes back as it was', () => {
    expect(JSON.parse(recordsJson(all))).toEqual({ format: 'rowtailor-records', version: 1, records: all });
    expect(read(recordsJson(all))).toEqual(all);
  });
});

describe('text that a spreadsheet would run', () => {
  /** Cells as a spreadsheet sees them, whichever of the two separators it goes by. */
  const begins = (csv: string): string[] => [csv, csv.replaceAll(',', ';')].flatMap((t) => t.split(/[;,\n"]/));
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '=HYPERLINK("http://x","y")', 'ok;=1+1', 'ok,=1+1', 'ok\n=1+1', '"=1+1"', '＝1+1', "'=1", "''+2"])('%s never begins a cell, and comes back', (text) => {
    const r = treatment({ id: 't', at: '2031-05-12T21:40:00+02:00', fields: { remarks: text } });
    const csv = recordsCsv([r]).slice(1);
    for (const cell of begins(csv)) expect(cell).not.toMatch(/^[=+\-@＝＋－＠]/);
    expect(read(csv)).toEqual([r]);
  });
  it('an apostrophe of a name is left alone', () => {
    expect(guarded("'t Hof, d'Orey")).toBe("'t Hof, d'Orey");
    expect(unguarded("'t Hof")).toBe("'t Hof");
    expect(guarded('nothing - to = fear')).toBe('nothing - to = fear');
  });
  it('a reason too; a number is no text and stays a number', () => {
    const r = treatment({ id: 't2', amends: 't1', reason: '=x', fields: { temperatureC: -4 } });
    expect(recordsCsv([treatment(), r])).toContain(",'=x,");
    expect(recordsCsv([r])).toContain(',-4,');
  });
  const nasty = fc.array(fc.constantFrom('=', '+', '-', '@', "'", '"', ',', ';', '\n', ' ', '\u00a0', 'ä', '東', '\u{1F333}', '＝', 'a', '0', '\u2028'), { maxLength: 12 }).map((c) => c.join(''));
  it('guarding is undone for any text', () => fc.assert(fc.property(fc.oneof(nasty, fc.string()), (t) => unguarded(guarded(t)) === t)));
});

describe('any records come back from both kinds of file', () => {
  const chars = fc.oneof(
    fc.constantFrom('=', '+', '-', '@', "'", '"', ',', ';', ' ', '\u00a0', 'é', 'Ж', '東', '\u{1F333}', '\u200d', '＝', 'a', '7', '\u2028'),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 3 }).filter((s) => /^[^\p{Cc}\p{Cs}\uFFFD]+$/u.test(s))
  );
  const line = fc.array(chars, { minLength: 1, maxLength: 20 }).map((c) => c.join(''));
  const lines = fc.array(fc.oneof(chars, fc.constant('\n')), { minLength: 1, maxLength: 20 }).map((c) => c.join(''));
  const day = fc.date({ min: new Date('2000-01-01'), max: new Date('2099-12-31'), noInvalidDate: true }).map((d) => d.toISOString());
  const value = (f: RecordField): fc.Arbitrary<string | number> => {
    switch (f.kind) {
      case 'text':
        return line;
      case 'lines':
        return lines;
      case 'date':
        return day.map((d) => d.slice(0, 10));
      case 'time':
        return day.map((d) => d.slice(11, 16));
      case 'choice':
        return fc.constantFrom(...f.choices);
      case 'number':
        // No file tells a zero from its negative.
        return f.whole ? fc.integer({ min: f.least, max: f.most }) : fc.double({ min: f.least, max: f.most, noNaN: true }).map((v) => (v === 0 ? 0 : v));
    }
  };
  const fields = (of: Readonly<Record<string, RecordField>>) => fc.record(Object.fromEntries(Object.entries(of).map(([k, f]) => [k, value(f)])), { requiredKeys: [], noNullPrototype: true });
  const made = fc.oneof(
    fc.tuple(fc.constant('calibration' as const), day, fields(CALIBRATION_FIELDS)),
    fc.tuple(fc.constant('treatment' as const), day, fields(TREATMENT_FIELDS))
  );
  const records = fc.tuple(fc.array(made, { maxLength: 5 }), lines).map(([list, reason]) =>
    list.map(([kind, at, f], i) => {
      const amends = list.findLastIndex(([k], j) => j < i && k === kind && j % 2 === 0);
      return { id: `r${i}`, kind, at, fields: f, ...(i % 3 === 0 ? { block: 'north' } : {}), ...(amends < 0 ? {} : { amends: `r${amends}`, reason }) } as unknown as WorkRecord;
    })
  );
  it('table and file', () =>
    fc.assert(
      fc.property(records, (list) => {
        expect(read(recordsCsv(list))).toEqual(list);
        expect(read(recordsJson(list))).toEqual(list);
      }),
      { numRuns: 200 }
    ));
  it('nothing foreign makes the reader throw, and every problem can be said', () =>
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' }), fc.json(), fc.array(fc.array(nastyCell(), { maxLength: 9 }).map((c) => c.join(',')), { maxLength: 5 }).map((l) => table(...l))), (text) => {
        const r = readRecords(text, all);
        if (!r.ok) for (const p of r.problems) expect(problemSentence(p).length).toBeGreaterThan(10);
      }),
      { numRuns: 500 }
    ));
  function nastyCell() {
    return fc.oneof(fc.constantFrom('t1', 't9', 'treatment', 'calibration', '2031-05-12T21:40:00Z', '2031-05-12', '"', '1.5', ''), fc.string({ maxLength: 5 }));
  }
});

describe('beside what is kept', () => {
  it('what is here already with the same content is passed over', () => {
    expect(readRecords(recordsCsv(all), all)).toEqual({ ok: true, added: [], passed: 3 });
    expect(readRecords(recordsJson(all), all.slice(0, 1))).toEqual({ ok: true, added: all.slice(1), passed: 1 });
  });
  it('keys in another order are the same content', () => {
    const { fields, ...rest } = treatment();
    const turned = { fields: Object.fromEntries(Object.entries(fields).reverse()), ...rest };
    expect(readRecords(JSON.stringify({ format: 'rowtailor-records', version: 1, records: [turned] }), all)).toMatchObject({ ok: true, passed: 1 });
  });
  it('the same id with other content is refused, and nothing of the file is taken', () => {
    const changed = [treatment({ fields: { ...treatment().fields, treatedAreaHa: 1.9 } as never }), treatment({ id: 't5' })];
    expect(told(recordsJson(changed), all)).toEqual(['/records/0/id other-content']);
    expect(told(recordsCsv(changed), all)).toEqual(['2 id other-content']);
  });
  it('an amendment may lead to a record that is kept, and not to one that is neither', () => {
    const late = treatment({ id: 't6', amends: 't1', reason: 'stage', fields: { bbch: 71 } });
    expect(read(recordsCsv([late]), all)).toEqual([late]);
    expect(told(recordsCsv([late]))).toEqual(['2 amends no-such-reference']);
    expect(told(recordsCsv([late]), [calibration({ id: 't1' })])).toEqual(['2 amends amends-other-kind']);
  });
  it('not more than can be kept', () => {
    const kept = Array.from({ length: 2000 }, (_, i) => treatment({ id: `k${i}` }));
    expect(told(recordsJson([treatment({ id: 'new' })]), kept)).toEqual(['/records too-many']);
  });
});

describe('what is wrong is told by line and column, all of it at once', () => {
  const ok = 't7,treatment,2031-05-12T21:40:00+02:00,2031-05-12,Sample,1.8,fine';
  it.each<[string, string, string[]]>([
    ['a number that is none', table(ok.replace('1.8', '1.8 ha')), ['2 treated_area_ha not-a-number']],
    ['a number out of range', table(ok, ok.replace('t7', 't8').replace('1.8', '18000')), ['3 treated_area_ha out-of-range']],
    ['a decimal comma between commas', table(ok.replace('1.8', '1,8')), ['2  field-count']],
    ['a day as a spreadsheet turns it', table(ok.replace('2031-05-12,', '12.05.2031,')), ['2 date not-a-date']],
    ['no id', table(ok.replace('t7', '')), ['2 id absent']],
    ['no kind', table(ok.replace('treatment', '')), ['2 kind absent']],
    ['no moment', table(ok.replace('2031-05-12T21:40:00+02:00', '')), ['2 at not-a-moment']],
    ['two lines with one id', table(ok, ok), ['3 id duplicate-id']],
    ['lost characters', table(ok.replace('fine', 'M\uFFFDller')), ['2 remarks unfit-characters']],
    ['a quote left open', table(ok, ok.replace('fine', '"fine')), ['3  bad-quotes']],
    ['a field of another kind', 'id,kind,at,catches\nt7,treatment,2031-05-12T21:40:00Z,x', ['2 catches unknown-key']],
    ['an unknown column', 'id,kind,at,treated_area_ac\n', ['1 treated_area_ac unknown-column']],
    ['a column twice', 'id,kind,at,date,date\n', ['1 date duplicate-column']],
    ['a column missing', 'id,at,date\n', ['1 kind missing-column']],
    ['nothing', '', ['1  no-header']],
    ['several lines, lines within quotes counted', table('t7,treatment,2031-05-12T21:40:00Z,,,,"a\nb"', 't8,harvest,2031-05-12T21:40:00Z,,,-1,', 'x y,treatment,yesterday,,,,'), ['4 kind not-a-choice', '5 id not-an-id', '5 at not-a-moment']]
  ])('%s', (_, text, problems) => expect(told(text)).toEqual(problems));
  it('by path in a file', () => {
    const file = (more: object) => JSON.stringify({ format: 'rowtailor-records', version: 1, records: all, ...more });
    expect(told(file({ version: 2 }))).toEqual(['/version newer-version']);
    expect(told(file({ format: 'rowtailor' }))).toEqual(['/format other-format']);
    expect(told(file({ records: {} }))).toEqual(['/records wrong-type']);
    expect(told(file({ colour: 1 }))).toEqual(['/colour unknown-key']);
    expect(told(file({ records: [{ ...treatment(), fields: { bbch: -1 } }, 7] }))).toEqual(['/records/0/fields/bbch out-of-range', '/records/1 wrong-type']);
    expect(told('[]')).toEqual([' wrong-type']);
    expect(told('{"format":')).toEqual([' not-json']);
  });
  it('a sentence names line, column, value and remedy', () => {
    const r = readRecords(table(ok.replace('2031-05-12,', '12.05.2031,')), []);
    expect(r.ok || problemSentence(r.problems[0]!)).toBe('Line 2, date is "12.05.2031"; a day of the calendar written as 2031-04-27 is needed. Write it that way.');
  });
});

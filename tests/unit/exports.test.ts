import { readdirSync, readFileSync } from 'node:fs';
import { parquetReadObjects } from 'hyparquet';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { csvText as strategiesCsv } from '#cli/strategies-data.ts';
import { Lines } from '#cli/table/lines.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { bibtex, cslJson } from '#core/sources/cite.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { csvCell } from '#job/csv/cell.ts';
import { unguarded } from '#job/csv/formulas.ts';
import { openCanopyTable } from '#job/csv/table.ts';
import { readDocument } from '#job/read.ts';
import { writeDocument } from '#job/write.ts';
import { label, toSvg } from '#section/scene.ts';
import { parquetOf } from '#store/parquet/write.ts';
import { methods } from '#words/strategies/methods.ts';
import { fileStem } from '#workspace/file-name.ts';
import { rowsCsv } from '#ui/strategies/take.ts';
import demo from '../../demo-data/lower-bench.json';

/** Names that a document may hold and that have hurt those who opened what was made of them. */
const HOSTILE = [
  '=1+1', '=HYPERLINK("http://x","y")', '+1', '-1+cmd|x', '@SUM(A1:A9)', '＝1+1', 'a;=1+1', 'a,"=1+1', '"', '""', 'a"b', "'=1", "''=1", "'", ' =1', 'a,b;c',
  '<script>alert(1)</script>', '"><img src=x onerror=alert(1)>', '</text></svg><script>1</script>', ']]>', '&lt;b&gt;', '&amp;', '<!--', '<?xml?>', 'javascript:alert(1)', '${7*7}', '{{7*7}}',
  '\u202egnp.exe', '\u2066a', 'e\u0301'.repeat(30), '\ufffe', '\uffff', '𝒳', 'null', '__proto__', '../../etc/passwd', '..\\..\\x', 'CON', 'nul', '-rf', '.htaccess', 'a/b', 'a:b', '|', '`id`', '$(id)', '%00', '\\end{document}', '@article{x,'
];
const FORMULA = /^[=+\-@＝＋－＠]/;
/** A spreadsheet with any list separator. */
const cells = (text: string): string[] => [',', ';', '\t'].flatMap((delimiter) => (Papa.parse<string[]>(text, { delimiter }).data).flat());
const isNumber = (cell: string): boolean => /^-?\d+(\.\d+)?(e[+-]\d+)?$/i.test(cell);

/** The demo with its block, rung, strategy and machine named so. */
const named = (name: string): { document: Document; result: Result } => {
  const d = demo as unknown as Document;
  const block = d.blocks[0]!;
  const document = { ...d, name, ownStrategies: [{ id: 'own', name, index: 'TRVc / 10000' }], blocks: [{ ...block, name, rungs: block.rungs.map((r) => ({ ...r, name })) }] } as Document;
  return { document, result: evaluate(document, block.id, block.rungs.at(-1)!.id) as Result };
};

describe.each(HOSTILE)('a thing called %j', (name) => {
  const { document, result } = named(name);
  const rows = strategyRows(document, result);

  it('goes into a document and comes back', () => {
    const r = readDocument(writeDocument(document));
    if (r.ok) expect(r.document.name).toBe(name);
    else expect(r.problems.length).toBeGreaterThan(0);
  });
  it('is no formula in a table, and comes back from it', () => {
    expect(unguarded(Papa.parse<string[]>(csvCell(name), { delimiter: ',' }).data[0]![0]!)).toBe(name);
    const all = [rowsCsv(rows as never), strategiesCsv([{ result, rows, draws: null, tornado: null }] as never, false)];
    for (const text of all) {
      expect(cells(text).filter((c) => FORMULA.test(c) && !isNumber(c))).toEqual([]);
      const table = Papa.parse<string[]>(text.trimEnd(), { delimiter: ',' });
      expect(table.errors).toEqual([]);
      expect(new Set(table.data.map((line) => line.length)).size).toBe(1);
      expect(table.data.some((line) => line.some((c) => unguarded(c) === name || c.replace(/^(\s+)'/, '$1') === name))).toBe(true);
    }
  });
  it('stands in a table of canopies as it is, and no figure beside it moves', async () => {
    const lines = new Lines(3, 0);
    lines.add(1, [name], [Float64Array.of(3.5), Float64Array.of(3), Float64Array.of(1.5)]);
    const line = new TextDecoder().decode(lines.take());
    // The command hands names on as they came, for others to join by; its help says how to open the table.
    const table = await openCanopyTable([`block,row_spacing_m,tree_height_m,canopy_width_m\n${line}`]);
    if (!table.ok) throw new Error('no table');
    for await (const batch of table.batches) {
      // What turns a line, or is no character, is refused there by name.
      if (batch.count === 1) expect([batch.block[0], batch.rowSpacingM[0], batch.treeHeightM[0], batch.canopyWidthM[0]]).toEqual([name, 3.5, 3, 1.5]);
      else expect(batch.problems.map((p) => p.column)).toEqual(['block']);
    }
  });
  it('stands in a Parquet file as it is', async () => {
    const file = await parquetOf([name, 'x'], [{ name: 'water', values: Float64Array.of(1, 2) }]);
    expect(await parquetReadObjects({ file })).toEqual([{ block: name, water: 1 }, { block: 'x', water: 2 }]);
  });
  it('is text in a drawing', () => {
    const svg = toSvg({ width: 1, height: 1, marks: [label('x', 0, 0, name, { 'data-name': name })], handles: [], fields: [], spots: [] }, name);
    expect(svg.match(/<(?:"[^"]*"|[^">])*>?/g)!.filter((tag) => !/^<\/?(svg|title|text)( [a-zA-Z:-]+="[^"<]*")*>$/.test(tag))).toEqual([]);
    expect(/[^\t\n\r -\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u.test(svg)).toBe(false);
    const back = (text: string) => text.replaceAll('&quot;', '"').replaceAll('&lt;', '<').replaceAll('&amp;', '&');
    expect(back(/<title>(.*)<\/title>/.exec(svg)![1]!)).toBe(name.replace(/[\ufffe\uffff]/g, '\ufffd'));
  });
  it('does not reach what is cited', () => {
    const { cited } = methods(rows, { canopy: result.canopy });
    const of = methods(strategyRows(demo as unknown as Document, named('plain').result), { canopy: result.canopy }).cited;
    expect(bibtex(cited)).toBe(bibtex(of));
    expect(cslJson(cited)).toBe(cslJson(of));
  });
  it('names a file that is no path, no device and nothing hidden', () => {
    const stem = fileStem(name);
    expect(stem).toMatch(/^[\p{L}\p{N}][\p{L}\p{N}\p{M}-]*$/u);
    expect(stem).not.toMatch(/^(con|nul)$/);
    expect(Buffer.byteLength(stem)).toBeLessThanOrEqual(240);
  });
});

it('names of files are short, and there is always one', () => {
  expect(fileStem('Lower bench', 'Full leaf', 'spray')).toBe('lower-bench-full-leaf-spray');
  expect(fileStem('')).toBe('rowtailor');
  expect(fileStem('...')).toBe('rowtailor');
  expect(fileStem('COM1')).toBe('rowtailor-com1');
  expect([...fileStem('x'.repeat(500))]).toHaveLength(60);
});

it('no view makes markup of a text', () => {
  const files = (readdirSync('src', { recursive: true }) as string[]).filter((f) => /\.(svelte|ts|html)$/.test(f));
  expect(files.length).toBeGreaterThan(300);
  for (const f of files) expect(readFileSync(`src/${f}`, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, ''), f).not.toMatch(/\{@html|\.innerHTML|\.outerHTML|insertAdjacentHTML|document\.write|\beval\(|new Function\(|srcdoc/);
});

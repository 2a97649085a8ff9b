import type { BlockTable } from '#workspace/block-table.svelte.ts';
import { parquetOf, type OutColumn } from '#workspace/parquet.ts';
import { exact } from './take.ts';

/** Names of columns carry their unit, as in the tables that are read; figures are the engine's. */
const SUFFIX: Readonly<Record<string, string>> = { 'm3/ha': '_m3_per_ha', 'm2/ha': '_m2_per_ha', 'L/ha': '_l_per_ha', 'kg/ha': '_kg_per_ha', 'Lprod/ha': '_l_product_per_ha' };
const FIXED_NAMES: Readonly<Record<string, string>> = { heightM: 'tree_height_m', widthM: 'canopy_width_m', rowSpacingM: 'row_spacing_m', trv: 'trv_crown_m3_per_ha', lwa: 'lwa_m2_per_ha', spread: 'index_spread' };
const SETS: Readonly<Record<string, string>> = { index: 'dose_index', water: 'water', dose: 'dose', concentration: 'concentration' };

/** What is shown, in its order. */
function shown(table: BlockTable): { readonly block: readonly string[]; readonly columns: readonly OutColumn[] } {
  const { order, data } = table;
  return {
    block: Array.from(order, (i) => data!.canopies.block[i]!),
    columns: [
      { name: 'skirt_height_m', values: picked(data!.canopies.skirtHeightM, order) },
      { name: 'filled_fraction', values: picked(data!.canopies.filledFraction, order) },
      ...table.columns.map((c) => ({ name: FIXED_NAMES[c.id] ?? `${c.id.replace(/[^A-Za-z0-9]+/g, '_')}_${SETS[table.set]}${SUFFIX[c.unit] ?? ''}`, values: picked(c.values, order) }))
    ]
  };
}
const picked = (values: Float64Array, order: Uint32Array): Float64Array => Float64Array.from(order, (i) => values[i]!);

/** The table as a file: CSV, JSON by columns, or Parquet. */
export async function tableFile(kind: 'csv' | 'json' | 'parquet', table: BlockTable): Promise<{ readonly content: string | Blob; readonly type: string }> {
  const { block, columns } = shown(table);
  if (kind === 'parquet') return { content: new Blob([await parquetOf(block, columns)]), type: 'application/vnd.apache.parquet' };
  if (kind === 'json') {
    const figures = Object.fromEntries(columns.map((c) => [c.name, Array.from(c.values, (v) => (Number.isNaN(v) ? null : v))]));
    return { content: JSON.stringify({ format: 'rowtailor-table', version: 1, columns: { block, ...figures } }) + '\n', type: 'application/json' };
  }
  const lines = [['block', ...columns.map((c) => c.name)].join(',')];
  for (let i = 0; i < block.length; i++) lines.push([exact(block[i]!), ...columns.map((c) => exact(c.values[i]!))].join(','));
  return { content: lines.join('\n') + '\n', type: 'text/csv' };
}

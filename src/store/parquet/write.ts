import { parquetWriteBuffer } from 'hyparquet-writer';

/** A column of figures; NaN is written as null. */
export interface OutColumn {
  readonly name: string;
  readonly values: Float64Array;
}

/** A table as a Parquet file: block names as text, figures as doubles, what is not there as null. */
export async function parquetOf(block: readonly string[], columns: readonly OutColumn[]): Promise<ArrayBuffer> {
  return parquetWriteBuffer({
    columnData: [
      { name: 'block', data: [...block], type: 'STRING' },
      ...columns.map(({ name, values }) => ({ name, data: Array.from(values, (v) => (Number.isNaN(v) ? null : v)), type: 'DOUBLE' as const, nullable: true }))
    ]
  });
}

/** Parquet is written by a port: the views have none of their own. */
export { parquetOf, type OutColumn } from '#store/parquet/write.ts';

import { blockTable as words } from '#words/en/strategies/table.ts';
import { strategyWords } from '#words/naming.ts';
import { FIXED, type BlockTable, type FixedColumn } from '#workspace/block-table.svelte.ts';

const isFixed = (id: string): id is FixedColumn => (FIXED as readonly string[]).includes(id);

/** What a column is called: a figure of the canopy, or a strategy. */
export const columnName = (id: string, table: BlockTable): string => (isFixed(id) ? words.columns[id] : strategyName(id, table));
export const strategyName = (id: string, table: BlockTable): string => table.own.find((o) => `own.${o.id}` === id)?.name ?? strategyWords(id).name;

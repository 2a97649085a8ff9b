import { balanceColumns } from '#cli/table/balance-columns.ts';
import { figureColumns, USUAL } from '#cli/table/figure-columns.ts';
import type { Front } from '#cli/table/front.ts';
import { intervalColumns, intervalNames } from '#cli/table/interval-columns.ts';
import type { IntervalWish } from '#cli/table/interval-wish.ts';
import { sideBySide } from '#cli/table/maker.ts';
import { workOff } from '#cli/table/piece.ts';

/** Works pieces of a table off as the command's threads do: the usual figures alone, with intervals, with the balance. */
export const figures = workOff(figureColumns(USUAL), 'csv', false);
export const withIntervals = (wish: IntervalWish) => workOff(sideBySide([figureColumns(USUAL), intervalColumns(wish, USUAL)]), 'csv', true);
export const withBalance = (front: Front) => workOff(sideBySide([figureColumns(USUAL), balanceColumns(front)]), 'csv', false);

export const intervalHeader = (wish: IntervalWish): string => intervalNames(wish, USUAL).join(',');

import type { Label } from '#core/dose/types.ts';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import { valueOf, type Answer } from '#core/working/answer.ts';
import { formatAmount, formatNumber, formatShare } from '#words/format.ts';

/** Unit of an amount of product. */
export const productUnit = ({ unit }: Label): Unit => (unit === 'kg' ? 'kg' : 'Lprod');
export const productAmount = (value: number, label: Label, system: UnitSystem): string => formatAmount(value, productUnit(label), system);
/** An answer in % as whole percent. */
export const percent = (answer: Answer): string => formatShare((valueOf(answer) ?? NaN) / 100);
/** Rows are counted; a tenth tells where in the row to stop. */
export const rowCount = (rows: number): string => formatNumber(rows, Math.abs(rows - Math.round(rows)) < 0.05 ? 0 : 1);

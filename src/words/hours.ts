import { formatNumber } from './format.ts';
import { mixText } from './en/headland/mix-text.ts';

/** Hours as hours and minutes: 4 h 27 min. */
export function formatHours(hours: number): string {
  const minutes = Math.round(hours * 60);
  return mixText.hours(Math.floor(minutes / 60), formatNumber(minutes % 60, 0));
}

import type { Rung } from '#core/setting/document.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { dayNumber, type Weather } from '#core/weather/days.ts';
import type { DegreeDays } from '#core/weather/degree-days.ts';
import { valueOf } from '#core/working/answer.ts';
import { seasonText as text } from '../en/season/text.ts';
import { formatAmount } from '../format.ts';
import { refusalSentence } from '../sentences.ts';

/** What a weather file holds, in one line. A year that is put together from several has no first and last day worth telling. */
export function weatherWhat({ days, readingsPerDay }: Weather): string {
  const [first, last] = [days[0]!.date, days.at(-1)!.date];
  const missing = dayNumber(last) - dayNumber(first) + 1 - days.length;
  if (missing <= days.length) return [text.weather(days.length, first, last, readingsPerDay), ...(missing > 0 ? [text.missing(missing)] : [])].join(' ');
  return text.joined(days.length, new Set(days.map((d) => d.date.slice(0, 4))).size, readingsPerDay);
}

/** Degree-days from one rung to another, or why there are none. */
export function spanLine(weather: DegreeDays, from: Rung, to: Rung, system: UnitSystem): string {
  const span = weather.span(from.date!, to.date!);
  if ('kind' in span) return text.between(from.name, to.name, '', refusalSentence(span, system));
  const how = (span.by === 'month-day' ? text.byMonthDay(span.years) : '') + (span.bridged.length > 0 ? text.bridgedDays(span.bridged.length) : '');
  return text.between(from.name, to.name, formatAmount(valueOf(span.sum) ?? NaN, 'K.d', system), how);
}

import type { Assumption } from '../working/assumption.ts';
import { given, refused, type Answer, type Given, type Refused } from '../working/answer.ts';
import { dayNumber, isoOf, monthDay, type DayKind, type Temperatures, type Weather } from './days.ts';

/** Leaf area goes with degree-days above this (Litschmann et al. 2016, from a summary). */
export const BASE_TEMPERATURE: Assumption = { id: 'growth.base-temperature', value: 5, unit: 'degC', least: -5, most: 15, certainty: 'published', sources: ['litschmann-2016'] };

/**
 * Degree-days of one day above `baseC`, °C·d, never below zero. Readings: the mean of what each is above the base, so that a warm noon counts on
 * a day whose mean is below it (common practice, no source). Lowest and highest: their mean less the base (McMaster & Wilhelm 1997, their
 * first reading of the equation, from memory). A mean alone: less the base.
 */
export function degreeDaysOf(t: Temperatures, baseC: number): number {
  if ('readings' in t) return t.readings.length === 0 ? NaN : t.readings.reduce((sum, c) => sum + Math.max(c - baseC, 0), 0) / t.readings.length;
  return Math.max(('meanC' in t ? t.meanC : (t.leastC + t.mostC) / 2) - baseC, 0);
}

/** What sum of degree-days is: its method by the kind of file. */
export const METHOD_SOURCES: Readonly<Record<DayKind, readonly ['litschmann-2016', 'habit' | 'mcmaster-wilhelm-1997']>> = {
  readings: ['litschmann-2016', 'habit'],
  extremes: ['litschmann-2016', 'mcmaster-wilhelm-1997'],
  mean: ['litschmann-2016', 'habit']
};

/** More missing days in a row than this are not bridged. */
export const LONGEST_GAP = 7;
/** A span longer than a year and a day is no way between two stages. */
const LONGEST_SPAN = 366;

/** The degree-days of a span, day by day. */
export interface Span {
  /** ISO dates, the first counted, the last not. */
  readonly from: string;
  readonly to: string;
  readonly perDay: readonly number[];
  readonly sum: Answer;
  /** Found by the dates themselves, or by month and day alone, as in a typical year: then of how many years. */
  readonly by: 'date' | 'month-day';
  readonly years: number;
  /** Days that the file does not have and that were bridged from their neighbours. */
  readonly bridged: readonly string[];
}

/** A weather file ready to be asked: each day's degree-days by date, and by month and day over all its years. */
export class DegreeDays {
  private readonly byDate = new Map<string, number>();
  private readonly byMonthDay = new Map<string, { sum: number; years: number }>();

  constructor(
    readonly weather: Weather,
    /** °C. */
    readonly base: Given
  ) {
    const thin = new Set(weather.thin);
    for (const { date, temperatures } of weather.days) {
      const value = degreeDaysOf(temperatures, base.value);
      if (thin.has(date) || !Number.isFinite(value)) continue;
      this.byDate.set(date, value);
      const key = monthDay(date);
      const known = this.byMonthDay.get(key) ?? { sum: 0, years: 0 };
      this.byMonthDay.set(key, { sum: known.sum + value, years: known.years + 1 });
    }
  }

  /**
   * The days from `from` up to but without `to`. By the dates themselves where the file has its first and last day, else by month and day.
   * Refuses a span that runs backwards or for more than a year, and one with more than seven missing days in a row.
   */
  span(from: string, to: string): Span | Refused {
    const [first, end] = [dayNumber(from), dayNumber(to)];
    if (!(end > first)) return refused('dates-not-rising', 'date', { from, to });
    if (end - first > LONGEST_SPAN) return refused('dates-far-apart', 'date', { from, to });
    const exact = this.byDate.has(from) && this.byDate.has(isoOf(end - 1));
    let years = 0;
    const found = Array.from({ length: end - first }, (_, i): number | undefined => {
      const iso = isoOf(first + i);
      if (exact) return this.byDate.get(iso);
      const day = this.byMonthDay.get(monthDay(iso));
      years = Math.max(years, day?.years ?? 0);
      return day && day.sum / day.years;
    });
    const bridged: string[] = [];
    const perDay: number[] = [];
    for (let i = 0; i < found.length; ) {
      const value = found[i];
      if (value !== undefined) {
        perDay.push(value);
        i++;
        continue;
      }
      let stop = i;
      while (stop < found.length && found[stop] === undefined) stop++;
      const [before, after] = [found[i - 1], found[stop]];
      if (stop - i > LONGEST_GAP || (before === undefined && after === undefined))
        return refused('weather-gap', 'weather', { from: isoOf(first + i), to: isoOf(first + stop - 1), days: stop - i });
      for (let j = i; j < stop; j++) {
        const t = (j - i + 1) / (stop - i + 1);
        const [a, b] = [before ?? after!, after ?? before!];
        perDay.push(a + (b - a) * t);
        bridged.push(isoOf(first + j));
      }
      i = stop;
    }
    const total = perDay.reduce((a, b) => a + b, 0);
    return {
      from,
      to,
      perDay,
      sum: given(total, 'K.d', this.base.certainty === 'stated' ? 'stated' : 'practice', { path: 'weather', sources: METHOD_SOURCES[this.weather.kind] }),
      by: exact ? 'date' : 'month-day',
      years: exact ? 1 : years,
      bridged
    };
  }
}

/** The temperatures of one day, °C: readings at equal steps, or the lowest and highest, or the mean alone. */
export type Temperatures = { readonly readings: readonly number[] } | { readonly leastC: number; readonly mostC: number } | { readonly meanC: number };

export interface WeatherDay {
  /** ISO date as it stands in the file. */
  readonly date: string;
  readonly temperatures: Temperatures;
}

/** What the days of a file are made of. */
export type DayKind = 'readings' | 'extremes' | 'mean';

export interface Weather {
  readonly kind: DayKind;
  /** Rising by date, no date twice. */
  readonly days: readonly WeatherDay[];
  /** Readings of a full day; 1 where the file has one line a day. */
  readonly readingsPerDay: number;
  /** Days that have some readings but too few to stand for the day: they count as missing. */
  readonly thin: readonly string[];
}

/** A day with less than this share of its readings is no day: a missing afternoon would make it cold. */
export const LEAST_SHARE = 0.75;

const DAY_MS = 86_400_000;

/** Day of the calendar as a whole number, so that days can be counted. */
export const dayNumber = (iso: string): number => Math.round(Date.parse(`${iso}T00:00:00Z`) / DAY_MS);
export const isoOf = (day: number): string => new Date(day * DAY_MS).toISOString().slice(0, 10);

/** Month and day, `04-27`. The 29th of February goes with the 28th: typical years have none. */
export const monthDay = (iso: string): string => (iso.endsWith('-02-29') ? '02-28' : iso.slice(5));

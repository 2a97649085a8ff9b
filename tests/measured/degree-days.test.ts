import { readFileSync } from 'node:fs';
import { DuckDBInstance } from '@duckdb/node-api';
import { describe, expect, it } from 'vitest';
import { DegreeDays, type Span } from '#core/weather/degree-days.ts';
import { given, valueOf } from '#core/working/answer.ts';
import { readWeather } from '#job/weather/read.ts';

/** The hours of March to July of a typical year (TMY3), months of different years, against sums by a database. */
const FILE = 'tests/measured/data/weather-tmy3-greensboro-spring.csv';
const reading = readWeather(readFileSync(FILE, 'utf8'));
const spanOf = (from: string, to: string, baseC: number): Span => {
  const span = new DegreeDays(reading.weather!, given(baseC, 'degC')).span(from, to);
  if ('kind' in span) throw new Error(span.code);
  return span;
};

const connection = await (await DuckDBInstance.create()).connect();
/** Degree-days of the hours of some days, the first counted, the last not, by month and day. */
async function byDatabase(from: string, to: string, baseC: number): Promise<number> {
  const answer = await connection.runAndReadAll(
    `select sum(greatest(dry_bulb_c - ${baseC}, 0)) / 24.0 from read_csv('${FILE}', header = true, all_varchar = false, types = {'date': 'VARCHAR', 'time_local_standard': 'VARCHAR'})
     where substr(date, 1, 2) || '-' || substr(date, 4, 2) >= '${from}' and substr(date, 1, 2) || '-' || substr(date, 4, 2) < '${to}'`
  );
  return Number(answer.getRows()[0]![0]);
}

describe('the hours of a typical year', () => {
  it('are read whole, day by day, from the file as it is', () => {
    expect(reading.problems).toEqual([]);
    expect(reading).toMatchObject({ used: 153 * 24, refused: 0 });
    expect(reading.weather).toMatchObject({ kind: 'readings', readingsPerDay: 24, thin: [] });
    expect(reading.weather!.days).toHaveLength(153);
    // The last hour of a day is written 24:00 and belongs to it.
    expect(reading.weather!.days.every((d) => 'readings' in d.temperatures && d.temperatures.readings.length === 24)).toBe(true);
  });
  it.each([
    ['04-04', '05-16', 5],
    ['04-04', '06-20', 5],
    ['03-01', '07-31', 5],
    ['03-01', '03-02', 5],
    ['03-01', '07-31', 0],
    ['03-15', '06-01', 10]
  ])('%s to %s above %d °C as a database sums them', async (from, to, base) => {
    const span = spanOf(`2031-${from}`, `2031-${to}`, base);
    expect(span.by).toBe('month-day');
    expect(valueOf(span.sum)).toBeCloseTo(await byDatabase(from, to, base), 8);
  });
  it('says no more of days that are not there: more than a week is a gap, named', () => {
    const span = new DegreeDays(reading.weather!, given(5, 'degC')).span('2031-02-01', '2031-03-10');
    expect(span).toMatchObject({ kind: 'refused', code: 'weather-gap', parameters: { from: '2031-02-01', to: '2031-02-28', days: 28 } });
  });
  it('the mean of lowest and highest of the same days is near the mean of the hours: the two methods differ by less than a tenth here', async () => {
    const daily = await connection.runAndReadAll(
      `select date, min(dry_bulb_c), max(dry_bulb_c) from read_csv('${FILE}', header = true, types = {'date': 'VARCHAR', 'time_local_standard': 'VARCHAR'}) group by date order by date`
    );
    const text = ['date,temperature_min_c,temperature_max_c', ...daily.getRows().map((r) => r.join(','))].join('\n');
    const { weather, refused } = readWeather(text);
    expect(refused).toBe(0);
    const span = new DegreeDays(weather!, given(5, 'degC')).span('2031-04-04', '2031-06-20') as Span;
    const ratio = valueOf(span.sum)! / valueOf(spanOf('2031-04-04', '2031-06-20', 5).sum)!;
    expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
    expect(ratio).not.toBe(1);
  });
});

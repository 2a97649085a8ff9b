import { describe, expect, it } from 'vitest';
import { DegreeDays } from '#core/weather/degree-days.ts';
import { given, valueOf } from '#core/working/answer.ts';
import { readWeather, type WeatherReading } from '#job/weather/read.ts';
import { problemSentence } from '#words/en/problems.ts';

const told = (r: WeatherReading) => r.problems.map((p) => `${p.line} ${p.column} ${p.code}`);
const hours = (day: string, of: (h: number) => number): string[] => Array.from({ length: 24 }, (_, h) => `${day},${String(h).padStart(2, '0')}:00,${of(h)}`);
const sum = (r: WeatherReading, from: string, to: string): number | undefined => {
  const span = new DegreeDays(r.weather!, given(5, 'degC')).span(from, to);
  return 'kind' in span ? undefined : valueOf(span.sum);
};

describe('a weather file', () => {
  it.each([
    ['date,time,temperature_c', '2031-04-01,12:00,15'],
    ['Date;Time;Temp (°C)', '01.04.2031;12:00;15,0'],
    ['datetime,temp_f', '2031-04-01T12:00:00Z,59'],
    ['time,temperature_2m (°C)', '2031-04-01T12:00,15'],
    ['Date (MM/DD/YYYY),Time (HH:MM),Dry-bulb (C),Wind', '04/13/2031,12:00,15,3'],
    ['date\thour\tair_temperature_c', '20310401\t12\t15'],
    ['timestamp,t_c,rh_pct', '2031-04-01 3:00 pm,15,60']
  ])('%s', (header, line) => {
    const r = readWeather(`${header}\n${line}\n`);
    expect(r.problems).toEqual([]);
    expect(r.weather!.days).toHaveLength(1);
    expect(r.weather!.days[0]!.date).toMatch(/^2031-04-(01|13)$/);
    const t = r.weather!.days[0]!.temperatures;
    expect('meanC' in t && t.meanC).toBeCloseTo(15, 12);
  });
  it('passes over what stands before the header, as in a published typical year', () => {
    const r = readWeather('723170,"SOME PLACE",NC,-5.0,36.100,-79.950,270\nDate (MM/DD/YYYY),Time (HH:MM),ETR (W/m^2),Dry-bulb (C),Dry-bulb source\n01/31/1988,24:00,0,10.0,A\n');
    expect(r.problems).toEqual([]);
    expect(r.weather!.days[0]!.date).toBe('1988-01-31');
  });
  it('the lowest and the highest of a day in Fahrenheit', () => {
    const r = readWeather('date,tmin_f,tmax_f\n2031-05-01,41,77\n2031-05-02,32,50\n');
    expect(r.weather!.kind).toBe('extremes');
    // 5 and 25 °C: mean 15, ten above the base; 0 and 10 °C: mean 5, none.
    expect(sum(r, '2031-05-01', '2031-05-03')).toBeCloseTo(10, 9);
  });
  it('hours count one by one: a warm noon counts on a cold day', () => {
    const r = readWeather(['date,time,temperature_c', ...hours('2031-04-01', (h) => (h === 12 ? 29 : 0))].join('\n'));
    expect(sum(r, '2031-04-01', '2031-04-02')).toBeCloseTo(1, 12);
  });

  describe('bad lines are named and left out, the others are read', () => {
    const text = ['date,time,temperature_c', '2031-04-01,12:00,15', '2031-04-31,12:00,15', '2031-04-02,25:00,15', '2031-04-02,12:00,warm', '2031-04-02,13:00,150', '2031-04-02,14:00', '2031-04-01,12:00,16', '2031-04-03,12:00,', '2031-04-04,12:00,18'].join('\n');
    const r = readWeather(text);
    it('by line, column and reason', () => {
      expect(told(r)).toEqual([
        '4 time not-a-time',
        '5 temperature_c not-a-number',
        '6 temperature_c out-of-range',
        '7  field-count',
        '9 temperature_c absent',
        '3 date not-a-date',
        '8 date moment-again'
      ]);
      expect([r.used, r.refused]).toEqual([2, 7]);
    });
    it('in sentences that hold what stands there', () => {
      const all = r.problems.map((p) => problemSentence(p)).join('\n');
      for (const part of ['25:00', 'warm', '150', '2031-04-31']) expect(all).toContain(part);
      expect(all).not.toMatch(/undefined|NaN/);
    });
  });
  it.each([
    ['', 'no-header'],
    ['date,temp_c\n', 'no-rows'],
    ['Our station\ndate,temp_c\n', 'no-rows'],
    ['a,b\n1,2\n3,4\n5,6\n7,8\n', 'no-header'],
    ['date,temperature\n2031-04-01,15\n', 'unit-unsaid'],
    ['date,wind\n2031-04-01,3\n', 'missing-column'],
    ['temperature_c,wind\n15,3\n', 'missing-column'],
    ['date,tmin_c\n2031-04-01,3\n', 'missing-column'],
    ['date,temp_c,t_c\n2031-04-01,15,16\n', 'duplicate-column'],
    ['date,temp_c\n04/05/2031,15\n05/06/2031,16\n', 'unclear-dates'],
    ['date,temp_c\n"2031-04-01,15\n', 'bad-quotes']
  ])('%j is refused whole: %s', (text, code) => {
    const r = readWeather(text);
    expect(r.weather).toBeNull();
    expect(r.problems.map((p) => p.code)).toContain(code);
    for (const p of r.problems) expect(problemSentence(p)).not.toMatch(/undefined|is refused \(/);
  });
  it('a lowest above the highest is no day', () => expect(told(readWeather('date,tmin_c,tmax_c\n2031-04-01,9,3\n'))).toEqual(['2 tmin_c min-above-max']));
  it('one date tells the order of them all', () => {
    const r = readWeather('date,temp_c\n04/05/2031,15\n04/25/2031,16\n');
    expect(r.weather!.days.map((d) => d.date)).toEqual(['2031-04-05', '2031-04-25']);
  });
  it('a day with too few of its hours counts as missing, and is bridged', () => {
    const lines = ['date,time,temperature_c', ...hours('2031-04-01', () => 15), ...hours('2031-04-02', () => 40).slice(0, 10), ...hours('2031-04-03', () => 25)];
    const r = readWeather(lines.join('\n'));
    expect(r.weather!.thin).toEqual(['2031-04-02']);
    expect(sum(r, '2031-04-01', '2031-04-04')).toBeCloseTo(10 + 15 + 20, 9);
  });
  it('never throws, whatever it is given', () => {
    for (const text of ['\u0000', '\uFEFF', 'date', ',,,\n,,,', 'date,temp_c\n,,', '"', 'date,time,temperature_c\n2031-04-01T,12,1e999']) expect(() => readWeather(text)).not.toThrow();
  });
});

describe('a span of days', () => {
  const days = (from: number, count: number, year = 2030) =>
    readWeather(['date,temperature_mean_c', ...Array.from({ length: count }, (_, i) => `${new Date(Date.UTC(year, 3, from + i)).toISOString().slice(0, 10)},${10 + i}`)].join('\n'));
  it('of the very year goes by its dates, of another by month and day', () => {
    const w = new DegreeDays(days(1, 10).weather!, given(5, 'degC'));
    expect(w.span('2030-04-02', '2030-04-04')).toMatchObject({ by: 'date', perDay: [6, 7] });
    expect(w.span('2035-04-02', '2035-04-04')).toMatchObject({ by: 'month-day', years: 1, perDay: [6, 7] });
  });
  it('of several years is their mean', () => {
    const text = 'date,temperature_mean_c\n2029-04-02,10\n2030-04-02,20\n';
    expect(new DegreeDays(readWeather(text).weather!, given(5, 'degC')).span('2035-04-02', '2035-04-03')).toMatchObject({ years: 2, perDay: [10] });
  });
  it('goes over the turn of the year and over the 29th of February', () => {
    const text = ['date,temperature_mean_c', '1990-12-31,10', '1985-01-01,11', '1985-02-28,12', '1985-03-01,13'].join('\n');
    const w = new DegreeDays(readWeather(text).weather!, given(5, 'degC'));
    expect(w.span('2031-12-31', '2032-01-02')).toMatchObject({ perDay: [5, 6] });
    expect(w.span('2032-02-28', '2032-03-02')).toMatchObject({ perDay: [7, 7, 8] });
  });
  it('is refused backwards and over more than a year', () => {
    const w = new DegreeDays(days(1, 10).weather!, given(5, 'degC'));
    expect(w.span('2030-04-04', '2030-04-02')).toMatchObject({ code: 'dates-not-rising' });
    expect(w.span('2030-04-04', '2032-04-02')).toMatchObject({ code: 'dates-far-apart' });
  });
});

/** What a column of a weather file may hold. */
export type WeatherWhat = 'moment' | 'date' | 'time' | 'temperature' | 'least' | 'most' | 'mean';

export interface WeatherColumn {
  readonly what: WeatherWhat;
  /** Of temperatures. */
  readonly unit?: 'C' | 'F';
}

/** Plain names of the columns that are read, without units; everything else in a weather file is passed over. */
const MOMENT = ['datetime', 'date_time', 'timestamp', 'date_and_time', 'valid', 'time_stamp'];
const DATE = ['date', 'day', 'date_local', 'date_mm_dd_yyyy'];
const TIME = ['time', 'hour', 'time_local', 'time_local_standard', 'time_hh_mm', 'hour_of_day'];
const NAMES: Readonly<Record<'temperature' | 'least' | 'most' | 'mean', readonly string[]>> = {
  temperature: ['temperature', 'temp', 't', 'air_temperature', 'air_temp', 'dry_bulb', 'dry_bulb_temperature', 'drybulb', 't2m', 'temperature_2m', 'tair', 'ta'],
  least: ['temperature_min', 'min_temperature', 'temp_min', 'min_temp', 'tmin', 't_min', 'temperature_2m_min', 'lowest', 'low', 'min'],
  most: ['temperature_max', 'max_temperature', 'temp_max', 'max_temp', 'tmax', 't_max', 'temperature_2m_max', 'highest', 'high', 'max'],
  mean: ['temperature_mean', 'mean_temperature', 'temp_mean', 'mean_temp', 'tmean', 't_mean', 'tavg', 't_avg', 'temperature_avg', 'avg_temperature', 'temperature_2m_mean', 'mean']
};

/** `Dry-bulb (C)` → `dry_bulb_c`. */
export const plainName = (name: string): string =>
  name
    .trim()
    .toLowerCase()
    .replaceAll('°', '')
    .replace(/[^\p{L}\p{N}]+/gu, '_')
    .replace(/^_|_$/g, '');

const UNIT = /_(c|celsius|deg_c|degc|f|fahrenheit|deg_f|degf)$/;

/** What stands under a name; `unit` is missing where the name does not tell it. Null for a column that nothing here needs. */
export function weatherColumn(name: string): WeatherColumn | null {
  const plain = plainName(name);
  if (MOMENT.includes(plain)) return { what: 'moment' };
  if (DATE.includes(plain)) return { what: 'date' };
  if (TIME.includes(plain)) return { what: 'time' };
  const written = UNIT.exec(plain)?.[1];
  // `temperature_c_min` and `tmin_c` are the same.
  const inner = /^(.*)_(c|f)_(min|max|mean|avg)$/.exec(plain);
  const bare = inner ? `${inner[1]}_${inner[3]}` : plain.replace(UNIT, '');
  const unit = inner?.[2] ?? written?.replace(/^deg_?/, '')[0];
  for (const what of ['temperature', 'least', 'most', 'mean'] as const)
    if (NAMES[what].includes(bare)) return { what, ...(unit === undefined ? {} : { unit: unit === 'f' ? ('F' as const) : ('C' as const) }) };
  return null;
}

/** How they are called first of all, for people. */
export const WEATHER_NAMES = 'date, time, temperature_c (or _f); or date, temperature_min_c, temperature_max_c; or date, temperature_mean_c';

import type { Unit } from '../quantity/units.ts';

/*
 * What a record may hold, as data: the reader's schema, the columns of the table, the form on the screen and the check-lists are all
 * made of these lists. Numbers are in the engine's units, which the name ends in: `volumeLPerHa` is litres per hectare.
 */

/** One line of text; several lines; a number; a day; a time of the day; one of some words. */
export type RecordField =
  | { readonly kind: 'text' | 'lines' | 'date' | 'time'; readonly part: RecordPart }
  | { readonly kind: 'number'; readonly part: RecordPart; readonly unit: Unit; readonly least: number; readonly most: number; readonly whole?: true }
  | { readonly kind: 'choice'; readonly part: RecordPart; readonly choices: readonly string[] };

/** Parts of a form, in their order. */
export const RECORD_PARTS = ['when', 'who', 'place', 'product', 'water', 'machine', 'speed', 'output', 'verdict', 'weather', 'more'] as const;
export type RecordPart = (typeof RECORD_PARTS)[number];

const text = (part: RecordPart) => ({ kind: 'text', part }) as const;
const lines = (part: RecordPart) => ({ kind: 'lines', part }) as const;
const date = (part: RecordPart) => ({ kind: 'date', part }) as const;
const time = (part: RecordPart) => ({ kind: 'time', part }) as const;
const number = (part: RecordPart, unit: Unit, least: number, most: number) => ({ kind: 'number', part, unit, least, most }) as const;
const whole = (part: RecordPart, least: number, most: number) => ({ kind: 'number', part, unit: '1', least, most, whole: true }) as const;
const choice = <const C extends readonly string[]>(part: RecordPart, ...choices: C) => ({ kind: 'choice', part, choices }) as const;

const WHEN_WHERE = {
  date: date('when'),
  startTime: time('when'),
  endTime: time('when'),
  operator: text('who'),
  blockName: text('place'),
  stage: text('place'),
  rowSpacingM: number('place', 'm', 0.5, 20),
  pattern: choice('place', 'every-alley', 'one-side-both-faces', 'one-side-one-face', 'alternate-alleys', 'whole-rows', 'swath'),
  widthServedM: number('place', 'm', 0.1, 400)
} as const;

const MACHINE = {
  machine: text('machine'),
  tractor: text('machine'),
  tractorGear: text('machine'),
  engineRpm: number('machine', 'rpm', 100, 6000),
  ptoRpm: number('machine', 'rpm', 100, 1200),
  tyre: text('machine'),
  fanGear: text('machine'),
  fanBlade: text('machine'),
  setSpeedKmH: number('machine', 'km/h', 0.5, 20),
  setPressureBar: number('machine', 'bar', 0.5, 60),
  /** Every position with table, size and whether it is open. */
  nozzles: lines('machine')
} as const;

const WEATHER = {
  temperatureC: number('weather', 'degC', -30, 60),
  humidityPct: number('weather', '%', 0, 100),
  windMPerS: number('weather', 'm/s', 0, 60)
} as const;

const MORE = {
  remarks: lines('more'),
  /** Nothing is ever taken away: a record that should not have been made is amended to say so. */
  madeInError: choice('more', 'yes')
} as const;

export const CALIBRATION_FIELDS = {
  ...WHEN_WHERE,
  ...MACHINE,
  speedKmH: number('speed', 'km/h', 0.1, 50),
  displayKmH: number('speed', 'km/h', 0.5, 20),
  /** Raw runs: distance, seconds, which way. */
  speedRuns: lines('speed'),
  gaugeRestBar: number('output', 'bar', 0, 100),
  gaugeBar: number('output', 'bar', 0, 100),
  masterGaugeBar: number('output', 'bar', 0, 100),
  farGaugeBar: number('output', 'bar', 0, 100),
  refillL: number('output', 'L', 0.1, 10_000),
  refillS: number('output', 's', 1, 14_400),
  refillM: number('output', 'm', 1, 5000),
  /** Raw catches: position, litres, seconds. */
  catches: lines('output'),
  meanNozzleLPerMin: number('output', 'L/min', 0, 1000),
  /** Each position's deviation from the mean, percent. */
  deviations: lines('output'),
  leftLPerMin: number('output', 'L/min', 0, 10_000),
  rightLPerMin: number('output', 'L/min', 0, 10_000),
  flowLPerMin: number('output', 'L/min', 0, 10_000),
  wantedLPerHa: number('verdict', 'L/ha', 0, 100_000),
  volumeLPerHa: number('verdict', 'L/ha', 0, 100_000),
  offWantedPct: number('verdict', '%', -100, 100_000),
  tolerance: choice('verdict', 'strict', 'normal', 'inspection'),
  action: lines('verdict'),
  /** The walk round the machine: each item with what was found. */
  walkRound: lines('verdict'),
  paperCheck: text('verdict'),
  nextDue: date('verdict'),
  ...WEATHER,
  ...MORE
} as const satisfies Record<string, RecordField>;

export const TREATMENT_FIELDS = {
  ...WHEN_WHERE,
  certifiedApplicator: text('who'),
  certificateNumber: text('who'),
  nonCertifiedApplicator: text('who'),
  customerName: text('who'),
  customerAddress: lines('who'),
  location: text('place'),
  geoUnit: text('place'),
  crop: text('place'),
  variety: text('place'),
  cropEppo: text('place'),
  bbch: whole('place', 0, 99),
  treatedAreaHa: number('place', 'ha', 0.0001, 10_000),
  /** Our own words, not a list of any law. */
  typeOfUse: choice('place', 'open-air', 'under-cover', 'other'),
  target: text('place'),
  productName: text('product'),
  authorisationNumber: text('product'),
  epaRegNumber: text('product'),
  activeIngredients: text('product'),
  /** Of these pairs a record has the one of its product's unit. */
  productKgPerHa: number('product', 'kg/ha', 0, 100_000),
  productLPerHa: number('product', 'Lprod/ha', 0, 100_000),
  productTotalKg: number('product', 'kg', 0, 10_000_000),
  productTotalL: number('product', 'Lprod', 0, 10_000_000),
  mixedWith: lines('product'),
  preHarvestIntervalDays: whole('product', 0, 1000),
  reEntryHours: number('product', '1', 0, 10_000),
  volumeLPerHa: number('water', 'L/ha', 0, 100_000),
  mixUsedL: number('water', 'L', 0.1, 10_000_000),
  ...MACHINE,
  ...WEATHER,
  ...MORE
} as const satisfies Record<string, RecordField>;

export const RECORD_FIELDS = { calibration: CALIBRATION_FIELDS, treatment: TREATMENT_FIELDS } as const;

/** Every field of any kind of record, in the order of the table's columns. */
export const ALL_FIELDS: Readonly<Record<string, RecordField>> = { ...TREATMENT_FIELDS, ...CALIBRATION_FIELDS };

/** Unit that the name of a column ends in, from the name of the field: `volumeLPerHa` is `volume_l_per_ha`. */
export const columnOf = (field: string): string => field.replace(/[A-Z]/g, (c) => `_${c.toLowerCase()}`);

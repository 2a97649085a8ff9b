import { readFileSync } from 'node:fs';
import { GAL_PER_1000FT3_L_PER_M3 } from '#core/quantity/constants.ts';
import { entered, shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import type { Canopy, CanopyErrors } from '#core/canopy/types.ts';
import type { Label } from '#core/dose/types.ts';
import type { FanGear, PassPattern } from '#core/sprayer/types.ts';
import { isRefused, type Answer, type Figure, type Quantity } from '#core/working/answer.ts';
import { defined, result, table, type Parts } from './sample.ts';
import type { Advised } from '#core/setting/result.ts';

/** One case of `tests/published/*.json`: what somebody else says comes out. */
export interface Case {
  readonly id: string;
  readonly source: string;
  readonly what: string;
  readonly note?: string;
  readonly inputs: Inputs;
  readonly expected: Readonly<Record<string, { readonly value: number; readonly tolerance: number; readonly unit: string }>>;
}
export type Inputs = Readonly<Record<string, unknown>>;
/** One quantity that a topic can be asked for. */
export type Call = (i: Inputs) => Answer | number;

export const load = (topic: string): readonly Case[] =>
  JSON.parse(readFileSync(new URL(`../published/${topic}.json`, import.meta.url), 'utf8')) as readonly Case[];

/** Units as the data writes them: engine unit and the system in which it is written. */
const WRITTEN: Record<string, readonly [Unit, UnitSystem]> = {
  '1': ['1', 'metric'], '%': ['%', 'metric'],
  m: ['m', 'metric'], ft: ['m', 'us'], m2: ['m2', 'metric'], 'm3/ha': ['m3/ha', 'metric'], 'ft3/ac': ['m3/ha', 'us'],
  'm2/ha': ['m2/ha', 'metric'], 'ft2/ac': ['m2/ha', 'us'], 'm/ha': ['m/ha', 'metric'], 'ft/ac': ['m/ha', 'us'],
  'UCR/ha': ['UCR/ha', 'metric'], 'L/ha': ['L/ha', 'metric'], 'gal/ac': ['L/ha', 'us'], 'L/100m': ['L/100m', 'metric'],
  'm2/m3': ['m2/m3', 'metric'], 'L/m3': ['L/m3', 'metric'], 'gal/1000ft3': ['L/m3', 'us'],
  'kg/ha': ['kg/ha', 'metric'], 'lb/ac': ['kg/ha', 'us'], 'Lprod/ha': ['Lprod/ha', 'metric'], 'fl oz/ac': ['Lprod/ha', 'us'],
  'kg/hL': ['kg/hL', 'metric'], 'lb/100gal': ['kg/hL', 'us'], 'Lprod/hL': ['Lprod/hL', 'metric'], 'fl oz/100gal': ['Lprod/hL', 'us'],
  kg: ['kg', 'metric'], lb: ['kg', 'us'], Lprod: ['Lprod', 'metric'], 'fl oz': ['Lprod', 'us'],
  'L/min': ['L/min', 'metric'], 'gal/min': ['L/min', 'us'], bar: ['bar', 'metric'], psi: ['bar', 'us'],
  'km/h': ['km/h', 'metric'], mph: ['km/h', 'us'], 'ha/h': ['ha/h', 'metric'], 'ac/h': ['ha/h', 'us'],
  's/100m': ['s/100m', 'metric'], 'm/s': ['m/s', 'metric'], rpm: ['rpm', 'metric'], 'm3/h': ['m3/h', 'metric'], cfm: ['m3/h', 'us'],
  'm3/m': ['m3/m', 'metric'], deg: ['deg', 'metric'], C: ['degC', 'metric'], dC: ['K', 'metric'], dF: ['K', 'us'], kPa: ['kPa', 'metric'], L: ['L', 'metric'], gal: ['L', 'us'], ha: ['ha', 'metric'], ac: ['ha', 'us'], h: ['h', 'metric'], s: ['s', 'metric']
};

/** The answer in the unit in which the case writes it; wrong engine units are a failure, not a conversion. */
export function inUnit(a: Answer | number, unit: string): number {
  const written = WRITTEN[unit];
  if (!written) throw new Error(`the data has an unknown unit ${unit}`);
  if (typeof a === 'number') return a;
  if (isRefused(a)) throw new Error(`refused: ${a.code} at ${a.path} ${JSON.stringify(a.parameters)}`);
  if (a.unit !== written[0]) throw new Error(`the engine answers in ${a.unit}, the case is in ${unit}`);
  return shown(a.value, ...written);
}

/** Suffix of an input key → how it is read. */
const SUFFIX: Record<string, readonly [Unit, UnitSystem]> = {
  _m: ['m', 'metric'], _ft: ['m', 'us'], _km_per_h: ['km/h', 'metric'], _mph: ['km/h', 'us'], _bar: ['bar', 'metric'], _psi: ['bar', 'us'],
  _L_per_min: ['L/min', 'metric'], _gal_per_min: ['L/min', 'us'], _L_per_ha: ['L/ha', 'metric'], _gal_per_ac: ['L/ha', 'us'],
  _m3_per_h: ['m3/h', 'metric'], _rpm: ['rpm', 'metric'], _C: ['degC', 'metric'], _pct: ['%', 'metric'], _1: ['1', 'metric'], _deg: ['deg', 'metric'],
  _L: ['L', 'metric'], _gal: ['L', 'us'], _m2_per_m3: ['m2/m3', 'metric'], _kPa: ['kPa', 'metric'], _m_per_s: ['m/s', 'metric'], _s: ['s', 'metric'], _ha: ['ha', 'metric'], _ac: ['ha', 'us'], _kg_per_ha: ['kg/ha', 'metric'], _lb_per_ac: ['kg/ha', 'us']
};

/** An input by its name without the unit, in the engine's unit; undefined where the case does not give it. */
export function read(i: Inputs, name: string): number | undefined {
  for (const [suffix, [unit, system]] of Object.entries(SUFFIX)) {
    const v = i[name + suffix];
    if (typeof v === 'number') return entered(v, unit, system);
  }
  return undefined;
}

export function need(i: Inputs, name: string): number {
  const v = read(i, name);
  if (v === undefined) throw new Error(`the case gives no ${name}`);
  return v;
}

/**
 * A document that holds the inputs of a case: 3 m high, 1 m wide, 4 m rows and a box where it says nothing. A total flow is shared by
 * nozzles of a user table whose reference pressure is the working pressure.
 */
export function partsOf(i: Inputs): Parts {
  const height = read(i, 'height') ?? 3;
  const width = read(i, 'width') ?? 1;
  const rowSpacingM = read(i, 'row_spacing') ?? 4;
  const cv = (name: string, mean: number): number | undefined => {
    const c = read(i, `cv_${name}`);
    return c === undefined ? undefined : (c / 100) * mean;
  };
  const errors = defined<{ [K in keyof CanopyErrors]: CanopyErrors[K] | undefined }>({
    heightSeM: cv('height', height),
    widthSeM: cv('width', width),
    rowSpacingSeM: cv('row_spacing', rowSpacingM),
    heightWidthCorrelation: read(i, 'correlation')
  }) as CanopyErrors;
  const canopy = defined({
    heightM: height,
    widthM: width,
    skirtM: read(i, 'skirt') ?? 0,
    shape: (i.shape as Canopy['shape']) ?? 'box',
    profile: (i.profile_m as [number, number][] | undefined)?.map(([heightM, widthM]) => ({ heightM, widthM })),
    filledFraction: read(i, 'filled'),
    missingFraction: read(i, 'missing'),
    densityClass: i.density as Canopy['densityClass'],
    usDensityGalPer1000Ft3: i.us_density_gal_per_1000ft3 as number | undefined,
    ladM2PerM3: read(i, 'lad'),
    errors: Object.keys(errors).length ? errors : undefined
  }) as Canopy;

  const pressureBar = read(i, 'pressure') ?? 10;
  const total = read(i, 'flow');
  const one = read(i, 'nozzle_flow');
  const pattern = (typeof i.pattern === 'string' ? { kind: i.pattern } : i.pattern) as PassPattern | undefined;
  const spraying = pattern?.kind.startsWith('one-side') ? 8 : 16;
  const flow = one ?? (total === undefined ? undefined : total / spraying);
  const own = flow === undefined ? undefined : table(flow, { referenceBar: read(i, 'reference_pressure') ?? pressureBar });
  return {
    canopy,
    setting: defined({
      speedKmH: read(i, 'speed') ?? 6,
      pressureBar,
      ptoRpm: read(i, 'pto') ?? 540,
      nozzles: own ? ['L', 'R'].flatMap((s) => Array.from({ length: 8 }, (_, n) => ({ position: `${s}${n + 1}`, table: 'own', size: 'x' }))) : undefined
    }),
    ...(own ? { tables: [own] } : {}),
    machine: defined({
      tankL: read(i, 'tank') ?? 1000,
      gears: [defined({ id: 'high', name: 'High', flowM3PerH: read(i, 'fan_flow') ?? 30000, atPtoRpm: read(i, 'fan_pto') ?? 540, leftShare: read(i, 'left_share') }) as FanGear]
    }),
    block: defined({
      rowSpacingM,
      strategy: (i.strategy as 'row-volume') ?? 'row-volume',
      pattern,
      ownWaterLPerHa: read(i, 'own_water'),
      concentration: read(i, 'concentration')
    }) as NonNullable<Parts['block']>,
    rung: defined({ bbch: i.bbch as number | undefined }) as NonNullable<Parts['rung']>,
    ...(i.label ? { label: i.label as Partial<Label> } : {}),
    ...(i.assumptions ? { assumptions: i.assumptions as Record<string, number> } : {}),
    ...(read(i, 'temperature') === undefined
      ? {}
      : { day: defined({ temperatureC: need(i, 'temperature'), humidityPct: need(i, 'humidity'), altitudeM: read(i, 'altitude') }) as NonNullable<Parts['day']> })
  };
}

export const job = (i: Inputs): Advised => result(partsOf(i));

/** US density factor as the standard orchard's ratio, L/m³ → gal/1000 ft³. */
export const usFactor = (litresPerM3: number): number => litresPerM3 / GAL_PER_1000FT3_L_PER_M3;

/** Ids of all formulas under an answer. */
export function formulasUnder(a: Answer | number, into = new Set<string>()): Set<string> {
  if (typeof a === 'number' || a.kind !== 'figure') return into;
  const f: Figure = a;
  into.add(f.formula.id);
  for (const input of Object.values(f.inputs)) formulasUnder(input as Quantity, into);
  return into;
}

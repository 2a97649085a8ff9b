import {
  ACRE_HA,
  CFM_M3_PER_H,
  FOOT_M,
  FT2_PER_ACRE_M2_PER_HA,
  FT3_PER_ACRE_M3_PER_HA,
  GAL_PER_1000FT3_L_PER_M3,
  GAL_PER_ACRE_L_PER_HA,
  IMPERIAL_FLUID_OUNCE_L,
  IMPERIAL_GALLON_L,
  MPH_KM_PER_H,
  MPH_M_PER_S,
  POUND_KG,
  PSI_BAR,
  US_FLUID_OUNCE_L,
  US_GALLON_L
} from './constants.ts';

/**
 * Units that the engine computes in: SI, and the trade's own where the published formula is written in it
 * (m³/ha, L/ha, bar, L/min, km/h, m³/h), so that a working shows the formula as the trade knows it.
 */
export type Unit =
  | '1'
  | '%'
  | 'm'
  | 'um'
  | 'm2'
  | 'm3'
  | 'm3/m'
  | 'm/ha'
  | 'm2/ha'
  | 'm3/ha'
  | 'L/m3'
  | 'm2/m3'
  | 'uL/cm2'
  | 'UCR/ha'
  | 'L/UCR'
  | 'L'
  | 'L/ha'
  | 'L/ha/m'
  | 'L/min'
  | 'L/100m'
  | 'L/100m/m'
  | 'kg'
  | 'kg/ha'
  | 'kg/hL'
  | 'kg/ha/m'
  /** Litres of product, so that they are never mistaken for litres of water. */
  | 'Lprod'
  | 'Lprod/ha'
  | 'Lprod/hL'
  | 'Lprod/ha/m'
  | 'bar'
  | 'm/s'
  | 'km/h'
  | 'm3/h'
  | 'rpm'
  | 'deg'
  | 'degC'
  /** A difference of two temperatures, which has no zero to shift. */
  | 'K'
  /** Degree-days: a difference of temperatures over days. */
  | 'K.d'
  | 'kPa'
  | 'ha'
  | 'ha/h'
  | 's'
  | 'min'
  | 'h'
  | 's/100m';

/**
 * Sets of units that are in use together. Regions mix them: gauges in psi on a metric sprayer, speed in mph where the roads have it,
 * acres and litres, imperial gallons. A set is named by what is in it, not by a country.
 */
export const UNIT_SYSTEMS = ['metric', 'metric-psi', 'metric-mph', 'acres', 'imperial', 'us'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];

export const isUnitSystem = (text: unknown): text is UnitSystem => UNIT_SYSTEMS.includes(text as UnitSystem);

/** How one unit is shown: `shown = (engine value - offset) / per`. */
export interface Display {
  readonly symbol: string;
  readonly per: number;
  readonly offset?: number;
  readonly decimals: number;
}

const same = (symbol: string, decimals: number): Display => ({ symbol, per: 1, decimals });

const METRIC: Record<Unit, Display> = {
  '1': same('', 2),
  '%': same('%', 1),
  m: same('m', 2),
  m2: same('m²', 2),
  m3: same('m³', 2),
  'm3/m': same('m³/m', 2),
  'm/ha': same('m/ha', 0),
  um: same('µm', 0),
  'm2/ha': same('m²/ha', 0),
  'm3/ha': same('m³/ha', 0),
  'L/m3': same('L/m³', 4),
  'm2/m3': same('m²/m³', 2),
  'uL/cm2': same('µL/cm²', 2),
  'UCR/ha': same('UCR/ha', 1),
  'L/UCR': same('L/UCR', 1),
  L: same('L', 0),
  'L/ha': same('L/ha', 0),
  'L/ha/m': same('L/ha per m', 0),
  'L/min': same('L/min', 2),
  'L/100m': same('L/100 m', 1),
  'L/100m/m': same('L/100 m per m', 1),
  kg: same('kg', 3),
  'kg/ha': same('kg/ha', 2),
  'kg/hL': same('kg/100 L', 3),
  'kg/ha/m': same('kg/ha per m', 3),
  Lprod: same('L', 3),
  'Lprod/ha': same('L/ha', 2),
  'Lprod/hL': same('L/100 L', 3),
  'Lprod/ha/m': same('L/ha per m', 3),
  bar: same('bar', 1),
  'm/s': same('m/s', 1),
  'km/h': same('km/h', 1),
  'm3/h': same('m³/h', 0),
  rpm: same('rpm', 0),
  deg: same('°', 1),
  degC: same('°C', 1),
  K: same('°C', 1),
  'K.d': same('°C·d', 0),
  kPa: same('kPa', 2),
  ha: same('ha', 2),
  'ha/h': same('ha/h', 2),
  s: same('s', 0),
  min: same('min', 0),
  h: same('h', 2),
  's/100m': same('s/100 m', 0)
};

const US: Record<Unit, Display> = {
  ...METRIC,
  m: { symbol: 'ft', per: FOOT_M, decimals: 1 },
  m2: { symbol: 'ft²', per: FOOT_M ** 2, decimals: 1 },
  m3: { symbol: 'ft³', per: FOOT_M ** 3, decimals: 0 },
  'm3/m': { symbol: 'ft³/ft', per: FOOT_M ** 2, decimals: 1 },
  'm/ha': { symbol: 'ft/ac', per: FOOT_M / ACRE_HA, decimals: 0 },
  'm2/ha': { symbol: 'ft²/ac', per: FT2_PER_ACRE_M2_PER_HA, decimals: 0 },
  'm3/ha': { symbol: 'ft³/ac', per: FT3_PER_ACRE_M3_PER_HA, decimals: 0 },
  'L/m3': { symbol: 'gal/1000 ft³', per: GAL_PER_1000FT3_L_PER_M3, decimals: 2 },
  'm2/m3': { symbol: 'ft²/ft³', per: 1 / FOOT_M, decimals: 2 },
  'UCR/ha': { symbol: 'UCR/ac', per: 1 / ACRE_HA, decimals: 1 },
  'L/UCR': { symbol: 'gal/UCR', per: US_GALLON_L, decimals: 2 },
  L: { symbol: 'gal', per: US_GALLON_L, decimals: 0 },
  'L/ha': { symbol: 'gal/ac', per: GAL_PER_ACRE_L_PER_HA, decimals: 1 },
  'L/ha/m': { symbol: 'gal/ac per ft', per: GAL_PER_ACRE_L_PER_HA / FOOT_M, decimals: 1 },
  'L/min': { symbol: 'gal/min', per: US_GALLON_L, decimals: 3 },
  'L/100m': { symbol: 'gal/100 ft', per: US_GALLON_L / FOOT_M, decimals: 2 },
  'L/100m/m': { symbol: 'gal/100 ft per ft', per: US_GALLON_L / FOOT_M ** 2, decimals: 3 },
  kg: { symbol: 'lb', per: POUND_KG, decimals: 3 },
  'kg/ha': { symbol: 'lb/ac', per: POUND_KG / ACRE_HA, decimals: 2 },
  'kg/hL': { symbol: 'lb/100 gal', per: POUND_KG / US_GALLON_L, decimals: 3 },
  'kg/ha/m': { symbol: 'lb/ac per ft', per: POUND_KG / ACRE_HA / FOOT_M, decimals: 3 },
  Lprod: { symbol: 'fl oz', per: US_FLUID_OUNCE_L, decimals: 1 },
  'Lprod/ha': { symbol: 'fl oz/ac', per: US_FLUID_OUNCE_L / ACRE_HA, decimals: 1 },
  'Lprod/hL': { symbol: 'fl oz/100 gal', per: US_FLUID_OUNCE_L / US_GALLON_L, decimals: 1 },
  'Lprod/ha/m': { symbol: 'fl oz/ac per ft', per: US_FLUID_OUNCE_L / ACRE_HA / FOOT_M, decimals: 2 },
  bar: { symbol: 'psi', per: PSI_BAR, decimals: 0 },
  'm/s': { symbol: 'mph', per: MPH_M_PER_S, decimals: 1 },
  'km/h': { symbol: 'mph', per: MPH_KM_PER_H, decimals: 1 },
  'm3/h': { symbol: 'cfm', per: CFM_M3_PER_H, decimals: 0 },
  degC: { symbol: '°F', per: 5 / 9, offset: -160 / 9, decimals: 0 },
  K: { symbol: '°F', per: 5 / 9, decimals: 0 },
  'K.d': { symbol: '°F·d', per: 5 / 9, decimals: 0 },
  ha: { symbol: 'ac', per: ACRE_HA, decimals: 2 },
  'ha/h': { symbol: 'ac/h', per: ACRE_HA, decimals: 2 },
  's/100m': { symbol: 's/100 ft', per: 1 / FOOT_M, decimals: 1 }
};

/** US units of some quantities only. */
const usOf = <U extends Unit>(...units: readonly U[]): Pick<Record<Unit, Display>, U> => Object.fromEntries(units.map((u) => [u, US[u]])) as Record<U, Display>;

const METRIC_PSI: Record<Unit, Display> = { ...METRIC, ...usOf('bar') };
const METRIC_MPH: Record<Unit, Display> = { ...METRIC, ...usOf('m/s', 'km/h') };

/** Whatever is per hectare, per acre instead; a dose is smaller by that and keeps its digits. */
const ACRES: Record<Unit, Display> = {
  ...METRIC_PSI,
  ...usOf('ha', 'ha/h', 'UCR/ha'),
  ...(Object.fromEntries(
    (['m/ha', 'm2/ha', 'm3/ha', 'L/ha', 'L/ha/m', 'kg/ha', 'kg/ha/m', 'Lprod/ha', 'Lprod/ha/m'] as const).map((u) => {
      const { symbol, decimals } = METRIC[u];
      return [u, { symbol: symbol.replace('/ha', '/ac'), per: 1 / ACRE_HA, decimals: decimals && decimals + 1 }];
    })
  ) as Partial<Record<Unit, Display>>)
};

/** Feet, acres, pounds and psi as in the US, imperial gallons and their fluid ounces, degrees Celsius. */
const IMPERIAL: Record<Unit, Display> = {
  ...(Object.fromEntries(
    Object.entries(US).map(([u, d]) => {
      const above = d.symbol.startsWith('gal') ? IMPERIAL_GALLON_L / US_GALLON_L : d.symbol.startsWith('fl oz') ? IMPERIAL_FLUID_OUNCE_L / US_FLUID_OUNCE_L : 1;
      const below = d.symbol.endsWith('/100 gal') ? IMPERIAL_GALLON_L / US_GALLON_L : 1;
      return [u, { ...d, symbol: d.symbol.replace(/gal|fl oz/g, 'imp $&'), per: (d.per * above) / below }];
    })
  ) as Record<Unit, Display>),
  degC: METRIC.degC,
  K: METRIC.K,
  'K.d': METRIC['K.d']
};

const SYSTEMS: Record<UnitSystem, Record<Unit, Display>> = { metric: METRIC, 'metric-psi': METRIC_PSI, 'metric-mph': METRIC_MPH, acres: ACRES, imperial: IMPERIAL, us: US };

/** Whether `system` shows `unit` in another: a step of 0.1 bar is none of 0.1 psi. */
export const converted = (unit: Unit, system: UnitSystem): boolean => display(unit, system).per !== 1;

/** How `unit` is shown in `system`: symbol, factor, offset and usual decimals. */
export const display = (unit: Unit, system: UnitSystem): Display => SYSTEMS[system][unit];

/** Engine value → value shown in `system`. */
export function shown(value: number, unit: Unit, system: UnitSystem): number {
  const d = display(unit, system);
  return (value - (d.offset ?? 0)) / d.per;
}

/** Value typed in `system` → engine value. The inverse of `shown`. */
export function entered(value: number, unit: Unit, system: UnitSystem): number {
  const d = display(unit, system);
  return value * d.per + (d.offset ?? 0);
}

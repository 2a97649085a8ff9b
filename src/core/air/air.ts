import type { CanopyState } from '../canopy/canopy.ts';
import { isEarly } from '../canopy/growth.ts';
import type { Assumption, Assumptions } from '../working/assumption.ts';
import { given, refused, type Answer, type Given, type Quantity } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import type { FanGear, Machine, Outlet, Setting } from '../sprayer/types.ts';
import { APPLICATION_VOLUME, type Pass } from '../sprayer/volume.ts';

/** k: how many times the fan's own air the jet carries along from the alley. By density and stage; from memory, the user's to change. */
const entrainment = (id: string, value: number): Assumption => ({ id: `air.k-${id}`, value, unit: '1', least: 1, most: 5, certainty: 'memory', sources: ['habit', 'landers-air'] });
export const AIR_ASSUMPTIONS: readonly Assumption[] = [
  entrainment('dense', 2.25),
  entrainment('medium', 3),
  entrainment('open', 3.25),
  entrainment('early', 3.5),
  { id: 'air.tolerance', value: 0.15, unit: '1', least: 0.05, most: 0.5, certainty: 'assumed', sources: ['habit'] }
];

/** Air needed to fill the alley's cross-section while driving through it, both sides together, m³/h. */
export const AIR_NEEDED = formula(
  'air-needed', 'Gn', 'm3/h', { v: 'km/h', R: 'm', H: 'm', K: '1', k: '1' }, '1000 * v * R * H * K / k', (v) => (1000 * v.v * v.R * v.H * v.K) / v.k,
  { sources: ['landers-air', 'balsari-2002'], certainty: 'memory', range: { v: POSITIVE, R: POSITIVE, H: POSITIVE, K: POSITIVE, k: POSITIVE } }
);
/** Fan law: air flow goes with the fan's speed. */
export const AIR_GIVEN = formula('air-given', 'G', 'm3/h', { G1: 'm3/h', N: 'rpm', N1: 'rpm' }, 'G1 * N / N1', (v) => (v.G1 * v.N) / v.N1, {
  sources: ['fan-laws'],
  range: { G1: POSITIVE, N: POSITIVE, N1: POSITIVE }
});
const SHARE = [0, 1] as const;
/** What does not leave on the left leaves on the right. */
export const RIGHT_SHARE = formula('air-right-share', 'fs', '1', { fl: '1' }, '1 - fl', (v) => 1 - v.fl, { sources: ['arithmetic'], certainty: 'exact', range: { fl: SHARE } });
/** The fan's air of one side. */
export const AIR_SIDE = formula('air-side', 'Gs', 'm3/h', { G: 'm3/h', fs: '1' }, 'G * fs', (v) => v.G * v.fs, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { G: NOT_NEGATIVE, fs: SHARE }
});
/** Air per metre of row driven past. */
export const AIR_PER_METRE = formula('air-per-metre', 'Gm', 'm3/m', { G: 'm3/h', v: 'km/h' }, 'G / (1000 * v)', (v) => v.G / (1000 * v.v), {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { G: NOT_NEGATIVE, v: POSITIVE }
});
/** Outlet speed by continuity, one side. */
export const OUTLET_SPEED = formula('outlet-speed', 'U0', 'm/s', { Gs: 'm3/h', a: 'm2' }, 'Gs / (3600 * a)', (v) => v.Gs / (3600 * v.a), {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { Gs: NOT_NEGATIVE, a: POSITIVE }
});
export const SPEED_FOR_AIR = formula(
  'speed-for-air', 'v', 'km/h', { G: 'm3/h', k: '1', R: 'm', H: 'm', K: '1' }, 'G * k / (1000 * R * H * K)', (v) => (v.G * v.k) / (1000 * v.R * v.H * v.K),
  { sources: ['landers-air'], certainty: 'memory', range: { G: POSITIVE, k: POSITIVE, R: POSITIVE, H: POSITIVE, K: POSITIVE } }
);
export const PTO_FOR_AIR = formula('pto-for-air', 'N', 'rpm', { Gn: 'm3/h', G1: 'm3/h', N1: 'rpm' }, 'N1 * Gn / G1', (v) => (v.N1 * v.Gn) / v.G1, {
  sources: ['fan-laws'],
  range: { Gn: POSITIVE, G1: POSITIVE, N1: POSITIVE }
});
export const POWER_RATIO = formula('fan-power-ratio', 'p', '1', { N: 'rpm', N1: 'rpm' }, '(N / N1) ^ 3', (v) => (v.N / v.N1) ** 3, {
  sources: ['fan-laws'],
  range: { N: POSITIVE, N1: POSITIVE }
});

/** Area of one side's outlet, slot or round mouths, m². */
export function outletArea(o: Outlet): number {
  switch (o.kind) {
    case 'arc':
      return (o.slotWidthM * o.radiusM * ((o.toDeg - o.fromDeg) * Math.PI)) / 180;
    case 'tower':
      return o.slotWidthM * (o.toHeightM - o.fromHeightM);
    case 'spouts':
      return (o.spouts.length * Math.PI * o.diameterM ** 2) / 4;
  }
}

/** Share of a gear's air for the side that sprays; where both do, the mean of the two, which is half however the fan divides it. */
function sideShare(gear: FanGear | undefined, sides: Pass['sides']): Answer {
  if (gear?.leftShare === undefined) return given(0.5, '1', 'assumed');
  if (sides.length !== 1) return given(0.5, '1', 'exact');
  const left = given(gear.leftShare, '1', 'stated', { path: `machine.gears.${gear.id}` });
  return sides[0] === 'left' ? left : derive(RIGHT_SHARE, { fl: left });
}

/** One way to bring the air given to the air needed. */
export interface AirMatch {
  readonly kind: 'speed' | 'gear' | 'pto';
  /** Speed in km/h, PTO speed in rpm, or what the other gear gives in m³/h. */
  readonly value: Answer;
  readonly gear?: string;
  /** What the present flow gives at that speed, L/ha; for `speed` alone. */
  readonly volume?: Answer;
  readonly feasible: boolean;
  /** Why not, as a code with the limit. */
  readonly limit?: number;
}

export interface AirState {
  readonly k: Given;
  readonly needed: Answer;
  readonly given: Answer;
  /** Given over needed. */
  readonly ratio: number | undefined;
  readonly perMetre: Answer;
  readonly outletSpeed: Answer;
  readonly fanPower: Answer;
  readonly matches: readonly AirMatch[];
}

/** Air by the alley-volume rule against the air that the fan gives. The ribbon at the tree top is the judge, not the rule. */
export function airState(machine: Machine, setting: Setting, canopy: CanopyState, pass: Pass, speed: Quantity, assumptions: Assumptions, flow?: Answer): AirState {
  const c = canopy.figures;
  const k = assumptions.take(`air.k-${isEarly(canopy.bbch) ? 'early' : canopy.densityClass}`);
  // Judged by in the advice; taken here so that the user's own value counts and is listed.
  assumptions.take('air.tolerance');
  const K = given(pass.airRows / 2, '1', 'stated', { path: 'pattern' });
  const rule = { R: c.R, H: c.H, K, k };
  const needed = derive(AIR_NEEDED, { ...rule, v: speed });
  const gear = machine.gears.find((g) => g.id === setting.gear);
  const N = given(setting.ptoRpm, 'rpm', 'stated', { path: 'setting.ptoRpm' });
  const ofGear = (g: FanGear) => ({
    G1: given(g.flowM3PerH, 'm3/h', 'stated', { path: `machine.gears.${g.id}` }),
    N1: given(g.atPtoRpm, 'rpm', 'stated', { path: `machine.gears.${g.id}` })
  });
  const fan: Answer = gear ? derive(AIR_GIVEN, { ...ofGear(gear), N }) : refused('unknown-gear', 'setting.gear', { gear: setting.gear });
  const oneSide = derive(AIR_SIDE, { G: fan, fs: sideShare(gear, pass.sides) });
  const useful: Answer = pass.sides.length === 1 ? oneSide : fan;
  const ratio = useful.kind !== 'refused' && needed.kind !== 'refused' ? useful.value / needed.value : undefined;

  const matches: AirMatch[] = [];
  const within = (kind: AirMatch['kind'], value: Answer, least: number, most: number, more: { gear?: string; volume?: Answer } = {}): void => {
    const v = value.kind === 'refused' ? NaN : value.value;
    const limit = v < least ? least : v > most ? most : undefined;
    matches.push({ kind, value, feasible: v >= least && v <= most, ...more, ...(limit === undefined ? {} : { limit }) });
  };
  const matching = derive(SPEED_FOR_AIR, { ...rule, G: useful });
  within('speed', matching, machine.speedMinKmH, machine.speedMaxKmH, flow ? { volume: derive(APPLICATION_VOLUME, { Q: flow, v: matching, B: pass.width }) } : {});
  for (const g of machine.gears) {
    const all = ofGear(g);
    const G1 = pass.sides.length === 1 ? derive(AIR_SIDE, { G: all.G1, fs: sideShare(g, pass.sides) }) : all.G1;
    if (g.id !== setting.gear) within('gear', derive(AIR_GIVEN, { G1, N1: all.N1, N }), 0, Infinity, { gear: g.id });
    within('pto', derive(PTO_FOR_AIR, { Gn: needed, G1, N1: all.N1 }), machine.ptoMinRpm, machine.ptoMaxRpm, { gear: g.id });
  }
  return {
    k,
    needed,
    given: useful,
    ratio,
    perMetre: derive(AIR_PER_METRE, { G: useful, v: speed }),
    outletSpeed: derive(OUTLET_SPEED, { Gs: oneSide, a: given(outletArea(machine.outlet), 'm2', 'stated', { path: 'machine.outlet' }) }),
    fanPower: gear ? derive(POWER_RATIO, { N, N1: given(gear.atPtoRpm, 'rpm', 'stated', { path: `machine.gears.${gear.id}` }) }) : fan,
    matches
  };
}

import { isRefused, valueOf, type Answer } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import { dropletClass, flowAt, nozzleFlow, TOTAL_FLOW } from './flow.ts';
import { pressureFor } from './pressure.ts';
import type { NozzleState, SprayerState } from './sprayer.ts';
import type { DropletClass, NozzleSize } from './types.ts';
import { APPLICATION_VOLUME, FLOW_FOR_VOLUME, SPEED_FOR_VOLUME, WORK_RATE, type Pass } from './volume.ts';

/** A size change at one position. */
export interface SizeChange {
  readonly position: string;
  readonly table: string;
  readonly from: string;
  readonly to: string;
}

/** Something that stands against an option, or that it brings along. */
export interface Remark {
  readonly code: string;
  readonly parameters: Readonly<Record<string, number | string>>;
}

/**
 * One way on after a change: keep the setting and let the volume follow (`keep`), or hold a volume by speed (moderate
 * corrections), by pressure (fine ones) or by nozzle size (large ones).
 */
export interface Option {
  readonly kind: 'keep' | 'speed' | 'pressure' | 'size';
  readonly feasible: boolean;
  readonly speed: Answer;
  readonly pressure: Answer;
  readonly sizes: readonly SizeChange[];
  readonly flow: Answer;
  readonly volume: Answer;
  readonly workRate: Answer;
  readonly droplets: readonly DropletClass[];
  readonly remarks: readonly Remark[];
}

/** Pressure is for fine corrections: beyond about ±10 % of flow, speed or nozzles serve better. From memory. */
const FINE = 0.1;

/** The four options that bring the sprayer to `target` L/ha, each with its limits. */
export function optionsFor(sprayer: SprayerState, target: Answer, pass: Pass): readonly Option[] {
  const keep = keepOption(sprayer);
  return [keep, speedOption(sprayer, target, pass), pressureOption(sprayer, target, pass), sizeOption(sprayer, target, pass)];
}

const remark = (code: string, parameters: Remark['parameters'] = {}): Remark => ({ code, parameters });

function keepOption(s: SprayerState): Option {
  return {
    kind: 'keep',
    feasible: !isRefused(s.volume),
    speed: s.speed,
    pressure: s.pressure,
    sizes: [],
    flow: s.flow,
    volume: s.volume,
    workRate: s.workRate,
    droplets: classes(s.nozzles, s.pressure.value),
    remarks: []
  };
}

function speedOption(s: SprayerState, target: Answer, pass: Pass): Option {
  const speed = derive(SPEED_FOR_VOLUME, { Q: s.flow, V: target, B: pass.width });
  const remarks: Remark[] = [];
  if (!isRefused(speed)) {
    const { speedMinKmH: least, speedMaxKmH: most } = s.machine;
    if (speed.value < least) remarks.push(remark('below-speed-range', { limit: least }));
    if (speed.value > most) remarks.push(remark('above-speed-range', { limit: most }));
    const change = speed.value / s.speed.value - 1;
    // Air per metre of row goes with 1/speed.
    if (Math.abs(change) > 0.02) remarks.push(remark('air-per-metre', { change: 1 / (1 + change) - 1 }));
  }
  return {
    ...keepOption(s),
    kind: 'speed',
    feasible: !isRefused(speed) && !remarks.some((r) => r.code.endsWith('speed-range')),
    speed,
    volume: derive(APPLICATION_VOLUME, { Q: s.flow, v: speed, B: pass.width }),
    workRate: derive(WORK_RATE, { v: speed, B: pass.width }),
    remarks
  };
}

function pressureOption(s: SprayerState, target: Answer, pass: Pass): Option {
  const flow = derive(FLOW_FOR_VOLUME, { V: target, v: s.speed, B: pass.width });
  const open = spraying(s);
  const pressure = pressureFor(flow, s.pressure, s.flow, (bar) => flowTogether(s, open, (n) => n.size!, bar));
  const remarks: Remark[] = [];
  if (!isRefused(pressure)) {
    remarks.push(...pressureRemarks(s, open, pressure.value));
    const change = (valueOf(flow) ?? NaN) / (valueOf(s.flow) ?? NaN) - 1;
    if (Math.abs(change) > FINE) remarks.push(remark('coarse-for-pressure', { change }));
  }
  return {
    ...keepOption(s),
    kind: 'pressure',
    feasible: !isRefused(pressure) && remarks.length === 0,
    pressure,
    flow,
    volume: derive(APPLICATION_VOLUME, { Q: flow, v: s.speed, B: pass.width }),
    droplets: isRefused(pressure) ? [] : classes(s.nozzles, pressure.value),
    remarks
  };
}

const spraying = (s: SprayerState): NozzleState[] => s.nozzles.filter((n) => n.spraying && n.table && n.size);

/** Flow of these nozzles together at a pressure, each with the size that it would carry: a bare number, for a search. */
const flowTogether = (s: SprayerState, nozzles: readonly NozzleState[], sizeOf: (n: NozzleState) => NozzleSize, bar: number): number =>
  nozzles.reduce((sum, n) => sum + flowAt(n.table!, sizeOf(n), bar, s.specificGravity.value), 0);

/** Remarks on a pressure: outside the machine's range, or outside that of a spraying nozzle's table. */
function pressureRemarks(s: SprayerState, open: readonly NozzleState[], bar: number): Remark[] {
  const least = Math.max(s.machine.pressureMinBar, ...open.map((n) => n.table!.pressureMinBar));
  const most = Math.min(s.machine.pressureMaxBar, ...open.map((n) => n.table!.pressureMaxBar));
  if (bar < least) return [remark('below-pressure-range', { limit: least })];
  if (bar > most) return [remark('above-pressure-range', { limit: most })];
  return [];
}

/** Nozzles of one size at one height and angle, left and right: they are changed together. */
interface Group {
  readonly nozzles: readonly NozzleState[];
  /** Flow now, all nozzles of the group, L/min. */
  readonly now: number;
  /** Sizes next to the proportional one, with the group's flow at each. */
  readonly choices: readonly { readonly size: NozzleSize; readonly flow: number }[];
}

function groupsOf(spraying: readonly NozzleState[], s: SprayerState, ratio: number): Group[] {
  const byPlace = new Map<string, NozzleState[]>();
  for (const n of spraying) {
    const place = `${n.position.heightM}|${n.position.angleDeg}|${n.table!.id}|${n.size!.id}`;
    const mates = byPlace.get(place);
    if (mates) mates.push(n);
    else byPlace.set(place, [n]);
  }
  return [...byPlace.values()].map((nozzles) => {
    const { table, size } = nozzles[0]!;
    const flows = table!.sizes
      .map((each) => ({ size: each, flow: nozzles.length * flowAt(table!, each, s.pressure.value, s.specificGravity.value) }))
      .sort((a, b) => a.flow - b.flow);
    const now = flows.find((f) => f.size === size)!.flow;
    const up = flows.findIndex((f) => f.flow >= now * ratio);
    const near = up === -1 ? flows.slice(-1) : flows.slice(Math.max(up - 1, 0), up + 1);
    return { nozzles, now, choices: near };
  });
}

/**
 * Other sizes of the same tables, next to those in proportion to the wanted flow: the change that closes most of the gap first, nozzles
 * in leaf before others, until the total is within 3 %; then the pressure is trimmed by the square law. Few changes, not the best profile.
 */
function sizeOption(s: SprayerState, target: Answer, pass: Pass): Option {
  const base = keepOption(s);
  const wanted = derive(FLOW_FOR_VOLUME, { V: target, v: s.speed, B: pass.width });
  if (isRefused(wanted) || isRefused(s.flow)) return { ...base, kind: 'size', feasible: false, flow: wanted, volume: isRefused(wanted) ? wanted : s.volume };

  const open = spraying(s);
  const chosen = new Map<NozzleState, NozzleSize>(open.map((n) => [n, n.size!]));
  const left = groupsOf(open, s, wanted.value / s.flow.value).sort((a, b) => Number(b.nozzles[0]!.would === 'in-leaf') - Number(a.nozzles[0]!.would === 'in-leaf'));
  let total = s.flow.value;
  while (Math.abs(total / wanted.value - 1) > 0.03) {
    let best: { at: number; size: NozzleSize; total: number } | null = null;
    left.forEach((group, at) => {
      for (const { size, flow } of group.choices) {
        const after = total - group.now + flow;
        if (Math.abs(after - wanted.value) < Math.abs((best?.total ?? total) - wanted.value)) best = { at, size, total: after };
      }
    });
    if (!best) break;
    const { at, size, total: after } = best as { at: number; size: NozzleSize; total: number };
    for (const n of left[at]!.nozzles) chosen.set(n, size);
    left.splice(at, 1);
    total = after;
  }

  const sizes = open
    .filter((n) => chosen.get(n) !== n.size)
    .map((n) => ({ position: n.position.id, table: n.table!.id, from: n.size!.id, to: chosen.get(n)!.id }));
  const changed = derive(TOTAL_FLOW, Object.fromEntries(open.map((n) => [n.position.id, nozzleFlow(n.table!, chosen.get(n)!, s.pressure, s.specificGravity)])));
  const pressure = pressureFor(wanted, s.pressure, changed, (bar) => flowTogether(s, open, (n) => chosen.get(n)!, bar));
  const remarks: Remark[] = [];
  if (!isRefused(pressure)) {
    remarks.push(...pressureRemarks(s, open, pressure.value));
    if (Math.abs(wanted.value / total - 1) > FINE) remarks.push(remark('no-size'));
  }
  return {
    ...base,
    kind: 'size',
    feasible: !isRefused(pressure) && remarks.length === 0,
    pressure,
    sizes,
    flow: wanted,
    volume: derive(APPLICATION_VOLUME, { Q: wanted, v: s.speed, B: pass.width }),
    droplets: isRefused(pressure) ? [] : [...new Set(open.map((n) => dropletClass(chosen.get(n)!, pressure.value)).filter((d) => d !== undefined))],
    remarks
  };
}

/** Droplet classes of the spraying nozzles at a pressure, without repeats. */
function classes(nozzles: readonly NozzleState[], bar: number): DropletClass[] {
  const all = nozzles.filter((n) => n.spraying && n.size).map((n) => dropletClass(n.size!, bar));
  return [...new Set(all.filter((d) => d !== undefined))];
}

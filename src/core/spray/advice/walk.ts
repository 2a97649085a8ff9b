import { WORK_RATE } from '../../sprayer/volume.ts';
import type { Air } from './stand.ts';
import { add, empty, told, type Column } from './columns.ts';
import type { Drive, Driver } from './drive.ts';
import type { Drops } from './drops.ts';
import { goodsOf, type Goods } from './front.ts';
import type { Place } from './places.ts';
import type { Objectives } from './types.ts';

/** A setting as the search knows it. */
export interface Candidate {
  readonly air: Air;
  readonly drops: Drops;
  /** Index of the choice of each place. */
  readonly choices: readonly number[];
  readonly drive: Drive;
  readonly objectives: Objectives;
  readonly goods: Goods;
  /** Places, pressure, sizes, air, speed that are not as today. */
  readonly changes: number;
}

/** How much a plan may be worse than today in one thing for being better in another: shares, CV as they are, work rate as a part of today's. */
const MOST_WORSE = { onTrees: 0.02, lost: 0.02, cv: 0.1, workRate: 0.25 } as const;
/** Settings are told apart in steps of this; of settings in one step the one with fewer changes is kept. */
const STEP = { onTrees: 0.01, lost: 0.01, cv: 0.02, workRate: 0.02 } as const;
/** A change must bring this much, or it is not made: every one costs the operator a hand. */
const COST = 0.01;
/** What the walks look for: weights of trees, loss, evenness, and of work rate over today's. */
const AIMS: readonly (readonly [number, number, number, number])[] = [
  [1, 1, 0.3, 0.1],
  [1, 0.1, 0.1, 0.02],
  [0.1, 1, 0.1, 0.02],
  [0.2, 0.2, 1, 0.02],
  [0.3, 0.3, 0.1, 1]
];

/** Keeps what may be offered, the simplest of those that are alike. */
export class Archive {
  readonly byStep = new Map<string, Candidate>();
  private seen = new Set<string>();
  constructor(private readonly today: Objectives) {}

  get judged(): number {
    return this.seen.size;
  }

  note(c: Candidate, key: string): void {
    if (this.seen.has(key)) return;
    this.seen.add(key);
    const { onTrees, lost, cv, workRateHaPerH: rate } = c.objectives;
    const t = this.today;
    if (onTrees < t.onTrees - MOST_WORSE.onTrees || lost > t.lost + MOST_WORSE.lost || rate < t.workRateHaPerH * (1 - MOST_WORSE.workRate)) return;
    if (cv !== null && t.cv !== null && cv > t.cv + MOST_WORSE.cv) return;
    const step = [onTrees / STEP.onTrees, lost / STEP.lost, (cv ?? 0) / STEP.cv, rate / t.workRateHaPerH / STEP.workRate].map(Math.round).join();
    const known = this.byStep.get(step);
    if (!known || c.changes < known.changes) this.byStep.set(step, c);
  }
}

/** What a place with one choice adds. */
export interface Spray {
  readonly flow: number;
  /** Times its flow. */
  readonly column: Column;
}

export interface Ground {
  readonly air: Air;
  readonly airFactor: number;
  /** Air and drops that differ from today's. */
  readonly changes: number;
  readonly drops: Drops;
  readonly places: readonly Place[];
  /** Place by place, choice by choice; null where shut. */
  readonly sprays: readonly (readonly (Spray | null)[])[];
  readonly areas: ArrayLike<number>;
  /** Sides that spray today must go on spraying. */
  readonly sides: readonly (readonly number[])[];
  readonly driver: Driver;
  readonly today: { readonly objectives: Objectives; readonly drive: Drive };
  readonly widthM: number;
}

/** From today's nozzles, one change at a time, always the one that brings most for an aim, until none brings anything; every setting looked at is noted. */
export function walk(ground: Ground, archive: Archive): void {
  const start = ground.places.map((p) => p.present);
  for (const aim of AIMS) {
    let at = start;
    let score = Math.max(-Infinity, ...judge(ground, at, archive).map((c) => scored(c, aim, ground)));
    for (;;) {
      let best: { readonly choices: number[]; readonly score: number } | null = null;
      ground.places.forEach((place, i) => {
        place.choices.forEach((_, to) => {
          if (to === at[i]) return;
          const choices = at.with(i, to);
          for (const c of judge(ground, choices, archive)) {
            const s = scored(c, aim, ground);
            if (s > (best?.score ?? score) + 1e-12) best = { choices, score: s };
          }
        });
      });
      if (!best) break;
      ({ choices: at, score } = best as { choices: number[]; score: number });
    }
  }
}

function scored({ objectives: o, changes }: Candidate, [trees, lost, even, rate]: (typeof AIMS)[number], { today }: Ground): number {
  const spoilt = Math.max(0, (o.cv ?? 0) - (today.objectives.cv ?? 0) - MOST_WORSE.cv);
  return trees * o.onTrees - lost * o.lost - even * (o.cv ?? 0) + rate * (o.workRateHaPerH / today.objectives.workRateHaPerH) - COST * changes - 5 * spoilt;
}

/** What the nozzles of a setting do together; null where a side that sprays today would not. */
export function together({ sprays, areas, sides }: Pick<Ground, 'sprays' | 'areas' | 'sides'>, choices: readonly number[]) {
  if (sides.some((side) => side.every((i) => sprays[i]![choices[i]!] === null))) return null;
  const sum = empty();
  let flow = 0;
  for (let i = 0; i < sprays.length; i++) {
    const s = sprays[i]![choices[i]!];
    if (!s) continue;
    flow += s.flow;
    add(sum, s.column, 1);
  }
  return { flow, ...told(sum, flow, areas) };
}

/** A setting's objectives by each way to drive it. */
export function judge(ground: Ground, choices: readonly number[], archive: Archive): Candidate[] {
  const { air, drops, places, today } = ground;
  const sum = together(ground, choices);
  if (!sum) return [];
  const { flow, ...shares } = sum;
  const changes = places.reduce((n, p, i) => n + Number(choices[i] !== p.present), ground.changes);
  return ground.driver(flow, drops, ground.airFactor).map((drive) => {
    const objectives = { ...shares, workRateHaPerH: WORK_RATE.compute({ v: drive.speedKmH, B: ground.widthM }) };
    const driven = Number(drive.speedKmH !== today.drive.speedKmH) + Number(drive.pressureBar !== drops.pressureBar && drops.pressureBar === today.drive.pressureBar);
    const candidate = { air, drops, choices, drive, objectives, goods: goodsOf(objectives), changes: changes + driven };
    archive.note(candidate, `${air.gear}|${air.ptoRpm}|${drops.pressureBar}|${drops.sizes.map((s) => s.to).join('+')}|${choices.join()}|${drive.speedKmH}|${drive.pressureBar}`);
    return candidate;
  });
}

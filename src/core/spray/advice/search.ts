import type { Result } from '../../setting/result.ts';
import { refused, valueOf, type Refused } from '../../working/answer.ts';
import { WORK_RATE } from '../../sprayer/volume.ts';
import { airsOf } from './airs.ts';
import { add, empty } from './columns.ts';
import { driverOf, litresOf, type Litres } from './drive.ts';
import { dropsOf, withDrops, type Drops } from './drops.ts';
import { barred } from './cautions.ts';
import { changed } from './changes.ts';
import { dominates, front, goodsOf, spread, type Goods } from './front.ts';
import { placesOf, type Place } from './places.ts';
import type { AdviceProblem } from './problem.ts';
import { simplified } from './simplify.ts';
import { planRemarks, wholeFindings } from './remarks.ts';
import { Runs, type Tried } from './runs.ts';
import { airFactor, caseOf, classesOf, judgedBy, standOf, type Air, type Stand } from './stand.ts';
import { changesOf, gains, isClear, settingsAlong, stepsOf, type Worth } from './steps.ts';
import { MOST_PLANS, PLAN_NAMES, type Change, type Judged, type Objectives, type Plan, type PlanName, type SprayAdvice } from './types.ts';
import { Archive, together, walk, type Candidate, type Ground, type Spray } from './walk.ts';

/** How a search is watched: told the share done; asked between air settings and between runs whether to go on. */
export interface Watch {
  readonly progress?: (done: number) => void;
  readonly cancelled?: () => boolean;
}

/** Part of the work that lies in looking; the rest is running the plausible ranges. */
const LOOKING = 0.4;
/** Plans that the engine itself is asked about before giving up. */
const MOST_PROOFS = 120;
/** A setting must be better than today's by this much in something to be looked at: shares, CV, work rate over today's. */
const WORTH_IT = { onTrees: 0.01, lost: 0.01, cv: 0.02, workRate: 0.03 } as const;

/**
 * Looks for settings of one rung that put more on the trees, more evenly, with less lost, at today's litres on a hectare or fewer. Every air setting is
 * flown once; nozzles, turns and drops are weights on it. Nothing random: the same task gives the same plans.
 * Refuses by name what has no answer, and with `advice-cancelled` where `watch.cancelled` says so.
 */
export function adviseSpray(problem: AdviceProblem, watch: Watch = {}): SprayAdvice | Refused {
  const stand = standOf(problem);
  if ('kind' in stand) return stand;
  const runs = new Runs(stand);
  const setting = stand.result.setting;
  const now = runs.try(setting);
  const today = judgedOf(stand, now, stand.result);
  const litres = litresOf(stand, today.volumeLPerHa);
  const places = placesOf(stand);
  const drops = dropsOf(stand);
  const airs = airsOf(stand);
  const archive = new Archive(today.objectives);
  const groundAt = (air: Air, each: Omit<Drops, 'leastBar' | 'mostBar'>): Ground => groundOf(stand, runs, places, air, { leastBar: each.pressureBar, mostBar: each.pressureBar, ...each }, now, litres);
  const present = groundAt(setting, { pressureBar: setting.pressureBar, sizes: [] });

  const grounds: Ground[] = [];
  for (const [i, air] of airs.entries()) {
    if (watch.cancelled?.()) return refused('advice-cancelled', 'setting', {});
    for (const each of drops) {
      const ground = groundAt(air, each);
      grounds.push(ground);
      walk(ground, archive);
    }
    watch.progress?.((LOOKING * (i + 1)) / airs.length);
  }

  const chosen = provenFront(stand, runs, places, archive, present, grounds, today, litres);
  const along = chosen.map((c) => c.along);
  const varied = runs.vary([now, ...along.flat()]);
  let constants: readonly string[] = [];
  for (;;) {
    const { done, value } = varied.next();
    if (done) {
      constants = value;
      break;
    }
    if (watch.cancelled?.()) return refused('advice-cancelled', 'setting', {});
    watch.progress?.(LOOKING + (1 - LOOKING) * value);
  }

  const plans = named(worthShowing(chosen.map((c) => planOf(stand, runs, now, c))), today.objectives);
  const goods = goodsOf(today.objectives);
  const beaten = plans.some((p) => p.clear && dominates(goodsOf(p.objectives), goods));
  return {
    today: { ...today, beaten },
    plans,
    searched: { airs: airs.length, settings: archive.judged, constants },
    findings: wholeFindings(stand, plans)
  };
}

/** Everything the walks need at one air and one way to drops. */
function groundOf(stand: Stand, runs: Runs, places: readonly Place[], air: Air, drops: Drops, now: Tried, litres: Litres): Ground {
  const { setting } = stand.result;
  const opened = changed({ ...withDrops(setting, drops), gear: air.gear, ptoRpm: air.ptoRpm }, { code: 'open', nozzles: stand.positions.map((p) => p.id) });
  const all = caseOf(stand, opened);
  const columns = runs.columnsOf(all, opened);
  const sprays = places.map((place) => {
    const releases = place.positions.map((p) => ({ own: p.state.position.angleDeg, release: all.nozzles.find((n) => n.position === p.id)! }));
    return place.choices.map(({ open, swivelDeg }): Spray | null => {
      if (!open) return null;
      const column = empty();
      for (const { own, release } of releases) add(column, columns.of({ ...release, angleDeg: own + swivelDeg }), release.flowLPerMin);
      return { column, flow: releases.reduce((s, { release }) => s + release.flowLPerMin, 0) };
    });
  });
  const spraying = stand.result.sprayer.nozzles.filter((n) => n.spraying);
  const sides = (['left', 'right'] as const)
    .filter((side) => spraying.some((n) => n.position.side === side))
    .map((side) => places.flatMap((p, i) => (p.positions.some((n) => n.release.side === side) ? [i] : [])));
  return {
    air,
    airFactor: airFactor(stand, air),
    changes: Number(air.gear !== setting.gear || air.ptoRpm !== setting.ptoRpm) + Number(drops.pressureBar !== setting.pressureBar) + drops.sizes.length,
    drops,
    places,
    sprays,
    areas: columns.areas,
    sides,
    driver: driverOf(stand, litres),
    today: { objectives: objectivesOf(stand, now), drive: setting },
    widthM: stand.widthM
  };
}

const objectivesOf = (stand: Stand, { told, setting }: Tried): Objectives => ({
  ...told,
  workRateHaPerH: WORK_RATE.compute({ v: setting.speedKmH, B: stand.widthM })
});

function judgedOf(stand: Stand, tried: Tried, result: Result): Judged {
  const c = tried.case;
  return {
    setting: tried.setting,
    objectives: objectivesOf(stand, tried),
    volumeLPerHa: c.volumeLPerHa,
    droplets: classesOf(c),
    airRatio: result.air.ratio ?? null
  };
}

interface Proven {
  readonly changes: readonly Change[];
  readonly along: readonly Tried[];
  readonly judged: Judged;
  readonly goods: Goods;
}

/**
 * The best of what was found, spread out; each asked of the engine itself: one that the engine would stop, or that brings a caution which today's setting
 * does not have, is dropped and others take its place. Less air than the alley rule is the one caution that is passed on instead.
 */
function provenFront(stand: Stand, runs: Runs, places: readonly Place[], archive: Archive, present: Ground, grounds: readonly Ground[], today: Judged, litres: Litres): Proven[] {
  const t = today.objectives;
  const stops = stand.result.findings.some((f) => f.severity === 'stop');
  // Where today's setting may not be used, every other one is worth looking at.
  const worthIt = ({ onTrees, lost, cv, workRateHaPerH: rate }: Objectives): boolean =>
    stops ||
    onTrees >= t.onTrees + WORTH_IT.onTrees || lost <= t.lost - WORTH_IT.lost || (cv ?? 0) <= (t.cv ?? 0) - WORTH_IT.cv || rate >= t.workRateHaPerH * (1 + WORTH_IT.workRate);
  const goodsNow = goodsOf(t);
  let pool = [...archive.byStep.values()].filter((c) => worthIt(c.objectives) && (stops || !dominates(goodsNow, c.goods)));
  const known = new Map<Candidate, Proven | null>();
  // Changes are put in order by what they are worth with today's air and drops.
  const worth: Worth = (choices) => {
    const sum = together(present, choices);
    return sum ? sum.onTrees - sum.lost - 0.3 * (sum.cv ?? 0) : -Infinity;
  };
  const sameDrops = (a: Drops, b: Drops): boolean => a.pressureBar === b.pressureBar && a.sizes.length === b.sizes.length && a.sizes.every((s, i) => s.to === b.sizes[i]!.to);
  const groundOf = (air: Air, drops: Drops): Ground | null => grounds.find((g) => g.air.gear === air.gear && g.air.ptoRpm === air.ptoRpm && sameDrops(g.drops, drops)) ?? null;
  const prove = (c: Candidate): Proven | null => {
    if (!known.has(c)) known.set(c, known.size < MOST_PROOFS ? proof(stand, runs, changesOf(stand, places, simplified(c, present, groundOf, archive), worth), litres) : null);
    return known.get(c)!;
  };
  for (;;) {
    const chosen = spread(front(pool), MOST_PLANS, t.workRateHaPerH);
    const failed = new Set(chosen.filter((c) => prove(c) === null));
    if (failed.size === 0) return front(chosen.map((c) => prove(c)!)).filter((p) => worthIt(p.judged.objectives) && (stops || !dominates(goodsNow, p.goods)));
    pool = pool.filter((c) => !failed.has(c));
  }
}

/** A plan's settings step by step, or null where the engine would not let its last one stand. */
function proof(stand: Stand, runs: Runs, changes: readonly Change[], litres: Litres): Proven | null {
  const settings = settingsAlong(stand.result.setting, changes);
  const result = judgedBy(stand.document, settings.at(-1)!);
  if ('kind' in result || barred(stand.result, result)) return null;
  const volume = valueOf(result.sprayer.volume);
  if (volume === undefined || volume < litres.least * (1 - SAME) || volume > litres.most * (1 + SAME)) return null;
  const along = settings.map((s) => runs.try(s));
  const judged = judgedOf(stand, along.at(-1)!, result);
  return { changes, along, judged, goods: goodsOf(judged.objectives) };
}

function planOf(stand: Stand, runs: Runs, now: Tried, { changes, along, judged }: Proven): Plan {
  const whole = gains(now, along.at(-1)!);
  const clear = isClear(whole);
  const plan = { ...judged, names: [], gains: whole, clear, steps: stepsOf(stand, changes, along), remarks: [] };
  return { ...plan, remarks: planRemarks(stand, runs.heights(now), runs.heights(along.at(-1)!), plan) };
}

/** Those that make no clear difference are shown where they are faster, or where there are no others. */
function worthShowing(plans: readonly Plan[]): readonly Plan[] {
  const some = plans.some((p) => p.clear);
  return plans.filter((p) => !some || p.clear || p.gains.workRateRelative >= WORTH_IT.workRate);
}

/** Most on the trees first; each named after what it is best at, where it beats today's in that. */
function named(plans: readonly Plan[], today: Objectives): Plan[] {
  const goods = goodsOf(today);
  const of: Readonly<Record<PlanName, (p: Plan) => number>> = {
    'most-on-trees': (p) => goodsOf(p.objectives)[0] - goods[0],
    'least-lost': (p) => goodsOf(p.objectives)[1] - goods[1],
    'most-even': (p) => goodsOf(p.objectives)[2] - goods[2],
    fastest: (p) => goodsOf(p.objectives)[3] - goods[3],
    'fewest-changes': (p) => 1 / p.steps.length
  };
  const sorted = plans.toSorted((a, b) => b.objectives.onTrees - a.objectives.onTrees);
  const best = new Map(PLAN_NAMES.map((name) => [name, sorted.reduce<Plan | null>((x, y) => (of[name](y) > 1e-9 && (x === null || of[name](y) > of[name](x) + 1e-9) ? y : x), null)]));
  return sorted.map((p) => ({ ...p, names: PLAN_NAMES.filter((name) => best.get(name) === p) }));
}

const SAME = 1e-9;

import type { CanopyState } from '../canopy/canopy.ts';
import { stretchedTo } from '../canopy/outline.ts';
import type { Assumptions } from '../working/assumption.ts';
import { given, isRefused, refused, type Answer, type Given, type Quantity } from '../working/answer.ts';
import { derive, NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';
import { bestSwivel, sharesOf, sightOf, type Shares, type Sight, type SwivelChoice, type Verdict } from './aim.ts';
import { dropletClass, nozzleFlow, TOTAL_FLOW } from './flow.ts';
import { ISO_10625, ISO_TABLE_ID } from './iso10625.ts';
import { bands, overlap, type Band } from './profile.ts';
import type { DropletClass, Machine, NozzlePosition, NozzleSize, NozzleTable, Setting } from './types.ts';
import { APPLICATION_VOLUME, PACE, PER_100_M, WORK_RATE, type Pass } from './volume.ts';

export interface NozzleState {
  readonly position: NozzlePosition;
  readonly open: boolean;
  /** Open, and on a side that sprays in this way of driving. */
  readonly spraying: boolean;
  readonly table: NozzleTable | null;
  readonly size: NozzleSize | null;
  /** Flow when open, L/min. */
  readonly flow: Answer;
  readonly droplets: DropletClass | undefined;
  /** Direction after swivelling, degrees. */
  readonly angle: Given;
  readonly cone: Given;
  readonly swivelDeg: number;
  readonly shares: Shares;
  readonly sight: Sight | null;
  /** What its spray meets; for a shut nozzle, what it would meet. */
  readonly would: Exclude<Verdict, 'shut'>;
  readonly verdict: Verdict;
  /** A turn that brings more of it into leaf, where one does. */
  readonly swivel: SwivelChoice | null;
}

export interface SprayerState {
  readonly machine: Machine;
  readonly setting: Setting;
  readonly nozzles: readonly NozzleState[];
  readonly speed: Quantity;
  readonly pressure: Given;
  readonly specificGravity: Given;
  readonly flow: Answer;
  readonly volume: Answer;
  readonly per100m: Answer;
  readonly pace: Answer;
  readonly workRate: Answer;
  /** Share of the open flow that is aimed in leaf. */
  readonly inLeaf: Answer;
  readonly overTop: Answer;
  readonly underSkirt: Answer;
  readonly openCount: number;
  readonly bands: readonly Band[];
  /** Overlap of the aimed flow's profile with the leaf's, 0…1. */
  readonly match: number;
}

const SHARE_OF_FLOW = formula('share-of-flow', 'S', '1', { qs: 'L/min', Q: 'L/min' }, 'qs / Q', (v) => v.qs / v.Q, {
  sources: ['geometry'],
  certainty: 'derived',
  range: { qs: NOT_NEGATIVE, Q: POSITIVE }
});

export const findTable = (tables: readonly NozzleTable[], id: string): NozzleTable | null =>
  id === ISO_TABLE_ID ? ISO_10625 : (tables.find((t) => t.id === id) ?? null);

/** A machine with one setting in front of one canopy. */
export function sprayerState(
  machine: Machine,
  setting: Setting,
  tables: readonly NozzleTable[],
  canopy: CanopyState,
  pass: Pass,
  assumptions: Assumptions,
  /**
   * The present setting's state in front of the same canopy, for one that is only compared with it: what both have alike is taken
   * over, and no better directions are looked for.
   */
  beside: SprayerState | null = null
): SprayerState {
  const speed = given(setting.speedKmH, 'km/h', 'stated', { path: 'setting.speedKmH' });
  const pressure = given(setting.pressureBar, 'bar', 'stated', { path: 'setting.pressureBar' });
  const SG = assumptions.take('mix.specific-gravity');
  const overshoot = assumptions.take('aim.overshoot').value;
  const useful = assumptions.take('aim.useful-share').value;
  const trunkX = canopy.figures.R.value / 2;
  const outline = stretchedTo(canopy.outline, canopy.aimTopM);
  const set = new Map(setting.nozzles?.map((n) => [n.position, n]));

  const nozzles = machine.nozzles.map((position, i): NozzleState => {
    const own = set.get(position.id);
    const open = own?.open ?? true;
    const swivelDeg = own?.swivelDeg ?? 0;
    const table = findTable(tables, own?.table ?? position.table);
    const size = table?.sizes.find((s) => s.id === (own?.size ?? position.size)) ?? null;
    const pattern = table?.pattern ?? 'hollow-cone';
    const mate = beside?.nozzles[i];
    const sameAim = mate !== undefined && mate.swivelDeg === swivelDeg && (mate.table?.pattern ?? 'hollow-cone') === pattern;
    const sameFlow = mate !== undefined && mate.size === size && mate.table === table && beside?.pressure.value === pressure.value;
    const angle = sameAim ? mate.angle : given(position.angleDeg + swivelDeg, 'deg', 'stated', { path: `machine.${position.id}.angleDeg` });
    const cone = sameAim ? mate.cone : given(position.coneAngleDeg, 'deg', 'stated', { path: `machine.${position.id}.coneAngleDeg` });
    const sight = mate ? mate.sight : sightOf(position.offsetM, position.heightM, trunkX, outline, overshoot);
    const shares = sameAim ? mate.shares : sharesOf(pattern, angle, cone, sight);
    const share = (a: Answer) => (isRefused(a) ? 0 : a.value);
    const would = !sight ? 'unknown' : share(shares.inLeaf) + share(shares.allowance) >= useful ? 'in-leaf' : share(shares.overTop) >= share(shares.underSkirt) ? 'over-top' : 'under-skirt';
    return {
      position,
      open,
      spraying: open && pass.sides.includes(position.side),
      table,
      size,
      flow: sameFlow ? mate.flow : table && size ? nozzleFlow(table, size, pressure, SG) : refused('unknown-nozzle', `machine.${position.id}`, { table: own?.table ?? position.table, size: own?.size ?? position.size }),
      droplets: size ? dropletClass(size, setting.pressureBar) : undefined,
      angle,
      cone,
      swivelDeg,
      shares,
      sight,
      would,
      verdict: open ? would : 'shut',
      swivel: beside || !sight ? null : bestSwivel(pattern, angle.value, position.angleDeg + position.swivelDownDeg, position.angleDeg + position.swivelUpDeg, cone.value, sight)
    };
  });

  const spraying = nozzles.filter((n) => n.spraying);
  const flow: Answer = spraying.length === 0 ? refused('no-nozzle-open', 'setting.nozzles', {}) : derive(TOTAL_FLOW, Object.fromEntries(spraying.map((n) => [n.position.id, n.flow])));
  const volume = derive(APPLICATION_VOLUME, { Q: flow, v: speed, B: pass.width });
  const part = (pick: (s: Shares) => Answer): Answer => {
    let qs = 0;
    for (const n of spraying) {
      const s = pick(n.shares);
      if (isRefused(n.flow)) return n.flow;
      if (isRefused(s)) return s;
      qs += n.flow.value * s.value;
    }
    return derive(SHARE_OF_FLOW, { qs: given(qs, 'L/min', 'derived', { sources: ['geometry'] }), Q: flow });
  };
  const profile = bands(
    spraying.map((n) => ({
      x0: n.position.offsetM,
      z0: n.position.heightM,
      angleDeg: n.angle.value,
      coneDeg: n.cone.value,
      pattern: n.table?.pattern ?? 'hollow-cone',
      flowLPerMin: isRefused(n.flow) ? 0 : n.flow.value
    })),
    canopy.outline,
    trunkX,
    canopy.figures.W.value,
    6
  );
  return {
    machine,
    setting,
    nozzles,
    speed,
    pressure,
    specificGravity: SG,
    flow,
    volume,
    per100m: derive(PER_100_M, { V: volume, R: canopy.figures.R }),
    pace: derive(PACE, { v: speed }),
    workRate: derive(WORK_RATE, { v: speed, B: pass.width }),
    inLeaf: part((s) => s.inLeaf),
    overTop: part((s) => s.overTop),
    underSkirt: part((s) => s.underSkirt),
    openCount: nozzles.filter((n) => n.open).length,
    bands: profile,
    match: overlap(profile)
  };
}

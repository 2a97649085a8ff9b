import { AIR_GIVEN } from '../../air/air.ts';
import type { Document } from '../../setting/document.ts';
import { evaluate } from '../../setting/evaluate.ts';
import type { Advised } from '../../setting/result.ts';
import { dropletClass, flowAt } from '../../sprayer/flow.ts';
import { findTable, type NozzleState } from '../../sprayer/sprayer.ts';
import { DROPLET_CLASSES, type DropletClass, type FanGear, type NozzleSize, type NozzleTable, type Setting, type Side } from '../../sprayer/types.ts';
import { APPLICATION_VOLUME } from '../../sprayer/volume.ts';
import { isRefused, refused, type Refused } from '../../working/answer.ts';
import { Assumptions } from '../../working/assumption.ts';
import { VMD_OF, VMD_UNKNOWN } from '../assumptions.ts';
import { SPRAY_REGISTRY, sprayCase } from '../case.ts';
import type { Release, SprayCase } from '../types.ts';
import { changed } from './changes.ts';
import type { AdviceProblem } from './problem.ts';

/** A position that may spray in this way of driving. */
export interface Position {
  readonly id: string;
  readonly state: NozzleState;
  /** As it would spray today if it were open. */
  readonly release: Release;
}

/** What all settings of a search have alike. */
export interface Stand {
  readonly document: Document;
  /** Of today's setting. */
  readonly result: Advised;
  /** Today's with every position open. */
  readonly base: SprayCase;
  readonly positions: readonly Position[];
  /** Land width that one pass serves. */
  readonly widthM: number;
  /** Median drop of a class or of a nozzle whose table tells none, µm; the user's own where they said so. */
  readonly vmdUm: (droplets: DropletClass | null) => number;
}

/** Refuses what the engine refuses. */
export function standOf({ document, block, rung }: AdviceProblem): Stand | Refused {
  const result = evaluate(document, block, rung);
  if ('kind' in result) return result;
  const { pass, sprayer, setting } = result;
  if (isRefused(pass.width)) return pass.width;
  const usable = sprayer.nozzles.filter((n) => pass.sides.includes(n.position.side) && n.table && n.size && !isRefused(n.flow));
  const idle = sprayer.nozzles.filter((n) => !usable.includes(n));
  const opened = changed(changed(setting, { code: 'open', nozzles: usable.map((n) => n.position.id) }), { code: 'shut', nozzles: idle.map((n) => n.position.id) });
  const all = judgedBy(document, opened);
  const base = 'kind' in all ? all : sprayCase(withSetting(document, opened), all);
  if ('kind' in base) return base;
  const releases = new Map(base.nozzles.map((r) => [r.position, r]));
  const positions = usable.flatMap((state): Position[] => {
    const release = releases.get(state.position.id);
    return release ? [{ id: state.position.id, state, release }] : [];
  });
  if (positions.length === 0) return refused('no-nozzle-open', 'setting.nozzles', {});
  const assumptions = new Assumptions(SPRAY_REGISTRY, document.assumptions);
  return { document, result, base, positions, widthM: pass.width.value, vmdUm: (droplets) => assumptions.take((droplets ? VMD_OF[droplets] : VMD_UNKNOWN).id).value };
}

/** The document, which holds one rung, with another setting. */
export const withSetting = (document: Document, setting: Setting): Document => ({
  ...document,
  blocks: document.blocks.map((b) => ({ ...b, rungs: b.rungs.map((r) => ({ ...r, setting })) }))
});

/** The engine's own judgement of another setting. */
export const judgedBy = (document: Document, setting: Setting): Advised | Refused => {
  const block = document.blocks[0]!;
  return evaluate(withSetting(document, setting), block.id, block.rungs[0]!.id);
};

const gearOf = (stand: Stand, id: string): FanGear => stand.result.machine.gears.find((g) => g.id === id)!;

/** Gear and PTO speed: what decides the air. */
export type Air = Pick<Setting, 'gear' | 'ptoRpm'>;

/** Air of one side, m³/h. By the fan law flow and outlet speed go with the fan's speed. */
function sideFlow(stand: Stand, { gear, ptoRpm }: Air, side: Side): number {
  const { flowM3PerH, atPtoRpm, leftShare = 0.5 } = gearOf(stand, gear);
  return AIR_GIVEN.compute({ G1: flowM3PerH, N: ptoRpm, N1: atPtoRpm }) * (side === 'left' ? leftShare : 1 - leftShare);
}

/** Air of the sides that spray, over today's. */
export function airFactor(stand: Stand, air: Air): number {
  const { pass, setting } = stand.result;
  const all = (of: Air): number => pass.sides.reduce((s, side) => s + sideFlow(stand, of, side), 0);
  return all(air) / all(setting);
}

/** What one position carries and does in a setting. */
export interface Carried {
  readonly open: boolean;
  readonly swivelDeg: number;
  readonly table: NozzleTable;
  readonly size: NozzleSize;
}

export function carried(stand: Stand, setting: Setting): ReadonlyMap<Position, Carried> {
  const own = new Map(setting.nozzles?.map((n) => [n.position, n]));
  return new Map(
    stand.positions.map((p) => {
      const set = own.get(p.id);
      const table = findTable(stand.document.nozzleTables, set?.table ?? p.state.position.table) ?? p.state.table!;
      const size = table.sizes.find((s) => s.id === (set?.size ?? p.state.position.size)) ?? p.state.size!;
      return [p, { open: set?.open ?? true, swivelDeg: set?.swivelDeg ?? 0, table, size }];
    })
  );
}

/**
 * The case of another setting, made from the case with every position open: the same as `sprayCase` gives for it (a test holds them together), without
 * evaluating the rung anew.
 */
export function caseOf(stand: Stand, setting: Setting): SprayCase {
  const SG = stand.result.sprayer.specificGravity.value;
  const nozzles: Release[] = [];
  let flow = 0;
  for (const [p, { open, swivelDeg, table, size }] of carried(stand, setting)) {
    if (!open) continue;
    const droplets = dropletClass(size, setting.pressureBar) ?? null;
    const flowLPerMin = flowAt(table, size, setting.pressureBar, SG);
    flow += flowLPerMin;
    nozzles.push({ ...p.release, angleDeg: p.state.position.angleDeg + swivelDeg, flowLPerMin, droplets, vmdUm: stand.vmdUm(droplets) });
  }
  return {
    ...stand.base,
    air: stand.base.air.map((a) => {
      const factor = sideFlow(stand, setting, a.side) / sideFlow(stand, stand.result.setting, a.side);
      return { ...a, flowM3PerS: a.flowM3PerS * factor, outletMPerS: a.outletMPerS * factor };
    }),
    nozzles,
    volumeLPerHa: APPLICATION_VOLUME.compute({ Q: flow, v: setting.speedKmH, B: stand.widthM })
  };
}

/** Without repeats, finest first. */
export const classesOf = (c: SprayCase): DropletClass[] => DROPLET_CLASSES.filter((d) => c.nozzles.some((n) => n.droplets === d));

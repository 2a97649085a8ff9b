import type { Document } from '../setting/document.ts';
import type { Result } from '../setting/result.ts';
import { ISO_TABLE_ID } from '../sprayer/iso10625.ts';
import { findTable } from '../sprayer/sprayer.ts';
import type { DropletClass, NozzleSize, NozzleTable, Outlet, Side } from '../sprayer/types.ts';
import { isRefused, refused, type Refused } from '../working/answer.ts';
import { Assumptions } from '../working/assumption.ts';
import { isWater } from '../dose/water.ts';
import { FITTING_ASSUMPTIONS } from './assumptions.ts';
import type { Fitting } from './types.ts';
import { weightsOf } from './weights.ts';

/** A nozzle that sprays. */
export interface FittingPosition {
  readonly id: string;
  readonly side: Side;
  readonly heightM: number;
  readonly angleDeg: number;
  /** Wanted share of the total flow; all together 1. */
  readonly weight: number;
  /** Size that is fitted now, index into `sizes`. */
  readonly present: number;
}

export interface FittingSize {
  readonly table: NozzleTable;
  readonly size: NozzleSize;
  /** May be fitted anew; otherwise it only may stay where it is. */
  readonly offered: boolean;
  /** At hand; unsaid, as many as needed. */
  readonly count?: number;
}

/** Numbers a search needs and nothing else, so that a worker can be handed them. */
export interface FittingProblem {
  /** In the machine's order. */
  readonly positions: readonly FittingPosition[];
  readonly sizes: readonly FittingSize[];
  readonly weighting: NonNullable<Fitting['weighting']>;
  readonly targetLPerHa: number;
  /** Land width that one pass serves. */
  readonly widthM: number;
  readonly specificGravity: number;
  /** Present value and what is allowed: what the machine can do and what was wished. */
  readonly speed: { readonly presentKmH: number; readonly leastKmH: number; readonly mostKmH: number };
  readonly pressure: { readonly presentBar: number; readonly leastBar: number; readonly mostBar: number };
  readonly finestClass?: DropletClass;
  readonly coarsestClass?: DropletClass;
  readonly mirrored: boolean;
  readonly mostChanges: number;
  readonly outlet: Outlet;
  readonly canopyTopM: number;
  readonly evergreen: boolean;
  /** Share by which a position may miss its target before it is named. */
  readonly positionTolerance: number;
  readonly fewGain: number;
}

const REGISTRY = new Map(FITTING_ASSUMPTIONS.map((a) => [a.id, a]));

/**
 * The task of fitting nozzles to one rung: its wishes, its present setting, its canopy. New nozzles are taken to give what their table says: what a
 * check has found of the worn ones does not pass on to them. Refuses by name a task without an answer before it is searched.
 */
export function fittingProblem(document: Document, result: Result): FittingProblem | Refused {
  const wish = result.rung.fitting ?? {};
  const { machine, setting, sprayer, canopy, pass } = result;
  const open = sprayer.nozzles.filter((n) => n.spraying);
  if (open.length === 0) return refused('no-nozzle-open', 'setting.nozzles', {});
  for (const n of open) if (isRefused(n.flow)) return n.flow;
  if (canopy.outline.length === 0) return refused('no-outline', 'canopy', {});

  const target = wish.targetLPerHa ?? result.water.wanted;
  if (typeof target !== 'number') {
    if (isRefused(target)) return target;
    if (!isWater(target)) return refused('strategy-without-water', 'strategy', {});
  }
  if (isRefused(pass.width)) return pass.width;

  const weights = weightsOf(wish, open, canopy);
  const sum = weights.reduce((s, w) => s + w, 0);
  if (!(sum > 0)) return wish.weighting === 'own' ? refused('no-own-weight', 'fitting.weights', {}) : refused('no-leaf-before-nozzles', 'setting.nozzles', {});

  const sizes: FittingSize[] = [];
  const add = (table: NozzleTable, size: NozzleSize, more: { readonly offered: boolean; readonly count?: number | undefined }): number => {
    const at = sizes.findIndex((s) => s.table.id === table.id && s.size.id === size.id);
    if (at >= 0) return at;
    return sizes.push({ table, size, offered: more.offered, ...(more.count === undefined ? {} : { count: more.count }) }) - 1;
  };
  if (wish.stock && wish.stock.length > 0)
    for (const item of wish.stock) {
      const table = findTable(document.nozzleTables, item.table);
      const size = table?.sizes.find((s) => s.id === item.size);
      if (!table || !size) return refused('unknown-nozzle', 'fitting.stock', { table: item.table, size: item.size });
      add(table, size, { offered: true, count: item.count });
    }
  else for (const table of tablesOn(document, result)) for (const size of table.sizes) add(table, size, { offered: true });

  const speed = { presentKmH: setting.speedKmH, leastKmH: Math.max(machine.speedMinKmH, wish.speedMinKmH ?? 0), mostKmH: Math.min(machine.speedMaxKmH, wish.speedMaxKmH ?? Infinity) };
  if (!(speed.leastKmH <= speed.mostKmH)) return refused('fitting-speed-apart', 'fitting.speedMinKmH', { least: speed.leastKmH, most: speed.mostKmH, unit: 'km/h' });
  const pressure = { presentBar: setting.pressureBar, leastBar: Math.max(machine.pressureMinBar, wish.pressureMinBar ?? 0), mostBar: Math.min(machine.pressureMaxBar, wish.pressureMaxBar ?? Infinity) };
  if (!(pressure.leastBar <= pressure.mostBar)) return refused('fitting-pressure-apart', 'fitting.pressureMinBar', { least: pressure.leastBar, most: pressure.mostBar, unit: 'bar' });

  const assumptions = new Assumptions(REGISTRY, document.assumptions);
  return {
    positions: open.map((n, i) => ({
      id: n.position.id,
      side: n.position.side,
      heightM: n.position.heightM,
      angleDeg: n.position.angleDeg,
      weight: weights[i]! / sum,
      present: add(n.table!, n.size!, { offered: false })
    })),
    sizes,
    weighting: wish.weighting ?? 'canopy',
    targetLPerHa: typeof target === 'number' ? target : target.value,
    widthM: pass.width.value,
    specificGravity: sprayer.specificGravity.value,
    speed,
    pressure,
    ...(wish.finestClass ? { finestClass: wish.finestClass } : {}),
    ...(wish.coarsestClass ? { coarsestClass: wish.coarsestClass } : {}),
    mirrored: wish.mirrored ?? true,
    mostChanges: Math.min(wish.mostChanges ?? Infinity, open.length),
    outlet: machine.outlet,
    canopyTopM: canopy.aimTopM,
    evergreen: result.block.evergreen ?? false,
    positionTolerance: assumptions.take('fitting.position-tolerance').value,
    fewGain: assumptions.take('fitting.few-gain').value
  };
}

/** Tables that the machine's positions carry, in their order; the standard's own where none is known. */
export function tablesOn(document: Document, result: Result): NozzleTable[] {
  const tables = new Map<string, NozzleTable>();
  for (const n of result.sprayer.nozzles) if (n.table) tables.set(n.table.id, n.table);
  if (tables.size === 0) tables.set(ISO_TABLE_ID, findTable(document.nozzleTables, ISO_TABLE_ID)!);
  return [...tables.values()];
}

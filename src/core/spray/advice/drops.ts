import { DROPLET_CLASSES, type DropletClass, type NozzleSize, type NozzleTable, type Setting } from '../../sprayer/types.ts';
import { dropletClass, flowAt } from '../../sprayer/flow.ts';
import { changed } from './changes.ts';
import { carried, type Carried, type Position, type Stand } from './stand.ts';
import type { Change } from './types.ts';

/** A way to other drops: a pressure, and sizes of nearly the same flow. */
export interface Drops {
  readonly pressureBar: number;
  /** Size changes, in the order in which they are made. */
  readonly sizes: readonly (Change & { readonly code: 'size' })[];
  /** Over these pressures the classes stay as they are, bar. */
  readonly leastBar: number;
  readonly mostBar: number;
}

/** Flows within this are nearly the same. */
const SAME_FLOW = 0.05;
/** Pressures are set on a gauge: tenths of a bar. */
const PRESSURE_STEP_BAR = 0.1;

/**
 * Today's first where it may be used; then the pressure nearest to today's in every stretch over which the tables tell other classes; then, at today's
 * pressure, other sizes of nearly the same flow that the tables give another class. Never a nozzle finer than the label allows, never outside the
 * machine's or a table's range.
 */
export function dropsOf(stand: Stand): Drops[] {
  const { setting, machine } = stand.result;
  const on = [...carried(stand, setting)];
  const tables = [...new Set(on.map(([, c]) => c.table))];
  const least = Math.max(machine.pressureMinBar, ...tables.map((t) => t.pressureMinBar));
  const most = Math.min(machine.pressureMaxBar, ...tables.map((t) => t.pressureMaxBar));
  const bar = setting.pressureBar;
  const found: Drops[] = [];
  const known = new Set<string>();
  const add = (pressureBar: number, sizes: Drops['sizes']): void => {
    if (pressureBar < least || pressureBar > most) return;
    const after = on.map(([p, c]) => sizeAfter(p, c, sizes));
    const classes = after.map((s) => dropletClass(s, pressureBar));
    const signature = classes.join();
    if (known.has(signature)) return;
    known.add(signature);
    const cuts = after.flatMap((s) => (s.droplets ?? []).map((d) => d.fromBar));
    const above = Math.min(...cuts.filter((c) => c > pressureBar));
    const drops = {
      pressureBar,
      sizes,
      leastBar: Math.max(ceilBar(least), ceilBar(Math.max(0, ...cuts.filter((c) => c <= pressureBar)))),
      mostBar: Math.min(floorBar(most), tidy(ceilBar(above) - PRESSURE_STEP_BAR))
    };
    if (notTooFine(stand, classes)) found.push(drops);
  };

  add(bar, []);
  if (bar < least) add(ceilBar(least), []);
  if (bar > most) add(floorBar(most), []);
  // Just on a cut from above, and the last step of the gauge below it.
  const cuts = new Set(on.flatMap(([, c]) => (c.size.droplets ?? []).map((d) => d.fromBar)));
  const near = [...cuts].flatMap((cut) => [ceilBar(cut), tidy(ceilBar(cut) - PRESSURE_STEP_BAR)]);
  for (const pressureBar of near.sort((a, b) => Math.abs(a - bar) - Math.abs(b - bar))) add(pressureBar, []);
  for (const wanted of DROPLET_CLASSES) {
    const sizes = bySize(stand, on, wanted, bar);
    if (sizes.length > 0) add(bar, sizes);
  }
  return found;
}

const sizeAfter = (p: Position, { table, size }: Carried, sizes: Drops['sizes']): NozzleSize => {
  const change = sizes.find((s) => s.nozzles.includes(p.id));
  return change ? table.sizes.find((s) => s.id === change.to)! : size;
};

/** All positions whose table has it get a size of nearly the same flow with this class; none where nothing would change. */
function bySize(stand: Stand, on: readonly (readonly [Position, Carried])[], wanted: DropletClass, bar: number): Drops['sizes'] {
  const SG = stand.result.sprayer.specificGravity.value;
  const groups = new Map<string, { readonly change: Change & { readonly code: 'size' }; readonly nozzles: string[] }>();
  for (const [p, { table, size }] of on) {
    const now = dropletClass(size, bar);
    if (now === undefined || now === wanted) continue;
    const other = nearest(table, size, wanted, bar, SG);
    if (!other) continue;
    const key = `${table.id}|${size.id}`;
    const group = groups.get(key);
    if (group) group.nozzles.push(p.id);
    else {
      const nozzles = [p.id];
      groups.set(key, { nozzles, change: { code: 'size', nozzles, from: size.id, to: other.id, fromClass: now, toClass: wanted } });
    }
  }
  return [...groups.values()].map((g) => g.change);
}

function nearest(table: NozzleTable, size: NozzleSize, wanted: DropletClass, bar: number, SG: number): NozzleSize | null {
  const now = flowAt(table, size, bar, SG);
  const off = (s: NozzleSize): number => Math.abs(flowAt(table, s, bar, SG) / now - 1);
  const kin = table.sizes.filter((s) => s !== size && dropletClass(s, bar) === wanted && off(s) <= SAME_FLOW);
  return kin.reduce<NozzleSize | null>((best, s) => (best === null || off(s) < off(best) ? s : best), null);
}

/** Of positions that are shut as well: any of them may be opened. */
function notTooFine(stand: Stand, classes: readonly (DropletClass | undefined)[]): boolean {
  const finest = stand.result.product?.label.finestClass;
  return !finest || classes.every((d) => d === undefined || DROPLET_CLASSES.indexOf(d) >= DROPLET_CLASSES.indexOf(finest));
}

export const withDrops = (setting: Setting, { pressureBar, sizes }: Drops): Setting => ({ ...sizes.reduce(changed, setting), pressureBar });

const tidy = (v: number): number => Math.round(v * 1000) / 1000;
export const ceilBar = (v: number): number => tidy(Math.ceil(v / PRESSURE_STEP_BAR - 1e-9) * PRESSURE_STEP_BAR);
export const floorBar = (v: number): number => tidy(Math.floor(v / PRESSURE_STEP_BAR + 1e-9) * PRESSURE_STEP_BAR);

import { carried, type Position, type Stand } from './stand.ts';
import type { Change } from './types.ts';

/** How a place may stand. */
export interface Choice {
  readonly open: boolean;
  /** From the position's own angle; of a shut place today's, which is not touched. */
  readonly swivelDeg: number;
}

/** What is decided at once: a position, or a pair left and right that is alike today and is kept alike. */
export interface Place {
  readonly positions: readonly Position[];
  readonly ids: readonly string[];
  readonly choices: readonly Choice[];
  /** Index of today's choice. */
  readonly present: number;
}

/** Turns are tried in steps of 5° and never more than so many ways. */
const TURN_DEG = 5;
const MOST_TURNS = 9;

export function placesOf(stand: Stand): Place[] {
  const now = carried(stand, stand.result.setting);
  const alike = (a: Position, b: Position): boolean => {
    const [x, y] = [now.get(a)!, now.get(b)!];
    return mirrored(a, b) && x.open === y.open && x.swivelDeg === y.swivelDeg && x.table === y.table && x.size === y.size;
  };
  const groups: Position[][] = [];
  for (const p of stand.positions) {
    const mate = groups.find(([first, second]) => second === undefined && alike(first!, p));
    if (mate) mate.push(p);
    else groups.push([p]);
  }
  return groups.map((positions) => {
    const { open, swivelDeg } = now.get(positions[0]!)!;
    const { swivelDownDeg, swivelUpDeg } = positions[0]!.state.position;
    const turns = turnsOf(swivelDownDeg, swivelUpDeg, swivelDeg);
    const choices: Choice[] = [{ open: false, swivelDeg }, ...turns.map((t) => ({ open: true, swivelDeg: t }))];
    return { positions, ids: positions.map((p) => p.id), choices, present: open ? 1 + turns.indexOf(swivelDeg) : 0 };
  });
}

/** The same place on the other side, with the same range of turns. */
function mirrored({ state: { position: a } }: Position, { state: { position: b } }: Position): boolean {
  return a.side !== b.side && a.heightM === b.heightM && a.offsetM === b.offsetM && a.angleDeg === b.angleDeg && a.coneAngleDeg === b.coneAngleDeg && a.swivelDownDeg === b.swivelDownDeg && a.swivelUpDeg === b.swivelUpDeg;
}

/** Both ends, today's, and steps between; rising. Today's stands even where it is outside the range. */
function turnsOf(down: number, up: number, today: number): number[] {
  const step = TURN_DEG * Math.max(1, Math.ceil((up - down) / TURN_DEG / (MOST_TURNS - 2)));
  const turns = new Set([down, up, today]);
  for (let t = Math.ceil(down / step) * step; t <= up; t += step) turns.add(t + 0);
  return [...turns].sort((a, b) => a - b);
}

/** The changes that bring a place from today's choice to another: opened before it is turned, so that the turn shows. */
export function placeChanges({ ids, choices, present }: Place, to: number): Change[] {
  const [from, then] = [choices[present]!, choices[to]!];
  if (!then.open) return from.open ? [{ code: 'shut', nozzles: ids }] : [];
  return [
    ...(from.open ? [] : [{ code: 'open', nozzles: ids } as const]),
    ...(from.swivelDeg === then.swivelDeg ? [] : [{ code: 'swivel', nozzles: ids, fromDeg: from.swivelDeg, toDeg: then.swivelDeg } as const])
  ];
}

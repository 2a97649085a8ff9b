import type { JetPoint, SprayPicture } from '#core/spray/types.ts';
import type { Side } from '#core/sprayer/types.ts';
import { edgesOf } from './edges.ts';
import type { Frame } from './frame.ts';
import { group, label, mark, px, type Mark } from './scene.ts';

/** Least speeds of the classes that lines are drawn in, m/s, fastest first; slower air is not drawn. */
export const SPEED_CLASSES = [20, 10, 5, 2] as const;
/** Speeds that are written where a line comes down to them: fast ones in the right alley, slow ones behind the left row, clear of the deposit. */
const WRITTEN = { right: [20, 10], left: [10, 5] } as const;
const SIDES = ['left', 'right'] as const;

/** Where the lines and their figures stand: trunk line and outer side of the crown, from the middle of the machine; skirt. m. */
export interface AirRoom {
  readonly trunkX: number;
  readonly outerM: number;
  readonly skirtM: number;
}

/** The air as lines along the middle of the jets, thinner as it slows; a few say how fast it is there. */
export function airLines(jets: SprayPicture['jets'], room: AirRoom, speed: (mPerS: number) => string, frame: Frame): Mark {
  const edges = edgesOf(frame, room.outerM);
  const paths = SPEED_CLASSES.map(() => '');
  for (const { points } of jets) addLine(paths, points, edges, frame);
  const texts = SIDES.flatMap((side) =>
    frame.compact && side === 'left'
      ? []
      : some(jets.filter((j) => j.side === side)).flatMap(({ points }, i) => WRITTEN[side].flatMap((v) => figure(points, v, speed(v), `air-${side}-${v}-${i}`, side, room, frame) ?? []))
  );
  return group('air-lines', [...paths.map((d, i) => mark('path', `air air-${i}`, { d }, { key: `air-${i}` })), ...apart(texts)], {}, 'air-lines');
}

/** Lines that carry figures: the outermost and the middle one. */
const some = <T>(lines: readonly T[]): readonly T[] => [...new Set([lines[0], lines[lines.length >> 1], lines.at(-1)])].filter((l) => l !== undefined);

/** Adds one path to the lines of its classes, cut where it passes from one to the next; speed is taken as straight between two points. */
function addLine(paths: string[], points: readonly JetPoint[], [left, right]: readonly [number, number], frame: Frame): void {
  let last = -1;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    // A step is a few pixels: the edge of the drawing is met well enough by whole ones.
    if (frame.x(b.xM) < left || frame.x(b.xM) > right || frame.z(b.zM) < 0) break;
    const place = (f: number) => `${px(frame.x(a.xM + f * (b.xM - a.xM)))} ${px(frame.z(a.zM + f * (b.zM - a.zM)))}`;
    const passed = SPEED_CLASSES.map((v) => (v - a.speedMPerS) / (b.speedMPerS - a.speedMPerS)).filter((f) => f > 0 && f < 1);
    const cuts = passed.length > 0 ? [0, ...passed.sort((p, q) => p - q), 1] : WHOLE;
    for (let k = 1; k < cuts.length; k++) {
      const [f, g] = [cuts[k - 1]!, cuts[k]!];
      const own = classOf(a.speedMPerS + ((f + g) / 2) * (b.speedMPerS - a.speedMPerS));
      if (own >= 0) paths[own] += `${own === last ? '' : `M${place(f)}`}L${place(g)}`;
      last = own;
    }
  }
}
const WHOLE = [0, 1] as const;
const classOf = (mPerS: number): number => SPEED_CLASSES.findIndex((least) => mPerS >= least);

/** Clear of the trunk, of the rule, of the machine, and of what stands at the top and under the skirt, px. */
const CLEAR = { trunk: 26, rule: 6, machine: 66, top: 62, skirt: 6 } as const;

/** The speed where a path first comes down to it: in the alley on the right, behind the row on the left, or nowhere. */
function figure(points: readonly JetPoint[], mPerS: number, text: string, key: string, side: Side, { trunkX, outerM, skirtM }: AirRoom, frame: Frame): Mark | null {
  const i = points.findIndex((p, k) => k > 0 && p.speedMPerS < mPerS && points[k - 1]!.speedMPerS >= mPerS);
  if (i < 1) return null;
  const [a, b] = [points[i - 1]!, points[i]!];
  const f = (mPerS - a.speedMPerS) / (b.speedMPerS - a.speedMPerS);
  const x = frame.x(a.xM + f * (b.xM - a.xM));
  const y = frame.z(a.zM + f * (b.zM - a.zM));
  if (y < frame.top + CLEAR.top || y > frame.z(skirtM) - CLEAR.skirt) return null;
  const fits = side === 'right' ? x > frame.x(0) + CLEAR.machine && x < frame.x(trunkX) - CLEAR.trunk : x < frame.x(-trunkX) - CLEAR.trunk && x > frame.x(-outerM) + CLEAR.rule;
  return fits ? label('air-speed', x, y - 4, text, { 'text-anchor': 'middle' }, key) : null;
}

/** Room that a speed takes up, and more: a few are enough, px. */
const WIDE = 52;
const HIGH = 60;
/** Drops whatever would stand on another. */
function apart(texts: readonly Mark[]): Mark[] {
  const kept: Mark[] = [];
  const at = (m: Mark, k: 'x' | 'y') => Number(m.attrs?.[k]);
  for (const t of texts) if (!kept.some((o) => Math.abs(at(o, 'x') - at(t, 'x')) < WIDE && Math.abs(at(o, 'y') - at(t, 'y')) < HIGH)) kept.push(t);
  return kept;
}

import type { JetPoint, SprayPicture } from '#core/spray/types.ts';
import type { Side } from '#core/sprayer/types.ts';
import { edgesOf } from './edges.ts';
import type { Frame } from './frame.ts';
import { group, label, mark, px, type Mark } from './scene.ts';

/** Least speeds of the classes that lines are drawn in, m/s, fastest first; slower air is not drawn. */
export const SPEED_CLASSES = [20, 10, 5, 2] as const;
/** Speeds that are written where a line comes down to them: fast ones in the right alley, slow ones behind the left row, clear of the deposit. */
const WRITTEN = { right: [20, 10], left: [10, 5] } as const;
/** More lines than this on one side would be a grey wedge. */
const MOST_LINES = 7;
const SIDES = ['left', 'right'] as const;

type Jet = SprayPicture['jets'][number];

/** Where the lines and their figures stand: trunk line and outer side of the crown, from the middle of the machine; skirt. m. */
export interface AirRoom {
  readonly trunkX: number;
  readonly outerM: number;
  readonly skirtM: number;
}

/** The air as lines along the middle of the jets, thinner as it slows; a few say how fast it is there. */
export function airLines(jets: SprayPicture['jets'], room: AirRoom, speed: (mPerS: number) => string, frame: Frame): Mark {
  const edges = edgesOf(frame, room.outerM);
  const bySide = SIDES.map((side) => [side, thinned(jets.filter((j) => j.side === side))] as const);
  const paths = SPEED_CLASSES.map((least, i) => {
    const below = i === 0 ? Infinity : SPEED_CLASSES[i - 1]!;
    const d = bySide.flatMap(([, lines]) => lines).map(({ points }) => stretch(points, least, below, edges, frame)).join('');
    return mark('path', `air air-${i}`, { d }, { key: `air-${i}` });
  });
  const texts = bySide.flatMap(([side, lines]) =>
    frame.compact && side === 'left' ? [] : some(lines).flatMap(({ points }, i) => WRITTEN[side].flatMap((v) => figure(points, v, speed(v), `air-${side}-${v}-${i}`, side, room, frame) ?? []))
  );
  return group('air-lines', [...paths, ...apart(texts)], {}, 'air-lines');
}

/** Every so many of neighbouring paths, the outermost among them. */
function thinned(jets: readonly Jet[]): readonly Jet[] {
  if (jets.length <= MOST_LINES) return jets;
  return Array.from({ length: MOST_LINES }, (_, i) => jets[Math.round((i * (jets.length - 1)) / (MOST_LINES - 1))]!);
}

/** Lines that carry figures: the outermost and the middle one. */
const some = <T>(lines: readonly T[]): readonly T[] => [...new Set([lines[0], lines[lines.length >> 1], lines.at(-1)])].filter((l) => l !== undefined);

/** The parts of one path whose speed lies in a class, cut where it is passed. */
function stretch(points: readonly JetPoint[], least: number, below: number, [left, right]: readonly [number, number], frame: Frame): string {
  let d = '';
  let drawing = false;
  const put = (op: 'M' | 'L', x: number, z: number) => (d += `${op}${px(frame.x(x))} ${px(frame.z(z))}`);
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    // A step is a few pixels: the edge of the drawing is met well enough by whole ones.
    if (frame.x(b.xM) < left || frame.x(b.xM) > right || frame.z(b.zM) < 0) break;
    // Share of the step at which the class is entered and left; speed is taken as straight in between.
    const at = (v: number) => (b.speedMPerS === a.speedMPerS ? 0 : (v - a.speedMPerS) / (b.speedMPerS - a.speedMPerS));
    const inside = (v: number) => v >= least && v < below;
    const cuts = [0, ...[at(least), at(below)].filter((f) => f > 0 && f < 1).sort((p, q) => p - q), 1];
    for (let k = 1; k < cuts.length; k++) {
      const [f, g] = [cuts[k - 1]!, cuts[k]!];
      if (!inside(a.speedMPerS + ((f + g) / 2) * (b.speedMPerS - a.speedMPerS))) {
        drawing = false;
        continue;
      }
      if (!drawing) put('M', a.xM + f * (b.xM - a.xM), a.zM + f * (b.zM - a.zM));
      put('L', a.xM + g * (b.xM - a.xM), a.zM + g * (b.zM - a.zM));
      drawing = true;
    }
  }
  return d;
}

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

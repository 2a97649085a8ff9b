import { sectionArea } from '#core/canopy/outline.ts';
import { valueOf } from '#core/working/answer.ts';
import type { Result } from '#core/setting/result.ts';
import type { NozzleState } from '#core/sprayer/sprayer.ts';
import type { Frame } from './frame.ts';
import { bodyReach, silhouette } from './machine.ts';
import { group, label, line, mark, px, type Mark, type Scene } from './scene.ts';
import { LEAVES, MOST_LEAVES, trees } from './tree.ts';

/** Units of the drawing per metre: all sections of a season have the one scale. */
const SCALE = 100;
const MARGIN = { left: 92, right: 14, top: 18, bottom: 20 } as const;
/** Length of the stroke that an open nozzle points with, m. */
const STROKE_M = 0.5;
const DOT = 5.5;
const BAR = 9;

/** The room that the largest rung of a season needs, so that all are drawn alike. */
export interface SeasonRoom {
  readonly rowSpacingM: number;
  readonly widthM: number;
  readonly heightM: number;
  /** Share of the leaves that are drawn: where the fullest rung has more than can be, all have as much fewer, so that they stay to be compared. */
  readonly stipple: number;
}

const leafOf = ({ canopy }: Result): number => (valueOf(canopy.figures.LAD) ?? 0) * sectionArea(canopy.outline);

export const seasonRoom = (results: readonly Result[]): SeasonRoom => ({
  stipple: Math.min(1, MOST_LEAVES / Math.max(LEAVES * Math.max(...results.map(leafOf)), 1)),
  rowSpacingM: Math.max(...results.map((r) => r.block.rowSpacingM)),
  widthM: Math.max(...results.map((r) => Math.max(r.rung.canopy.widthM, ...r.canopy.outline.map((p) => p.widthM)))),
  heightM: Math.max(...results.map((r) => Math.max(r.canopy.aimTopM, r.rung.canopy.heightM, bodyReach(r.machine.outlet).topM, ...r.machine.nozzles.map((n) => n.heightM))))
});

/** A mark of the height rule at the left. */
export interface HeightTick {
  readonly heightM: number;
  readonly text: string;
}

/**
 * One rung of a season as a small section: half rows left and right with their leaf, the machine between them, each open nozzle as a dot with a
 * stroke where it points, broken where it meets no leaf, each shut one as a bar without.
 */
export function seasonScene(result: Result, room: SeasonRoom, ticks: readonly HeightTick[]): Scene {
  const width = MARGIN.left + (room.rowSpacingM + room.widthM + 0.1) * SCALE + MARGIN.right;
  const height = MARGIN.top + room.heightM * SCALE + MARGIN.bottom;
  const centre = MARGIN.left + (width - MARGIN.left - MARGIN.right) / 2;
  const groundY = height - MARGIN.bottom;
  const frame: Frame = {
    width, height, scale: SCALE, compact: true, left: MARGIN.left, right: width - MARGIN.right, top: MARGIN.top, groundY, ceilingM: room.heightM,
    x: (m) => centre + m * SCALE,
    z: (m) => groundY - m * SCALE
  };
  const { machine, nozzles } = result.sprayer;
  const lad = (valueOf(result.canopy.figures.LAD) ?? 0) * room.stipple;
  const top = result.canopy.outline.at(-1)?.heightM ?? result.rung.canopy.heightM;
  const marks: Mark[] = [
    ...ticks.filter((t) => t.heightM <= room.heightM).map((t) => line('season-rule', MARGIN.left - 10, frame.z(t.heightM), width - MARGIN.right, frame.z(t.heightM), `rule-${t.heightM}`)),
    ...ticks.filter((t) => t.heightM <= room.heightM).map((t) => label('season-height', MARGIN.left - 16, frame.z(t.heightM) + 11, t.text, { 'text-anchor': 'end' }, `height-${t.heightM}`)),
    line('ground-line', MARGIN.left - 10, groundY, width - MARGIN.right, groundY, 'ground'),
    ...trees(result.canopy.outline, lad, top, frame, result.block.rowSpacingM / 2),
    silhouette(machine.outlet, machine.bodyWidthM, Math.min(...machine.nozzles.map((n) => n.offsetM)), frame),
    ...nozzles.map((n) => nozzle(n, frame))
  ];
  return { width: px(width), height: px(height), marks, handles: [], fields: [], spots: [] };
}

function nozzle(n: NozzleState, frame: Frame): Mark {
  const sign = n.position.side === 'left' ? -1 : 1;
  const x = px(frame.x(sign * n.position.offsetM));
  const y = px(frame.z(n.position.heightM));
  const a = (n.angle.value * Math.PI) / 180;
  const far = STROKE_M * frame.scale;
  return group(
    `season-nozzle ${n.verdict}`,
    n.open
      ? [line('season-stroke', x, y, x + sign * far * Math.cos(a), y - far * Math.sin(a)), mark('circle', 'season-dot', { cx: x, cy: y, r: DOT })]
      : [mark('path', 'season-bar', { d: `M${px(x - BAR)} ${px(y + BAR)}L${px(x + BAR)} ${px(y - BAR)}` })],
    {},
    `nozzle-${n.position.id}`
  );
}

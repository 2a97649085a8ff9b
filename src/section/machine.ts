import type { NozzleState, SprayerState } from '#core/sprayer/sprayer.ts';
import type { Outlet, Spout } from '#core/sprayer/types.ts';
import type { Frame } from './frame.ts';
import { nozzleColour } from './palette.ts';
import { group, mark, px, type Mark, type Spot } from './scene.ts';

/** How far fan, tower or pipes are drawn from the centre line and from the ground, m. */
export function bodyReach(o: Outlet): { halfM: number; topM: number } {
  switch (o.kind) {
    case 'arc':
      return { halfM: o.radiusM, topM: o.axisHeightM + o.radiusM };
    case 'tower':
      return { halfM: Math.max(o.offsetM, LEAST_HALF), topM: o.toHeightM + CAP };
    case 'spouts': {
      const r = o.diameterM / 2;
      const over = Math.max(...o.spouts.map((s) => Math.max(s.heightM, elbow(s, o.diameterM).z) + r));
      return { halfM: Math.max(DRUM.radiusM, ...o.spouts.map((s) => s.offsetM + r)), topM: Math.max(DRUM.heightM + DRUM.radiusM, over) };
    }
  }
}

/** The machine from behind: wheels, frame, and the fan, the tower or the pipes that carry the nozzles. */
export function silhouette(outlet: Outlet, bodyWidthM: number, nozzleOffsetM: number, frame: Frame): Mark {
  const s = frame.scale;
  const x = (m: number) => px(frame.x(m));
  const z = (m: number) => px(frame.z(m));
  const wheel = (sign: number) => {
    const w = 0.22;
    return mark('rect', 'wheel', { x: x(sign * (bodyWidthM / 2 - w / 2) - w / 2), y: z(0.62), width: px(w * s), height: px(0.62 * s), rx: px(0.05 * s) });
  };
  const axle = mark('rect', 'frame', { x: x(-bodyWidthM / 2 + 0.11), y: z(0.45), width: px((bodyWidthM - 0.22) * s), height: px(0.14 * s) });
  return group('machine', [wheel(-1), wheel(1), axle, ...body(outlet, nozzleOffsetM, frame)], {}, 'machine');
}

function body(o: Outlet, nozzleOffsetM: number, frame: Frame): Mark[] {
  switch (o.kind) {
    case 'arc':
      return fan(o, frame);
    case 'tower':
      return tower(o, nozzleOffsetM, frame);
    case 'spouts':
      return spouts(o, frame);
  }
}

/** Where a tower and a plenum begin above ground, how far a tower's cap stands above its slot, the least half width of both, m. */
const FOOT = 0.55;
const CAP = 0.12;
const LEAST_HALF = 0.15;

function fan(o: Extract<Outlet, { kind: 'arc' }>, frame: Frame): Mark[] {
  const cx = px(frame.x(0));
  const cy = px(frame.z(o.axisHeightM));
  const r = o.radiusM * frame.scale;
  const blades = Array.from({ length: 8 }, (_, i) => {
    const a = (i * Math.PI) / 4;
    const at = (k: number, turn: number) => `${px(cx + k * r * Math.cos(a + turn))} ${px(cy + k * r * Math.sin(a + turn))}`;
    return `M${at(0.14, 0)}Q${at(0.5, 0.35)} ${at(0.72, 0.1)}`;
  }).join('');
  return [
    mark('circle', 'housing', { cx, cy, r: px(r * 0.93) }),
    mark('circle', 'grille', { cx, cy, r: px(r * 0.76) }),
    mark('path', 'blades', { d: blades }),
    mark('circle', 'hub', { cx, cy, r: px(r * 0.12) })
  ];
}

function tower(o: Extract<Outlet, { kind: 'tower' }>, nozzleOffsetM: number, frame: Frame): Mark[] {
  const s = frame.scale;
  const half = Math.max(Math.min(o.offsetM, nozzleOffsetM) - 0.02, LEAST_HALF);
  const top = o.toHeightM + CAP;
  const slot = (sign: number) => mark('rect', 'slot', { x: px(frame.x(sign * (half - 0.05)) - (0.06 * s) / 2), y: px(frame.z(o.toHeightM)), width: px(0.06 * s), height: px((o.toHeightM - o.fromHeightM) * s) });
  return [
    mark('path', 'housing', {
      d: `M${px(frame.x(-half))} ${px(frame.z(FOOT))}L${px(frame.x(-half))} ${px(frame.z(top - 0.15))}Q${px(frame.x(-half))} ${px(frame.z(top))} ${px(frame.x(-half + 0.15))} ${px(frame.z(top))}L${px(frame.x(half - 0.15))} ${px(frame.z(top))}Q${px(frame.x(half))} ${px(frame.z(top))} ${px(frame.x(half))} ${px(frame.z(top - 0.15))}L${px(frame.x(half))} ${px(frame.z(FOOT))}Z`
    }),
    slot(-1),
    slot(1),
    mark('circle', 'grille', { cx: px(frame.x(0)), cy: px(frame.z(0.95)), r: px(Math.min(half * 0.8, 0.34) * s) })
  ];
}

/** The fan's drum before the pipes: nobody measures it, so it is drawn alike for all, small enough for the numbers of the nozzles beside it. */
const DRUM = { heightM: 0.95, radiusM: 0.32 } as const;

/** Where the pipe of a spout turns from level into the spout's own direction: two diameters before its mouth. */
function elbow({ heightM, offsetM, angleDeg }: Spout, diameterM: number): { x: number; z: number } {
  const a = (angleDeg * Math.PI) / 180;
  return { x: Math.max(offsetM - 2 * diameterM * Math.cos(a), 0), z: heightM - 2 * diameterM * Math.sin(a) };
}

/** A plenum over the fan; from it level pipes, each turned where its spout points, with the mouth as wide as it is. */
function spouts(o: Extract<Outlet, { kind: 'spouts' }>, frame: Frame): Mark[] {
  const s = frame.scale;
  const r = o.diameterM / 2;
  const half = Math.max(o.diameterM, LEAST_HALF);
  const sides = [-1, 1];
  const path = (sign: number, points: readonly (readonly [x: number, z: number])[]) => `M${points.map(([x, z]) => `${px(frame.x(sign * x))} ${px(frame.z(z))}`).join('L')}`;
  const pipe = (spout: Spout) => {
    const a = (spout.angleDeg * Math.PI) / 180;
    const e = elbow(spout, o.diameterM);
    // From the middle of the mouth and of the elbow to the pipe's upper edge.
    const [mx, mz, ex] = [-r * Math.sin(a), r * Math.cos(a), -r * Math.tan(a / 2)];
    const mouth = [[spout.offsetM + mx, spout.heightM + mz], [spout.offsetM - mx, spout.heightM - mz]] as const;
    return { wall: [[0, e.z + r], [e.x + ex, e.z + r], ...mouth, [e.x - ex, e.z - r], [0, e.z - r]] as const, mouth };
  };
  const pipes = o.spouts.map(pipe);
  const top = Math.max(DRUM.heightM, ...o.spouts.map((each) => elbow(each, o.diameterM).z)) + r;
  return [
    mark('path', 'housing', { d: sides.flatMap((sign) => pipes.map((p) => `${path(sign, p.wall)}Z`)).join('') }),
    mark('path', 'housing', { d: `${path(1, [[-half, FOOT], [-half, top], [half, top], [half, FOOT]])}Z` }),
    mark('path', 'mouth', { d: sides.flatMap((sign) => pipes.map((p) => path(sign, p.mouth))).join('') }),
    mark('circle', 'housing', { cx: px(frame.x(0)), cy: px(frame.z(DRUM.heightM)), r: px(DRUM.radiusM * s) }),
    mark('circle', 'grille', { cx: px(frame.x(0)), cy: px(frame.z(DRUM.heightM)), r: px(0.8 * DRUM.radiusM * s) })
  ];
}

/** Nozzle dots with the table's own colour; a bar across a shut one. Numbers stand inside the arc or beside the tower. */
export function nozzleDots(sprayer: SprayerState, selected: string | null, frame: Frame): { marks: Mark[]; spots: Spot[] } {
  const radius = Math.min(Math.max(0.052 * frame.scale, 4), 8);
  const spots: Spot[] = [];
  const marks = sprayer.nozzles.map((n) => {
    const sign = n.position.side === 'left' ? -1 : 1;
    const x = px(frame.x(sign * n.position.offsetM));
    const y = px(frame.z(n.position.heightM));
    spots.push({ id: n.position.id, x, y });
    return dot(n, x, y, radius, n.position.id === selected, sprayer, frame);
  });
  return { marks, spots };
}

function dot(n: NozzleState, x: number, y: number, r: number, selected: boolean, sprayer: SprayerState, frame: Frame): Mark {
  const bar = r * 1.45;
  const number = n.position.id.replace(/^\D+/, '');
  const [nx, ny] = inward(n, sprayer, r * 2.1);
  return group(
    `nozzle ${n.verdict}${selected ? ' selected' : ''}`,
    [
      ...(selected ? [mark('circle', 'halo', { cx: x, cy: y, r: px(r * 2) })] : []),
      mark('circle', 'dot', { cx: x, cy: y, r: px(r), fill: n.open ? nozzleColour(n.size?.colour) : 'none' }),
      ...(n.open ? [] : [mark('path', 'bar', { d: `M${px(x - bar)} ${px(y + bar)}L${px(x + bar)} ${px(y - bar)}` })]),
      ...(frame.scale > 62 ? [mark('text', 'number', { x: px(x + nx), y: px(y + ny + 3.5), 'text-anchor': 'middle' }, { text: number })] : [])
    ],
    {},
    `nozzle-${n.position.id}`
  );
}

/** Offset in pixels from a nozzle towards the middle of the machine. */
function inward(n: NozzleState, sprayer: SprayerState, by: number): [number, number] {
  const sign = n.position.side === 'left' ? -1 : 1;
  const o = sprayer.machine.outlet;
  const dx = -sign * n.position.offsetM;
  const dz = o.kind === 'arc' ? o.axisHeightM - n.position.heightM : 0;
  const length = Math.hypot(dx, dz) || 1;
  return [(dx / length) * by, (-dz / length) * by];
}

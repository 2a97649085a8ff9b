import type { NozzleState, SprayerState } from '#core/sprayer/sprayer.ts';
import type { Outlet } from '#core/sprayer/types.ts';
import type { Frame } from './frame.ts';
import { nozzleColour } from './palette.ts';
import { group, mark, px, type Mark, type Spot } from './scene.ts';

/** The machine from behind: wheels, frame, and the fan or the tower that carries the nozzles. */
export function silhouette(outlet: Outlet, bodyWidthM: number, nozzleOffsetM: number, frame: Frame): Mark {
  const s = frame.scale;
  const x = (m: number) => px(frame.x(m));
  const z = (m: number) => px(frame.z(m));
  const wheel = (sign: number) => {
    const w = 0.22;
    return mark('rect', 'wheel', { x: x(sign * (bodyWidthM / 2 - w / 2) - w / 2), y: z(0.62), width: px(w * s), height: px(0.62 * s), rx: px(0.05 * s) });
  };
  const axle = mark('rect', 'frame', { x: x(-bodyWidthM / 2 + 0.11), y: z(0.45), width: px((bodyWidthM - 0.22) * s), height: px(0.14 * s) });
  const body = outlet.kind === 'arc' ? fan(outlet, frame) : tower(outlet, nozzleOffsetM, frame);
  return group('machine', [wheel(-1), wheel(1), axle, ...body], {}, 'machine');
}

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
  const half = Math.max(Math.min(o.offsetM, nozzleOffsetM) - 0.02, 0.15);
  const top = o.toHeightM + 0.12;
  const foot = 0.55;
  const slot = (sign: number) => mark('rect', 'slot', { x: px(frame.x(sign * (half - 0.05)) - (0.06 * s) / 2), y: px(frame.z(o.toHeightM)), width: px(0.06 * s), height: px((o.toHeightM - o.fromHeightM) * s) });
  return [
    mark('path', 'housing', {
      d: `M${px(frame.x(-half))} ${px(frame.z(foot))}L${px(frame.x(-half))} ${px(frame.z(top - 0.15))}Q${px(frame.x(-half))} ${px(frame.z(top))} ${px(frame.x(-half + 0.15))} ${px(frame.z(top))}L${px(frame.x(half - 0.15))} ${px(frame.z(top))}Q${px(frame.x(half))} ${px(frame.z(top))} ${px(frame.x(half))} ${px(frame.z(top - 0.15))}L${px(frame.x(half))} ${px(frame.z(foot))}Z`
    }),
    slot(-1),
    slot(1),
    mark('circle', 'grille', { cx: px(frame.x(0)), cy: px(frame.z(0.95)), r: px(Math.min(half * 0.8, 0.34) * s) })
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

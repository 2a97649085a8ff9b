import type { WidthAt } from '#core/canopy/types.ts';
import type { NozzleState } from '#core/sprayer/sprayer.ts';
import type { Frame } from './frame.ts';
import { group, mark, px, type Mark } from './scene.ts';

const RAD = Math.PI / 180;

/** How far a ray runs before it leaves the near half of the canopy, or null where it never meets it. Metres along the ray. */
function throughLeaf(x0: number, z0: number, deg: number, trunkX: number, outline: readonly WidthAt[]): number | null {
  const c = Math.cos(deg * RAD);
  const s = Math.sin(deg * RAD);
  let far: number | null = null;
  const meet = (ax: number, az: number, bx: number, bz: number) => {
    const dx = bx - ax;
    const dz = bz - az;
    const det = dx * s - dz * c;
    if (Math.abs(det) < 1e-12) return;
    const t = (dx * (az - z0) - dz * (ax - x0)) / det;
    const u = (c * (az - z0) - s * (ax - x0)) / det;
    if (t > 0 && u >= 0 && u <= 1 && (far === null || t > far)) far = t;
  };
  const first = outline[0]!;
  const last = outline.at(-1)!;
  meet(trunkX, first.heightM, trunkX, last.heightM);
  meet(trunkX, first.heightM, trunkX - first.widthM / 2, first.heightM);
  for (let i = 1; i < outline.length; i++) {
    const [a, b] = [outline[i - 1]!, outline[i]!];
    meet(trunkX - a.widthM / 2, a.heightM, trunkX - b.widthM / 2, b.heightM);
  }
  meet(trunkX - last.widthM / 2, last.heightM, trunkX, last.heightM);
  return far;
}

/** Where lost spray is cut off in the drawing: at the ground, past the trunk line, or at the upper edge. */
function reach(x0: number, z0: number, deg: number, trunkX: number, ceilingM: number): number {
  const c = Math.cos(deg * RAD);
  const s = Math.sin(deg * RAD);
  let t = Infinity;
  if (s < 0) t = Math.min(t, -z0 / s);
  if (s > 0) t = Math.min(t, Math.max(ceilingM - z0, 0) / s);
  if (c > 0) t = Math.min(t, Math.max(trunkX - x0, 0) / c);
  if (c < 0) t = Math.min(t, x0 / -c);
  return Number.isFinite(t) ? t : 0;
}

/**
 * A nozzle's spray as wedges: what meets leaf runs to where it leaves the near half row, what is lost runs on to the edge of the
 * drawing. Straight lines from the nozzle; a shut nozzle shows only the edges that it would have.
 */
export function spray(n: NozzleState, trunkX: number, outline: readonly WidthAt[], frame: Frame): Mark | null {
  const sight = n.sight;
  if (!sight) return null;
  const sign = n.position.side === 'left' ? -1 : 1;
  const { offsetM: x0, heightM: z0 } = n.position;
  const low = n.angle.value - n.cone.value / 2;
  const high = n.angle.value + n.cone.value / 2;
  const point = (deg: number, t: number) => `${px(frame.x(sign * (x0 + t * Math.cos(deg * RAD))))} ${px(frame.z(z0 + t * Math.sin(deg * RAD)))}`;
  const origin = point(0, 0);
  const wedge = (from: number, to: number, length: (deg: number) => number): string => {
    const steps = Math.max(2, Math.ceil((to - from) / 3));
    const edge = Array.from({ length: steps + 1 }, (_, i) => {
      const deg = from + ((to - from) * i) / steps;
      return point(deg, length(deg));
    });
    return `M${origin}L${edge.join('L')}Z`;
  };
  const lost = (deg: number) => reach(x0, z0, deg, trunkX, frame.ceilingM);
  const caught = (deg: number) => Math.min(throughLeaf(x0, z0, deg, trunkX, outline) ?? lost(deg), Math.max((trunkX - x0) / Math.max(Math.cos(deg * RAD), 1e-6), 0));

  if (!n.open || !n.spraying) {
    const edges = [low, high].map((deg) => `M${origin}L${point(deg, lost(deg))}`).join('');
    return mark('path', `ray shut${n.open ? ' resting' : ''}`, { d: edges }, { key: `ray-${n.position.id}` });
  }
  const parts: Mark[] = [];
  const add = (cls: string, from: number, to: number, length: (deg: number) => number) => {
    if (to - from > 0.05) parts.push(mark('path', `ray ${cls}`, { d: wedge(from, to, length) }));
  };
  if (sight.inside) add('in-leaf', low, high, caught);
  else {
    add('under-skirt', low, Math.min(high, sight.lowDeg), lost);
    add('in-leaf', Math.max(low, sight.lowDeg), Math.min(high, sight.highDeg), caught);
    add('over-top', Math.max(low, sight.highDeg), high, lost);
  }
  return group('spray', parts, {}, `ray-${n.position.id}`);
}

import { sectionArea, widthAt } from '#core/canopy/outline.ts';
import type { WidthAt } from '#core/canopy/types.ts';
import type { Frame } from './frame.ts';
import { group, mark, px, type Mark } from './scene.ts';
import { smoothPath } from './smooth.ts';

/** Closed outline of a canopy around its trunk line, in pixels around x = 0 of its own group. */
export function outlinePath(outline: readonly WidthAt[], frame: Frame): string {
  if (outline.length < 2) return '';
  const side = (sign: number, from: readonly WidthAt[]) => smoothPath(from.map((p) => [px((sign * p.widthM * frame.scale) / 2), px(frame.z(p.heightM))]));
  const up = side(1, outline);
  const down = side(-1, [...outline].reverse());
  return `${up}L${down.slice(1)}Z`;
}

/** Leaves per m² of section and per m²/m³ of leaf area density. */
export const LEAVES = 105;
export const MOST_LEAVES = 1800;
/** Fractional parts of the plastic number's powers: the R₂ sequence covers a square evenly without a random source. */
const A1 = 0.7548776662466927;
const A2 = 0.5698402909980532;

/**
 * Leaves as short strokes, their number by leaf area density, spread evenly over the section. The same leaf keeps its place in the
 * canopy when the outline is dragged. Three paths, one per tone.
 */
export function leaves(outline: readonly WidthAt[], ladM2PerM3: number, frame: Frame): readonly string[] {
  const paths = ['', '', ''];
  const area = sectionArea(outline);
  const skirt = outline[0]?.heightM ?? 0;
  const top = outline.at(-1)?.heightM ?? 0;
  if (!(area > 0 && ladM2PerM3 > 0)) return paths;
  // Heights at which equal shares of the section's area lie, so that every leaf has the same room.
  const steps = 32;
  const below = Array.from({ length: steps + 1 }, (_, i) => sectionArea(outline, -Infinity, skirt + ((top - skirt) * i) / steps) / area);
  const heightFor = (share: number): number => {
    let i = 1;
    while (i < steps && below[i]! < share) i++;
    const [a, b] = [below[i - 1]!, below[i]!];
    return skirt + ((top - skirt) * (i - 1 + (b > a ? (share - a) / (b - a) : 0))) / steps;
  };
  const count = Math.min(MOST_LEAVES, Math.round(LEAVES * ladM2PerM3 * area));
  const long = 0.03 * frame.scale;
  for (let i = 1; i <= count; i++) {
    const u = (i * A1) % 1;
    const v = (i * A2) % 1;
    const heightM = heightFor(v);
    const x = (u - 0.5) * widthAt(outline, heightM) * 0.95 * frame.scale;
    const turn = i * 2.399963;
    paths[i % 3] += `M${px(x)} ${px(frame.z(heightM))}l${px(Math.cos(turn) * long)} ${px(Math.sin(turn) * long * 0.7)}`;
  }
  return paths;
}

/** Both half rows are the same tree, mirrored, and are made once: trunk, canopy, leaves. `x` is the trunk line's distance from the middle, m. */
export function trees(outline: readonly WidthAt[], ladM2PerM3: number, topM: number, frame: Frame, x: number): [Mark, Mark] {
  const foot = 0.055 * frame.scale;
  const tip = 0.018 * frame.scale;
  const y = frame.z(topM * 0.93);
  const ground = frame.groundY;
  const crown = outlinePath(outline, frame);
  const parts = [
    mark('path', 'crown', { d: crown }),
    ...leaves(outline, ladM2PerM3, frame).map((d, i) => mark('path', `leaf leaf-${i}`, { d, 'stroke-width': px(Math.max(0.02 * frame.scale, 1.2)) })),
    mark('path', 'trunk', { d: `M${px(-foot)} ${px(ground)}L${px(-tip)} ${px(y)}L${px(tip)} ${px(y)}L${px(foot)} ${px(ground)}Z` }),
    mark('path', 'crown-line', { d: crown })
  ];
  return [
    group('tree', parts, { transform: `translate(${px(frame.x(-x))} 0) scale(-1 1)` }, 'tree-left'),
    group('tree', parts, { transform: `translate(${px(frame.x(x))} 0)` }, 'tree-right')
  ];
}

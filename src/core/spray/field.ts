import { sectionArea, widthAt } from '../canopy/outline.ts';
import { HEIGHTS, type SprayCanopy, type SprayConstants } from './types.ts';

/** Leaf and wood of one row by height and depth, tabulated for the flight of drops. */
export interface CanopyField {
  readonly rowSpacingM: number;
  readonly skirtM: number;
  readonly topM: number;
  /** Greatest half width, m. */
  readonly reachM: number;
  readonly filled: number;
  /** By height in steps of `stepM` from the ground: half width; densities of shell and core of leaf; of wood. m, m²/m³. */
  readonly stepM: number;
  readonly half: Float64Array;
  readonly shell: Float64Array;
  readonly core: Float64Array;
  readonly wood: number;
  /** Depth at which the shell ends, share of the half width from the middle. */
  readonly coreShare: number;
  /** Area that catches, per ground area of the row spacing, by height cell: leaf, and the wood that shows. */
  readonly areaIndex: Float64Array;
  /** No leaf at all. */
  readonly bare: boolean;
}

const STEP_M = 0.025;

/**
 * The block's canopy as a field. Leaf stands denser in the shell, the outer part of the half width, than in the core, so that its mean
 * inside the outline stays the leaf area density. Wood shows as far as leaf does not hide it.
 */
export function canopyField(canopy: SprayCanopy, c: SprayConstants): CanopyField {
  const { outline } = canopy;
  const skirtM = outline[0]!.heightM;
  const topM = outline.at(-1)!.heightM;
  const lad = canopy.ladM2PerM3;
  const relative = relativeDensity(canopy);
  const count = Math.ceil(topM / STEP_M) + 2;
  const half = new Float64Array(count);
  const shell = new Float64Array(count);
  const core = new Float64Array(count);
  const shellOf = 1 / (c.shellShare + c.coreRatio * (1 - c.shellShare));
  let reachM = 0;
  for (let i = 0; i < count; i++) {
    const z = i * STEP_M;
    half[i] = widthAt(outline, z) / 2;
    shell[i] = lad * relative(z) * shellOf;
    core[i] = shell[i]! * c.coreRatio;
    reachM = Math.max(reachM, half[i]!);
  }
  const bare = !(lad > 0);
  const wood = c.woodM2PerM3 * Math.max(0, 1 - lad / c.fullLeafM2PerM3);
  const areaIndex = Float64Array.from({ length: HEIGHTS }, (_, k) => {
    const from = skirtM + ((topM - skirtM) * k) / HEIGHTS;
    const to = skirtM + ((topM - skirtM) * (k + 1)) / HEIGHTS;
    return ((lad * relative((from + to) / 2) + wood) * sectionArea(outline, from, to) * canopy.filled) / canopy.rowSpacingM;
  });
  return { rowSpacingM: canopy.rowSpacingM, skirtM, topM, reachM, filled: canopy.filled, stepM: STEP_M, half, shell, core, wood, coreShare: 1 - c.shellShare, areaIndex, bare };
}

/** Leaf density by height over the mean over the section; 1 where nothing was said. */
function relativeDensity({ outline, densityByHeight }: SprayCanopy): (zM: number) => number {
  if (!densityByHeight || densityByHeight.length === 0) return () => 1;
  const at = (z: number): number => {
    let before = densityByHeight[0]!;
    if (z <= before.heightM) return before.relative;
    for (const p of densityByHeight) {
      if (z <= p.heightM) return p.heightM === before.heightM ? p.relative : before.relative + ((p.relative - before.relative) * (z - before.heightM)) / (p.heightM - before.heightM);
      before = p;
    }
    return before.relative;
  };
  // Weighted by section area, so that the mean density stays what was measured.
  const [low, high] = [outline[0]!.heightM, outline.at(-1)!.heightM];
  let area = 0;
  let leaf = 0;
  for (let i = 0; i < 200; i++) {
    const from = low + ((high - low) * i) / 200;
    const to = low + ((high - low) * (i + 1)) / 200;
    const a = sectionArea(outline, from, to);
    area += a;
    leaf += a * at((from + to) / 2);
  }
  // Nothing at any height contradicts the density that was given: then it says nothing.
  if (!(area > 0 && leaf > 0)) return () => 1;
  return (z) => (at(z) * area) / leaf;
}

/** Leaf and wood together at a place, m²/m³; x is the distance from the nearest trunk line, signed or not. */
export function densityAt(f: CanopyField, xFromTrunkM: number, zM: number): number {
  if (zM < f.skirtM || zM > f.topM) return 0;
  const i = (zM / f.stepM) | 0;
  const h = f.half[i]!;
  const x = Math.abs(xFromTrunkM);
  if (!(x < h)) return 0;
  return (x > f.coreShare * h ? f.shell[i]! : f.core[i]!) + f.wood;
}

/** Distance from the nearest trunk line: trunk lines stand at R/2 + kR on both sides of x = 0. */
export const fromTrunk = (f: CanopyField, xM: number): number => {
  const r = f.rowSpacingM;
  const inAlley = xM - r * Math.floor(xM / r);
  return inAlley - r / 2;
};

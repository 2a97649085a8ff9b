/** Metres on the section to pixels on the drawing. x = 0 is the machine's centre line, z = 0 the ground. */
export interface Frame {
  readonly width: number;
  readonly height: number;
  /** Pixels per metre, alike in both directions. */
  readonly scale: number;
  readonly x: (metres: number) => number;
  readonly z: (metres: number) => number;
  /** Room on a phone: fewer words, fields above and below the drawing. */
  readonly compact: boolean;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly groundY: number;
  /** Height at the upper edge of the drawing, m. */
  readonly ceilingM: number;
}

export interface Extent {
  readonly rowSpacingM: number;
  /** Widest canopy in the picture, m. */
  readonly widthM: number;
  /** Highest thing in the picture, m. */
  readonly heightM: number;
}

/** Below this width the drawing is laid out for a phone. */
export const COMPACT_PX = 640;

export function frameFor(width: number, height: number, extent: Extent): Frame {
  const compact = width < COMPACT_PX;
  const margin = compact ? { left: 42, right: 10, top: 22, bottom: 104 } : { left: 150, right: 176, top: 34, bottom: 78 };
  const spanM = extent.rowSpacingM + extent.widthM + 0.3;
  const ceilingM = extent.heightM * 1.12 + 0.25;
  const w = Math.max(width - margin.left - margin.right, 40);
  const h = Math.max(height - margin.top - margin.bottom, 40);
  const scale = Math.min(w / spanM, h / ceilingM);
  const centre = margin.left + w / 2;
  const groundY = height - margin.bottom;
  // One factor both ways: a general scale library would weigh more than the rest of the drawing.
  const x = (m: number) => centre + m * scale;
  const z = (m: number) => groundY - m * scale;
  return { width, height, scale, x, z, compact, left: margin.left, right: width - margin.right, top: margin.top, groundY, ceilingM: (groundY - margin.top * 0.55) / scale };
}

type Point = readonly [x: number, y: number];

/** A thousandth of a pixel is finer than any eye. */
const fine = (v: number): number => Math.round(v * 1000) / 1000;

/**
 * A smooth line through points whose height only rises or only falls: cubic pieces that nowhere swing past the points which they join, as
 * an SVG path. After M. Steffen, "A simple method for monotonic interpolation in one dimension", Astronomy and Astrophysics 239, 443–450
 * (1990), with height in the place of the abscissa. Points in pixels; '' for none.
 */
export function smoothPath(points: readonly Point[]): string {
  const all = points.filter(([x, y], i) => i === 0 || x !== points[i - 1]![0] || y !== points[i - 1]![1]);
  if (all.length < 3) return all.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x},${y}`).join('');
  const inner = all.slice(2).map((c, i) => slopeAt(all[i]!, all[i + 1]!, c));
  const slopes = [slopeAtEnd(all[0]!, all[1]!, inner[0]!), ...inner, slopeAtEnd(all.at(-2)!, all.at(-1)!, inner.at(-1)!)];
  return all.slice(1).reduce((path, [x, y], i) => {
    const [x0, y0] = all[i]!;
    const third = (y - y0) / 3;
    return `${path}C${[x0 + third * slopes[i]!, y0 + third, x - third * slopes[i + 1]!, y - third, x, y].map(fine).join()}`;
  }, `M${all[0]![0]},${all[0]![1]}`);
}

/** The slope at b: that of a parabola through the three, none at a turn, and never so steep that the line would swing past. */
function slopeAt(a: Point, b: Point, c: Point): number {
  const [h, k] = [b[1] - a[1], c[1] - b[1]];
  // On one height a slope has no end; its sign is that of the way on.
  const s = (b[0] - a[0]) / (h || (k < 0 ? -0 : 0));
  const t = (c[0] - b[0]) / (k || (h < 0 ? -0 : 0));
  const parabola = (s * k + t * h) / (h + k);
  return (Math.sign(s) + Math.sign(t)) * Math.min(Math.abs(s), Math.abs(t), 0.5 * Math.abs(parabola)) || 0;
}

/** The slope at an end whose neighbour's is known. */
const slopeAtEnd = (a: Point, b: Point, beside: number): number => (b[1] === a[1] ? beside : ((3 * (b[0] - a[0])) / (b[1] - a[1]) - beside) / 2);

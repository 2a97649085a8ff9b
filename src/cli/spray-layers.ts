import { DEPTHS, type HeightCell } from '#core/spray/types.ts';

/** Some neighbouring height cells as one, for the eye. Shares of what is sprayed; deposit in µL/cm², null where nothing grows. */
export interface Layer {
  readonly fromM: number;
  readonly toM: number;
  readonly share: number;
  /** Of it, in the near and far half of the nearest row and in other rows. */
  readonly near: number;
  readonly far: number;
  readonly rows: number;
  readonly deposit: number | null;
}

const JOINED = 2;
const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Cells joined two and two, the top first; the deposit is that on all that grows in them. */
export function layers(cells: readonly HeightCell[]): readonly Layer[] {
  const out: Layer[] = [];
  for (let i = 0; i < cells.length; i += JOINED) {
    const some = cells.slice(i, i + JOINED);
    const area = sum(some.map((h) => h.areaIndex));
    const share = sum(some.map((h) => h.share));
    const near = sum(some.flatMap((h) => h.byDepth.slice(0, DEPTHS / 2)));
    const far = sum(some.flatMap((h) => h.byDepth.slice(DEPTHS / 2)));
    out.push({
      fromM: some[0]!.fromM,
      toM: some.at(-1)!.toM,
      share,
      near,
      far,
      rows: Math.max(share - near - far, 0),
      deposit: area > 0 ? sum(some.map((h) => (h.depositUlPerCm2 ?? 0) * h.areaIndex)) / area : null
    });
  }
  return out.reverse();
}

import fc from 'fast-check';
import type { Orchard } from '../support/spray.ts';

// Even over the range: doubles of the library crowd at small values.
const size = (min: number, max: number) => fc.integer({ min: 0, max: 1000 }).map((i) => min + ((max - min) * i) / 1000);

/** Orchards and machines as they may stand: arcs, towers and spouts in front of walls, spindles and globes, in leaf. */
export const orchards: fc.Arbitrary<Partial<Orchard>> = fc
  .record({
    outlet: fc.constantFrom('arc' as const, 'tower' as const, 'spouts' as const),
    rowSpacingM: size(2.2, 6),
    heightM: size(1.6, 5),
    skirt: size(0.1, 0.4),
    width: size(0.15, 0.5),
    topWidth: size(0.2, 1),
    ladM2PerM3: size(0.3, 4),
    filled: size(0.5, 1),
    airM3PerH: size(8_000, 50_000),
    outletMPerS: size(12, 40),
    axisHeightM: size(0.8, 1.2),
    radiusM: size(0.35, 0.55),
    fromDeg: size(-30, 0),
    toDeg: size(30, 80),
    angleDeg: size(-5, 25),
    nozzlesPerSide: fc.integer({ min: 4, max: 10 }),
    coneDeg: size(16, 40),
    vmdUm: size(90, 450),
    windMPerS: size(0, 3),
    deltaTK: size(2, 8),
    coreRatio: size(0.4, 1)
  })
  .map(({ skirt, width, topWidth, windMPerS, deltaTK, coreRatio, ...o }) => ({
    ...o,
    skirtM: o.heightM * skirt,
    widthM: o.rowSpacingM * width,
    topWidthM: o.rowSpacingM * width * topWidth,
    slotFromM: 0.4,
    slotToM: 0.9 * o.heightM,
    constants: { windMPerS, deltaTK, coreRatio }
  }));

import fc from 'fast-check';
import { evaluate } from '#core/setting/evaluate.ts';
import { document as sample, label } from '../support/sample.ts';

/** What rounding to whole steps of 1e-6 units leaves of an exact bound. */
export const LABEL_MAXIMUM_HAIR = 1e-8;

const size = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Blocks, tanks and two labels each: one per hectare in kg, one per 100 L dilute in L, with and without a maximum. */
export const manyDocuments = fc
  .record({
    areaHa: size(0.05, 60),
    tankL: size(200, 4000),
    residualL: size(0, 60),
    speedKmH: size(3, 9),
    pressureBar: size(3, 18),
    rowSpacingM: size(2, 8),
    heightM: size(1.5, 6),
    kgRate: size(0.02, 8),
    lRate: size(0.005, 1),
    maximum: fc.option(size(0.02, 4), { nil: undefined }),
    fills: fc.constantFrom('equal' as const, 'full' as const)
  })
  .map((c) => {
    const most = c.maximum === undefined ? {} : { maxPerHa: c.maximum };
    const written = {
      ...sample({
        canopy: { heightM: c.heightM },
        setting: { speedKmH: c.speedKmH, pressureBar: c.pressureBar },
        machine: { tankL: c.tankL, residualL: c.residualL },
        block: { areaHa: c.areaHa, rowSpacingM: c.rowSpacingM },
        rung: { mix: { fills: c.fills, partners: [{ label: 'kg' }, { label: 'l' }] } }
      }),
      labels: [label({ id: 'kg', rate: c.kgRate, ...most }), label({ id: 'l', unit: 'L', basis: 'per-100-l-dilute', rate: c.lRate, ...most })]
    };
    const result = evaluate(written, 'block', 'now');
    if ('kind' in result) throw new Error(result.code);
    return { document: written, result };
  });

import { NOT_NEGATIVE, POSITIVE } from '../../working/figure.ts';
import { formula } from '../../working/formula.ts';

/** Gap fraction P of a band: pixels g that show what is behind, of n. */
export const GAP_FRACTION = formula('gap-fraction', 'P', '1', { g: '1', n: '1' }, 'g / n', (v) => v.g / v.n, {
  sources: ['arithmetic'],
  certainty: 'exact',
  range: { g: NOT_NEGATIVE, n: POSITIVE }
});

/**
 * Leaf area density of a band (m²/m³): P = exp(−G·C·LAD·W), turned round. G is the part of its area that a leaf shows to the view, C the clumping,
 * W (m) the way through the canopy. Leaves are taken to be placed at random along that way and to let nothing through.
 */
export const LEAF_DENSITY_BY_GAPS = formula(
  'leaf-density-by-gaps', 'LAD', 'm2/m3', { P: '1', G: '1', C: '1', W: 'm' }, 'log(1 / P) / (G * C * W)',
  (v) => Math.log(1 / v.P) / (v.G * v.C * v.W),
  { sources: ['monsi-saeki-1953', 'nilson-1971'], certainty: 'derived', range: { P: [1e-9, 1], G: POSITIVE, C: POSITIVE, W: POSITIVE } }
);

/** Area of the section up to and with a band (m²): A0 below it, W wide, z high. */
export const SECTION_WITH_BAND = formula('section-with-band', 'A', 'm2', { A0: 'm2', W: 'm', z: 'm' }, 'A0 + W * z', (v) => v.A0 + v.W * v.z, {
  sources: ['geometry'],
  certainty: 'exact',
  range: { A0: NOT_NEGATIVE, W: POSITIVE, z: POSITIVE }
});

/** Mean leaf area density up to and with a band (m²/m³), by area of the section: LAD0 over A0 below it, LADb in the band. */
export const LEAF_DENSITY_WITH_BAND = formula(
  'leaf-density-with-band', 'LAD', 'm2/m3', { LAD0: 'm2/m3', A0: 'm2', LADb: 'm2/m3', W: 'm', z: 'm' }, '(LAD0 * A0 + LADb * W * z) / (A0 + W * z)',
  (v) => (v.LAD0 * v.A0 + v.LADb * v.W * v.z) / (v.A0 + v.W * v.z),
  { sources: ['arithmetic'], certainty: 'exact', range: { LAD0: NOT_NEGATIVE, A0: POSITIVE, LADb: NOT_NEGATIVE, W: POSITIVE, z: POSITIVE } }
);

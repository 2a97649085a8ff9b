import { expect, it } from 'vitest';
import { result, num } from '../support/sample.ts';
import { mean, readRows } from './stations.ts';

/** Assumed, none of it is in the data: rows and trees apart, and the section of the crown, metres. */
const PLACE = { row: 4, tree: 1.25 };
const CROWN = { top: 3.2, skirt: 0.5, width: 1.3 };

it('leaf area index is leaf per ground: 45 apple trees measured leaf by leaf, whatever section their crowns are given', () => {
  const trees = readRows('leaf-area-apple-trees.csv');
  expect(trees).toHaveLength(45);
  const columns = ['leaf_area_2018_cm2', 'leaf_area_2018b_cm2', 'leaf_area_2019_cm2', 'leaf_area_2019b_cm2'];
  const means = columns.map((c) => mean(trees.map((t) => Number(t[c]))));
  // By numpy, cm².
  [18117.422283, 19761.494409, 28327.546381, 33027.036049].forEach((m, i) => expect(means[i]).toBeCloseTo(m, 5));
  for (const shape of ['box', 'wall', 'spindle', 'ellipse'] as const)
    for (const cm2 of means) {
      const canopy = { heightM: CROWN.top, skirtM: CROWN.skirt, widthM: CROWN.width, shape };
      const site = { block: { rowSpacingM: PLACE.row, treeSpacingM: PLACE.tree } };
      const section = num(result({ ...site, canopy }).canopy.figures.A);
      const density = cm2 / 1e4 / (section * PLACE.tree);
      const lai = num(result({ ...site, canopy: { ...canopy, ladM2PerM3: density } }).canopy.figures.LAI);
      // The definition: leaf of a tree over the ground of a tree, here 5 m². 2018: 0.362348; 2019: 0.566551.
      expect(lai).toBeCloseTo(cm2 / 1e4 / 5, 9);
      // Leaf area densities of apple crowns from 0.4 to 3 m²/m³: the default of full leaf, 2, is not out of the world.
      expect(density).toBeGreaterThan(0.4);
      expect(density).toBeLessThan(3);
    }
});

import fc from 'fast-check';
import { expect, it } from 'vitest';
import { surveyOf } from '#core/canopy/survey/survey.ts';
import type { Survey, SurveyTree } from '#core/canopy/survey/types.ts';
import { treesNeeded } from '#core/canopy/survey.ts';

const length = (least: number, most: number) => fc.integer({ min: least * 100, max: most * 100 }).map((v) => v / 100);
const TREES = fc.array(fc.record({ heightM: length(1.6, 8), widthM: length(0.5, 4), skirtM: length(0, 1.5), row: fc.constantFrom('a', 'b', 'c') }), { minLength: 3, maxLength: 30 });
const made = (trees: readonly SurveyTree[]): Survey => surveyOf(trees) as Survey;
const near = (a: number | null, b: number | null, what: string): void => {
  if (a === null || b === null) expect([what, a]).toEqual([what, b]);
  else expect(Math.abs(a - b), `${what}: ${a} and ${b}`).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(b)));
};

it('trees k times as large: lengths by k, products by k², whatever has no unit stays', () => {
  fc.assert(
    fc.property(TREES, fc.constantFrom(0.25, 2, 3), (trees, k) => {
      const [one, other] = [made(trees), made(trees.map((t) => ({ heightM: t.heightM * k, widthM: t.widthM * k, skirtM: t.skirtM * k })))];
      for (const what of ['height', 'width', 'skirt', 'product'] as const) {
        const by = what === 'product' ? k * k : k;
        const [a, b] = [one[what]!, other[what]!];
        for (const figure of ['mean', 'standardDeviation', 'standardError', 'low', 'high'] as const) near(b[figure]! / by, a[figure], `${what} ${figure}`);
        near(b.cv, a.cv, `${what} cv`);
      }
      near(other.productExcess, one.productExcess, 'excess');
      near(other.covariance, one.covariance, 'covariance');
      near(other.tallestTenth.meanM / k, one.tallestTenth.meanM, 'tallest');
    })
  );
});

it('the order of the trees does not matter', () => {
  fc.assert(
    fc.property(TREES, fc.integer({ min: 1, max: 29 }), (trees, turn) => {
      const at = turn % trees.length;
      const turned = [...trees.slice(at), ...trees.slice(0, at)].reverse();
      const [one, other] = [made(trees), made(turned)];
      for (const what of ['height', 'width', 'skirt', 'product'] as const) for (const figure of ['mean', 'standardError', 'low', 'high', 'cv'] as const) near(other[what]![figure], one[what]![figure], `${what} ${figure}`);
      near(other.correlation, one.correlation, 'correlation');
      const out = (s: Survey, list: readonly SurveyTree[]) => s.outliers.map((o) => `${o.what} ${o.valueM} ${JSON.stringify(list[o.index])}`).sort();
      expect(out(other, turned)).toEqual(out(one, trees));
    })
  );
});

it('a tree left out is as if it had not been measured', () => {
  fc.assert(
    fc.property(TREES, length(1.6, 8), (trees, heightM) => {
      const with_ = made([...trees, { heightM, widthM: 2, leftOut: true }]);
      expect({ ...with_, leftOut: 0 }).toEqual(made(trees));
    })
  );
});

it('a smaller block, a wider interval and less spread need no more trees', () => {
  fc.assert(
    fc.property(length(0.02, 1), length(0.02, 0.5), fc.integer({ min: 2, max: 5000 }), (cv, error, N) => {
      const n = treesNeeded(cv, error, N);
      expect(n).toBeLessThanOrEqual(N);
      expect(n).toBeLessThanOrEqual(treesNeeded(cv, error));
      expect(n).toBeLessThanOrEqual(treesNeeded(cv, error, N + 1));
      expect(treesNeeded(cv, error * 1.5)).toBeLessThanOrEqual(treesNeeded(cv, error));
      expect(treesNeeded(cv, error)).toBeLessThanOrEqual(treesNeeded(cv * 1.5, error));
    }),
    { numRuns: 60 }
  );
});

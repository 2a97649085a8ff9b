import { mean } from '../laser/statistics.ts';
import { treesNeeded } from '../survey.ts';
import { refused, type Refused } from '../../working/answer.ts';
import { OUTLIER_BEYOND, outlierScores } from './outliers.ts';
import { correlation, spreadOf, type Spread } from './spread.ts';
import { weightedSpread } from './strata.ts';
import type { Group, Means, Measured, Outlier, Survey, SurveyOptions, SurveyTree } from './types.ts';

/** Half interval of the row volume that a survey is held to. */
export const WANTED = 0.1;

/** Greatest width of a tree across the row, m: the greatest that was measured. */
export const widthOf = (t: SurveyTree): number => Math.max(t.widthM ?? 0, ...(t.profile ?? []).map((p) => p.widthM));

/**
 * What measured trees say of their block: means with their 95 % intervals, the product height × width of each tree before averaging
 * (mean(H·W) = H̄·W̄·(1 + ρ·CV_H·CV_W)), trees that stand out, how many more are needed, and which measurement spreads most.
 * Refused by name: no tree left, more trees measured than stand there, a group without its number of trees or without a tree.
 */
export function surveyOf(all: readonly SurveyTree[], options: SurveyOptions = {}): Survey | Refused {
  const trees = all.filter((t) => !t.leftOut);
  if (trees.length === 0) return refused('survey-no-trees', 'survey', { leftOut: all.length });
  const groups = groupsOf(trees, options);
  if ('kind' in groups) return groups;
  const sizes = options.by && options.groupTrees;
  const blockTrees = sizes ? groups.reduce((s, g) => s + (g.blockTrees ?? 0), 0) : (options.blockTrees ?? null);
  if (blockTrees !== null && blockTrees < trees.length) return refused('survey-block-smaller', 'survey.blockTrees', { trees: trees.length, block: blockTrees });

  const means = sizes ? weighted(groups, trees, blockTrees) : meansOf(trees, blockTrees);
  const heights = trees.map((t) => t.heightM);
  const rho = sizes ? correlationWithin(groups, trees, options, means) : correlation(heights, trees.map(widthOf));
  const productOfMeans = means.height.mean * means.width.mean;
  return {
    trees: trees.length,
    leftOut: all.length - trees.length,
    blockTrees,
    ...means,
    productOfMeans,
    productExcess: means.product.mean / productOfMeans - 1,
    tallestTenth: tallestTenth(heights),
    correlation: rho,
    outliers: outliersOf(all, options),
    needed: neededFor(means.product, trees.length, options.wanted ?? WANTED, blockTrees),
    ...sharesOf(means, rho, options),
    groups: options.by ? { by: options.by, weighted: sizes !== undefined, of: groups } : null
  };
}

function meansOf(trees: readonly SurveyTree[], blockTrees: number | null): Means {
  const spread = (f: (t: SurveyTree) => number): Spread => spreadOf(trees.map(f), blockTrees);
  const skirts = trees.flatMap((t) => (t.skirtM === undefined ? [] : [t.skirtM]));
  return {
    height: spread((t) => t.heightM),
    width: spread(widthOf),
    skirt: skirts.length > 0 ? spreadOf(skirts, blockTrees) : null,
    product: spread((t) => t.heightM * widthOf(t))
  };
}

/** Means of the block from those of its groups. Skirts that some group does not tell are averaged over the trees that do. */
function weighted(groups: readonly Group[], trees: readonly SurveyTree[], blockTrees: number | null): Means {
  const whole = (of: (g: Group) => Spread): Spread => weightedSpread(groups.map((g) => ({ spread: of(g), weight: g.weight })));
  return {
    height: whole((g) => g.height),
    width: whole((g) => g.width),
    skirt: groups.every((g) => g.skirt) ? whole((g) => g.skirt!) : meansOf(trees, blockTrees).skirt,
    product: whole((g) => g.product)
  };
}

/**
 * Correlation of the weighted means of height and width, from the error of their sum: Var(H+W) = Var H + Var W + 2·Cov. What lies between
 * the groups is no part of it, as it is none of the errors.
 */
function correlationWithin(groups: readonly Group[], trees: readonly SurveyTree[], { by }: SurveyOptions, { height, width }: Means): number | null {
  const sums = groups.map((g) => ({ spread: spreadOf(trees.filter((t) => (t[by!] ?? '') === g.name).map((t) => t.heightM + widthOf(t)), g.blockTrees), weight: g.weight }));
  const [h, w, sum] = [height.standardError, width.standardError, weightedSpread(sums).standardError];
  if (!h || !w || sum === null) return null;
  return Math.min(Math.max((sum ** 2 - h ** 2 - w ** 2) / (2 * h * w), -1), 1);
}

function groupsOf(trees: readonly SurveyTree[], { by, groupTrees }: SurveyOptions): readonly Group[] | Refused {
  if (!by) return [];
  const names = [...new Set(trees.map((t) => t[by] ?? ''))].sort();
  const size = (name: string): number | null => (groupTrees && Object.hasOwn(groupTrees, name) ? groupTrees[name]! : null);
  const total = Object.values(groupTrees ?? {}).reduce((s, n) => s + n, 0);
  if (groupTrees) {
    const unmeasured = Object.keys(groupTrees).find((name) => !names.includes(name));
    if (unmeasured !== undefined) return refused('survey-group-unmeasured', 'survey.groupTrees', { group: unmeasured });
  }
  const groups: Group[] = [];
  for (const name of names) {
    const own = trees.filter((t) => (t[by] ?? '') === name);
    const blockTrees = size(name);
    if (groupTrees && blockTrees === null) return refused('survey-group-unsized', 'survey.groupTrees', { group: name });
    if (blockTrees !== null && blockTrees < own.length) return refused('survey-group-smaller', 'survey.groupTrees', { group: name, trees: own.length, block: blockTrees });
    groups.push({ name, trees: own.length, blockTrees, weight: blockTrees === null ? own.length / trees.length : blockTrees / total, ...meansOf(own, blockTrees) });
  }
  return groups;
}

/** A tenth of the trees, rounded, one at least. */
function tallestTenth(heights: readonly number[]): Survey['tallestTenth'] {
  const trees = Math.max(1, Math.round(heights.length / 10));
  return { trees, meanM: mean(heights.toSorted((a, b) => b - a).slice(0, trees)) };
}

/** Trees that stand out, each measurement for itself: within their group where there are groups, or a small variety would stand out whole. */
function outliersOf(all: readonly SurveyTree[], { by }: SurveyOptions): readonly Outlier[] {
  const measured: Readonly<Record<Measured, (t: SurveyTree) => number | undefined>> = { height: (t) => t.heightM, skirt: (t) => t.skirtM, width: widthOf };
  const places = all.flatMap((t, index) => (t.leftOut ? [] : [{ t, index, group: by ? (t[by] ?? '') : '' }]));
  const found: Outlier[] = [];
  for (const group of new Set(places.map((p) => p.group)))
    for (const what of ['height', 'skirt', 'width'] as const) {
      const told = places.flatMap(({ t, index, group: own }) => {
        const valueM = own === group ? measured[what](t) : undefined;
        return valueM === undefined ? [] : [{ index, valueM }];
      });
      if (told.length === 0) continue;
      const { median, scores } = outlierScores(told.map((p) => p.valueM));
      told.forEach((p, i) => {
        if (Math.abs(scores[i]!) > OUTLIER_BEYOND) found.push({ ...p, what, medianM: median, score: scores[i]! });
      });
    }
  return found.sort((a, b) => a.index - b.index);
}

/** From the spread of the products; a plain sample is meant, whatever the groups. */
function neededFor({ cv }: Spread, trees: number, wanted: number, blockTrees: number | null): Survey['needed'] {
  if (cv === null) return null;
  const needed = cv > 0 ? treesNeeded(cv, wanted, blockTrees ?? Infinity) : Math.min(2, trees);
  return { wanted, trees: needed, more: Math.max(0, needed - trees) };
}

/** Parts of (SE/V)² = c_H² + c_W² + c_R² + 2ρ·c_H·c_W, where V = H̄·W̄/R and c is the relative standard error of each. */
function sharesOf({ height, width }: Means, rho: number | null, { rowSpacing }: SurveyOptions): Pick<Survey, 'shares' | 'covariance'> {
  const relative = (s: Spread): number => (s.standardError ?? 0) / s.mean;
  const c = { height: relative(height), width: relative(width), rowSpacing: rowSpacing ? rowSpacing.errorM / rowSpacing.meanM : 0 };
  const total = c.height ** 2 + c.width ** 2 + c.rowSpacing ** 2;
  if (!(total > 0)) return { shares: [], covariance: 0 };
  const shares = (['height', 'width', 'rowSpacing'] as const).map((what) => ({ what, share: c[what] ** 2 / total })).filter((s) => s.what !== 'rowSpacing' || rowSpacing !== undefined);
  return { shares: shares.sort((a, b) => b.share - a.share), covariance: (2 * (rho ?? 0) * c.height * c.width) / total };
}

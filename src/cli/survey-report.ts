import type { SurveyedCanopy } from '#core/canopy/survey/canopy.ts';
import type { Spread } from '#core/canopy/survey/spread.ts';
import type { Outlier, Survey, SurveyTree } from '#core/canopy/survey/types.ts';
import { shown, type Unit, type UnitSystem } from '#core/quantity/units.ts';
import { DASH, formatNumber, formatShare, formatUnit } from '#words/index.ts';
import { surveyCli as words } from '#words/en/row/survey-cli.ts';
import { canopyLines } from './canopy-lines.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** What many trees say as text for a terminal, the document's part last so that it is easily taken. */
export function surveyReport(s: Survey, trees: readonly SurveyTree[], canopy: SurveyedCanopy, file: string, system: UnitSystem): string {
  const title = words.title(file);
  const say: Say = (v, unit) => `${formatNumber(shown(v, unit, system), 2, system)}\u00a0${formatUnit(unit, system)}`;
  return (
    [
      title,
      '='.repeat([...title].length),
      ...section(words.headings.trees, counts(s)),
      ...section(words.headings.means, means(s, say)),
      ...section(words.headings.volume, volume(s, say)),
      ...section(words.headings.needed, sure(s)),
      ...section(words.headings.outliers, columns(s.outliers.map((o) => [nameOf(trees, o), words.outlier(o.what, say(o.valueM, 'm'), say(o.medianM, 'm'), formatNumber(o.score, 1, system))]))),
      ...(s.groups ? section(words.headings.groups[s.groups.by], groups(s.groups, say)) : []),
      ...section(words.headings.rules, words.rules(s).flatMap((line) => paragraph(line, INDENT))),
      ...section(words.headings.document, canopyLines(canopy))
    ].join('\n') + '\n'
  );
}

type Say = (value: number, unit: Unit) => string;
const count = (n: number): string => formatNumber(n, 0);
const share = (v: number | null): string => (v === null ? DASH : formatShare(v));

const counts = (s: Survey): string[] =>
  columns(
    [
      [words.measured, count(s.trees + s.leftOut)],
      ...(s.leftOut > 0 ? [[words.leftOut, count(s.leftOut)]] : []),
      [words.inBlock, s.blockTrees === null ? words.notTold : count(s.blockTrees)]
    ],
    ['left', 'right']
  );

function spreadCells(s: Spread, unit: Unit, say: Say): string[] {
  const known = (v: number | null): string => (v === null ? DASH : say(v, unit));
  return [count(s.trees), say(s.mean, unit), known(s.standardDeviation), share(s.cv), s.low === null || s.high === null ? DASH : `${known(s.low)} – ${known(s.high)}`];
}

function means(s: Survey, say: Say): string[] {
  const c = words.columns;
  const line = (name: string, spread: Spread | null, unit: Unit): string[][] => (spread ? [[name, ...spreadCells(spread, unit, say)]] : []);
  return columns(
    [
      [c.what, c.trees, c.mean, c.deviation, c.cv, c.interval],
      ...line(words.what.height, s.height, 'm'),
      ...line(words.what.width, s.width, 'm'),
      ...line(words.what.skirt, s.skirt, 'm'),
      [words.tallest, count(s.tallestTenth.trees), say(s.tallestTenth.meanM, 'm'), words.tallestOf(s.tallestTenth.trees)]
    ].map((row) => (row.length === 4 ? [...row.slice(0, 3), '', '', row[3]!] : row)),
    ['left', 'right', 'right', 'right', 'right', 'left']
  );
}

const volume = (s: Survey, say: Say): string[] =>
  columns([
    [words.products, say(s.product.mean, 'm2'), s.product.low === null || s.product.high === null ? '' : `95 %: ${say(s.product.low, 'm2')} – ${say(s.product.high, 'm2')}; CV ${share(s.product.cv)}`],
    [words.ofMeans, say(s.productOfMeans, 'm2'), ''],
    [words.excess, signed(s.productExcess), '']
  ]);

const signed = (v: number): string => (v > 0 ? '+' : '') + formatShare(v);

function sure(s: Survey): string[] {
  const spread = s.shares.map((p) => `${words.share[p.what]} ${formatShare(p.share)}`).join(', ');
  return [
    ...columns([
      ...(s.needed ? [[words.needed(formatShare(s.needed.wanted)), `${count(s.needed.trees)}: ${words.more(s.needed.more)}`]] : []),
      [words.correlation, s.correlation === null ? DASH : formatNumber(s.correlation, 2)],
      ...(s.shares.length > 0 ? [[words.shares, spread]] : [])
    ]),
    ...(Math.abs(s.covariance) >= 0.005 ? [(s.covariance > 0 ? words.together : words.apart)(formatShare(Math.abs(s.covariance)))] : [])
  ];
}

const nameOf = (trees: readonly SurveyTree[], { index }: Outlier): string => {
  const { tree, row, variety } = trees[index]!;
  return [tree ?? words.treeAt(index + 1), row, variety].filter((t) => t !== undefined).join(', ');
};

function groups({ of, weighted }: NonNullable<Survey['groups']>, say: Say): string[] {
  const c = words.columns;
  const range = (s: Spread, unit: Unit): string => say(s.mean, unit) + (s.low === null || s.high === null ? '' : ` (${formatRangeOf(s, unit, say)})`);
  return columns(
    [
      ['', c.trees, ...(weighted ? [c.block, c.weight] : []), words.what.height, words.what.width, words.what.product],
      ...of.map((g) => [
        g.name || words.unnamed, count(g.trees), ...(weighted ? [count(g.blockTrees ?? 0), formatShare(g.weight)] : []), range(g.height, 'm'), range(g.width, 'm'), range(g.product, 'm2')
      ])
    ],
    ['left', 'right', ...(weighted ? (['right', 'right'] as const) : [])]
  );
}

const formatRangeOf = (s: Spread, unit: Unit, say: Say): string => `${say(s.low!, unit)} – ${say(s.high!, unit)}`;

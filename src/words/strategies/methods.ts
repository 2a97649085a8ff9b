import '../deep.ts';
import './join.ts';
import { BELIEFS } from '#core/dose/compare/beliefs.ts';
import type { DrawWish } from '#core/dose/compare/draws.ts';
import type { StrategyRow } from '#core/dose/compare/rows.ts';
import type { Label } from '#core/dose/types.ts';
import { FIXED_BASES } from '#core/dose/label-rules.ts';
import type { CanopyState } from '#core/canopy/canopy.ts';
import type { CanopyErrors } from '#core/canopy/types.ts';
import type { SourceId } from '#core/sources/bibliography.ts';
import { isWork } from '#core/sources/cite.ts';
import type { Answer, Certainty, Figure, Given } from '#core/working/answer.ts';
import { METHODS } from '../en/strategies/methods.ts';
import { formatAmount, formatExact, formatNumber, formatShare } from '../format.ts';
import { assumptionWords, fieldWord, symbolName } from '../naming.ts';
import { rowName } from './reasons.ts';

/** What the rows were worked out with, as far as they do not tell it themselves. */
export interface MethodsOf {
  readonly canopy: CanopyState;
  readonly errors?: CanopyErrors | undefined;
  readonly label?: Label | undefined;
  readonly draws?: DrawWish | undefined;
}

/** The text and the works that it cites, in the order cited: for `bibtex` and `cslJson`. */
export interface Methods {
  readonly text: string;
  readonly cited: readonly SourceId[];
}

/** A methods section for exactly these rows: what was computed, by which formulas, with which constants, and how sure each of them is. */
export const methodsText = (rows: readonly StrategyRow[], of: MethodsOf): string => methods(rows, of).text;

export function methods(rows: readonly StrategyRow[], { canopy, errors, label, draws }: MethodsOf): Methods {
  const cited = new Set<SourceId>();
  const cite = citing(cited);
  const formulaText = ({ formula }: Pick<Figure, 'formula'>): string => `${formula.symbol} = ${formula.expression}${cite(formula.sources, formula.certainty)}`;

  const under = rows.map((row) => ({ row, dose: collected([row.dose]), rest: collected([row.index, row.water, row.dilute]) }));
  const ofStrategies = new Set(rows.flatMap(({ strategy: s }) => [s.index, s.water, s.dilute, s.reference].flatMap((f) => (f ? [f.id] : []))));
  const isCanopy = (f: Figure): boolean => !ofStrategies.has(f.formula.id) && f.formula.symbol in canopy.figures;
  const all = [...new Map(under.flatMap(({ rest, dose }) => [...rest.figures, ...dose.figures])).values()];
  const measured = [...new Map(under.flatMap(({ rest, dose }) => [...rest.measured, ...dose.measured])).values()].filter((g) => isMeasurement(g.path));

  const strategies = under.map(({ row, rest }) => {
    const { strategy } = row;
    const own = [...rest.figures.values()].filter((f) => ofStrategies.has(f.formula.id));
    if (own.length === 0) return METHODS.refused(rowName(row));
    const formulas = own.map(formulaText).join(', ') + (row.own ? `, ${METHODS.own}` : '');
    const constants = [...rest.constants].map(([symbol, g]) => `${symbol} = ${formatExact(g.value, g.unit)}${unitOf(g)}${cite(g.sources ?? [], g.certainty)}`).join(', ');
    return METHODS.strategy(rowName(row), cite(strategy.sources), formulas, constants);
  });
  const canopyFigures = all.filter(isCanopy);
  const labelled = label ? labelText(label, all.filter((f) => !isCanopy(f) && !ofStrategies.has(f.formula.id)).map(formulaText)) : null;

  const parts = [
    METHODS.opening(rows.length, measured.map((g) => `${g.path === 'pattern' ? symbolName('n') : fieldWord(g.path!)} ${g.unit === '1' ? formatExact(g.value, '1') : formatAmount(g.value, g.unit, 'metric')}, ${METHODS.certainties[g.certainty]}`).join('; ')),
    ...(canopyFigures.length > 0 ? [METHODS.canopy(canopyFigures.map(formulaText).join(', '))] : []),
    strategies.join(' '),
    ...(labelled ? [labelled] : []),
    ...errorTexts(canopy, errors, draws, new Set(under.flatMap(({ rest, dose }) => [...rest.constants.values(), ...dose.constants.values()].map((g) => g.assumption))), cite),
    METHODS.closing
  ];
  return { text: parts.join('\n\n') + '\n', cited: [...cited] };
}

/** How sure it is and, where its source is no work, on what it rests; then keys in brackets, as Pandoc reads them. */
const citing = (cited: Set<SourceId>) => (sources: readonly SourceId[], certainty?: Certainty): string => {
  const works = sources.filter(isWork);
  for (const id of works) cited.add(id);
  const said = [...(certainty ? [METHODS.certainties[certainty]] : []), ...sources.filter((id) => !isWork(id)).map((id) => METHODS.notWorks[id] ?? id)];
  return (said.length > 0 ? ` (${said.join(', ')})` : '') + (works.length > 0 ? ` [${works.map((id) => `@${id}`).join('; ')}]` : '');
};

/** The canopy's own numbers and the faces treated; a label's are told elsewhere. */
const isMeasurement = (path: string | undefined): boolean => path === 'rowSpacingM' || path === 'pattern' || (path?.startsWith('canopy.') ?? false);

const unitOf = (g: Given): string => {
  const shown = formatAmount(g.value, g.unit, 'metric');
  const at = shown.search(/[^\d.,\s\u202f−-]/u);
  return at < 0 ? '' : ` ${shown.slice(at)}`;
};

interface Collected {
  /** By formula id. */
  readonly figures: Map<string, Figure>;
  /** Assumptions by the symbol under which a formula takes them. */
  readonly constants: Map<string, Given>;
  /** Other given values by path. */
  readonly measured: Map<string, Given>;
}

/** All that some answers rest on, what is above before what is under it. */
function collected(answers: readonly (Answer | null)[]): Collected {
  const found: Collected = { figures: new Map(), constants: new Map(), measured: new Map() };
  const visit = (a: Answer | null, symbol: string): void => {
    if (!a || a.kind === 'refused') return;
    if (a.kind === 'given') {
      if (a.assumption !== undefined) found.constants.set(symbol, a);
      else if (a.path !== undefined) found.measured.set(a.path, a);
    } else if (!found.figures.has(a.formula.id)) {
      found.figures.set(a.formula.id, a);
      for (const s in a.inputs) visit(a.inputs[s]!, s);
    }
  };
  for (const a of answers) visit(a, '');
  return found;
}

function labelText(label: Label, formulas: readonly string[]): string {
  const unit = label.unit;
  const amount = (v: number) => `${formatNumber(v, 3).replace(/[.,]?0+$/, '')} ${unit}`;
  const rate = METHODS.rate(label.basis === 'percent-of-water' ? formatShare(label.rate / 100) : amount(label.rate), METHODS.bases[label.basis]);
  const adaptation = label.adaptation ?? 'none';
  const fixed = FIXED_BASES.has(label.basis);
  const rules = [
    fixed ? METHODS.adaptations[adaptation] : METHODS.adaptations.byItself,
    fixed && adaptation !== 'none' && label.floor !== undefined ? METHODS.floor(formatShare(label.floor)) : '',
    label.maxPerHa === undefined ? '' : METHODS.most(amount(label.maxPerHa))
  ];
  return METHODS.label(label.name, rate, rules.join(''), formulas.join(', '));
}

const ERRORS: readonly (readonly [keyof CanopyErrors, string])[] = [['heightSeM', 'canopy.heightM'], ['skirtSeM', 'canopy.skirtM'], ['widthSeM', 'canopy.widthM'], ['rowSpacingSeM', 'rowSpacingM']];

function errorTexts({ errors: { coverage } }: CanopyState, errors: CanopyErrors | undefined, draws: DrawWish | undefined, constants: ReadonlySet<string | undefined>, cite: ReturnType<typeof citing>): string[] {
  const out: string[] = [];
  const nu = errors?.trees === undefined ? null : Math.floor(errors.trees) - 1;
  const told = ERRORS.flatMap(([key, path]) => (errors?.[key] ? [`${fieldWord(path)} ± ${formatAmount(errors[key], 'm', 'metric')}`] : []));
  if (told.length > 0) {
    const together = errors?.heightWidthCorrelation ? [METHODS.correlation(formatNumber(errors.heightWidthCorrelation, 2))] : [];
    const factor = METHODS.coverage(formatNumber(coverage, 2), nu === null ? METHODS.normal : METHODS.student(nu));
    out.push(METHODS.analytic([...told, ...together].join(', '), factor, cite(['error-propagation', ...(nu === null ? [] : (['student-1908'] as const))])));
  }
  if (draws) {
    const works: SourceId[] = ['jcgm-101', 'salmon-2011', 'box-muller-1958', ...(nu === null ? [] : (['marsaglia-tsang-2000'] as const))];
    out.push(METHODS.draws(formatNumber(draws.draws, 0), String(draws.seed), nu === null ? METHODS.drawnNormal : METHODS.drawnStudent(nu), cite(works)));
    const ranges = draws.assumptions ? [...BELIEFS].filter(([id]) => constants.has(id)) : [];
    if (ranges.length > 0) out.push(METHODS.drawnAssumptions(ranges.map(([id, b]) => METHODS.range(assumptionWords(id).label, formatExact(b.low, '1'), formatExact(b.high, '1')) + cite(b.sources, b.certainty)).join('; ')));
  }
  return out;
}

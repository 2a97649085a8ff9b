import type { Finding } from '#core/advice/finding.ts';
import type { FittingList } from '#core/fitting/fit.ts';
import type { FittingProblem } from '#core/fitting/problem.ts';
import { isRule, planSpeed, wantedFlow, type FittingRow } from '#core/fitting/row.ts';
import type { Unit, UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import type { Refused } from '#core/working/answer.ts';
import { certaintyWord, colourWord, DASH, dropletWord, findingSentence, formatAmount, formatNumber, formatRange, refusalSentence, severityWord, sourceLine } from '#words/index.ts';
import { cli } from '#words/en/cli.ts';
import { fittingCli as words } from '#words/en/headland/fitting-cli.ts';
import { fittingWords } from '#words/en/headland/fitting-words.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';
import { title } from './report.ts';

/** The fitting of one rung: its task, and what the search found, or why not. */
export interface Fitted {
  readonly result: Result;
  /** None where the task itself was refused. */
  readonly problem: FittingProblem | null;
  readonly list: FittingList | Refused;
}

/** The short list of one rung as text for a terminal. */
export function fittingReport({ result, problem, list }: Fitted, system: UnitSystem): string {
  const head = title(result, system);
  if (!problem || 'kind' in list) return [...head, '', ...('kind' in list ? paragraph(refusalSentence(list, system)) : []), '', cli.closing].join('\n') + '\n';
  const lines = [
    ...head,
    ...section(words.headings.task, task(problem, list, system)),
    ...section(words.headings.list, table(list, system)),
    ...section(words.headings.sizes, sizes(problem, list, system)),
    ...section(words.headings.need, needs(list)),
    ...section(words.headings.findings, findings(list, system)),
    ...section(words.headings.rules, rules(list)),
    ...section(words.headings.byHand, byHand(list, system)),
    '',
    ...paragraph(fittingWords.limits),
    ...(list.searched.exact ? [] : paragraph(fittingWords.rounded(amount(list.searched.stepLPerMin, 'L/min', system)))),
    ...(list.searched.bent ? paragraph(fittingWords.bent) : []),
    cli.closing
  ];
  return lines.join('\n') + '\n';
}

const amount = (value: number, unit: Unit, system: UnitSystem): string => formatAmount(value, unit, system);
const signed = (v: number): string => `${v < 0 ? '−' : '+'}${formatNumber(Math.abs(v) * 100, 1)} %`;
const share = (v: number): string => `${formatNumber(v * 100, 1)} %`;

function task(p: FittingProblem, { searched }: FittingList, system: UnitSystem): string[] {
  const speed = planSpeed(p);
  return columns([
    [words.target, amount(p.targetLPerHa, 'L/ha', system), ''],
    [words.atSpeed, amount(speed, 'km/h', system), amount(wantedFlow(p, speed), 'L/min', system)],
    [words.weights, fittingWords.weightings[p.weighting], ''],
    [words.open, String(p.positions.length), ''],
    [words.mirrored, p.mirrored ? words.yes : words.no, ''],
    [words.pressures, formatRange(p.pressure.leastBar, p.pressure.mostBar, 'bar', system), ''],
    [words.speeds, formatRange(p.speed.leastKmH, p.speed.mostKmH, 'km/h', system), ''],
    [words.looked, words.power(searched.logCombinations), '']
  ]);
}

const nameOf = (row: FittingRow): string => row.names.map((n) => fittingWords.names[n]).join(', ');

function table(list: FittingList, system: UnitSystem): string[] {
  const c = words.columns;
  return columns(
    [
      ['', c.name, c.changed, c.match, c.pressure, c.speed, c.flow, c.volume, c.top, c.worst, c.buy, c.drops],
      ...list.rows.map((r, i) => [
        words.row(i + 1),
        nameOf(r),
        String(r.changes),
        share(r.match),
        amount(r.pressureBar, 'bar', system),
        amount(r.speedKmH, 'km/h', system),
        amount(r.flowLPerMin, 'L/min', system),
        amount(r.volumeLPerHa, 'L/ha', system),
        share(r.topShare),
        r.worst ? `${r.worst.position} ${signed(r.worst.off)}` : DASH,
        String(r.buy),
        r.classes.map(dropletWord).join(', ') || DASH
      ])
    ],
    ['left', 'left', 'right', 'right', 'right', 'right', 'right', 'right', 'right', 'left', 'right', 'left']
  );
}

/** One line a position: what is wanted there, what is there now, and each fitting's size. */
function sizes(p: FittingProblem, list: FittingList, system: UnitSystem): string[] {
  const wanted = wantedFlow(p, planSpeed(p));
  const many = new Set(p.sizes.map((s) => s.table.id)).size > 1;
  const size = (table: string, id: string, colour: string | undefined) => `${many ? `${table} ` : ''}${id}${colour ? ` ${colourWord(colour)}` : ''}`;
  return columns([
    [words.position, words.weight, words.wanted, words.now, ...list.rows.map((_, i) => words.row(i + 1))],
    ...p.positions.map((at, i) => {
      const now = p.sizes[at.present]!;
      return [
        at.id,
        share(at.weight),
        amount(at.weight * wanted, 'L/min', system),
        size(now.table.id, now.size.id, now.size.colour),
        ...list.rows.map((r) => (r.nozzles[i]!.instead ? size(r.nozzles[i]!.table, r.nozzles[i]!.size, r.nozzles[i]!.colour) : '='))
      ];
    })
  ]);
}

const needs = (list: FittingList): string[] =>
  columns(list.rows.flatMap((r, i) => (r.needs.length === 0 ? [] : [[words.row(i + 1), r.needs.map((n) => `${n.count} × ${n.size}${n.buy > 0 ? ` (${words.columns.buy}: ${n.buy})` : ''}`).join(', ')]])));

/** Of the named fittings, each sentence once with those that it is about. What the rules say stands in their own table. */
function findings(list: FittingList, system: UnitSystem): string[] {
  const said = new Map<string, number[]>();
  const sentence = (f: Finding): string => `${severityWord(f.severity)}: ${findingSentence(f, system)}`;
  for (const f of list.findings) said.set(sentence(f), []);
  list.rows.forEach((r, i) => {
    if (r.names.length === 0) return;
    for (const f of r.findings.filter((each) => !isRule(each))) said.set(sentence(f), [...(said.get(sentence(f)) ?? []), i + 1]);
  });
  return [...said].flatMap(([text, rows]) => paragraph([...rows.map(words.row), text].join(' '), INDENT));
}

function rules(list: FittingList): string[] {
  const met = (rule: string): string => {
    const rows = list.rows.flatMap((r, i) => (r.rules.some((each) => each.rule === rule && each.met) ? [words.row(i + 1)] : []));
    return rows.length === 0 ? words.metByNone : words.metBy(rows.join(' '));
  };
  return columns(
    (list.rows[0]?.rules ?? []).map((r) => [fittingWords.rules[r.rule], r.suits ? met(r.rule) : words.otherwise, r.certainty === 'published' ? sourceLine(r.source) : certaintyWord(r.certainty)])
  );
}

const byHand = ({ byHand: row }: FittingList, system: UnitSystem): string[] =>
  paragraph(row ? words.byHand(share(row.match), amount(row.pressureBar, 'bar', system), row.changes) : words.byHandUnfit);

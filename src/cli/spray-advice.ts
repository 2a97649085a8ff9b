import type { Plan, SprayAdvice } from '#core/spray/advice/types.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import type { Refused } from '#core/working/answer.ts';
import { DASH, dropletWord, formatAmount, formatNumber, formatShare, refusalSentence } from '#words/index.ts';
import { sprayCli as words } from '#words/en/spray/cli.ts';
import { effectPhrases, stepSentence } from '#words/spray/step.ts';
import { findingLines } from './finding-lines.ts';
import { columns, INDENT, paragraph } from './layout.ts';
import { part } from './spray-figures.ts';

/** The front with today's setting on it, then each plan step by step. */
export function adviceLines(result: Result, advice: SprayAdvice | Refused, system: UnitSystem): string[] {
  if ('kind' in advice) return paragraph(refusalSentence(advice, system));
  const { plans, searched, findings } = advice;
  return [
    ...front(advice, system),
    ...plans.flatMap((p, i) => steps(result, p, i, system)),
    words.looked(formatNumber(searched.settings, 0), formatNumber(searched.airs, 0)),
    ...findingLines(findings, system)
  ];
}

const nameOf = (p: Plan, i: number): string => [words.plan(i + 1), p.names.map((n) => words.planNames[n]).join(', ')].filter(Boolean).join(' ');

function front({ today, plans }: SprayAdvice, system: UnitSystem): string[] {
  const c = words.adviceColumns;
  const row = (name: string, { objectives: o, volumeLPerHa, droplets }: SprayAdvice['today'] | Plan, note: string): string[] => [
    name,
    part(o.onTrees),
    part(o.lost),
    o.cv === null ? DASH : formatShare(o.cv),
    formatAmount(o.workRateHaPerH, 'ha/h', system),
    formatAmount(volumeLPerHa, 'L/ha', system),
    droplets.map(dropletWord).join(', ') || DASH,
    note
  ];
  return columns(
    [[c.name, c.trees, c.lost, c.cv, c.rate, c.water, c.drops, ''], row(words.today, today, ''), ...plans.map((p, i) => row(nameOf(p, i), p, p.clear ? '' : words.noClear))],
    ['left', 'right', 'right', 'right', 'right', 'right', 'left', 'left']
  );
}

/** What the plan does as a whole, its steps in the order in which they count, and what to know of it. */
function steps({ machine }: Result, plan: Plan, i: number, system: UnitSystem): string[] {
  const gear = (id: string): string => machine.gears.find((g) => g.id === id)?.name ?? id;
  const lines = [...plan.steps.flatMap((s) => paragraph(stepSentence(s.change, s.gains, gear, system), INDENT)), ...findingLines(plan.remarks, system)];
  return [...paragraph(`${words.plan(i + 1)} ${effectPhrases(plan.gains).join(', ')}:`, INDENT), ...lines.map((l) => INDENT + l)];
}

import { finding, type Finding } from '../advice/finding.ts';
import type { Block, Rung } from '../setting/document.ts';

const DAY_MS = 86_400_000;
/** Once a year at the least, better each time the canopy has changed. */
const MOST_DAYS = 365;

/**
 * Why a rung has to be checked (again), apart from its setting: another stage was checked and this one not, another machine was
 * tested, or the last round lies more than a year before the date of the stage.
 */
export function dueFindings(block: Block, rung: Rung): Finding[] {
  const last = rung.check?.rounds.at(-1);
  if (!last) {
    const other = block.rungs.findLast((r) => r.id !== rung.id && r.check && r.check.rounds.length > 0);
    return other ? [finding('check-due-stage', 'warn', { other: other.name, stage: rung.name }, ['deveau-2009'], 'check.rounds')] : [];
  }
  const out: Finding[] = [];
  if (last.machine !== undefined && last.machine !== block.machine) out.push(finding('check-due-machine', 'stop', { machine: last.machine }, ['deveau-2009'], 'machine'));
  if (last.at !== undefined && rung.date !== undefined && Date.parse(rung.date) - Date.parse(last.at) > MOST_DAYS * DAY_MS)
    out.push(finding('check-due-season', 'warn', { date: last.at.slice(0, 10) }, ['deveau-2009'], 'check.rounds'));
  return out;
}

import { checkState } from '#core/check/check.ts';
import { dueFindings } from '#core/check/due.ts';
import type { CheckState } from '#core/check/state.ts';
import type { Result } from '#core/setting/result.ts';
import { plain, type Plain } from '#core/working/plain.ts';
import { checkCli } from '#words/en/headland/check-cli.ts';
import { findingSentence } from '#words/index.ts';
import '#words/headland/join.ts';
import { checkReport } from '../check-report.ts';
import { complain } from '../complain.ts';
import { EXIT, Stop, type Verb } from '../exit.ts';
import { rungsOf } from '../rungs.ts';
import { wished } from '../wish.ts';

/** Prints the headland check of the wanted blocks and rungs; see `checkCli.usage`. */
export const run: Verb = async (args, streams) => {
  const wish = wished('check', args);
  if (!wish) {
    streams.out(checkCli.usage);
    return EXIT.done;
  }
  const { document, results } = await rungsOf(wish, streams);
  const checks = results.flatMap((result) => {
    const state = checkState(document, result);
    return state ? [{ result, state }] : [];
  });
  if (checks.length === 0) throw new Stop(EXIT.refused, checkCli.none(wish.file));
  streams.out(wish.json ? jsonText(checks) : checks.map(({ result, state }) => checkReport(result, state, wish.system)).join('\n\n'));
  for (const { block, rung } of results) if (!rung.check) for (const f of dueFindings(block, rung)) streams.err(`${block.name}, ${rung.name}: ${findingSentence(f, wish.system)}\n`);
  return complain(checks.map(({ result, state }) => ({ result, needed: [state.outcome.volume.value] })), wish.system, streams.err);
};

const jsonText = (checks: readonly { result: Result; state: CheckState }[]): string => JSON.stringify({ format: 'rowtailor-check', version: 1, checks: checks.map(plainCheck) }, null, 1) + '\n';

/** The machine's states are left out: `advise --json` has them. */
function plainCheck({ result: r, state }: { result: Result; state: CheckState }): Plain {
  return plain({
    block: { id: r.block.id, name: r.block.name },
    rung: { id: r.rung.id, name: r.rung.name },
    machine: { id: r.machine.id, name: r.machine.name },
    tolerance: state.tolerance,
    walk: state.walk,
    rounds: state.rounds.map(({ sprayer: _, catches, ...round }) => ({
      ...round,
      catches: catches && { ...catches, nozzles: catches.nozzles.map(({ nozzle, ...n }) => ({ position: nozzle.position.id, size: nozzle.size?.id ?? null, ...n })) }
    })),
    outcome: state.outcome,
    remedies: state.remedies,
    trail: state.trail,
    used: state.used,
    findings: state.findings,
    assumptions: state.assumptions
  });
}

import type { UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { cli } from '#words/en/cli.ts';
import { refusalSentence } from '#words/index.ts';
import { EXIT, type Exit } from './exit.ts';

/** Says on standard error why figures that must be there are not, rung by rung; the exit code tells it too. */
export function complain(rungs: readonly { readonly result: Result; readonly needed: readonly Answer[] }[], system: UnitSystem, err: (text: string) => void): Exit {
  let exit: Exit = EXIT.done;
  for (const { result, needed } of rungs) {
    const reasons = [...new Set(needed.filter(isRefused).map((a) => refusalSentence(a, system)))];
    if (reasons.length === 0) continue;
    exit = EXIT.refused;
    err(`${cli.refusedIn(`${result.block.name}, ${result.rung.name}`, reasons)}\n`);
  }
  return exit;
}

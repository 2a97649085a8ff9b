import { checkState } from '#core/check/check.ts';
import { loadsState } from '#core/mix/loads.ts';
import type { LoadsState } from '#core/mix/state.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import type { Answer } from '#core/working/answer.ts';
import { plain } from '#core/working/plain.ts';
import { USAGE } from '#words/en/cli.ts';
import '#words/headland/join.ts';
import { complain } from '../complain.ts';
import { EXIT, type Verb } from '../exit.ts';
import { loadsReport } from '../loads-report.ts';
import { rungsOf } from '../rungs.ts';
import { wished } from '../wish.ts';

/** Prints the loads of the wanted blocks and rungs; see `USAGE.loads`. */
export const run: Verb = async (args, streams) => {
  const wish = wished('loads', args);
  if (!wish) {
    streams.out(USAGE.loads);
    return EXIT.done;
  }
  const { document, results } = await rungsOf(wish, streams);
  const all = results.map((result) => ({ result, state: stateOf(document, result) }));
  streams.out(wish.json ? jsonText(all) : all.map(({ result, state }) => loadsReport(state, result, wish.system)).join('\n\n'));
  return complain(all.map(({ result, state }) => ({ result, needed: needed(state) })), wish.system, streams.err);
};

/** What a headland check has measured of this very setting comes before what the setting says. */
function stateOf(document: Document, result: Result): LoadsState {
  const outcome = checkState(document, result)?.outcome;
  return loadsState(document, result, outcome ? { volume: outcome.volume.value, speed: outcome.speed.value } : {});
}

const jsonText = (all: readonly { readonly result: Result; readonly state: LoadsState }[]): string =>
  JSON.stringify(
    {
      format: 'rowtailor-loads',
      version: 1,
      results: all.map(({ result, state }) => plain({ block: { id: result.block.id, name: result.block.name }, rung: { id: result.rung.id, name: result.rung.name }, ...state }))
    },
    null,
    1
  ) + '\n';

/** Figures that loads must have. */
const needed = (s: LoadsState): Answer[] => [s.area, s.volume, s.usable, s.count, ...s.partners.map((p) => p.perHa)];

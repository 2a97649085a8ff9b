import { adviceProblem } from '#core/spray/advice/problem.ts';
import { adviseSpray } from '#core/spray/advice/search.ts';
import { balance } from '#core/spray/balance.ts';
import { band } from '#core/spray/band.ts';
import { basisOf, shownRuns } from '#core/spray/basis.ts';
import { sprayCase } from '#core/spray/case.ts';
import { transport } from '#core/spray/transport.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { plain, type Plain } from '#core/working/plain.ts';
import { USAGE } from '#words/en/cli.ts';
import { sprayScreen } from '#words/en/spray/screen.ts';
import '#words/spray/join.ts';
import { complain } from '../complain.ts';
import { EXIT, type Verb } from '../exit.ts';
import { rungsOf } from '../rungs.ts';
import { sprayReport, type Sprayed } from '../spray-report.ts';
import { wished } from '../wish.ts';

/** Prints where the spray of the wanted blocks and rungs goes; see `USAGE.spray`. */
export const run: Verb = async (args, streams) => {
  const wish = wished('spray', args);
  if (!wish) {
    streams.out(USAGE.spray);
    return EXIT.done;
  }
  const { document, results } = await rungsOf(wish, streams);
  const all = results.map((result) => sprayed(document, result));
  streams.out(wish.json ? jsonText(all) : all.map((s) => sprayReport(s, wish.system)).join('\n\n'));
  return complain(all.map(({ result, spray }) => ({ result, needed: 'kind' in spray ? [spray] : [] })), wish.system, streams.err);
};

function sprayed(document: Document, result: Result): Sprayed {
  const of = sprayCase(document, result);
  if ('kind' in of) return { document, result, spray: of };
  const problem = adviceProblem(document, result);
  const advice = 'kind' in problem ? problem : adviseSpray(problem);
  return { document, result, spray: { of, balance: balance(of, transport(of)), band: band(of), advice } };
}

const jsonText = (all: readonly Sprayed[]): string => JSON.stringify({ format: 'rowtailor-spray', version: 1, results: all.map(one) }, null, 1) + '\n';

/** Runs of the band that must not be shown on the screen are not written either. */
function one({ document, result, spray }: Sprayed): Plain {
  const { block, rung, machine, setting, air } = result;
  const head = { block: { id: block.id, name: block.name }, rung: { id: rung.id, name: rung.name }, machine: { id: machine.id, name: machine.name }, setting };
  if ('kind' in spray) return plain({ ...head, balance: spray });
  const { of, balance, band, advice } = spray;
  return plain({
    ...head,
    balance,
    band: { ...band, runs: shownRuns(band) },
    case: of,
    assumptions: basisOf(document, result, of),
    air: { needed: air.needed, given: air.given, k: air.k, perMetre: air.perMetre },
    advice,
    limits: [...sprayScreen.limitList, sprayScreen.noDose]
  });
}

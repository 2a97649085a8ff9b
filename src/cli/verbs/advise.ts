import type { UnitSystem } from '#core/quantity/units.ts';
import type { Advised } from '#core/setting/result.ts';
import type { Answer } from '#core/working/answer.ts';
import { USAGE } from '#words/en/cli.ts';
import { complain } from '../complain.ts';
import { EXIT, type Verb } from '../exit.ts';
import { plainResult } from '../json.ts';
import { report } from '../report.ts';
import { rungsOf } from '../rungs.ts';
import { wished } from '../wish.ts';

/** Prints the setting of the wanted blocks and rungs; see `USAGE.advise`. */
export const run: Verb = async (args, streams) => {
  const wish = wished('advise', args);
  if (!wish) {
    streams.out(USAGE.advise);
    return EXIT.done;
  }
  const { results } = await rungsOf(wish, streams);
  streams.out(wish.json ? jsonText(results) : text(results, wish.system));
  return complain(results.map((result) => ({ result, needed: needed(result) })), wish.system, streams.err);
};

const text = (results: readonly Advised[], system: UnitSystem): string =>
  results
    .map((r, i) => {
      const before = results[i - 1];
      return report(r, before?.block.id === r.block.id ? before : null, system);
    })
    .join('\n\n');

const jsonText = (results: readonly Advised[]): string => JSON.stringify({ format: 'rowtailor-advice', version: 1, results: results.map(plainResult) }, null, 1) + '\n';

/** Figures that a setting must have. */
const needed = (r: Advised): Answer[] => [r.canopy.figures.h, r.sprayer.volume, r.air.needed, r.air.given, ...(r.product ? [r.product.perHa] : [])];

import { parseArgs } from 'node:util';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused } from '#core/working/answer.ts';
import { LONGEST_FILE } from '#job/limits.ts';
import { readDocument } from '#job/read.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { moreProblems, problemSentence } from '#words/en/problems.ts';
import { refusalSentence } from '#words/index.ts';
import { EXIT, Stop, type Verb } from '../exit.ts';
import { plainResult } from '../json.ts';
import { readText } from '../read-text.ts';
import { report } from '../report.ts';

interface Wish {
  readonly file: string;
  readonly block: string | undefined;
  readonly rung: string | undefined;
  readonly system: UnitSystem;
  readonly json: boolean;
}

/** Prints the setting of the wanted blocks and rungs; see `USAGE.advise`. */
export const run: Verb = async (args, streams) => {
  const wish = wished(args);
  if (!wish) {
    streams.out(USAGE.advise);
    return EXIT.done;
  }
  const document = documentOf(await readText(wish.file, LONGEST_FILE, streams), wish.file);
  const results = chosen(document, wish);
  streams.out(wish.json ? jsonText(results) : text(results, wish.system));
  return complain(results, wish.system, streams.err);
};

/** What is asked for; null where it is help. */
function wished(args: readonly string[]): Wish | null {
  const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('advise')}`);
  const { values, positionals } = parsed(args, usage);
  if (values.help) return null;
  const [file, ...more] = positionals;
  if (file === undefined) throw usage(cli.noFile);
  if (more.length > 0) throw usage(cli.tooManyFiles(positionals.length));
  if (values.units !== 'metric' && values.units !== 'us') throw usage(cli.badUnits(values.units));
  return { file, block: values.block, rung: values.rung, system: values.units, json: values.json };
}

function parsed(args: readonly string[], usage: (message: string) => Stop) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        block: { type: 'string' },
        rung: { type: 'string' },
        units: { type: 'string', default: 'metric' },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
  } catch (error) {
    throw usage((error as Error).message);
  }
}

/** Faults of the text as a whole: there is nothing in it that could be judged. */
const UNREADABLE: ReadonlySet<string> = new Set(['too-large', 'empty', 'not-json', 'too-deep', 'too-many-values']);

function documentOf(text: string, file: string): Document {
  const reading = readDocument(text);
  if (reading.ok) return reading.document;
  const lines = reading.problems.map((p) => `${file}: ${problemSentence(p)}`);
  if (reading.more > 0) lines.push(moreProblems(reading.more));
  throw new Stop(reading.problems.some((p) => UNREADABLE.has(p.code)) ? EXIT.unreadable : EXIT.refused, lines.join('\n'));
}

/** Every wanted rung, in the order of the file. */
function chosen(document: Document, { block, rung }: Wish): Result[] {
  const blocks = document.blocks.filter((b) => block === undefined || b.id === block);
  if (blocks.length === 0) throw new Stop(EXIT.usage, cli.noBlock(block ?? '', document.blocks.map((b) => b.id)));
  const pairs = blocks.flatMap((b) => b.rungs.filter((r) => rung === undefined || r.id === rung).map((r) => [b.id, r.id] as const));
  if (pairs.length === 0) throw new Stop(EXIT.usage, cli.noRung(rung ?? '', [...new Set(blocks.flatMap((b) => b.rungs.map((r) => r.id)))]));
  return pairs.map(([b, r]) => {
    const result = evaluate(document, b, r);
    if ('kind' in result) throw new Stop(EXIT.refused, refusalSentence(result, 'metric'));
    return result;
  });
}

const text = (results: readonly Result[], system: UnitSystem): string =>
  results
    .map((r, i) => {
      const before = results[i - 1];
      return report(r, before?.block.id === r.block.id ? before : null, system);
    })
    .join('\n\n');

const jsonText = (results: readonly Result[]): string => JSON.stringify({ format: 'rowtailor-advice', version: 1, results: results.map(plainResult) }, null, 1) + '\n';

/** Says on standard error which rungs lack a figure that a setting must have. */
function complain(results: readonly Result[], system: UnitSystem, err: (text: string) => void) {
  let exit: 0 | 1 = EXIT.done;
  for (const r of results) {
    const needed = [r.canopy.figures.h, r.sprayer.volume, r.air.needed, r.air.given, ...(r.product ? [r.product.perHa] : [])];
    const reasons = [...new Set(needed.filter(isRefused).map((a) => refusalSentence(a, system)))];
    if (reasons.length === 0) continue;
    exit = EXIT.refused;
    err(`${cli.refusedIn(`${r.block.name}, ${r.rung.name}`, reasons)}\n`);
  }
  return exit;
}

import { createReadStream, fstatSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Header } from '#job/csv/header.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { intervalCli } from '#words/en/interval-cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from '../exit.ts';
import { whyUnreadable } from '../read-text.ts';
import { cutRows, inSlices } from '../table/cut.ts';
import { readHead, type Head } from '../table/head.ts';
import { intervalWish, type IntervalWish } from '../table/interval-wish.ts';
import type { Told } from '../table/maker.ts';
import type { Piece } from '../table/piece.ts';
import { inOrder, workOf, type Work } from '../table/pool.ts';
import type { Wanted } from '../table/wanted.ts';
import { fileSink, standardOutput, type Sink } from '../table/sink.ts';

/** One canopy a line in, one line of figures out; see `USAGE.table`. Streams: what it holds does not grow with the file. */
export const run: Verb = async (args, streams) => {
  const { values, positionals } = parsed(args);
  if (values.help) {
    streams.out(USAGE.table);
    return EXIT.done;
  }
  const [file, ...more] = positionals;
  if (file === undefined) throw usage(cli.noTable);
  if (more.length > 0) throw usage(cli.tooManyFiles(positionals.length));
  const { out = '-', manifest } = values;
  if (out !== '-' && isSame(file, out)) throw usage(cli.sameFile);
  const wish = intervalWish(values, usage);
  const work = await workOf(await wantedOf(values, wish, file, streams));
  const sink = out === '-' ? standardOutput : fileSink(out);
  if (manifest === undefined) return convert(file, work, sink, streams);
  if (isSame(file, manifest) || resolve(manifest) === resolve(out) || isSame(out, manifest)) throw usage(intervalCli.sameManifest);
  return withManifest(manifest, wish, file, work, sink, streams);
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('table')}`);

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        spray: { type: 'boolean', default: false },
        setting: { type: 'string' },
        block: { type: 'string' },
        rung: { type: 'string' },
        intervals: { type: 'boolean', default: false },
        draws: { type: 'string' },
        seed: { type: 'string' },
        manifest: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
  } catch (error) {
    throw usage((error as Error).message);
  }
}

/** What is wanted beside the figures. */
async function wantedOf({ spray, setting, block, rung, out, manifest }: ReturnType<typeof parsed>['values'], intervals: IntervalWish | null, file: string, streams: Streams): Promise<Wanted> {
  const [stray] = Object.entries({ setting, block, rung }).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}`]));
  if (!spray && stray) throw usage(cli.withoutSpray(stray));
  if (spray && (intervals || manifest !== undefined)) throw usage(intervalCli.notWithSpray(intervals ? '--intervals' : '--manifest'));
  if (!spray) return { intervals, spray: null };
  if (setting === undefined) throw usage(cli.noSetting);
  if (setting === '-' && file === '-') throw usage(cli.twoFromInput);
  if (out !== undefined && isSame(setting, out)) throw usage(cli.sameSetting);
  const { frontOf } = await import('../table/front.ts');
  return { intervals, spray: await frontOf({ file: setting, block, rung }, usage, streams) };
}

/** The same file, however the two paths are spelt or linked: writing it would destroy what is still to be read. */
function isSame(file: string, out: string): boolean {
  try {
    const to = statSync(out);
    const from = file === '-' ? fstatSync(0) : statSync(file);
    return to.isFile() && to.dev === from.dev && to.ino === from.ino;
  } catch {
    // One of them is not there.
    return false;
  }
}

/** Converts, and writes what the table was made of and with. A table that is refused as a whole has no manifest. */
async function withManifest(path: string, wish: IntervalWish | null, file: string, work: Work, sink: Sink, streams: Streams): Promise<Exit> {
  const { manifestText, nothingYet, noting, notingSink } = await import('../table/manifest.ts');
  const [input, output] = [nothingYet(), nothingYet()];
  const exit = await convert(file, work, notingSink(sink, output), streams, (chunks) => noting(chunks, input));
  if (output.bytes === 0) return exit;
  const to = fileSink(path);
  await to.write(manifestText(input, output, ['block', ...work.names], wish));
  await to.close();
  return exit;
}

type Chunks = AsyncIterable<Uint8Array>;

async function convert(file: string, work: Work, sink: Sink, { stdin, err }: Streams, through: (chunks: Chunks) => Chunks = (chunks) => chunks): Promise<Exit> {
  const tell = (problems: readonly Told[]): void => err(problems.map((p) => `${'text' in p ? p.text : problemSentence(p)}\n`).join(''));
  let exit: Exit = EXIT.done;
  try {
    const head = await readHead(through(file === '-' ? stdin : createReadStream(file, { highWaterMark: 1 << 18 })));
    if (head === 'encoding') throw new Stop(EXIT.unreadable, cli.unreadable(file, cli.why.encoding));
    if (!('header' in head)) {
      tell(head);
      return EXIT.refused;
    }
    if (work.wanted.intervals && !tellsErrors(head.header)) {
      // What is read from is let go first.
      for await (const _ of head.rows) break;
      throw usage(intervalCli.noErrors);
    }
    if (work.wanted.intervals) err(`${intervalCli.note}\n`);
    if (work.wanted.spray) err(`${(await import('#words/en/spray/cli.ts')).sprayCli.table.note}\n`);
    await sink.write(`${['block', ...work.names].join(',')}\n`);
    for await (const { bytes, problems } of inOrder(pieces(head, work.pieceBytes), work, Math.min(availableParallelism(), 4))) {
      await sink.write(bytes);
      if (problems.length === 0) continue;
      exit = EXIT.refused;
      tell(problems);
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall === undefined) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error as Error)));
  }
  await sink.close();
  return exit;
}

/** Without any of these there is nothing to make an interval of. */
const ERRORS: ReadonlySet<string> = new Set(['heightSeM', 'skirtSeM', 'widthSeM', 'rowSpacingSeM']);
const tellsErrors = ({ columns }: Header): boolean => columns.some((c) => typeof c !== 'string' && ERRORS.has(c.quantity));

async function* pieces({ header, line, rows }: Head, pieceBytes: number): AsyncGenerator<Piece> {
  for await (const { bytes, lines } of cutRows(inSlices(rows, pieceBytes), header.delimiter, pieceBytes)) {
    yield { header, line, bytes };
    line += lines;
  }
}

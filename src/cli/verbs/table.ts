import { createReadStream, fstatSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import type { RowProblem } from '#job/csv/header.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from '../exit.ts';
import { whyUnreadable } from '../read-text.ts';
import { HEADER } from '../table/columns.ts';
import { cutRows } from '../table/cut.ts';
import { readHead, type Head } from '../table/head.ts';
import type { Piece } from '../table/piece.ts';
import { inOrder } from '../table/pool.ts';
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
  const { out = '-' } = values;
  if (out !== '-' && isSame(file, out)) throw usage(cli.sameFile);
  return convert(file, out === '-' ? standardOutput : fileSink(out), streams);
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('table')}`);

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options: { out: { type: 'string' }, help: { type: 'boolean', short: 'h', default: false } } });
  } catch (error) {
    throw usage((error as Error).message);
  }
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

async function convert(file: string, sink: Sink, { stdin, err }: Streams): Promise<Exit> {
  const tell = (problems: readonly RowProblem[]): void => err(problems.map((p) => `${problemSentence(p)}\n`).join(''));
  let exit: Exit = EXIT.done;
  try {
    const head = await readHead(file === '-' ? stdin : createReadStream(file, { highWaterMark: 1 << 18 }));
    if (head === 'encoding') throw new Stop(EXIT.unreadable, cli.unreadable(file, cli.why.encoding));
    if (!('header' in head)) {
      tell(head);
      return EXIT.refused;
    }
    await sink.write(`${HEADER}\n`);
    for await (const { bytes, problems } of inOrder(pieces(head), Math.min(availableParallelism(), 4))) {
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

async function* pieces({ header, line, rows }: Head): AsyncGenerator<Piece> {
  for await (const { bytes, lines } of cutRows(rows, header.delimiter)) {
    yield { header, line, bytes };
    line += lines;
  }
}

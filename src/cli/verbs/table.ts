import { createReadStream, createWriteStream } from 'node:fs';
import { once } from 'node:events';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { readHeader, type Header } from '#job/csv/header.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from '../exit.ts';
import { whyUnreadable } from '../read-text.ts';
import { HEADER } from '../table/columns.ts';
import { cutRows } from '../table/cut.ts';
import type { Piece } from '../table/piece.ts';
import { inOrder } from '../table/pool.ts';

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
  if (values.out !== undefined && values.out === file) throw usage(cli.sameFile);
  const sink = values.out === undefined ? process.stdout : createWriteStream(values.out);
  const failed = values.out === undefined ? new Promise<never>(() => undefined) : once(sink, 'error').then(([error]) => Promise.reject(new Stop(EXIT.unreadable, cli.unwritable(values.out!, whyUnreadable(error as Error)))));
  failed.catch(() => undefined);
  return Promise.race([failed, convert(file, sink, streams)]);
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('table')}`);

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], allowPositionals: true, options: { out: { type: 'string' }, help: { type: 'boolean', short: 'h', default: false } } });
  } catch (error) {
    throw usage((error as Error).message);
  }
}

async function convert(file: string, sink: NodeJS.WritableStream, { stdin, err }: Streams): Promise<Exit> {
  let exit: Exit = EXIT.done;
  let headed = false;
  const write = async (part: string | Uint8Array): Promise<void> => {
    if (part.length > 0 && !sink.write(part)) await once(sink, 'drain');
  };
  const bytes = file === '-' ? stdin : createReadStream(file, { highWaterMark: 1 << 18 });
  try {
    for await (const { bytes: lines, problems } of inOrder(pieces(bytes), Math.min(availableParallelism(), 4))) {
      if (!headed) await write(`${HEADER}\n`);
      headed = true;
      await write(lines);
      if (problems.length > 0) {
        exit = EXIT.refused;
        err(problems.map((p) => `${problemSentence(p)}\n`).join(''));
      }
    }
  } catch (error) {
    if (error instanceof Stop || !(error as NodeJS.ErrnoException).code) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error as Error)));
  }
  if (!headed) await write(`${HEADER}\n`);
  if (sink !== process.stdout) {
    sink.end();
    await once(sink, 'finish');
  }
  return exit;
}
/** The table in pieces of whole rows, the header read from the first; a header that is not understood ends it. */
async function* pieces(bytes: AsyncIterable<Uint8Array>): AsyncGenerator<Piece> {
  let header: Header | null = null;
  let line = 1;
  for await (const cut of cutRows(bytes)) {
    let rows = cut.bytes;
    const next = line + cut.lines;
    while (!header && rows.length > 0) {
      const end = rows.indexOf(NEWLINE);
      const first = new TextDecoder().decode(end === -1 ? rows : rows.subarray(0, end)).replace(/\r$/, '');
      rows = end === -1 ? rows.subarray(0, 0) : rows.slice(end + 1);
      // Blank lines before the header are passed over.
      if (first.trim() !== '') {
        const read = readHeader(first, line);
        if (!('columns' in read)) throw new Stop(EXIT.refused, read.map((p) => problemSentence(p)).join('\n'));
        header = read;
      }
      line++;
    }
    if (header && rows.length > 0) yield { header, line, bytes: rows };
    line = next;
  }
  if (!header) throw new Stop(EXIT.refused, problemSentence({ line: 1, column: '', value: '', code: 'no-header', parameters: {} }));
}
const NEWLINE = 10;

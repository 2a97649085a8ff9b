import { fstatSync, statSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { resolve } from 'node:path';
import { parseArgs } from 'node:util';
import type { Header } from '#job/csv/header.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { intervalCli } from '#words/en/interval-cli.ts';
import { placeInTable, problemSentence } from '#words/en/problems.ts';
import { tableCli } from '#words/en/table-cli.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from '../exit.ts';
import { isUnreadable, whyUnreadable } from '../read-text.ts';
import type { SettingRead } from '../table/front.ts';
import { intervalWish } from '../table/interval-wish.ts';
import type { Told } from '../table/maker.ts';
import type { Hashed } from '../table/manifest.ts';
import { inOrder, workOf, type Work } from '../table/pool.ts';
import { fileSink, standardOutput, type Sink } from '../table/sink.ts';
import { chunksOf, isParquet, parquetSource, textSource, type Source } from '../table/source.ts';
import { FORMS, type Form, type Wanted } from '../table/wanted.ts';
import { writerOf } from '../table/writer.ts';

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
  const threads = threadsOf(values.threads);
  const { wanted, setting } = await wantedOf(values, file, streams);
  const job: Job = { file, work: await workOf(wanted), setting, sink: out === '-' ? standardOutput : fileSink(out), threads };
  if (manifest === undefined) return convert(job, streams);
  const others = [file, out, ...(values.setting === undefined ? [] : [values.setting])];
  if (resolve(manifest) === resolve(out) || others.some((other) => other !== '-' && isSame(other, manifest)) || (file === '-' && isSame(file, manifest))) throw usage(intervalCli.sameManifest);
  return withManifest(manifest, job, streams);
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('table')}`);

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        out: { type: 'string' },
        format: { type: 'string' },
        strategies: { type: 'boolean', default: false },
        label: { type: 'string' },
        spray: { type: 'boolean', default: false },
        setting: { type: 'string' },
        block: { type: 'string' },
        rung: { type: 'string' },
        intervals: { type: 'boolean', default: false },
        draws: { type: 'string' },
        seed: { type: 'string' },
        manifest: { type: 'string' },
        threads: { type: 'string' },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
  } catch (error) {
    throw usage((error as Error).message);
  }
}
type Values = ReturnType<typeof parsed>['values'];

/** What is wanted, and the setting that it is wanted of. */
async function wantedOf(values: Values, file: string, streams: Streams): Promise<{ readonly wanted: Wanted; readonly setting: SettingRead | null }> {
  const { spray, strategies, label, setting, block, rung, out } = values;
  const intervals = intervalWish(values, usage);
  const form = formOf(values.format, out);
  if (label !== undefined && !strategies) throw usage(tableCli.labelAlone);
  if (label !== undefined && setting === undefined) throw usage(tableCli.withoutSetting);
  const [stray] = Object.entries({ setting, block, rung }).flatMap(([name, value]) => (value === undefined ? [] : [`--${name}`]));
  if (!spray && stray && (!strategies || setting === undefined)) throw usage(tableCli.settingAlone(stray));
  if (spray && intervals) throw usage(intervalCli.notWithSpray('--intervals'));
  if (spray && setting === undefined) throw usage(cli.noSetting);
  if (setting === undefined) return { wanted: { strategies: strategies ? {} : null, intervals, spray: null, form }, setting: null };
  if (setting === '-' && file === '-') throw usage(cli.twoFromInput);
  if (out !== undefined && isSame(setting, out)) throw usage(cli.sameSetting);
  const { frontOf, settingOf, strategiesWishOf } = await import('../table/front.ts');
  const read = await settingOf({ file: setting, block, rung }, usage, streams);
  const note = (text: string): void => streams.err(`${text}\n`);
  return { wanted: { strategies: strategies ? strategiesWishOf(read, label, usage, note) : null, intervals, spray: spray ? frontOf(read) : null, form }, setting: read };
}

function formOf(form: string | undefined, out: string | undefined): Form {
  if (form === undefined) return out !== undefined && /\.parquet$/i.test(out) ? 'parquet' : 'csv';
  if (!(FORMS as readonly string[]).includes(form)) throw usage(tableCli.notAForm(form, FORMS));
  return form as Form;
}

const MOST_THREADS = 64;
/** More than a few have nothing to do: one thread reads and writes for all. */
const THREADS = 4;
function threadsOf(text: string | undefined): number {
  if (text === undefined) return Math.min(availableParallelism(), THREADS);
  const threads = Number(text);
  if (!/^\d+$/.test(text) || threads < 1 || threads > MOST_THREADS) throw usage(tableCli.notThreads(text, MOST_THREADS));
  return threads;
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

interface Job {
  readonly file: string;
  readonly work: Work;
  readonly setting: SettingRead | null;
  readonly sink: Sink;
  readonly threads: number;
}
type Chunks = AsyncIterable<Uint8Array>;

/** Converts, and writes what the table was made of and with. A table that is refused as a whole has no manifest. */
async function withManifest(path: string, job: Job, streams: Streams): Promise<Exit> {
  const { hashedFile, manifestText, nothingYet, noting, notingSink } = await import('../table/manifest.ts');
  const parquet = await isParquet(job.file);
  const [input, output] = [nothingYet(), nothingYet()];
  // A Parquet file is not read from its beginning to its end, so it is gone through once more.
  const before: Hashed | null = parquet ? await reading(job.file, () => hashedFile(job.file)) : null;
  const exit = await convert({ ...job, sink: notingSink(job.sink, output) }, streams, (chunks) => noting(chunks, input));
  if (output.bytes === 0) return exit;
  const to = fileSink(path);
  await to.write(manifestText({ input: before ?? input.end(), inputForm: parquet ? 'parquet' : 'csv', output: output.end(), setting: job.setting, work: job.work }));
  await to.close();
  return exit;
}

/** Without any of these there is nothing to make an interval of. */
const ERRORS: ReadonlySet<string> = new Set(['heightSeM', 'skirtSeM', 'widthSeM', 'rowSpacingSeM']);
const tellsErrors = ({ columns }: Header): boolean => columns.some((c) => typeof c !== 'string' && ERRORS.has(c.quantity));

async function convert({ file, work, sink, threads }: Job, { stdin, err }: Streams, through: (chunks: Chunks) => Chunks = (chunks) => chunks): Promise<Exit> {
  const { wanted } = work;
  return reading(file, async () => {
    const source: Source = (await isParquet(file)) ? await parquetSource(file, wanted.intervals !== null) : await textSource(through(chunksOf(file, stdin)));
    if ('refused' in source) {
      if (source.refused === 'encoding') throw new Stop(EXIT.unreadable, cli.unreadable(file, cli.why.encoding));
      if (source.refused === 'parquet-from-input') throw usage(tableCli.parquetFromInput);
      tell(source.refused, undefined, err);
      return EXIT.refused;
    }
    if (wanted.intervals && !tellsErrors(source.header)) {
      await source.close();
      throw usage(intervalCli.noErrors);
    }
    for (const note of await notesOn(wanted)) err(`${note}\n`);
    const writer = await writerOf(wanted.form, work.names, work.mayLack, sink);
    await writer.begin();
    let exit: Exit = EXIT.done;
    for await (const done of inOrder(source.pieces(work.size), work, threads)) {
      await writer.add(done);
      if (done.problems.length === 0) continue;
      exit = EXIT.refused;
      tell(done.problems, source.counted === 'rows' ? 'rows' : undefined, err);
    }
    await writer.end();
    await sink.close();
    return exit;
  });
}

const tell = (problems: readonly Told[], counted: 'rows' | undefined, err: (text: string) => void): void =>
  err(problems.map((p) => `${'text' in p ? `${placeInTable(p.line, counted)}, ${p.text}` : problemSentence(p)}\n`).join(''));

/** What must be said beside the figures. */
const notesOn = async ({ strategies, intervals, spray }: Wanted): Promise<string[]> => [
  ...(strategies ? [tableCli.strategiesNote] : []),
  ...(intervals ? [intervalCli.note] : []),
  ...(spray ? [(await import('#words/en/spray/cli.ts')).sprayCli.table.note] : [])
];

/** What the system refuses is told of the file that is read. */
async function reading<T>(file: string, act: () => Promise<T>): Promise<T> {
  try {
    return await act();
  } catch (error) {
    if (!isUnreadable(error)) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error)));
  }
}

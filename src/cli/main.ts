import { cli, USAGE } from '#words/en/cli.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from './exit.ts';

/** A verb is a file, loaded when it is called. */
const VERBS: Readonly<Record<string, () => Promise<{ readonly run: Verb }>>> = {
  advise: () => import('./verbs/advise.ts')
};

async function main(args: readonly string[], streams: Streams): Promise<Exit> {
  const [verb, ...rest] = args;
  if (verb === undefined || verb === '-h' || verb === '--help') {
    (verb === undefined ? streams.err : streams.out)(USAGE.main);
    return verb === undefined ? EXIT.usage : EXIT.done;
  }
  const load = Object.hasOwn(VERBS, verb) ? VERBS[verb] : undefined;
  try {
    if (!load) throw new Stop(EXIT.usage, `${cli.unknownVerb(verb, Object.keys(VERBS))}\n${cli.tryHelp()}`);
    return await (await load()).run(rest, streams);
  } catch (error) {
    if (!(error instanceof Stop)) throw error;
    streams.err(`${error.message}\n`);
    return error.exit;
  }
}

// A reader that closes early, such as head, has what it wanted.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(EXIT.done);
});
process.exitCode = await main(process.argv.slice(2), {
  stdin: process.stdin,
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text)
});

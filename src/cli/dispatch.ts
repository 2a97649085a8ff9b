import { cli, USAGE } from '#words/en/cli.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from './exit.ts';

/** A verb is a file, loaded when it is called. */
const VERBS: Readonly<Record<string, () => Promise<{ readonly run: Verb }>>> = {
  advise: () => import('./verbs/advise.ts'),
  loads: () => import('./verbs/loads.ts'),
  check: () => import('./verbs/check.ts'),
  fit: () => import('./verbs/fit.ts'),
  season: () => import('./verbs/season.ts'),
  strategies: () => import('./verbs/strategies.ts'),
  spray: () => import('./verbs/spray.ts'),
  laser: () => import('./verbs/laser.ts'),
  survey: () => import('./verbs/survey.ts'),
  table: () => import('./verbs/table.ts'),
  sql: () => import('./verbs/sql.ts')
};

/** Names come from files and arguments: what a terminal would obey, or what would turn the direction of a line, is shown by its code, which JSON reads as the character itself. */
const OBEYED = /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069]/g;
const printable = (text: string): string => text.replace(OBEYED, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** Runs the verb that is named first. Whatever the user did is told by the exit code; what throws is a programmer's error. */
export async function dispatch(args: readonly string[], given: Streams): Promise<Exit> {
  const streams: Streams = { stdin: given.stdin, out: (text) => given.out(printable(text)), err: (text) => given.err(printable(text)) };
  const [verb, ...rest] = args;
  if (verb === undefined) {
    streams.err(USAGE.main);
    return EXIT.usage;
  }
  if (verb === '-h' || verb === '--help') {
    streams.out(USAGE.main);
    return EXIT.done;
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

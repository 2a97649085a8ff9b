import { cli } from '#words/en/cli.ts';
import { dispatch } from './dispatch.ts';
import { EXIT } from './exit.ts';
import { whyUnwritable } from './table/sink.ts';

// A reader that closes early, such as head, has what it wanted.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(EXIT.done);
  process.stderr.write(`${cli.unwritable(cli.standardOutput, whyUnwritable(error))}\n`);
  process.exit(EXIT.unreadable);
});
// Nobody listens to the complaints any more: the work goes on.
process.stderr.on('error', () => undefined);
// The code is left for node to end with, so that what is still being written is written.
process.exitCode = await dispatch(process.argv.slice(2), {
  stdin: process.stdin,
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text)
});

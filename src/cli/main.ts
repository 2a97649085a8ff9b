import { dispatch } from './dispatch.ts';
import { EXIT } from './exit.ts';

// A reader that closes early, such as head, has what it wanted.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
  process.exit(EXIT.done);
});
// The code is left for node to end with, so that what is still being written is written.
process.exitCode = await dispatch(process.argv.slice(2), {
  stdin: process.stdin,
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text)
});

import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));

export interface Ended {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Starts the command from its sources, as users do. */
const SOURCES = ['--import', 'tsx', 'src/cli/main.ts'];
/** The command as `build-command.ts` made it before the tests; its sources where nobody did. */
const MADE = process.env['ROWTAILOR_MADE'];
const START = MADE ? [MADE] : SOURCES;

/** Runs the command line in a process of its own. */
export const rowtailor = (args: readonly string[], input: string | Uint8Array = ''): Promise<Ended> => run([...START, ...args], input);

/** The same from its sources. */
export const rowtailorFromSources = (args: readonly string[], input: string | Uint8Array = ''): Promise<Ended> => run([...SOURCES, ...args], input);

const run = (args: readonly string[], input: string | Uint8Array): Promise<Ended> =>
  new Promise((resolve) => {
    const child = execFile(process.execPath, args, { cwd: ROOT, maxBuffer: 1e9 }, (error, out, err) =>
      resolve({ code: error ? Number(error.code) : 0, out, err })
    );
    // A verb that stops before reading closes the pipe; that is its right.
    child.stdin?.on('error', () => {});
    child.stdin?.end(input);
  });

/** A line of shell with the command as `$ROWTAILOR`, for pipes and redirections. */
export const shell = (line: string): Promise<Ended> =>
  new Promise((resolve) => {
    const env = { ...process.env, ROWTAILOR: [process.execPath, ...START].join(' ') };
    execFile('bash', ['-o', 'pipefail', '-c', line], { cwd: ROOT, env, maxBuffer: 1e8 }, (error, out, err) => resolve({ code: error ? Number(error.code) : 0, out, err }));
  });

/** Lines of an output without quoted fields, as records by column. */
export function records(csv: string): Record<string, string>[] {
  const [head, ...lines] = csv.trimEnd().split('\n');
  const names = head!.split(',');
  return lines.map((line) => Object.fromEntries(line.split(',').map((v, i) => [names[i]!, v])));
}

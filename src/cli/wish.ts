import { parseArgs } from 'node:util';
import { isUnitSystem, type UnitSystem } from '#core/quantity/units.ts';
import { cli } from '#words/en/cli.ts';
import { EXIT, Stop } from './exit.ts';

/** What is asked of a verb that works out rungs of a document. */
export interface Wish {
  readonly file: string;
  readonly block: string | undefined;
  readonly rung: string | undefined;
  readonly system: UnitSystem;
  readonly json: boolean;
}

/** FILE [--block ID] [--rung ID] [--units SYSTEM] [--json]; null where it is help. Stops with `usage` at anything else. */
export function wished(verb: string, args: readonly string[]): Wish | null {
  const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp(verb)}`);
  const { values, positionals } = parsed(args, usage);
  if (values.help) return null;
  const [file, ...more] = positionals;
  if (file === undefined) throw usage(cli.noFile);
  if (more.length > 0) throw usage(cli.tooManyFiles(positionals.length));
  if (!isUnitSystem(values.units)) throw usage(cli.badUnits(values.units));
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

import { parseArgs } from 'node:util';
import { COLUMNS, ROW_RANGES } from '#job/csv/columns.ts';
import { readHeader, type Header } from '#job/csv/header.ts';
import { shortened } from '#job/problem.ts';
import { cli, USAGE } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { EXIT, Stop, type Verb } from '../exit.ts';
import { DIALECTS, isDialect } from '../sql/dialect.ts';
import { OWN, statement } from '../sql/statement.ts';

/** Every column in metres that figures are made of: the one of two units that comes first. */
const METRIC = ['block', ...[...COLUMNS].filter(([, c]) => c.unit !== 'ft' && c.quantity in ROW_RANGES).map(([name]) => name)].join(',');

/** Prints the table as a statement for a database; see `USAGE.sql`. */
export const run: Verb = async (args, { out }) => {
  const { values, positionals } = parsed(args);
  if (values.help) {
    out(USAGE.sql);
    return EXIT.done;
  }
  if (positionals.length > 0) throw usage(cli.sql.noFile(shortened(positionals[0]!)));
  const { dialect } = values;
  if (dialect === undefined) throw usage(cli.sql.noDialect(DIALECTS));
  if (!isDialect(dialect)) throw usage(cli.sql.badDialect(shortened(dialect), DIALECTS));
  out(statement({ dialect, from: relation(values.from), header: header(values.columns) }));
  return EXIT.done;
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('sql')}`);

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        dialect: { type: 'string' },
        from: { type: 'string', default: 'canopies' },
        columns: { type: 'string', default: METRIC },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
  } catch (error) {
    throw usage((error as Error).message);
  }
}

const LONGEST_PART = 128;
const MOST_PARTS = 3;

/** catalogue.schema.table, or the last of them alone. */
function relation(written: string): string[] {
  const parts = written.split('.');
  const good = parts.length <= MOST_PARTS && parts.every((p) => p.trim() !== '' && p.length <= LONGEST_PART && !/\p{C}/u.test(p));
  if (!good) throw usage(cli.sql.badFrom(shortened(written), MOST_PARTS, LONGEST_PART));
  if (parts.length === 1 && written.toLowerCase().startsWith(OWN)) throw usage(cli.sql.ownName(shortened(written), OWN));
  return parts;
}

/** The columns as the header of a file would have them. */
function header(written: string): Header {
  const read = readHeader(written.replace(/\s+/g, ' '), 1);
  if (!('columns' in read)) throw usage(cli.sql.badColumns(read.map(problemSentence)));
  return read;
}

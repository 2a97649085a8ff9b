import type { Header } from '#job/csv/header.ts';
import { cli } from '#words/en/cli.ts';
import { identifier, type Dialect } from './dialect.ts';
import { figures, type Item } from './figures.ts';
import { ALIAS, measured } from './measured.ts';

/** Names that the statement gives to its own steps begin so. */
export const OWN = 'rowtailor_';
const STEP = { measured: `${OWN}measured`, constants: `${OWN}constants`, figures: `${OWN}figures_` };

export interface Asked {
  readonly dialect: Dialect;
  /** Name of the relation, part by part: catalogue, schema, table. */
  readonly from: readonly string[];
  /** Its columns that are read. */
  readonly header: Header;
}

/** The table as one statement: quantities, constants, figures level by level, columns. */
export function statement({ dialect, from, header }: Asked): string {
  const { select, where } = measured(header, dialect);
  const { levels, outputs } = figures();
  const relation = `${from.map((part) => identifier(dialect, part)).join('.')} AS ${ALIAS}`;
  const steps = [step(STEP.measured, [`SELECT`, ...listed(select.map((text) => ({ text, note: '' }))), `FROM ${relation}`, `WHERE ${where.join('\n    AND ')}`])];
  let last = STEP.measured;
  levels.forEach((items, i) => {
    const name = i === 0 ? STEP.constants : `${STEP.figures}${i}`;
    steps.push(step(name, ['SELECT', ...listed([{ text: '*', note: '' }, ...items.map(item)]), `FROM ${last}`]));
    last = name;
  });
  return [
    ...cli.sql.head.map((line) => `-- ${line}`),
    `WITH ${steps.join(',\n')}`,
    'SELECT',
    ...listed([{ text: 'block', note: '' }, ...outputs.map(item)]),
    `FROM ${last};`,
    ''
  ].join('\n');
}

interface Listed {
  readonly text: string;
  readonly note: string;
}
const item = ({ name, sql, note }: Item): Listed => ({ text: `${sql} AS ${name}`, note });

/** A list with commas, a line an item, what is said of it behind it. */
const listed = (items: readonly Listed[]): string[] => items.map(({ text, note }, i) => `  ${text}${i < items.length - 1 ? ',' : ''}${note && ` -- ${note}`}`);

const step = (name: string, lines: readonly string[]): string => `${name} AS (\n${lines.map((l) => `  ${l}`).join('\n')}\n)`;

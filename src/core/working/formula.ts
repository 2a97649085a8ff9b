import type { SourceId } from '../sources/bibliography.ts';
import type { Unit } from '../quantity/units.ts';
import type { Certainty, Formula } from './answer.ts';

interface Options<K extends string> {
  readonly sources: readonly SourceId[];
  readonly certainty?: Certainty;
  readonly range?: NonNullable<Formula<K>['range']>;
  readonly published?: NonNullable<Formula<K>['published']>;
}

const registry = new Map<string, Formula>();

/**
 * Declares a formula: `id`, symbol and unit of the result, its arithmetic as text and as code, the unit of each input.
 * Text and code are held together by a test that evaluates the text with an independent parser.
 */
export function formula<K extends string>(
  id: string,
  symbol: string,
  unit: Unit,
  inputs: Readonly<Record<K, Unit>>,
  expression: string,
  compute: (v: Readonly<Record<K, number>>) => number,
  options: Options<K>
): Formula<K> {
  if (registry.has(id)) throw new Error(`two formulas are called ${id}`);
  const { certainty = 'published', ...rest } = options;
  const made: Formula<K> = { id, symbol, unit, inputs, expression, compute, certainty, ...rest };
  registry.set(id, made as unknown as Formula);
  return made;
}

/** Every formula that has been declared, by id. */
export const formulas = (): ReadonlyMap<string, Formula> => registry;

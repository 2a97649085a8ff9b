import type { Unit } from '../../quantity/units.ts';
import type { Document } from '../../setting/document.ts';
import type { Result } from '../../setting/result.ts';
import { isRefused, refused, type Refused } from '../../working/answer.ts';
import { rowsOn } from './rows.ts';
import { sceneOf } from './scene.ts';
import { Variable, variedOf, type Quantities } from './vary.ts';

/** What one input alone makes of a figure. */
export interface Bar {
  /** Path of the measurement in the document, or id of the assumption. */
  readonly id: string;
  readonly kind: 'measured' | 'assumed';
  /** Range of the input, in `unit`. */
  readonly from: number;
  readonly to: number;
  readonly unit: Unit;
  /** The figure at both ends of the range. */
  readonly atFrom: number;
  readonly atTo: number;
  /** The lesser and the greater of the two. */
  readonly low: number;
  readonly high: number;
}

export interface Tornado {
  readonly base: number;
  /** The longest first. */
  readonly bars: readonly Bar[];
}

/** Nothing that is measured can be less; a canopy of nothing is no canopy. */
const SMALLEST = 1e-6;

/**
 * One input at a time over its own range, the rest held: a measurement over its 95 % interval (as far as a canopy can measure so), an
 * assumption over its range of belief. Inputs without a range, and those that do not move the figure, have no bar. How height and width go together
 * is not in it. Refuses a row that is not there, and what the row itself refuses.
 */
export function tornado(document: Document, result: Result, rowId: string, quantity: Quantities): Tornado | Refused {
  const scene = sceneOf(document, result);
  const row = rowsOn(scene, result.canopy).find((r) => r.id === rowId);
  if (!row) return refused('unknown-strategy', 'strategy', { id: rowId });
  const answer = row[quantity];
  if (answer === null) return quantity === 'dose' ? refused('no-label-dose', 'label') : refused('strategy-without-water', 'ownWaterLPerHa', { strategy: row.id });
  if (isRefused(answer)) return answer;

  const { errors, figures } = result.canopy;
  const variable = new Variable(errors, true);
  const varied = variedOf(variable, [row], scene, result.canopy).find((v) => v.quantity === quantity);
  if (!varied) return { base: answer.value, bars: [] };
  const at = (leaf: (typeof variable.leaves)[number], value: number): number => {
    variable.set(leaf, value);
    variable.run();
    const figure = varied.value();
    variable.set(leaf, leaf.given.value);
    return figure;
  };
  const bars = variable.leaves.flatMap((leaf): Bar[] => {
    const { id, kind, given } = leaf;
    const half = kind === 'measured' ? errors.coverage * leaf.standardError : 0;
    const [least, most] = given === figures.Hs ? [0, figures.H.value - SMALLEST] : [given === figures.H ? figures.Hs.value + SMALLEST : SMALLEST, Infinity];
    const [from, to] = kind === 'measured' ? [Math.max(given.value - half, least), Math.min(given.value + half, most)] : [leaf.belief.low, leaf.belief.high];
    const [atFrom, atTo] = [at(leaf, from), at(leaf, to)];
    return atFrom === atTo || Number.isNaN(atFrom + atTo) ? [] : [{ id, kind, from, to, unit: given.unit, atFrom, atTo, low: Math.min(atFrom, atTo), high: Math.max(atFrom, atTo) }];
  });
  return { base: answer.value, bars: bars.toSorted((x, y) => y.high - y.low - (x.high - x.low)) };
}

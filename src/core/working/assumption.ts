import type { SourceId } from '../sources/bibliography.ts';
import type { Unit } from '../quantity/units.ts';
import { given, type Certainty, type Given } from './answer.ts';

/** A constant that rests on memory, habit or choice: shown, named, and the user's to change. */
export interface Assumption {
  readonly id: string;
  readonly value: number;
  readonly unit: Unit;
  readonly least: number;
  readonly most: number;
  readonly certainty: Certainty;
  readonly sources: readonly SourceId[];
}

/** The user's own values, by assumption id. */
export type AssumptionValues = Readonly<Record<string, number>>;

/** Hands out assumptions and keeps a list of those that were really used. */
export class Assumptions {
  readonly used = new Map<string, Given>();
  constructor(
    private readonly registry: ReadonlyMap<string, Assumption>,
    private readonly own: AssumptionValues = {}
  ) {}

  take(id: string): Given {
    const known = this.used.get(id);
    if (known) return known;
    const a = this.registry.get(id);
    if (!a) throw new Error(`no assumption is called ${id}`);
    const own = Object.hasOwn(this.own, id) ? this.own[id] : undefined;
    const usable = own !== undefined && own >= a.least && own <= a.most;
    const value = given(usable ? own : a.value, a.unit, usable ? 'stated' : a.certainty, {
      assumption: id,
      sources: a.sources
    });
    this.used.set(id, value);
    return value;
  }
}

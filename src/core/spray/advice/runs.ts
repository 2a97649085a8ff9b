import type { Setting } from '../../sprayer/types.ts';
import { variations } from '../band.ts';
import { transport } from '../transport.ts';
import type { Range, SprayCase } from '../types.ts';
import { Columns, type RayWeights, type Told } from './columns.ts';
import { caseOf, type Air, type Stand } from './stand.ts';
import { LEAST_GAIN, type Gain } from './types.ts';

const airKey = ({ gear, ptoRpm }: Air): string => `${gear}|${ptoRpm}`;

/** One setting with what the model says of it: as the constants stand, and with each of them at both ends of its plausible range. */
export interface Tried {
  readonly setting: Setting;
  readonly case: SprayCase;
  readonly told: Told;
  /** Variation by variation, low end and high end; filled by `vary`. */
  readonly ends: (readonly [Told, Told])[];
}

/** Settings tried: those of one air share its transport, and every setting is worked out once. */
export class Runs {
  private readonly byAir = new Map<string, Columns>();
  private readonly tried = new Map<string, Tried>();
  private readonly weights: RayWeights = new Map();
  constructor(private readonly stand: Stand) {}

  columnsOf(c: SprayCase, air: Air): Columns {
    const key = airKey(air);
    const known = this.byAir.get(key) ?? this.fly(c);
    this.byAir.set(key, known);
    return known;
  }
  private fly(c: SprayCase): Columns {
    return new Columns(c, transport(c), this.weights);
  }

  try(setting: Setting): Tried {
    const key = JSON.stringify({ ...setting, nozzles: setting.nozzles?.toSorted((a, b) => (a.position < b.position ? -1 : 1)) });
    const known = this.tried.get(key);
    if (known) return known;
    const c = caseOf(this.stand, setting);
    const one: Tried = { setting, case: c, told: this.columnsOf(c, setting).tell(c.nozzles), ends: [] };
    this.tried.set(key, one);
    return one;
  }

  /** Share of what is sprayed that stays at each height. */
  heights({ case: c, setting }: Tried): Float64Array {
    return this.columnsOf(c, setting).heights(c.nozzles);
  }

  /**
   * Runs the plausible ranges over these settings. Yields the share done; returns the assumptions that were run.
   * A variation is taken for all settings alike, so that its effect on a difference is what is left of it.
   */
  *vary(all: readonly Tried[]): Generator<number, readonly string[]> {
    const groups = new Map<string, { readonly one: Tried; readonly variations: ReturnType<typeof variations> }[]>();
    for (const one of new Set(all)) {
      const key = airKey(one.setting);
      groups.set(key, [...(groups.get(key) ?? []), { one, variations: variations(one.case) }]);
    }
    const names = [...groups.values()][0]?.[0]?.variations.map((v) => v.assumption) ?? [];
    for (let i = 0; i < names.length; i++) {
      for (const group of groups.values()) {
        const { one, variations: own } = group[0]!;
        const { ends, flies } = own[i]!;
        const known = this.columnsOf(one.case, one.setting);
        const [low, high] = ends.map((end) => (flies ? this.fly(end) : known.with(end))) as [Columns, Columns];
        for (const each of group) {
          const [a, b] = each.variations[i]!.ends;
          each.one.ends.push([low.tell(a.nozzles), high.tell(b.nozzles)]);
        }
      }
      yield (i + 1) / names.length;
    }
    return names;
  }
}

/**
 * Change of one figure from one setting to another, positive where it is better. Its range: the same constants on both settings, each plausible range run
 * alone at both ends, differences of the change joined by the root of their squares, up and down apart.
 */
export function gain(from: Tried, to: Tried, goodness: (t: Told) => number): Gain {
  const value = goodness(to.told) - goodness(from.told);
  let up = 0;
  let down = 0;
  to.ends.forEach((ends, i) => {
    const off = ends.map((end, k) => goodness(end) - goodness(from.ends[i]![k]!) - value);
    up += Math.max(0, ...off) ** 2;
    down += Math.min(0, ...off) ** 2;
  });
  const range: Range = [value - Math.sqrt(down), value + Math.sqrt(up)];
  return { value, range, clear: Math.abs(value) >= LEAST_GAIN && (range[0] > 0 || range[1] < 0) };
}

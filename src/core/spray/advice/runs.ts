import type { Setting } from '../../sprayer/types.ts';
import { balance } from '../balance.ts';
import { variations } from '../band.ts';
import { transport, type Transport } from '../transport.ts';
import type { Range, SprayBalance } from '../types.ts';
import { caseOf, type Stand } from './stand.ts';
import { LEAST_GAIN, type Gain } from './types.ts';

/** What a run says of a setting. */
export interface Told {
  readonly onTrees: number;
  readonly lost: number;
  readonly cv: number | null;
}
const toldOf = ({ onTrees, lost, cv }: SprayBalance): Told => ({ onTrees, lost, cv });

const airKey = ({ gear, ptoRpm }: Setting): string => `${gear}|${ptoRpm}`;

/** One setting with what the model says of it: as the constants stand, and with each of them at both ends of its plausible range. */
export interface Tried {
  readonly setting: Setting;
  readonly balance: SprayBalance;
  /** Variation by variation, low end and high end; filled by `vary`. */
  readonly ends: (readonly [Told, Told])[];
}

/** Balances of many settings: those of one air share its transport, and every setting is worked out once. */
export class Runs {
  private readonly transports = new Map<string, Transport>();
  private readonly tried = new Map<string, Tried>();
  constructor(private readonly stand: Stand) {}

  transportOf(setting: Setting): Transport {
    const key = airKey(setting);
    const known = this.transports.get(key) ?? transport(caseOf(this.stand, setting));
    this.transports.set(key, known);
    return known;
  }

  try(setting: Setting): Tried {
    const key = JSON.stringify({ ...setting, nozzles: setting.nozzles?.toSorted((a, b) => (a.position < b.position ? -1 : 1)) });
    const known = this.tried.get(key);
    if (known) return known;
    const one: Tried = { setting, balance: balance(caseOf(this.stand, setting), this.transportOf(setting)), ends: [] };
    this.tried.set(key, one);
    return one;
  }

  /**
   * Runs the plausible ranges over everything tried since. Yields the share done; returns the assumptions that were run.
   * A variation is taken for all settings alike, so that its effect on a difference is what is left of it.
   */
  *vary(all: readonly Tried[]): Generator<number, readonly string[]> {
    const byAir = new Map<string, Tried[]>();
    for (const one of new Set(all)) byAir.set(airKey(one.setting), [...(byAir.get(airKey(one.setting)) ?? []), one]);
    const groups = [...byAir.values()].map((group) => group.map((one) => ({ one, variations: variations(caseOf(this.stand, one.setting)) })));
    const names = groups[0]?.[0]?.variations.map((v) => v.assumption) ?? [];
    for (let i = 0; i < names.length; i++) {
      for (const group of groups) {
        const first = group[0]!.variations[i]!;
        const [low, high] = first.ends.map((end) => (first.flies ? transport(end) : this.transportOf(group[0]!.one.setting))) as [Transport, Transport];
        for (const { one, variations: own } of group) {
          const [a, b] = own[i]!.ends;
          one.ends.push([toldOf(balance(a, low)), toldOf(balance(b, high))]);
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
  const value = goodness(to.balance) - goodness(from.balance);
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

import { APPLICATION_VOLUME } from '../../sprayer/volume.ts';
import { isWater } from '../../dose/water.ts';
import { valueOf } from '../../working/answer.ts';
import { ceilBar, floorBar, type Drops } from './drops.ts';
import type { Stand } from './stand.ts';

/** Litres that a plan may bring. */
export interface Litres {
  readonly least: number;
  readonly most: number;
}

/** Within 5 % of the wanted water the litres are on target: the same bound that the advice on water goes by. */
const ON_TARGET = 0.05;
/** Speed is for moderate changes: the model does not see what travel speed does, so it is not moved farther than this. */
const MOST_SPEED_CHANGE = 0.25;
/** A speed that is less faster than this is the same. */
const SAME_SPEED = 0.03;
/** Pressure is for fine corrections of flow. */
const FINE = 0.1;
const SPEED_STEP_KMH = 0.1;

/**
 * Never more than today; never below the label's least, nor stronger than its strongest mix; the wanted water within its tolerance, unless today's is less
 * anyway. Where no water is wanted, today's is.
 */
export function litresOf({ result }: Stand, todayLPerHa: number): Litres {
  const label = result.product?.label;
  const wanted = result.water.wanted;
  const dilute = valueOf(result.strategy.dilute);
  const strongest = label?.maxConcentration !== undefined && dilute !== undefined ? dilute / label.maxConcentration : 0;
  const enough = isWater(wanted) ? Math.min(todayLPerHa, wanted.value * (1 - ON_TARGET)) : todayLPerHa * (1 - ON_TARGET);
  return { least: Math.max(label?.minWaterLPerHa ?? 0, strongest, enough), most: Math.min(todayLPerHa, label?.maxWaterLPerHa ?? Infinity) };
}

/** How a flow is brought to the litres. */
export interface Drive {
  readonly speedKmH: number;
  readonly pressureBar: number;
}

export type Driver = (flowLPerMin: number, drops: Drops, airFactor: number) => readonly Drive[];

/**
 * Ways to drive a flow, the one nearest to today's first: today's speed and the pressure of the drops; else the pressure trimmed while the classes stay;
 * else another speed. Then, where litres and air allow it, faster. A higher speed never takes the air below what the alley rule allows: the model
 * does not see travel speed, so the rule decides. None where no way keeps the limits.
 */
export function driverOf(stand: Stand, litres: Litres): Driver {
  const { machine, setting, air, assumptions } = stand.result;
  const tolerance = assumptions.get('air.tolerance')!.value;
  const least = Math.max(machine.speedMinKmH, setting.speedKmH * (1 - MOST_SPEED_CHANGE));
  const most = Math.min(machine.speedMaxKmH, setting.speedKmH * (1 + MOST_SPEED_CHANGE));
  const speed = Math.min(Math.max(setting.speedKmH, machine.speedMinKmH), machine.speedMaxKmH);
  const volume = (Q: number, v: number): number => APPLICATION_VOLUME.compute({ Q, v, B: stand.widthM });
  const fits = (V: number): boolean => V >= litres.least * (1 - SAME) && V <= litres.most * (1 + SAME);
  const speedFor = (Q: number, V: number): number => (600 * Q) / (V * stand.widthM);

  return (flow, drops, factor) => {
    if (!(flow > 0) || litres.least > litres.most * (1 + SAME)) return [];
    const slowest = speedFor(flow, litres.most);
    const fastest = Math.min(most, speedFor(flow, litres.least), fastestForAir(factor));
    const drives: Drive[] = [];
    const V = volume(flow, speed);
    if (fits(V)) drives.push({ speedKmH: speed, pressureBar: drops.pressureBar });
    else {
      const trimmed = trim(V, drops);
      if (trimmed !== null) drives.push({ speedKmH: speed, pressureBar: trimmed });
      else if (V < litres.least) {
        const v = floorSpeed(speedFor(flow, litres.least));
        if (v >= least && v >= slowest * (1 - SAME)) drives.push({ speedKmH: v, pressureBar: drops.pressureBar });
      }
    }
    const fast = floorSpeed(fastest);
    if (fast >= speed * (1 + SAME_SPEED) && fast >= slowest * (1 - SAME)) drives.push({ speedKmH: fast, pressureBar: drops.pressureBar });
    return drives;
  };

  function fastestForAir(factor: number): number {
    return air.ratio === undefined ? speed : (setting.speedKmH * air.ratio * factor) / (1 - tolerance);
  }
  /** By the square law; tables of several pressures bend it a little, which the proof of a plan sees. */
  function trim(V: number, { pressureBar, leastBar, mostBar }: Drops): number | null {
    const wanted = V < litres.least ? litres.least : litres.most;
    if (Math.abs(wanted / V - 1) > FINE) return null;
    const bar = pressureBar * (wanted / V) ** 2;
    const set = V < litres.least ? ceilBar(bar) : floorBar(bar);
    return set >= leastBar && set <= mostBar && fits(V * Math.sqrt(set / pressureBar)) ? set : null;
  }
}

const SAME = 1e-9;
const floorSpeed = (v: number): number => Math.round(Math.floor(v / SPEED_STEP_KMH + 1e-9) * SPEED_STEP_KMH * 1000) / 1000;

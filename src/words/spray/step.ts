import type { Parameter } from '#core/advice/finding.ts';
import type { Change, Gains } from '#core/spray/advice/types.ts';
import type { DropletClass } from '#core/sprayer/types.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { CHANGES, EFFECTS, PRESSURE_DROPS } from '../en/spray/advice.ts';
import { fill, type Values } from '../fill.ts';
import { formatNumber, formatShare } from '../format.ts';
import { list } from '../names.ts';
import { dropletWord } from '../naming.ts';

/** A work rate that differs by less is the same. */
const SAME_RATE = 0.005;

/** What a change or a whole plan does, by the objectives in which it clearly does something; a work rate is arithmetic and needs no model. */
export function effectPhrases(g: Gains): readonly string[] {
  const out: string[] = [];
  const say = (words: { readonly more: string; readonly less: string }, better: boolean, values: Values = {}) => out.push(fill(better ? words.more : words.less, values, 'metric'));
  if (g.onTrees.clear) say(EFFECTS.onTrees, g.onTrees.value > 0, { share: formatShare(Math.abs(g.onTreesRelative)) });
  if (g.lost.clear) say(EFFECTS.lost, g.lost.value > 0, { points: formatNumber(Math.abs(g.lost.value) * 100, 0) });
  if (g.evenness?.clear) say(EFFECTS.evenness, g.evenness.value > 0);
  if (Math.abs(g.workRateRelative) > SAME_RATE) say(EFFECTS.workRate, g.workRateRelative > 0, { share: formatShare(Math.abs(g.workRateRelative)) });
  return out.length > 0 ? out : [EFFECTS.none];
}

/** One step in one line: “Shutting L7 and R7 puts 9 % more of what is sprayed on the trees.” */
export const stepSentence = (change: Change, gains: Gains, gearName: (id: string) => string, system: UnitSystem): string => `${changePhrase(change, gearName, system)} ${list(effectPhrases(gains))}.`;

export function changePhrase(change: Change, gearName: (id: string) => string, system: UnitSystem): string {
  const text = fill(CHANGES[change.code], valuesOf(change, gearName), system);
  if (change.code !== 'pressure') return text;
  const [fromClass, toClass] = [classes(change.fromClasses), classes(change.toClasses)];
  return fromClass === toClass ? text : text + fill(PRESSURE_DROPS, { fromClass, toClass }, system);
}

const classes = (all: readonly DropletClass[]): string => list(all.map(dropletWord));

function valuesOf(c: Change, gearName: (id: string) => string): Values {
  const amount = (value: number, unit: 'bar' | 'rpm' | 'km/h' | 'deg'): Parameter => ({ value, unit });
  switch (c.code) {
    case 'shut':
    case 'open':
      return { nozzles: c.nozzles };
    case 'swivel':
      return { nozzles: c.nozzles, turn: amount(c.toDeg - c.fromDeg, 'deg') };
    case 'size':
      return { nozzles: c.nozzles, from: c.from, to: c.to, fromClass: dropletWord(c.fromClass), toClass: dropletWord(c.toClass) };
    case 'pressure':
      return { from: amount(c.fromBar, 'bar'), to: amount(c.toBar, 'bar') };
    case 'gear':
      return { from: gearName(c.from), to: gearName(c.to) };
    case 'pto':
      return { from: amount(c.fromRpm, 'rpm'), to: amount(c.toRpm, 'rpm') };
    case 'gear-and-pto':
      return { from: gearName(c.from), to: gearName(c.to), rpm: amount(c.toRpm, 'rpm'), fromRpm: amount(c.fromRpm, 'rpm') };
    case 'speed':
      return { from: amount(c.fromKmH, 'km/h'), to: amount(c.toKmH, 'km/h') };
  }
}

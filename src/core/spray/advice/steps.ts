import { finding, share, type Finding } from '../../advice/finding.ts';
import type { Setting } from '../../sprayer/types.ts';
import { airChanges } from './airs.ts';
import { changed } from './changes.ts';
import { placeChanges, type Place } from './places.ts';
import { gain, type Tried } from './runs.ts';
import { airFactor, caseOf, classesOf, type Stand } from './stand.ts';
import type { Change, Gains, Step } from './types.ts';
import type { Candidate } from './walk.ts';

/** How a plan's nozzle changes are put in order: what a setting is worth while it is on the way. */
export type Worth = (choices: readonly number[]) => number;

/**
 * The single changes of a plan in the order in which they are shown: nozzles, the one that brings most first; then drops; then air; then speed.
 * Nozzles stand first so that their gain is told at the air that the operator knows.
 */
export function changesOf(stand: Stand, places: readonly Place[], { choices, drops, drive, air }: Candidate, worth: Worth): Change[] {
  const today = stand.result.setting;
  const out: Change[] = [];
  let at: readonly number[] = places.map((p) => p.present);
  for (;;) {
    const open = places.flatMap((_, i) => (at[i] === choices[i] ? [] : [i]));
    if (open.length === 0) break;
    const next = open.map((i) => ({ i, worth: worth(at.with(i, choices[i]!)) })).reduce((a, b) => (b.worth > a.worth + 1e-12 ? b : a)).i;
    out.push(...placeChanges(places[next]!, choices[next]!));
    at = at.with(next, choices[next]!);
  }
  out.push(...drops.sizes);
  if (drive.pressureBar !== today.pressureBar) {
    const before = out.reduce(changed, today);
    const classes = (setting: Setting) => classesOf(caseOf(stand, setting));
    out.push({
      code: 'pressure',
      fromBar: today.pressureBar,
      toBar: drive.pressureBar,
      fromClasses: classes(before),
      toClasses: classes({ ...before, pressureBar: drive.pressureBar })
    });
  }
  out.push(...airChanges(today, air));
  if (drive.speedKmH !== today.speedKmH) out.push({ code: 'speed', fromKmH: today.speedKmH, toKmH: drive.speedKmH });
  return out;
}

/** Today's setting, then after each change. */
export const settingsAlong = (today: Setting, changes: readonly Change[]): Setting[] => changes.reduce<Setting[]>((all, c) => [...all, changed(all.at(-1)!, c)], [today]);

export function gains(from: Tried, to: Tried): Gains {
  const [a, b] = [from.told, to.told];
  return {
    onTrees: gain(from, to, (t) => t.onTrees),
    lost: gain(from, to, (t) => -t.lost),
    evenness: a.cv === null || b.cv === null ? null : gain(from, to, (t) => -(t.cv ?? 0)),
    onTreesRelative: a.onTrees > 0 ? b.onTrees / a.onTrees - 1 : 0,
    workRateRelative: to.setting.speedKmH / from.setting.speedKmH - 1,
    volumeLPerHa: to.case.volumeLPerHa - from.case.volumeLPerHa
  };
}

/** Something is clearly better. */
export const isClear = ({ onTrees, lost, evenness }: Gains): boolean => [onTrees, lost, evenness].some((g) => g !== null && g.clear && g.value > 0);

export function stepsOf(stand: Stand, changes: readonly Change[], along: readonly Tried[]): Step[] {
  return changes.map((change, i): Step => {
    const [from, to] = [along[i]!, along[i + 1]!];
    const own = gains(from, to);
    return { change, gains: own, clear: isClear(own), remarks: stepRemarks(stand, change, from.setting, to.setting, to.case.volumeLPerHa, own) };
  });
}

function stepRemarks(stand: Stand, change: Change, from: Setting, to: Setting, litres: number, { lost }: Gains): Finding[] {
  switch (change.code) {
    case 'gear':
    case 'pto':
    case 'gear-and-pto': {
      const less = airFactor(stand, to) < airFactor(stand, from);
      return [
        ...(less && lost.value > 0 ? [finding('spray-advice-understated', 'note', {}, ['cross-2003'])] : []),
        ...(from.ptoRpm === to.ptoRpm ? [] : [finding('spray-advice-check-pressure', 'note', { pressure: { value: to.pressureBar, unit: 'bar' } }, ['fan-laws'])])
      ];
    }
    case 'pressure':
      return change.fromClasses.join() === change.toClasses.join() ? [finding('spray-advice-holds-litres', 'note', { litres: { value: litres, unit: 'L/ha' } }, ['sqrt-law'])] : [];
    case 'speed':
      if (to.speedKmH < from.speedKmH) return [finding('spray-advice-holds-litres', 'note', { litres: { value: litres, unit: 'L/ha' } }, ['arithmetic'])];
      return to.speedKmH > from.speedKmH ? [finding('spray-advice-speed-unseen', 'note', { air: share(1 - from.speedKmH / to.speedKmH) }, ['arithmetic'])] : [];
    default:
      return [];
  }
}

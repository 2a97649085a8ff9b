import { DROPLET_CLASSES } from '../sprayer/types.ts';
import type { Result } from '../setting/result.ts';
import { isEarly } from '../canopy/growth.ts';
import { isWater } from '../dose/water.ts';
import { isRefused, valueOf } from '../working/answer.ts';
import { amount, finding, share, type Finding } from './finding.ts';

/** Water and product against the wanted and against the label. */
export function doseFindings(result: Result): Finding[] {
  const { water, product, sprayer, strategy, canopy, pattern } = result;
  const out: Finding[] = [];
  const volume = sprayer.volume;
  if (!isWater(water.wanted)) out.push(finding('no-wanted-water', 'note', { strategy: strategy.strategy.id }, [], 'ownWaterLPerHa'));
  else if (!isRefused(volume)) {
    const off = volume.value / water.wanted.value - 1;
    // Published: adjust when more than 5 % apart; from 10 % on other nozzles are due.
    if (Math.abs(off) > 0.05)
      out.push(finding(off > 0 ? 'volume-above-wanted' : 'volume-below-wanted', Math.abs(off) > 0.1 ? 'warn' : 'note', { volume: amount(volume), wanted: amount(water.wanted), off: share(Math.abs(off)) }, ['ozkan-2021', 'texas-worksheet']));
    else out.push(finding('volume-on-target', 'good', { volume: amount(volume), wanted: amount(water.wanted) }, ['ozkan-2021']));
  }
  const little = result.assumptions.get('water.little');
  if (little && isWater(water.wanted) && water.wanted.value < little.value) out.push(finding('little-water', 'warn', { wanted: amount(water.wanted), least: amount(little) }, ['habit'], 'strategy'));
  const { concentration, ownWaterLPerHa } = result.block;
  if (concentration !== undefined && concentration !== 1 && (strategy.strategy.waterKind !== 'dilute' || ownWaterLPerHa !== undefined))
    out.push(finding('concentration-ignored', 'note', { strategy: strategy.strategy.id }, [], 'concentration'));
  if (pattern.kind === 'alternate-alleys') out.push(finding('far-face-under-dosed', 'warn', {}, ['habit'], 'pattern'));
  if (isEarly(canopy.bbch) && strategy.strategy.validity.includes('early-rate-disputed')) out.push(finding('early-rate', 'note', {}, ['rutgers-1998', 'sutton-unrath-1988']));
  if (!isRefused(strategy.index) && strategy.index.kind === 'figure' && strategy.index.extrapolated) out.push(finding('strategy-extrapolated', 'note', { strategy: strategy.strategy.id }, strategy.strategy.sources));
  if (water.acts.includes('raised-to-label-minimum-water')) out.push(finding('label-minimum-water-acts', 'note', { free: amount(water.free), wanted: amount(water.wanted) }, ['waac-concentration']));
  if (water.acts.includes('capped-at-label-maximum-water')) out.push(finding('label-maximum-water-acts', 'note', { free: amount(water.free), wanted: amount(water.wanted) }));

  if (!product) return [...out, finding('no-label', 'note', {}, [], 'label')];
  const { label } = product;
  const v = valueOf(volume);
  if (v !== undefined && label.minWaterLPerHa !== undefined && v < label.minWaterLPerHa * (1 - 1e-9))
    out.push(finding('below-label-water', 'stop', { volume: amount(volume), least: { value: label.minWaterLPerHa, unit: 'L/ha' } }, ['waac-concentration'], 'setting'));
  if (v !== undefined && label.maxWaterLPerHa !== undefined && v > label.maxWaterLPerHa * (1 + 1e-9))
    out.push(finding('above-label-water', 'stop', { volume: amount(volume), most: { value: label.maxWaterLPerHa, unit: 'L/ha' } }, [], 'setting'));
  const cf = valueOf(product.concentration);
  if (cf !== undefined && label.maxConcentration !== undefined && cf > label.maxConcentration * (1 + 1e-9))
    out.push(finding('too-concentrated', 'stop', { factor: amount(product.concentration), most: { value: label.maxConcentration, unit: '1' } }, ['waac-concentration'], 'setting'));
  if (cf !== undefined && cf < 0.95) out.push(finding('beyond-run-off', 'warn', { volume: amount(volume) }, ['furness-thompson']));
  if (isRefused(product.perHa)) out.push(finding('no-dose', 'stop', { reason: product.perHa.code }, [], 'strategy'));
  if (product.acts.includes('capped-at-label-maximum')) out.push(finding('label-maximum-acts', 'note', { dose: amount(product.perHa) }));
  if (product.acts.includes('floored')) out.push(finding('floor-acts', 'note', { dose: amount(product.perHa) }, ['sutton-unrath-1984'], 'label.floor'));
  if (product.acts.includes('not-above-label')) out.push(finding('not-above-label', 'note', { dose: amount(product.perHa) }));
  if (product.acts.includes('scaled-to-canopy')) out.push(finding('dose-follows-canopy', 'note', { dose: amount(product.perHa), label: amount(product.labelDose) }, strategy.strategy.sources));
  const [adapted, printed] = [valueOf(product.perHa), valueOf(product.labelDose)];
  if (adapted !== undefined && printed !== undefined && adapted < printed / 2 && (product.acts.includes('scaled-to-canopy') || product.acts.includes('floored')))
    out.push(finding('far-below-label', 'warn', { dose: amount(product.perHa), label: amount(product.labelDose) }, ['sutton-unrath-1984'], 'label.floor'));
  const index = valueOf(strategy.index);
  if (product.acts.includes('label-dose-kept') && index !== undefined && Math.abs(index - 1) > 0.1)
    out.push(finding('label-dose-kept', 'note', { index: share(index) }, strategy.strategy.sources, 'label.adaptation'));
  if (label.finestClass) {
    const finest = DROPLET_CLASSES.indexOf(label.finestClass);
    const finer = sprayer.nozzles.filter((n) => n.spraying && n.droplets !== undefined && DROPLET_CLASSES.indexOf(n.droplets) < finest);
    if (finer.length > 0) out.push(finding('droplets-too-fine', 'stop', { nozzles: finer.map((n) => n.position.id), class: label.finestClass }, [], 'label.finestClass'));
  }
  return out;
}

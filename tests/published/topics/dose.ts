import { inUnit, job, type Call } from '../../support/published.ts';
import { refused } from '#core/working/answer.ts';

const none = refused('absent', '');

export const dose: Record<string, Call> = {
  water: (i) => job(i).strategy.water ?? none,
  dilute: (i) => job(i).strategy.dilute ?? none,
  wanted: (i) => job(i).water.wanted,
  index: (i) => job(i).strategy.index,
  per_ha: (i) => job(i).product?.perHa ?? none,
  label_dose: (i) => job(i).product?.labelDose ?? none,
  concentration: (i) => job(i).product?.concentration ?? none,
  strength: (i) => job(i).product?.strength ?? none,
  per_tank: (i) => job(i).product?.perTank ?? none,
  volume: (i) => job(i).sprayer.volume,
  per_100_m: (i) => job(i).sprayer.per100m,
  same_mix_kept: (i) => job(i).options.find((o) => o.against === 'wanted')?.rows[0]?.sameMix ?? none,
  capped: (i) => Number(job(i).product?.acts.includes('capped-at-label-maximum')),
  floored: (i) => Number(job(i).product?.acts.includes('floored')),
  /** Product of a day: mix of one hectare times the area. */
  product_for_52_5_gal: (i) => inUnit(job(i).product?.strength ?? none, 'lb/100gal') * 0.525
};

import { type Answer } from '../working/answer.ts';
import { derive, NOT_NEGATIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';

const FROM_ACTIVE = formula('product-from-active', 'D', 'kg/ha', { Da: 'kg/ha', c: '%' }, '100 * Da / c', (v) => (100 * v.Da) / v.c, {
  sources: ['pesticide-handbook'],
  range: { Da: NOT_NEGATIVE, c: [0.001, 100] }
});

/**
 * Product per hectare where a rate of active ingredient is given.
 * @param active kg of active ingredient per hectare
 * @param percent of active ingredient in the product, by weight
 */
export const productFromActive = (active: Answer, percent: Answer): Answer => derive(FROM_ACTIVE, { Da: active, c: percent });

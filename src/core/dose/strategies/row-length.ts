import { formula } from '../../working/formula.ts';
import { POSITIVE } from '../../working/figure.ts';
import { REFERENCE_SPACING } from '../reference.ts';
import type { Strategy } from '../strategy.ts';

/** The same on every metre of row. */
export const ROW_LENGTH: Strategy = {
  id: 'row-length',
  descriptor: 'RL',
  height: 'none',
  width: 'none',
  index: formula('row-length-index', 'I', '1', { RL: 'm/ha', R0: 'm' }, 'RL * R0 / 10000', (v) => (v.RL * v.R0) / 10000, {
    sources: ['walklate-2003'],
    certainty: 'derived',
    range: { RL: POSITIVE, R0: POSITIVE }
  }),
  constants: { R0: REFERENCE_SPACING },
  validity: ['blind-to-height-and-width'],
  sources: ['walklate-2003']
};

import { finiteError, studentT, treesNeeded } from '#core/canopy/survey.ts';
import { need, type Call } from '../../support/published.ts';

export const survey: Record<string, Call> = {
  trees: (i) => treesNeeded(need(i, 'cv') / 100, need(i, 'error') / 100),
  student_t: (i) => studentT(i.level as number, i.nu as number),
  finite_error: (i) => finiteError(i.se as number, i.n as number, i.N as number)
};

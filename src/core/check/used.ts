import { amount, finding, share, type Finding } from '../advice/finding.ts';
import type { Result } from '../setting/result.ts';
import { given, isRefused, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { LITRES_FOR_AREA, USED_OFF } from './formulas.ts';
import type { UsedState } from './state.ts';
import { suspicions } from './suspects.ts';

/**
 * Litres that were really used on the area against those that the measured volume (or, unmeasured, the setting's) says: the best single
 * cross-check of all. Null where nobody wrote the litres or no area is known.
 */
export function usedState({ block, rung, sprayer }: Result, measured: Answer, assumptions: Assumptions): UsedState | null {
  const litres = rung.mix?.usedL;
  const area = rung.mix?.areaHa ?? block.areaHa;
  if (litres === undefined || area === undefined) return null;
  const V = isRefused(measured) ? sprayer.volume : measured;
  const used = given(litres, 'L', 'measured', { path: 'mix.usedL' });
  const predicted = derive(LITRES_FOR_AREA, { A: given(area, 'ha', 'stated', { path: rung.mix?.areaHa === undefined ? 'areaHa' : 'mix.areaHa' }), V });
  const off = derive(USED_OFF, { U: used, Up: predicted });
  return { used, predicted, off, findings: judge(used, predicted, off, assumptions) };
}

function judge(used: Answer, predicted: Answer, off: Answer, assumptions: Assumptions): Finding[] {
  const alarm = assumptions.take('check.used-alarm').value;
  const stop = assumptions.take('check.used-stop').value;
  if (isRefused(off)) return [];
  const size = Math.abs(off.value);
  const p = { used: amount(used), predicted: amount(predicted), off: share(size / 100) };
  if (size <= alarm) return [finding('check-used-fits', 'good', p, ['habit'], 'mix.usedL')];
  const found = size > stop ? finding('check-used-stop', 'stop', p, ['habit'], 'mix.usedL') : finding('check-used-alarm', 'warn', p, ['habit'], 'mix.usedL');
  return [found, ...suspicions([{ of: 'litres', path: 'mix.usedL', found: used, expected: predicted }])];
}

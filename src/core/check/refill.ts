import type { SprayerState } from '../sprayer/sprayer.ts';
import { FLOW_FOR_VOLUME, type Pass } from '../sprayer/volume.ts';
import { given, isRefused, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { COURSE_ERROR, COURSE_LENGTH, COURSE_VOLUME, JUG_ERROR, JUG_FLOW, REFILL_TIME, VOLUME_ERROR } from './formulas.ts';
import { measured, noOutput, unmeasured } from './measured.ts';
import type { Measured, RefillState } from './state.ts';
import type { Round } from './types.ts';

/**
 * Output by what refills the tank to its mark, with what jug and watch leave, and how long to spray so that they leave little.
 * A course tells the volume without any speed; its flow needs the speed that was measured.
 */
export function refillState({ refill }: Round, sprayer: SprayerState, speed: Measured, pass: Pass, assumptions: Assumptions): RefillState {
  const own = (value: number | undefined, unit: 'L' | 's', path: string, id: string): Answer => (value === undefined ? assumptions.take(id) : given(value, unit, 'stated', { path }));
  const litres = refill?.litres === undefined ? null : given(refill.litres, 'L', 'measured', { path: 'check.refill.litres' });
  const u = own(refill?.litresErrorL, 'L', 'check.refill.litresErrorL', 'check.refill-litres');
  const E = assumptions.take('check.refill-wanted');
  const enough = (error: Answer): boolean | null => (isRefused(error) ? null : error.value <= E.value * (1 + 1e-9));

  if (refill?.kind === 'course') {
    const volume =
      litres && refill.distanceM !== undefined
        ? measured(derive(COURSE_VOLUME, { U: litres, D: given(refill.distanceM, 'm', 'measured', { path: 'check.refill.distanceM' }), B: pass.width }), derive(COURSE_ERROR, { u, U: litres }))
        : unmeasured(noOutput());
    const flow = isRefused(volume.value)
      ? volume
      : measured(derive(FLOW_FOR_VOLUME, { V: volume.value, v: speed.value, B: pass.width }), derive(VOLUME_ERROR, { EQ: volume.error, Ev: speed.error }));
    const V = isRefused(volume.value) ? sprayer.volume : volume.value;
    return { refill, flow, volume, closeness: E, longEnough: derive(COURSE_LENGTH, { u, E, V, B: pass.width }), isLongEnough: enough(volume.error) };
  }

  const w = own(refill?.secondsError, 's', 'check.refill.secondsError', 'check.refill-seconds');
  const t = refill?.seconds === undefined ? null : given(refill.seconds, 's', 'measured', { path: 'check.refill.seconds' });
  const flow = litres && t ? measured(derive(JUG_FLOW, { U: litres, t }), derive(JUG_ERROR, { u, U: litres, w, t })) : unmeasured(noOutput());
  const Q = isRefused(flow.value) ? sprayer.flow : flow.value;
  return { refill: refill ?? null, flow, volume: null, closeness: E, longEnough: derive(REFILL_TIME, { E, u, Q, w }), isLongEnough: enough(flow.error) };
}

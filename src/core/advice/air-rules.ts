import { isRefused } from '../working/answer.ts';
import type { Result } from '../setting/result.ts';
import { amount, finding, share, type Finding } from './finding.ts';

/** Air given against air needed; every line ends at the ribbon, which is the judge. */
export function airFindings({ air, assumptions, machine, setting }: Result): Finding[] {
  if (isRefused(air.given)) return [finding('gear-unknown', 'stop', { gear: setting.gear }, [], 'setting.gear')];
  if (air.ratio === undefined) return [];
  const out: Finding[] = [];
  const tolerance = assumptions.get('air.tolerance')?.value ?? 0.15;
  const p = { given: amount(air.given), needed: amount(air.needed), off: share(Math.abs(air.ratio - 1)) };
  if (air.ratio < 1 - tolerance) out.push(finding('air-short', 'warn', p, ['landers-air', 'ucce-airblast'], 'setting.gear'));
  else if (air.ratio > 1 + tolerance) out.push(finding('air-too-much', 'warn', p, ['landers-air', 'ucce-airblast'], 'setting.gear'));
  else out.push(finding('air-matched', 'good', p, ['landers-air', 'ucce-airblast']));
  const rpm = (value: number) => ({ value, unit: 'rpm' as const });
  if (setting.ptoRpm < machine.ptoMinRpm || setting.ptoRpm > machine.ptoMaxRpm)
    out.push(finding('pto-outside-machine', 'warn', { pto: rpm(setting.ptoRpm), least: rpm(machine.ptoMinRpm), most: rpm(machine.ptoMaxRpm) }, [], 'setting.ptoRpm'));
  return out;
}

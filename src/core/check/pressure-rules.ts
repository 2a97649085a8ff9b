import { amount, finding, type Finding } from '../advice/finding.ts';
import type { SprayerState } from '../sprayer/sprayer.ts';
import { given, isRefused } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { percent } from './speed-rules.ts';
import type { LawState, PressureState } from './state.ts';
import { suspicions } from './suspects.ts';

/** What the gauges say, and whether flow follows pressure as the square root. */
export function pressureFindings(pressure: PressureState, law: LawState | null, { machine, nozzles, setting }: SprayerState, assumptions: Assumptions): Finding[] {
  const out: Finding[] = [];
  const { gauges, gaugeOff, loss, oneSide, atNozzles } = pressure;
  const bar = (value: number) => ({ value, unit: 'bar' as const });
  const limit = (id: string) => assumptions.take(`check.${id}`).value;
  const iso = ['iso-16122-3'] as const;

  const rest = gauges?.restBar;
  if (rest !== undefined && rest > limit('gauge-rest')) out.push(finding('check-gauge-rest', 'warn', { reading: bar(rest) }, ['habit'], 'check.gauges.restBar'));
  if (gaugeOff && !isRefused(gaugeOff) && Math.abs(gaugeOff.value) > limit('gauge-off'))
    out.push(finding('check-gauge-off', 'warn', { off: signless(gaugeOff.value), read: bar(gauges!.readBar!), right: bar(gauges!.masterBar!) }, iso, 'check.gauges.readBar'));
  if (loss && !isRefused(loss) && loss.value > limit('pressure-loss'))
    out.push(finding('check-pressure-loss', 'warn', { loss: percent(loss), flow: percent(pressure.flowLoss!), far: bar(gauges!.farBar!) }, ['iso-16122-3', 'sqrt-law'], 'check.gauges.farBar'));
  if (oneSide && !isRefused(oneSide) && Math.abs(oneSide.value) > limit('one-side')) out.push(finding('check-one-side', 'warn', { off: signless(oneSide.value) }, iso, 'check.gauges.oneSideBar'));

  const read = gauges?.readBar;
  if (read !== undefined && read > 0 && Math.abs(read / setting.pressureBar - 1) * 100 > limit('gauge-off'))
    out.push(finding('check-gauge-not-set', 'warn', { read: bar(read), set: bar(setting.pressureBar) }, ['deveau-2009'], 'check.gauges.readBar'));
  if (read !== undefined) out.push(...suspicions([{ of: 'pressure', path: 'check.gauges.readBar', found: given(read, 'bar'), expected: given(setting.pressureBar, 'bar') }]));

  const spraying = nozzles.filter((n) => n.spraying && n.table);
  const least = Math.max(machine.pressureMinBar, ...spraying.map((n) => n.table!.pressureMinBar));
  const most = Math.min(machine.pressureMaxBar, ...spraying.map((n) => n.table!.pressureMaxBar));
  if (pressure.from !== 'setting' && (atNozzles.value < least || atNozzles.value > most))
    out.push(finding('check-pressure-outside', 'warn', { pressure: amount(atNozzles), least: bar(least), most: bar(most) }, [], 'check.gauges'));

  if (law?.inside === false) out.push(finding('check-exponent-outside', 'warn', { exponent: amount(law.exponent), least: { value: limit('exponent-least'), unit: '1' }, most: { value: limit('exponent-most'), unit: '1' } }, ['sqrt-law'], 'check.law'));
  if (law?.inside === true) out.push(finding('check-exponent-inside', 'good', { exponent: amount(law.exponent) }, ['sqrt-law'], 'check.law'));
  return out;
}

const signless = (off: number) => ({ value: Math.abs(off), unit: '%' as const });

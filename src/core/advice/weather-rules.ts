import type { Result } from '../setting/result.ts';
import { finding, type Finding } from './finding.ts';
import type { Unit } from '../quantity/units.ts';

const UNIT: Record<'delta-t' | 'wind' | 'temperature' | 'humidity', Unit> = { 'delta-t': 'K', wind: 'm/s', temperature: 'degC', humidity: '%' };

/** The day against published ranges, one line each; the label decides. */
export function weatherFindings({ weather }: Result): Finding[] {
  if (!weather) return [finding('no-weather', 'note', {}, [], 'day')];
  const out: Finding[] = [];
  for (const { limit, value, side } of weather.limits) {
    if (side === 'inside') continue;
    const unit = UNIT[limit.of];
    const bound = side === 'below' ? limit.least! : limit.most!;
    const severe = limit.code.endsWith('-limit');
    out.push(finding(`${limit.of}-${side}`, severe ? 'warn' : 'note', { value: { value, unit }, bound: { value: bound, unit } }, [limit.source], 'day'));
  }
  if (weather.inversion) out.push(finding('inversion-risk', 'warn', {}, ['grdc-10'], 'day'));
  else if (out.length === 0 && weather.limits.length > 0) out.push(finding('weather-inside', 'good', {}, ['bom-delta-t', 'waikato-plan'], 'day'));
  // Two limits of one kind: the stricter breach says it all.
  return out.filter((f, i) => !out.some((g, j) => j !== i && g.code === f.code && g.severity === 'warn' && f.severity === 'note'));
}

import { amount, finding, share, type Finding } from '../advice/finding.ts';
import { given, isRefused, type Answer } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import type { RunState, SpeedState } from './state.ts';
import { suspicions } from './suspects.ts';
import type { Setting } from '../sprayer/types.ts';

/** What the timed runs say: of themselves, of the display, of the speed that was meant. */
export function speedFindings(speed: SpeedState | null, setting: Setting, assumptions: Assumptions): Finding[] {
  if (!speed || isRefused(speed.measured.value)) return [];
  const v = speed.measured.value;
  const path = 'check.runs';
  const out: Finding[] = [...runFindings(speed.runs)];

  const least = assumptions.take('check.least-runs').value;
  if (speed.runs.length < least) out.push(finding('check-few-runs', 'note', { runs: String(speed.runs.length), least: String(least) }, ['habit'], path));
  const named = new Set(speed.directions.map((d) => d.direction));
  if (!(named.has('out') && named.has('back'))) out.push(finding('check-one-direction', 'note', {}, ['habit'], path));
  const course = assumptions.take('check.least-course');
  const shortest = Math.min(...speed.runs.map((r) => r.run.distanceM));
  // A course of so many feet may be a hair under the metric one.
  if (shortest < course.value * 0.995) out.push(finding('check-short-course', 'note', { distance: { value: shortest, unit: 'm' }, least: amount(course), watch: percent(speed.measured.error) }, ['habit'], path));

  const fast = assumptions.take('check.fast');
  if (v.value > fast.value) out.push(finding('check-fast', 'note', { speed: amount(v), most: amount(fast) }, ['habit', 'ucce-airblast'], path));

  if (speed.display && speed.displayOff && !isRefused(speed.displayOff)) {
    const off = speed.displayOff.value;
    const p = { display: amount(speed.display), speed: amount(v), off: share(Math.abs(off) / 100) };
    const sources = ['ucce-preseason', 'drome-2021'] as const;
    if (Math.abs(off) <= assumptions.take('check.display').value) out.push(finding('check-display-right', 'good', p, sources, 'check.displayKmH'));
    else if (off > 0) out.push(finding('check-display-high', 'warn', p, sources, 'check.displayKmH'));
    else out.push(finding('check-display-low', 'warn', p, sources, 'check.displayKmH'));
  }
  const set = given(setting.speedKmH, 'km/h', 'stated', { path: 'setting.speedKmH' });
  if (!isRefused(speed.settingOff) && Math.abs(speed.settingOff.value) > assumptions.take('check.display').value)
    out.push(finding('check-speed-not-set', 'warn', { speed: amount(v), set: amount(set), off: share(Math.abs(speed.settingOff.value) / 100) }, ['ucce-preseason'], path));
  out.push(...suspicions([{ of: 'speed', path, found: v, expected: speed.display ?? set }]));
  return out;
}

/** Runs that differ are named; they are not averaged away. */
function runFindings(runs: readonly RunState[]): Finding[] {
  const path = 'check.runs';
  const odd = runs.filter((r) => r.differs);
  const mates = (r: RunState) => runs.filter((m) => m.run.direction === r.run.direction);
  const pairs = odd.filter((r) => mates(r).length === 2);
  const out = odd
    .filter((r) => !pairs.includes(r))
    .map((r) => {
      const off = (r.deviation as Exclude<Answer, { kind: 'refused' }>).value;
      const p = { run: String(r.number), off: share(Math.abs(off) / 100), speed: amount(r.speed) };
      return off > 0 ? finding('check-run-faster', 'warn', p, ['arithmetic'], path) : finding('check-run-slower', 'warn', p, ['arithmetic'], path);
    });
  // Of two, nobody knows which is the odd one.
  const told = new Set<RunState>();
  for (const r of pairs) {
    if (told.has(r)) continue;
    const both = mates(r);
    both.forEach((m) => told.add(m));
    const [a, b] = both.map((m) => m.speed) as [Answer, Answer];
    if (isRefused(a) || isRefused(b)) continue;
    out.push(finding('check-runs-disagree', 'warn', { runs: both.map((m) => String(m.number)), off: share(Math.abs(a.value - b.value) / Math.min(a.value, b.value)) }, ['arithmetic'], path));
  }
  return out;
}

export const percent = (a: Answer) => share(isRefused(a) ? NaN : a.value / 100);

import { describe, expect, test } from 'vitest';
import type { SpeedRun } from '#core/check/types.ts';
import { oneRound } from '../../../support/check.ts';
import { about, told } from '../../../support/findings.ts';
import { num, refusal, type Parts } from '../../../support/sample.ts';

/** What timed runs make the check say, each finding whole. 6 km/h are set: 100 m in 60 s. */
const run = (seconds: number, direction?: 'out' | 'back', distanceM = 100): SpeedRun => ({ distanceM, seconds, ...(direction ? { direction } : {}) });
const good = [run(60, 'out'), run(60, 'back'), run(60, 'out'), run(60, 'back')];
const said = (code: string, runs: readonly SpeedRun[], more: { readonly displayKmH?: number } & Parts = {}) => {
  const { displayKmH, ...parts } = more;
  return told(oneRound({ runs, ...(displayKmH === undefined ? {} : { displayKmH }) }, parts).state, code);
};
const kmh = (value: number) => about(value, 'km/h');
const path = 'check.runs';

test('runs that are right say nothing but that the display is', () => {
  expect(oneRound({ runs: good }).round.findings).toEqual([]);
  expect(oneRound({ runs: good, displayKmH: 6 }).round.findings).toEqual([
    { code: 'check-display-right', severity: 'good', parameters: { display: kmh(6), speed: kmh(6), off: about(0, '%') }, sources: ['ucce-preseason', 'drome-2021'], path: 'check.displayKmH' }
  ]);
});
test('no runs say nothing, whatever the display shows', () => {
  expect(oneRound({ displayKmH: 9 }).round.findings).toEqual([]);
  expect(oneRound({ runs: [], displayKmH: 9 }).round.speed).toBeNull();
});

describe('a run that differs', () => {
  test('is named with how far it is off the middle one of its direction', () => {
    // 100 m in 55 s are 6.545 km/h, 9.09 % more than 6; in 66 s 5.455, 9.09 % less.
    expect(said('check-run-faster', [run(60), run(60), run(55)])).toEqual([{ code: 'check-run-faster', severity: 'warn', parameters: { run: '3', off: about(9.090909, '%'), speed: kmh(6.545455) }, sources: ['arithmetic'], path }]);
    expect(said('check-run-slower', [run(66), run(60), run(60)])).toEqual([{ code: 'check-run-slower', severity: 'warn', parameters: { run: '1', off: about(9.090909, '%'), speed: kmh(5.454545) }, sources: ['arithmetic'], path }]);
    expect([said('check-run-slower', [run(60), run(60), run(55)]), said('check-run-faster', [run(66), run(60), run(60)])]).toEqual([[], []]);
  });
  test('beyond 3 %, or what the watch explains of it', () => {
    // The watch explains 2·0.5 s of 100 m in 60 s: 1.67 %, less than the limit.
    expect([58.4, 58.1].map((t) => said('check-run-faster', [run(60), run(60), run(t)]).length)).toEqual([0, 1]);
    // Of a run of 15 s it explains 6.67 %.
    expect([14.1, 13.9].map((t) => said('check-run-faster', [run(15, undefined, 25), run(15, undefined, 25), run(t, undefined, 25)]).length)).toEqual([0, 1]);
  });
  test('of four, the middle is half way between the inner two', () => {
    // 6.4, 6.2, 6, 5 km/h: the middle is 6.1.
    const s = oneRound({ runs: [6.4, 5, 6, 6.2].map((v) => run(360 / v)) }).round.speed!;
    expect(s.runs.map((r) => num(r.deviation))).toEqual([4.918033, -18.032787, -1.639344, 1.639344].map((v) => expect.closeTo(v, 6) as number));
    expect(s.runs.map((r) => [r.number, r.differs])).toEqual([[1, true], [2, true], [3, false], [4, false]]);
  });
  test('by itself in its direction it has no mate to differ from', () => {
    const s = oneRound({ runs: [run(60, 'out'), run(80, 'back')] }).round.speed!;
    expect(s.runs.map((r) => [r.deviation, r.differs])).toEqual([[null, false], [null, false]]);
  });
});

describe('two runs that disagree', () => {
  test('are named together: nobody knows which is the odd one', () => {
    // 5.5 and 6 km/h: half a km/h of the slower one.
    const all = oneRound({ runs: [run(360 / 5.5, 'out'), run(60, 'out'), run(60, 'back'), run(60, 'back')] }).round.findings;
    expect(all).toEqual([{ code: 'check-runs-disagree', severity: 'warn', parameters: { runs: ['1', '2'], off: about(9.090909, '%') }, sources: ['arithmetic'], path }]);
  });
  test('each pair for itself', () =>
    expect(said('check-runs-disagree', [run(55, 'out'), run(60, 'out'), run(60, 'back'), run(70, 'back')]).map((f) => f.parameters)).toEqual([
      { runs: ['1', '2'], off: about(9.090909, '%') },
      { runs: ['3', '4'], off: about(16.666667, '%') }
    ]));
  test('each is half of the gap from their middle: the limit is for the whole of it', () => {
    // The middle of 6 and 6.18 is 6.09: 1.478 % each; of 6 and 6.2, 1.639 %.
    expect([6.18, 6.2].map((v) => said('check-runs-disagree', [run(60), run(360 / v)]).length)).toEqual([0, 1]);
  });
});

describe('what runs are worth', () => {
  test('few of them', () => {
    expect(said('check-few-runs', [run(60), run(60)])).toEqual([{ code: 'check-few-runs', severity: 'note', parameters: { runs: '2', least: '3' }, sources: ['habit'], path }]);
    expect(said('check-few-runs', [run(60), run(60), run(60)])).toEqual([]);
  });
  test('in one direction only, or in none that is named', () => {
    const note = { code: 'check-one-direction', severity: 'note', parameters: {}, sources: ['habit'], path };
    expect(said('check-one-direction', [run(60, 'out'), run(60, 'out'), run(60, 'out')])).toEqual([note]);
    expect(said('check-one-direction', [run(60, 'back'), run(60), run(60)])).toEqual([note]);
    expect(said('check-one-direction', [run(60, 'out'), run(60), run(60, 'back')])).toEqual([]);
  });
  test('over a short course, a hair under 50 m not being short', () => {
    // 49 m in 30 s; the watch leaves 0.5 of 30 s.
    expect(said('check-short-course', [1, 2, 3].map(() => run(30, undefined, 49)))).toEqual([
      { code: 'check-short-course', severity: 'note', parameters: { distance: { value: 49, unit: 'm' }, least: { value: 50, unit: 'm' }, watch: about(1.666667, '%') }, sources: ['habit'], path }
    ]);
    expect([49.74, 49.76, 50].map((m) => said('check-short-course', [run(60), run(30, undefined, m)]).length)).toEqual([1, 0, 0]);
  });
  test('the shortest course is the one that counts', () => expect(said('check-short-course', [run(60), run(24, undefined, 40), run(60)])[0]!.parameters['distance']).toEqual({ value: 40, unit: 'm' }));
});

test('faster than is usual among trees', () => {
  expect(said('check-fast', [run(59), run(59), run(59)])).toEqual([{ code: 'check-fast', severity: 'note', parameters: { speed: kmh(6.101695), most: { value: 6, unit: 'km/h' } }, sources: ['habit', 'ucce-airblast'], path }]);
  expect(said('check-fast', good)).toEqual([]);
});

describe('the display', () => {
  const shows = (displayKmH: number) => oneRound({ runs: good, displayKmH }).round.findings.filter((f) => f.path === 'check.displayKmH');
  const values = (display: number, off: number) => ({ display: kmh(display), speed: kmh(6), off: about(off, '%') });
  const sources = ['ucce-preseason', 'drome-2021'];
  test('right within 5 %, over as under', () => {
    expect([5.71, 6.29].map((v) => shows(v).map((f) => f.code))).toEqual([['check-display-right'], ['check-display-right']]);
    expect(shows(6.31)).toEqual([{ code: 'check-display-high', severity: 'warn', parameters: values(6.31, 5.166667), sources, path: 'check.displayKmH' }]);
    expect(shows(5.69)).toEqual([{ code: 'check-display-low', severity: 'warn', parameters: values(5.69, 5.166667), sources, path: 'check.displayKmH' }]);
  });
  test('is not held against anything where none was read', () => expect(oneRound({ runs: good }).round.speed).toMatchObject({ display: null, displayOff: null }));
});

describe('against the speed that was set', () => {
  test('more or less by over 5 %', () => {
    const off = (v: number) => said('check-speed-not-set', [1, 2, 3].map(() => run(360 / v)));
    expect(off(6.31)).toEqual([{ code: 'check-speed-not-set', severity: 'warn', parameters: { speed: kmh(6.31), set: { value: 6, unit: 'km/h' }, off: about(5.166667, '%') }, sources: ['ucce-preseason'], path }]);
    expect(off(5.69).map((f) => f.parameters['off'])).toEqual([about(5.166667, '%')]);
    expect([5.71, 6.29].map((v) => off(v).length)).toEqual([0, 0]);
  });
});

describe('a speed in another unit', () => {
  test('is suspected beside the display, else beside the speed set', () => {
    const miles = [1, 2, 3].map(() => run(60 * 1.609344));
    expect(said('check-suspect-mph', miles, { displayKmH: 6 }).map((f) => [f.path, f.parameters['expected']])).toEqual([[path, { value: 6, unit: 'km/h' }]]);
    expect(said('check-suspect-mph', miles)).toHaveLength(1);
    // A display of 4 says that 3.73 were driven indeed.
    expect(said('check-suspect-mph', miles, { displayKmH: 4 })).toEqual([]);
  });
});

describe('the mean of both directions', () => {
  test('adds times, not speeds: 7.2 out and 5.14 back are 6 km/h', () => {
    const s = oneRound({ runs: [run(50, 'out'), run(70, 'back')] }).round.speed!;
    expect(num(s.measured.value)).toBeCloseTo(6, 12);
    expect(refusal(s.standardError)).toBe('too-few-runs @ check.runs.spread');
  });
  test('runs that name no direction beside some that do are taken all together', () => {
    const s = oneRound({ runs: [run(50, 'out'), run(70, 'back'), run(60), run(60)] }).round.speed!;
    // 400 m in 240 s.
    expect(num(s.measured.value)).toBeCloseTo(6, 12);
    expect(s.directions.map((d) => [d.direction, d.runs])).toEqual([['out', 1], ['back', 1], [null, 2]]);
    // All four around their mean, 6.0857 km/h: squares 1.2416, 0.8889, 0.0073 twice; three free.
    expect(num(s.spread)).toBeCloseTo(0.845637, 5);
  });
  test('two out and one back count as 4·2·1/3 runs for the error', () => {
    const s = oneRound({ runs: [run(58, 'out'), run(62, 'out'), run(60, 'back')] }).round.speed!;
    // 6.2069 and 5.8065 km/h are 0.20022 around their mean, one of them free: s = 0.20022·√2.
    expect(num(s.spread)).toBeCloseTo(0.283157, 5);
    expect(num(s.standardError)).toBeCloseTo(0.173398, 5);
    // Student's t with one free is 12.706.
    expect(num(s.measured.error)).toBeCloseTo((100 * 12.706 * 0.173398) / 6, 1);
  });
  test('what the watch leaves is of the mean time of a run', () => {
    const s = oneRound({ runs: [run(40, 'out', 80), run(60, 'back', 120)] }).round.speed!;
    // 7.2 km/h, half a second of fifty.
    expect(num(s.watchError)).toBeCloseTo(0.072, 9);
    expect(num(s.measured.error)).toBeCloseTo(1, 9);
  });
});

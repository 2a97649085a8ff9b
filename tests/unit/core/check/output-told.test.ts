import { describe, expect, test } from 'vitest';
import type { Catch, Refill, Round } from '#core/check/types.ts';
import { checked, minute, oneRound } from '../../../support/check.ts';
import { about, told } from '../../../support/findings.ts';
import { arcNozzles, num, refusal, shut, table, type Parts } from '../../../support/sample.ts';

/** What refill and jugs make the check say, each finding whole. Sixteen nozzles of 1 L/min at 10 bar by the table; jugs held for a minute. */
const own: Parts = { tables: [table(1)], machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) } };
const at = (round: Omit<Round, 'setting'>, parts: Parts = {}, more: Parameters<typeof oneRound>[2] = {}) => oneRound(round, { ...own, ...parts }, more);
const said = (code: string, round: Omit<Round, 'setting'>, parts: Parts = {}, more: Parameters<typeof oneRound>[2] = {}) => told(at(round, parts, more).state, code);
const ofRound = (round: Omit<Round, 'setting'>, parts: Parts = {}) => at(round, parts).round.findings;
const path = 'check.catches';
const side = (letter: 'L' | 'R', litres: number) => Object.fromEntries([1, 2, 3, 4, 5, 6, 7, 8].map((n) => [`${letter}${n}`, litres]));

describe('a refill', () => {
  const standing = (seconds: number, litres: number, more: object = {}): { refill: Refill } => ({ refill: { kind: 'standing', seconds, litres, ...more } });
  test('long enough says nothing', () => expect(ofRound(standing(480, 128))).toEqual([]));
  test('too short for the closeness wanted, and how long would do', () => {
    // 2 of 48 L and 2 of 180 s leave √(4.1667² + 1.1111²) %; for 2 % of 16 L/min it takes 50·√(7.5² + 2²) s.
    expect(said('check-refill-short', standing(180, 48))).toEqual([
      { code: 'check-refill-short', severity: 'note', parameters: { error: about(4.312271, '%'), wanted: about(2, '%'), long: about(388.104367, 's') }, sources: ['error-propagation'], path: 'check.refill' }
    ]);
  });
  test('of the closeness wanted itself it is long enough', () => {
    // 1 of 50 L, and the watch is right.
    expect(at(standing(180, 50, { litresErrorL: 1, secondsError: 0 })).round.refill.isLongEnough).toBe(true);
    expect(at(standing(180, 50, { litresErrorL: 1.01, secondsError: 0 })).round.refill.isLongEnough).toBe(false);
  });
  test('briefer than three minutes', () => {
    expect(said('check-refill-brief', standing(179, 47))).toEqual([
      { code: 'check-refill-brief', severity: 'note', parameters: { time: { value: 179, unit: 's' }, least: { value: 180, unit: 's' } }, sources: ['habit'], path: 'check.refill.seconds' }
    ]);
    expect(said('check-refill-brief', standing(180, 48))).toEqual([]);
    expect(said('check-refill-brief', { refill: { kind: 'standing', litres: 20 } })).toEqual([]);
    expect(said('check-refill-brief', { refill: { kind: 'course', distanceM: 30, litres: 5 } })).toEqual([]);
  });
  test('more than the tank holds', () => {
    expect(said('check-refill-over-tank', standing(3800, 1001))).toEqual([
      { code: 'check-refill-over-tank', severity: 'warn', parameters: { litres: { value: 1001, unit: 'L' }, tank: { value: 1000, unit: 'L' } }, sources: [], path: 'check.refill.litres' }
    ]);
    expect(said('check-refill-over-tank', standing(3750, 1000))).toEqual([]);
  });
  test('a flow in another unit', () => {
    // 8 minutes of 16 L/min are 33.8 US gallons.
    expect(said('check-suspect-gallon', standing(480, 33.8)).map((f) => [f.path, f.parameters['found'], f.parameters['expected']])).toEqual([['check.refill', about(4.225, 'L/min'), about(16, 'L/min')]]);
  });
});

describe('a course', () => {
  const course = (litres: number, distanceM = 1000, more: object = {}): { refill: Refill } => ({ refill: { kind: 'course', distanceM, litres, ...more } });
  test('tells the volume; its flow goes with the measured speed', () => {
    // 160 L over 1000 m of 4 m are 400 L/ha; at 6 km/h 16 L/min; 2 of 160 L and 0.5 of 60 s.
    const { refill } = at({ ...course(160), runs: [1, 2, 3].map(() => ({ distanceM: 100, seconds: 60 })) }).round;
    expect([num(refill.volume!.value), num(refill.volume!.error), num(refill.flow.value), num(refill.flow.error)]).toEqual([400, 1.25, 16, 1.502313].map((v) => expect.closeTo(v, 6) as number));
    expect([num(refill.closeness), refill.isLongEnough]).toEqual([2, true]);
    // 2 L are 2 % of 100 L: 625 m.
    expect(num(refill.longEnough)).toBeCloseTo(625, 9);
    expect(refusal(at(course(160)).round.refill.flow.value)).toBe('speed-not-measured @ check.runs');
  });
  test('before it is measured, its length is by the tables', () => {
    const { refill } = at({ refill: { kind: 'course' } }).round;
    expect([num(refill.longEnough), refill.isLongEnough, refusal(refill.volume!.value)]).toEqual([expect.closeTo(625, 9), null, 'output-not-measured @ check.output']);
    for (const half of [{ litres: 160 }, { distanceM: 1000 }]) expect(refusal(at({ refill: { kind: 'course', ...half } }).round.refill.volume!.value)).toBe('output-not-measured @ check.output');
  });
  test('too short', () =>
    expect(said('check-refill-short', course(48, 300))).toEqual([
      { code: 'check-refill-short', severity: 'note', parameters: { error: about(4.166667, '%'), wanted: about(2, '%'), long: about(625, 'm') }, sources: ['error-propagation'], path: 'check.refill' }
    ]));
  test('a volume in another unit is suspected, and an unusual one named', () => {
    // 400 L/ha are 42.76 gallons per acre.
    const { findings } = at(course(17.1)).round;
    expect(findings.map((f) => [f.code, f.path])).toEqual([['check-suspect-gallons-per-acre', 'check.refill'], ['check-refill-short', 'check.refill'], ['check-volume-unusual', 'check.output']]);
    expect([course(80), course(400)].map((r) => told(at(r).state, 'check-volume-unusual'))).toEqual([[], []]);
    expect([course(79), course(401)].map((r) => told(at(r).round, 'check-volume-unusual').length)).toEqual([1, 1]);
  });
});

describe('jugs', () => {
  test('all as the table', () =>
    expect(ofRound({ catches: minute(1) })).toEqual([{ code: 'check-nozzles-fine', severity: 'good', parameters: { limit: about(10, '%'), total: about(16, 'L/min') }, sources: ['florida-manual'], path }]));
  test('missing ones', () => {
    expect(ofRound({ catches: minute(1).slice(0, 14) })).toEqual([{ code: 'check-catch-missing', severity: 'note', parameters: { nozzles: ['R7', 'R8'] }, sources: ['deveau-2009'], path }]);
  });
  test('under one that is shut', () => {
    const closed: Parts = { setting: { nozzles: shut('L8', 'R8') } };
    expect(said('check-catch-shut', { catches: minute(1) }, closed)).toEqual([{ code: 'check-catch-shut', severity: 'warn', parameters: { nozzles: ['L8', 'R8'] }, sources: [], path }]);
    expect(num(at({ catches: minute(1) }, closed).round.catches!.total.value)).toBeCloseTo(14, 9);
  });
  test('too coarse for the tolerance: what they leave is more than half of it', () => {
    // 0.01 of 1/3 L and 1 of 20 s: √(3² + 5²) %.
    const short = (seconds: number): Catch[] => minute(1).map((c) => ({ ...c, litres: seconds / 60, seconds }));
    expect(said('check-catch-coarse', { catches: short(20) })).toEqual([
      { code: 'check-catch-coarse', severity: 'warn', parameters: { resolution: about(5.830952, '%'), limit: about(10, '%') }, sources: ['error-propagation'], path }
    ]);
    expect(said('check-catch-coarse', { catches: short(30) })).toEqual([]);
    // Half of the narrower of the two limits counts: 3.89 % against 2.5 or 5.
    expect(said('check-catch-coarse', { catches: short(30) }, { assumptions: { 'check.nominal-normal': 5 } })).toHaveLength(1);
    expect(said('check-catch-coarse', { catches: short(30) }, { assumptions: { 'check.mean-normal': 5 } })).toHaveLength(1);
  });
  test('sides that carry other sizes, or are open in other places', () => {
    const note = { code: 'check-mirror-differs', severity: 'note', parameters: {}, sources: ['iso-16122-3'], path: 'setting.nozzles' };
    expect(said('check-mirror-differs', { catches: minute(1) }, { setting: { nozzles: shut('L3') } })).toEqual([note]);
    expect(said('check-mirror-differs', { catches: minute(1) }, { setting: { nozzles: [{ position: 'L3', table: 'iso-10625', size: '015' }] } })).toEqual([note]);
    expect(said('check-mirror-differs', { catches: minute(1) }, { setting: { nozzles: [...shut('L3'), { position: 'R3', open: false, table: 'iso-10625', size: '015' }] } })).toEqual([]);
    // Places that do not mirror tell nothing.
    const lifted: Parts = { machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }).map((n) => (n.id === 'L3' ? { ...n, heightM: n.heightM + 0.1 } : n)) } };
    expect(at({ catches: minute(1) }, lifted).round.catches!.mirrored).toBeNull();
    const without = (gone: (id: string) => boolean): Parts => ({ machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }).filter((n) => !gone(n.id)) } });
    for (const gone of [/R/, /L/, /L8/, /R8/]) expect(at({ catches: minute(1) }, without((id) => gone.test(id))).round.catches!.mirrored, String(gone)).toBeNull();
  });
  test('a flow in another unit', () =>
    expect(said('check-suspect-half', { catches: minute(0.5) }).map((f) => [f.path, f.parameters['found'], f.parameters['expected']])).toEqual([[path, about(8, 'L/min'), about(16, 'L/min')]]));
});

describe('what the jugs say together', () => {
  const notByPressure = (...nozzles: string[]) => ({ code: 'check-not-by-pressure', severity: 'warn', parameters: { nozzles }, sources: ['deveau-2009'], path: 'setting.pressureBar' });
  const finding = (code: string, parameters: object, ...sources: string[]) => ({ code, severity: 'warn', parameters, sources, path });
  const even = (off: number) => ({ off: about(off, '%'), pressure: { value: 10, unit: 'bar' } });

  test('all low, all high, or worn where the pressure is proven', () => {
    expect(ofRound({ catches: minute(0.85) })).toEqual([finding('check-evenly-low', even(15), 'luxembourg-vine')]);
    expect(ofRound({ catches: minute(1.13) })).toEqual([finding('check-evenly-high', even(13), 'luxembourg-vine')]);
    expect(ofRound({ catches: minute(1.13), gauges: { readBar: 10, masterBar: 10 } })).toEqual([finding('check-worn-set', even(13), 'deveau-2009')]);
    // The limit itself is fine.
    expect([0.91, 1.09].map((l) => at({ catches: minute(l) }).round.catches!.diagnosis)).toEqual(['fine', 'fine']);
  });
  test('one low, one high: by how much of the mean, and that pressure is no remedy', () => {
    // Mean of fifteen 1 and one 0.6: 0.975; of one 1.4: 1.025.
    expect(ofRound({ catches: minute(1, { L4: 0.6 }) })).toEqual([finding('check-one-low', { nozzles: ['L4'], off: about(38.461538, '%') }, 'habit', 'luxembourg-vine'), notByPressure('L4')]);
    expect(ofRound({ catches: minute(1, { R2: 1.4 }) })).toEqual([finding('check-one-high', { nozzles: ['R2'], off: about(36.585366, '%') }, 'habit', 'florida-manual'), notByPressure('R2')]);
  });
  test('a pair whose sum is right, each named for what it is', () =>
    expect(ofRound({ catches: minute(1, { L4: 0.7, R4: 1.34 }) })).toEqual([
      finding('check-hidden-pair', { low: ['L4'], high: ['R4'], mean: about(0.25, '%') }, 'habit'),
      notByPressure('L4', 'R4')
    ]));
  test('a pair whose sum is off by more than the table’s limit is no hidden pair', () => {
    const c = at({ catches: minute(0.88, { L4: 0.7, R4: 1.06 }) }).round.catches!;
    expect([c.diagnosis, c.bad]).toEqual(['several-bad', ['L4', 'R4']]);
  });
  test('several', () => expect(ofRound({ catches: minute(1, { L4: 0.7, R4: 0.7 }) })).toEqual([finding('check-several-bad', { nozzles: ['L4', 'R4'] }, 'habit', 'deveau-2009'), notByPressure('L4', 'R4')]));
  test('sides', () => {
    // 8.64 and 7.36 L/min: 1.28 of their mean of 8.
    expect(ofRound({ catches: minute(1, { ...side('L', 1.08), ...side('R', 0.92) }) })).toEqual([
      finding('check-sides-differ', { left: about(8.64, 'L/min'), right: about(7.36, 'L/min'), off: about(16, '%') }, 'iso-16122-3')
    ]);
    expect([0.04, 0.06].map((d) => at({ catches: minute(1, { ...side('L', 1 + d), ...side('R', 1 - d) }) }).round.catches!.diagnosis)).toEqual(['fine', 'sides-differ']);
  });
  test('not before every spraying nozzle has a jug, nor by a single one', () => {
    expect(at({ catches: minute(1, { L4: 0.5 }).slice(0, 15) }).round.catches!.diagnosis).toBe('incomplete');
    const alone: Parts = { setting: { nozzles: arcNozzles().map((n) => ({ position: n.id, open: n.id === 'L4' })) } };
    expect(at({ catches: [{ position: 'L4', litres: 0.5, seconds: 60 }] }, alone).round.catches!.diagnosis).toBe('incomplete');
    expect(at({ catches: minute(1) }, { setting: { nozzles: [{ position: 'L1', size: 'none' }] } }).round.catches!.diagnosis).toBe('incomplete');
  });
  test('open nozzles of a side that does not spray are looked at, and count for no sum', () => {
    const left: Parts = { block: { pattern: { kind: 'one-side-both-faces', side: 'left' } } };
    const c = at({ catches: minute(1).slice(0, 9) }, left).round.catches!;
    expect([num(c.total.value), c.missing, c.nozzles.length, refusal(c.right)]).toEqual([expect.closeTo(8, 9), [], 9, 'nothing-caught @ check.catches']);
  });
  test('no jugs at all are none', () => expect(at({ catches: [] }).round.catches).toBeNull());
});

describe('a nozzle against its mates', () => {
  test('is bad beyond the limit from the mean and from the middle one', () => {
    // Of four, one at half: the mean is 0.875, and the others are 14 % over it; they are the middle ones.
    const open: Parts = { setting: { nozzles: arcNozzles().map((n) => ({ position: n.id, open: ['L1', 'L2', 'R1', 'R2'].includes(n.id) })) } };
    const c = at({ catches: ['L1', 'L2', 'R1', 'R2'].map((position) => ({ position, litres: position === 'L1' ? 0.5 : 1, seconds: 60 })) }, open).round.catches!;
    expect(c.nozzles.map((n) => [n.verdict, num(n.deviation)])).toEqual([['low', expect.closeTo(-42.857143, 6)], ...[1, 2, 3].map(() => ['fine', expect.closeTo(14.285714, 6) as number])]);
  });
  /** Catches of some nozzles alone. */
  const few = (litres: Readonly<Record<string, number>>) =>
    at({ catches: Object.entries(litres).map(([position, l]) => ({ position, litres: l, seconds: 60 })) }, { setting: { nozzles: arcNozzles().map((n) => ({ position: n.id, open: n.id in litres })) } }).round.catches!.nozzles.map((n) => n.verdict);
  test('far from the mean alone it is not', () =>
    // The mean is 0.8825, the middle 1.005: the good ones are up to 16 % over the one and 1.5 % over the other.
    expect(few({ L1: 0.5, L2: 1, R1: 1.01, R2: 1.02 })).toEqual(['low', 'fine', 'fine', 'fine']));
  test('nor between the mean and the middle one, however far from both', () =>
    // The middle is 1, the mean 1.26: 1.13 is 13 % over the one and 10.3 % under the other.
    expect(few({ L1: 1, L2: 1, L3: 1, R1: 1.13, R2: 2.17 })).toEqual(['fine', 'fine', 'fine', 'fine', 'high']));
  test('at the limit itself it is fine, whatever binary arithmetic makes of it', () => {
    expect(few({ L4: 0.9, R4: 1.1 })).toEqual(['fine', 'fine']);
    expect(few({ L4: 0.89, R4: 1.11 })).toEqual(['low', 'high']);
  });
  test('its wear is against the table, its resolution by its own jug', () => {
    const [n] = at({ catches: minute(1, { L1: 1.08 }) }).round.catches!.nozzles;
    expect([num(n!.wear), num(n!.ratio), num(n!.nominal), num(n!.flow)]).toEqual([8, 1.08, 1, 1.08].map((v) => expect.closeTo(v, 9) as number));
    expect(num(n!.resolution)).toBeCloseTo(100 * Math.hypot(0.01 / 1.08, 1 / 60), 9);
  });
  test('clean water is caught, whatever the mix weighs', () => expect(num(at({ catches: minute(1) }, { assumptions: { 'mix.specific-gravity': 1.44 } }).round.catches!.nozzles[0]!.nominal)).toBeCloseTo(1, 9));
});

describe('a flow read for another pressure', () => {
  const hint = (ratio: number, parts: Parts = {}) => said('check-reference-pressure', { catches: minute(ratio) }, parts);
  test('is suspected where all are off alike by what it leaves', () => {
    // Printed for 10 bar, taken for one at 5: √2; of this table with 10 bar, 40 psi are 2.758.
    expect(hint(Math.SQRT2)).toEqual([{ code: 'check-reference-pressure', severity: 'note', parameters: { table: { value: 10, unit: 'bar' }, other: { value: 5, unit: 'bar' } }, sources: ['iso-10625', 'sqrt-law'], path }]);
    expect([Math.sqrt(10 / 3), Math.sqrt(10 / 2.757903)].map((r) => hint(r).map((f) => f.parameters['other']))).toEqual([[{ value: 3, unit: 'bar' }], [about(2.757903, 'bar')]]);
    expect(hint(1.3)).toEqual([]);
    expect(hint(0.85)).toEqual([]);
  });
  test('not where tables of several pressures are fitted', () =>
    expect(said('check-reference-pressure', { catches: minute(Math.SQRT2) }, { tables: [table(1), table(1, { id: 'other', referenceBar: 10.5 })], setting: { nozzles: [{ position: 'L1', table: 'other' }] } })).toEqual([]));
});

describe('refill and jugs', () => {
  const both = (litres: number, more: object = {}, parts: Parts = {}) => told(at({ catches: minute(1), refill: { kind: 'standing', seconds: 480, litres, ...more } }, parts).state, 'check-sum-and-refill');
  test('that do not agree', () => {
    // 144 L in eight minutes are 18 for 16 L/min.
    expect(both(144)).toEqual([{ code: 'check-sum-and-refill', severity: 'warn', parameters: { refill: about(18, 'L/min'), sum: about(16, 'L/min'), off: about(12.5, '%') }, sources: ['arithmetic'], path: 'check.refill' }]);
    expect(both(112)).toHaveLength(1);
    expect([122, 134].map((l) => both(l))).toEqual([[], []]);
  });
  test('within what both of them leave they do', () => {
    // 20 of 144 L are 13.9 %.
    expect(both(144, { litresErrorL: 20 })).toEqual([]);
    expect(both(144, {}, { assumptions: { 'check.volume-adjust': 13 } })).toEqual([]);
  });
  test('one side for both is suspected of the refill', () => {
    const { findings } = at({ catches: minute(1), refill: { kind: 'standing', seconds: 480, litres: 64 } }).round;
    expect(findings.filter((f) => f.code === 'check-suspect-half').map((f) => f.path)).toEqual(['check.refill', 'check.refill']);
  });
});

describe('litres used', () => {
  const runs = [1, 2, 3].map(() => ({ distanceM: 100, seconds: 60 }));
  const used = (usedL: number, assumptions: Record<string, number> = {}) => checked([{ runs, catches: minute(1) }], { ...own, assumptions, block: { areaHa: 2 }, rung: { mix: { usedL } } }).used!.findings;
  const values = (litres: number, off: number) => ({ used: { value: litres, unit: 'L' }, predicted: about(800, 'L'), off: about(off, '%') });
  const finding = (code: string, severity: string, litres: number, off: number) => ({ code, severity, parameters: values(litres, off), sources: ['habit'], path: 'mix.usedL' });
  test('fit within 5 %, alarm beyond, stop beyond 10 %; over as under', () => {
    expect(used(836)).toEqual([finding('check-used-fits', 'good', 836, 4.5)]);
    expect(used(764)).toEqual([finding('check-used-fits', 'good', 764, 4.5)]);
    expect(used(844)).toEqual([finding('check-used-alarm', 'warn', 844, 5.5)]);
    expect(used(724)).toEqual([finding('check-used-alarm', 'warn', 724, 9.5)]);
    expect(used(884)).toEqual([finding('check-used-stop', 'stop', 884, 10.5)]);
    expect(used(700)).toEqual([finding('check-used-stop', 'stop', 700, 12.5)]);
  });
  test('by a factor that a mix-up leaves, it is suspected', () =>
    expect(used(400)[1]).toMatchObject({ code: 'check-suspect-half', path: 'mix.usedL', parameters: { measurement: 'mix.usedL', found: { value: 400, unit: 'L' }, expected: about(800, 'L') } }));
  test('are judged by nothing that is not known', () => {
    const nothing = checked([], { setting: { nozzles: arcNozzles().map((n) => ({ position: n.id, open: false })) }, block: { areaHa: 2 }, rung: { mix: { usedL: 100 } } }).used!;
    expect([nothing.predicted.kind, nothing.findings]).toEqual(['refused', []]);
    expect(checked([], { rung: { mix: { usedL: 100 } } }).used).toBeNull();
    expect(checked([], { block: { areaHa: 2 } }).used).toBeNull();
  });
});

describe('the walk round', () => {
  const ticked = (...ticks: NonNullable<Parameters<typeof checked>[2]>['ticks'] & object) => checked([{ runs: [{ distanceM: 100, seconds: 60 }] }], {}, { ticks }).findings.filter((f) => f.path === 'check.ticks');
  const fault = (item: string, severity: string) => ({ code: `check-fault-${item}`, severity, parameters: {}, sources: [], path: 'check.ticks' });
  const open = (n: number) => ({ code: 'check-walk-open', severity: 'note', parameters: { open: String(n), of: '13' }, sources: [], path: 'check.ticks' });
  const terms = (n: number) => ({ code: 'check-terms-open', severity: 'note', parameters: { open: String(n) }, sources: ['habit'], path: 'check.ticks' });
  test('what stops, what warns, what is only missing', () =>
    expect(
      ticked(
        ...(['leaks', 'guards', 'water-only', 'protection', 'clean', 'pto', 'tape', 'paper', 'rolling-start'] as const).map((item) => ({ item, state: 'fault' as const }))
      )
    ).toEqual([
      ...['leaks', 'guards', 'water-only', 'protection'].map((i) => fault(i, 'stop')),
      ...['clean', 'pto', 'rolling-start'].map((i) => fault(i, 'warn')),
      ...['tape', 'paper'].map((i) => fault(i, 'note')),
      open(7),
      terms(4)
    ]));
  test('nothing open, nothing said; the terms of runs only where there are runs', () => {
    const all = ['clean', 'leaks', 'nozzles-placed', 'filters', 'nozzles-brushed', 'drips', 'gauge-rest', 'gauge-scale', 'agitation', 'guards', 'pto', 'water-only', 'protection'] as const;
    const fine = all.map((item) => ({ item, state: 'fine' as const }));
    expect(ticked(...fine)).toEqual([terms(5)]);
    expect(checked([{}], {}, { ticks: fine }).findings.filter((f) => f.path === 'check.ticks')).toEqual([]);
    expect(checked([{ runs: [] }], {}, { ticks: fine }).findings.filter((f) => f.path === 'check.ticks')).toEqual([]);
    const run = (['half-tank', 'fan-on', 'in-alley', 'spraying-gear', 'rolling-start'] as const).map((item) => ({ item, state: 'fine' as const }));
    expect(ticked(...fine, ...run)).toEqual([]);
  });
});

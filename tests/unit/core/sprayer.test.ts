import { describe, expect, test } from 'vitest';
import { bestSwivel, sightOf } from '#core/sprayer/aim.ts';
import { dropletClass, flowAt, nozzleFlow } from '#core/sprayer/flow.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { optionsFor } from '#core/sprayer/options.ts';
import { bands, overlap } from '#core/sprayer/profile.ts';
import { findTable } from '#core/sprayer/sprayer.ts';
import { passOf } from '#core/sprayer/volume.ts';
import { given } from '#core/working/answer.ts';
import { arcNozzles, num, onlyOpen, refusal, result, shut, table, type Parts } from '../../support/sample.ts';

/** 16 nozzles of 0.6 L/min at 3 bar, at 10 bar: 16·0.6·√(10/3) L/min. */
const FLOW = 16 * 0.6 * Math.sqrt(10 / 3);
const sprayer = (parts: Parts = {}) => result(parts).sprayer;

describe('ways of driving', () => {
  const R = given(4, 'm');
  test.each([
    [{ kind: 'every-alley' }, ['left', 'right'], 4, 2, 2],
    [{ kind: 'one-side-both-faces', side: 'left' }, ['left'], 2, 2, 1],
    [{ kind: 'one-side-both-faces', side: 'right' }, ['right'], 2, 2, 1],
    [{ kind: 'one-side-one-face', side: 'right' }, ['right'], 4, 1, 1],
    [{ kind: 'alternate-alleys' }, ['left', 'right'], 8, 1, 2],
    [{ kind: 'whole-rows', rows: 1 }, ['left', 'right'], 4, 2, 2],
    [{ kind: 'whole-rows', rows: 3 }, ['left', 'right'], 12, 2, 6],
    [{ kind: 'swath', widthM: 10 }, ['left', 'right'], 10, 2, 2]
  ] as const)('%o', (pattern, sides, width, faces, airRows) => {
    const pass = passOf(pattern, R);
    expect(pass.sides).toEqual(sides);
    expect(num(pass.width)).toBe(width);
    expect(pass.faces).toBe(faces);
    expect(pass.airRows).toBe(airRows);
    const r = result({ block: { pattern } });
    expect(num(r.sprayer.flow)).toBeCloseTo((FLOW * sides.length) / 2, 10);
    expect(num(r.sprayer.volume)).toBeCloseTo((600 * FLOW * sides.length) / 2 / (6 * width), 9);
    expect(num(r.sprayer.workRate)).toBeCloseTo((6 * width) / 10, 12);
    expect(r.canopy.figures.n.value).toBe(faces);
    expect(r.sprayer.nozzles.filter((n) => n.spraying).every((n) => (sides as readonly string[]).includes(n.position.side))).toBe(true);
    expect(r.sprayer.openCount).toBe(16);
  });
  test('every alley where nothing is said', () => expect(result().pattern).toEqual({ kind: 'every-alley' }));
});

describe('what the machine gives', () => {
  test('figures of the whole', () => {
    const s = sprayer();
    expect(num(s.flow)).toBeCloseTo(FLOW, 10);
    expect(num(s.volume)).toBeCloseTo((600 * FLOW) / 24, 9);
    expect(num(s.per100m)).toBeCloseTo((600 * FLOW) / 24 / 25, 9);
    expect(num(s.pace)).toBe(60);
    expect(num(s.workRate)).toBeCloseTo(2.4, 12);
    expect(s.speed).toMatchObject({ value: 6, path: 'setting.speedKmH' });
    expect(s.pressure).toMatchObject({ value: 10, path: 'setting.pressureBar' });
    expect(s.openCount).toBe(16);
  });
  test('no nozzle open has no flow, and says so', () => {
    const s = sprayer({ setting: { nozzles: onlyOpen() } });
    for (const a of [s.flow, s.volume, s.per100m, s.inLeaf, s.overTop, s.underSkirt]) expect(refusal(a)).toBe('no-nozzle-open @ setting.nozzles');
    expect(s.openCount).toBe(0);
    expect(s.nozzles.every((n) => n.verdict === 'shut' && !n.spraying)).toBe(true);
    expect(s.match).toBe(0);
    expect(sprayer({ block: { pattern: { kind: 'one-side-one-face', side: 'left' } }, setting: { nozzles: onlyOpen('R1') } }).flow.kind).toBe('refused');
  });
  test('size and table set at a position rule over the machine\'s', () => {
    const s = sprayer({ tables: [table(2)], setting: { nozzles: [{ position: 'L1', size: '02' }, { position: 'L2', table: 'own', size: 'x' }] } });
    expect(num(s.nozzles[0]!.flow)).toBeCloseTo(0.8 * Math.sqrt(10 / 3), 12);
    expect(num(s.nozzles[1]!.flow)).toBe(2);
    expect(s.nozzles[1]!.table?.id).toBe('own');
    expect(num(s.flow)).toBeCloseTo(FLOW + 0.2 * Math.sqrt(10 / 3) + 2 - 0.6 * Math.sqrt(10 / 3), 10);
  });
  test('an unknown size or table is refused by name, and takes the whole with it', () => {
    const s = sprayer({ setting: { nozzles: [{ position: 'L1', size: 'none' }] } });
    expect(refusal(s.nozzles[0]!.flow)).toBe('unknown-nozzle @ machine.L1');
    expect(s.nozzles[0]!.flow).toMatchObject({ parameters: { table: 'iso-10625', size: 'none' } });
    for (const a of [s.flow, s.volume, s.inLeaf]) expect(refusal(a)).toBe('unknown-nozzle @ machine.L1');
    const t = sprayer({ setting: { nozzles: [{ position: 'L1', table: 'none', size: 'x' }] } }).nozzles[0]!;
    expect([t.table, t.size, t.droplets]).toEqual([null, null, undefined]);
    expect(t.flow).toMatchObject({ parameters: { table: 'none', size: 'x' } });
    expect(num(sprayer({ setting: { nozzles: [{ position: 'L1', size: 'none', open: false }] } }).flow)).toBeCloseTo((FLOW * 15) / 16, 10);
  });
  test('tables are found by id; the ISO sizes are always there', () => {
    const own = table(1);
    expect(findTable([own], 'own')).toBe(own);
    expect(findTable([own], 'iso-10625')).toBe(ISO_10625);
    expect(findTable([own], 'none')).toBeNull();
    expect(ISO_10625.sizes).toHaveLength(17);
    expect(Object.fromEntries(ISO_10625.sizes.map((s) => [s.id, s.colour]))).toMatchObject({ '01': 'orange', '015': 'green', '02': 'yellow', '025': 'lilac', '03': 'blue', '04': 'red', '05': 'brown', '06': 'grey', '08': 'white' });
  });
});

describe('printed flows', () => {
  const points = [{ pressureBar: 5, flowLPerMin: 1 }, { pressureBar: 10, flowLPerMin: 1.4 }, { pressureBar: 15, flowLPerMin: 1.7 }];
  const own = table(9, { sizes: [{ id: 'x', flowLPerMin: 9, points }] });
  const size = own.sizes[0]!;
  test('points rule over the reference flow, number and working alike', () => {
    for (const [bar, flow] of [[5, 1], [10, 1.4], [15, 1.7], [20, 1.7 * Math.sqrt(20 / 15)], [1.25, 0.5], [Math.sqrt(150), Math.sqrt(1.4 * 1.7)]] as const) {
      expect(flowAt(own, size, bar, 1)).toBeCloseTo(flow, 12);
      expect(num(nozzleFlow(own, size, given(bar, 'bar'), given(1, '1')))).toBeCloseTo(flow, 12);
      expect(flowAt(own, size, bar, 1.44)).toBeCloseTo(flow / 1.2, 12);
    }
  });
  test('the working names table and size', () => {
    const f = nozzleFlow(own, size, given(7, 'bar'), given(1, '1'));
    if (f.kind !== 'figure') throw new Error('no figure');
    expect(f.formula.id).toBe('nozzle-flow-between');
    expect(f.inputs.q1).toMatchObject({ value: 1, path: 'own/x' });
    expect(f.inputs.P2).toMatchObject({ value: 10, path: 'own/x' });
    const g = nozzleFlow(own, size, given(20, 'bar'), given(1, '1'));
    if (g.kind !== 'figure') throw new Error('no figure');
    expect(g.formula.id).toBe('nozzle-flow');
    expect(g.inputs.P1).toMatchObject({ value: 15, path: 'own/x' });
  });
  test('no points, or an empty list: the reference pressure', () => {
    expect(flowAt(table(2, { referenceBar: 5 }), { id: 'x', flowLPerMin: 2 }, 20, 1)).toBe(4);
    expect(flowAt(table(2, { referenceBar: 5 }), { id: 'x', flowLPerMin: 2, points: [] }, 20, 1)).toBe(4);
  });
  test('two points at one pressure have no exponent: the first is kept', () => {
    const twice = { id: 'x', flowLPerMin: 1, points: [{ pressureBar: 5, flowLPerMin: 1 }, { pressureBar: 5, flowLPerMin: 1.2 }] };
    expect(flowAt(own, twice, 5, 1)).toBe(1);
    expect(Number.isFinite(flowAt(own, twice, 6, 1))).toBe(true);
  });
  test('a droplet class holds from its pressure upward', () => {
    const s = { id: 'x', flowLPerMin: 1, droplets: [{ fromBar: 3, class: 'M' as const }, { fromBar: 8, class: 'F' as const }] };
    expect([2, 3, 7.99, 8, 20].map((bar) => dropletClass(s, bar))).toEqual([undefined, 'M', 'M', 'F', 'F']);
    expect(dropletClass({ id: 'x', flowLPerMin: 1 }, 5)).toBeUndefined();
  });
});

describe('sight', () => {
  // A box from 1 to 3 m, 1 m wide, trunk line 2 m out: its face is at 1.5 m.
  const box = [{ heightM: 1, widthM: 1 }, { heightM: 3, widthM: 1 }];
  const deg = (dz: number, dx: number) => (Math.atan2(dz, dx) * 180) / Math.PI;
  test('from below: lower edge at the face\'s foot or the trunk, upper at the face\'s head', () => {
    const s = sightOf(0.5, 1.5, 2, box, 0.3)!;
    expect(s.lowDeg).toBeCloseTo(deg(-0.5, 1), 10);
    expect(s.highDeg).toBeCloseTo(deg(1.5, 1), 10);
    expect(s.allowedDeg).toBeCloseTo(deg(1.8, 1), 10);
    expect(s.inside).toBe(false);
    expect(s.clearanceM).toBeCloseTo(1, 12);
  });
  test('from under the skirt the trunk\'s foot is the lower edge', () => {
    const s = sightOf(0.5, 0.4, 2, box, 0)!;
    expect(s.lowDeg).toBeCloseTo(deg(0.6, 1.5), 10);
    expect(s.highDeg).toBeCloseTo(deg(2.6, 1), 10);
    expect(s.allowedDeg).toBe(s.highDeg);
    expect(s.clearanceM).toBeCloseTo(Math.hypot(1, 0.6), 12);
  });
  test('from above the trunk\'s head is the upper edge', () => {
    const s = sightOf(0.5, 3.5, 2, box, 0)!;
    expect(s.highDeg).toBeCloseTo(deg(-0.5, 1.5), 10);
    expect(s.lowDeg).toBeCloseTo(deg(-2.5, 1), 10);
    expect(s.clearanceM).toBeCloseTo(Math.hypot(1, 0.5), 12);
  });
  test('a nozzle in the canopy sees nothing but leaf', () => {
    const s = sightOf(1.6, 2, 2, box, 0.3)!;
    expect(s).toEqual({ lowDeg: -360, highDeg: 360, allowedDeg: 360, inside: true, clearanceM: 0 });
    expect(sightOf(1.5, 2, 2, box, 0)!.inside).toBe(true);
    expect(sightOf(1.49, 2, 2, box, 0)!.inside).toBe(false);
    expect(sightOf(1.6, 0.9, 2, box, 0)!.inside).toBe(false);
    expect(sightOf(1.6, 3.1, 2, box, 0)!.inside).toBe(false);
  });
  test('no outline, no sight', () => {
    expect(sightOf(0.5, 1, 2, [], 0)).toBeNull();
    const s = sprayer({ canopy: { skirtM: 3 } });
    expect(s.nozzles.every((n) => n.sight === null && n.would === 'unknown' && n.verdict === 'unknown' && n.swivel === null)).toBe(true);
    expect(refusal(s.nozzles[0]!.shares.inLeaf)).toBe('no-outline @ canopy');
    expect(refusal(s.inLeaf)).toBe('no-outline @ canopy');
    expect(s.bands).toEqual([]);
    expect(num(s.volume)).toBeCloseTo((600 * FLOW) / 24, 9);
  });
});

describe('verdicts of the machine', () => {
  // L2 stands 0.03 m above the skirt and points 2.1° down: its centre ray passes just under the face's foot.
  test('a narrow cone at face height is in leaf; straight up over the top; at the ground under the skirt', () => {
    const s = sprayer({ canopy: { heightM: 2.5, skirtM: 0.9 }, machine: { nozzles: arcNozzles({ coneAngleDeg: 5 }) } });
    const verdict = Object.fromEntries(s.nozzles.filter((n) => n.position.side === 'left').map((n) => [n.position.id, n.verdict]));
    expect(verdict).toEqual({ L1: 'under-skirt', L2: 'under-skirt', L3: 'in-leaf', L4: 'in-leaf', L5: 'in-leaf', L6: 'in-leaf', L7: 'over-top', L8: 'over-top' });
  });
  test('a shut nozzle keeps what it would do', () => {
    const n = sprayer({ setting: { nozzles: shut('L8', 'L3') } }).nozzles;
    expect([n[7]!.verdict, n[7]!.would, n[7]!.spraying, n[7]!.open]).toEqual(['shut', 'over-top', false, false]);
    expect([n[2]!.verdict, n[2]!.would]).toEqual(['shut', 'in-leaf']);
  });
  test('the tallest tenth sets the top', () => {
    const over = (tallestTenthM: number) => num(sprayer({ canopy: { tallestTenthM } }).overTop);
    expect(over(4)).toBeLessThan(over(3) - 0.05);
  });
  test('the useful share and the allowance are the user\'s', () => {
    const inLeaf = (assumptions: Record<string, number>) => sprayer({ assumptions }).nozzles.filter((n) => n.verdict === 'in-leaf').length;
    expect(inLeaf({ 'aim.useful-share': 1, 'aim.overshoot': 0 })).toBeLessThan(inLeaf({}));
    expect(inLeaf({ 'aim.useful-share': 0.05, 'aim.overshoot': 1.5 })).toBeGreaterThan(inLeaf({}));
  });
  test('swivel turns the whole cone', () => {
    const n = sprayer({ setting: { nozzles: [{ position: 'L8', swivelDeg: -20 }] } }).nozzles[7]!;
    expect(n.angle.value).toBeCloseTo(55, 12);
    expect(n.swivelDeg).toBe(-20);
    expect(num(n.shares.inLeaf)).toBeGreaterThan(num(sprayer().nozzles[7]!.shares.inLeaf));
    expect(n.cone.value).toBe(25);
  });
  test('the table\'s pattern spreads the spray', () => {
    const share = (pattern: 'hollow-cone' | 'full-cone' | 'flat-fan') => num(sprayer({ tables: [table(1, { pattern })], machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) } }).nozzles[6]!.shares.overTop);
    expect(new Set([share('hollow-cone'), share('full-cone'), share('flat-fan')]).size).toBe(3);
    const unknown = sprayer({ machine: { nozzles: arcNozzles({ table: 'none' }) } }).nozzles[6]!;
    expect(num(unknown.shares.overTop)).toBeCloseTo(share('hollow-cone'), 12);
  });
});

describe('turning', () => {
  const sight = { lowDeg: 0, highDeg: 30, allowedDeg: 30, inside: false, clearanceM: 1 };
  test('the smallest turn that brings nearly all into leaf', () => {
    // A fan of 10° fits between 5° and 25°; 2 points short of all is 25.2°, in half degrees 25°.
    expect(bestSwivel('flat-fan', 40, 0, 60, 10, sight)).toEqual({ turnDeg: -15, inLeafAfter: 1 });
    expect(bestSwivel('flat-fan', -20, -40, 60, 10, sight)).toEqual({ turnDeg: 25, inLeafAfter: 1 });
  });
  test('within what the body allows', () => {
    expect(bestSwivel('flat-fan', 40, 30, 60, 10, sight)).toEqual({ turnDeg: -10, inLeafAfter: 0.5 });
    const short = bestSwivel('flat-fan', 33, 32.8, 33.2, 10, sight);
    expect(short).toBeNull(); // 2 points more at best
    const clipped = bestSwivel('flat-fan', 33, 31.3, 33, 10, sight)!;
    expect(clipped.turnDeg).toBeCloseTo(-1.7, 12);
    expect(clipped.inLeafAfter).toBeCloseTo(0.37, 12);
    const upper = bestSwivel('flat-fan', -3, -3, -1.2, 10, sight)!;
    expect(upper.turnDeg).toBeCloseTo(1.8, 12);
  });
  test('none where it gains nothing, where all is in leaf, where nothing turns', () => {
    expect(bestSwivel('flat-fan', 15, -40, 60, 10, sight)).toBeNull();
    expect(bestSwivel('flat-fan', 25.4, -40, 60, 10, sight)).toBeNull(); // 4 points out
    expect(bestSwivel('flat-fan', 25.8, -40, 60, 10, sight)).not.toBeNull(); // 8 points out
    expect(bestSwivel('flat-fan', 40, 40, 40, 10, sight)).toBeNull();
    expect(bestSwivel('flat-fan', 90, 80, 100, 10, sight)).toBeNull();
    expect(bestSwivel('flat-fan', 40, 60, 0, 10, sight)).toBeNull();
  });
  test('no nozzle of the machine turns beyond its range', () => {
    const n = sprayer({ machine: { nozzles: arcNozzles({ swivelDownDeg: -10, swivelUpDeg: 0 }) } }).nozzles[6]!;
    expect(n.swivel!.turnDeg).toBeGreaterThanOrEqual(-10);
    expect(n.swivel!.turnDeg).toBeLessThan(0);
    expect(sprayer({ machine: { nozzles: arcNozzles({ swivelDownDeg: 0, swivelUpDeg: 0 }) } }).nozzles.every((each) => each.swivel === null)).toBe(true);
  });
});

describe('profile', () => {
  const box = [{ heightM: 1, widthM: 1 }, { heightM: 3, widthM: 1 }];
  const level = { x0: 0.5, z0: 2.5, angleDeg: 0, coneDeg: 2, pattern: 'flat-fan' as const, flowLPerMin: 3 };
  test('aimed and leaf by band', () => {
    const b = bands([level, { ...level, z0: 1.2, flowLPerMin: 1 }], box, 2, 1, 4);
    expect(b.map((x) => [x.fromM, x.toM])).toEqual([[1, 1.5], [1.5, 2], [2, 2.5], [2.5, 3]]);
    expect(b.map((x) => x.leaf)).toEqual([0.25, 0.25, 0.25, 0.25]);
    expect(b.map((x) => Math.round(x.aimed * 1e9) / 1e9)).toEqual([0.25, 0, 0.375, 0.375]);
    expect(overlap(b)).toBeCloseTo(0.75, 12);
  });
  test('where the spray crosses the middle of the half row', () => {
    // 45° up from 0.5 m crosses 1.75 m out, 1.25 m higher.
    const b = bands([{ ...level, z0: 1.5, angleDeg: 45 }], box, 2, 1, 4);
    expect(b.map((x) => Math.round(x.aimed))).toEqual([0, 0, 0, 1]);
    expect(bands([{ ...level, z0: 1.5, angleDeg: 60 }], box, 2, 1, 4).every((x) => x.aimed < 1e-9)).toBe(true);
  });
  test('nothing without a section, nothing aimed without flow', () => {
    expect(bands([level], [], 2, 1, 4)).toEqual([]);
    expect(bands([level], [{ heightM: 1, widthM: 0 }, { heightM: 3, widthM: 0 }], 2, 0, 4)).toEqual([]);
    expect(bands([], box, 2, 1, 4).every((b) => b.aimed === 0)).toBe(true);
    expect(overlap([])).toBe(0);
    expect(sprayer().bands).toHaveLength(6);
  });
});

describe('options towards a wanted volume', () => {
  const rows = (wanted: number, parts: Parts = {}) => {
    const set = result({ ...parts, block: { ...parts.block, ownWaterLPerHa: wanted } }).options.find((o) => o.against === 'wanted');
    return Object.fromEntries((set?.rows ?? []).map((r) => [r.option.kind, r.option]));
  };
  const V = (600 * FLOW) / 24; // 438.18 L/ha
  const codesOf = (o: { remarks: readonly { code: string }[] } | undefined) => o?.remarks.map((r) => r.code);

  test('none within half a percent', () => {
    expect(rows(V * 1.004)).toEqual({});
    expect(Object.keys(rows(V * 1.006))).toEqual(['keep', 'speed', 'pressure', 'size']);
  });
  test('keep keeps all', () => {
    const o = rows(400).keep!;
    expect(o.feasible).toBe(true);
    expect([num(o.volume), num(o.speed), num(o.pressure), num(o.workRate)]).toEqual([expect.closeTo(V, 9), 6, 10, expect.closeTo(2.4, 12)]);
    expect([o.sizes, o.remarks]).toEqual([[], []]);
  });
  test('speed: slower for more, with its air and its limits', () => {
    const o = rows(V * 1.25).speed!;
    expect(num(o.speed)).toBeCloseTo(4.8, 9);
    expect(num(o.workRate)).toBeCloseTo(1.92, 9);
    expect(num(o.flow)).toBeCloseTo(FLOW, 9);
    expect(o.feasible).toBe(true);
    expect(o.remarks).toEqual([{ code: 'air-per-metre', parameters: { change: expect.closeTo(0.25, 9) } }]);
    expect(rows(V * 1.015).speed!.remarks).toEqual([]);
    const slow = rows(V * 2.5).speed!;
    expect(slow.feasible).toBe(false);
    expect(slow.remarks[0]).toEqual({ code: 'below-speed-range', parameters: { limit: 3 } });
    const fast = rows(V / 1.5).speed!;
    expect(fast.feasible).toBe(false);
    expect(fast.remarks[0]).toEqual({ code: 'above-speed-range', parameters: { limit: 8 } });
  });
  test('pressure: fine corrections only, within machine and table', () => {
    const fine = rows(V * 1.08).pressure!;
    expect(num(fine.pressure)).toBeCloseTo(10 * 1.08 ** 2, 9);
    expect(fine.feasible).toBe(true);
    expect(fine.remarks).toEqual([]);
    const coarse = rows(V * 1.2).pressure!;
    expect(num(coarse.pressure)).toBeCloseTo(14.4, 9);
    expect(coarse.feasible).toBe(false);
    expect(coarse.remarks).toEqual([{ code: 'coarse-for-pressure', parameters: { change: expect.closeTo(0.2, 9) } }]);
    expect(codesOf(rows(V * 0.85).pressure)).toEqual(['coarse-for-pressure']);
    const high = rows(V * 1.5).pressure!;
    expect(high.remarks).toEqual([{ code: 'above-pressure-range', parameters: { limit: 18 } }, expect.objectContaining({ code: 'coarse-for-pressure' })]);
    expect(rows(V * 0.5).pressure!.remarks[0]).toEqual({ code: 'below-pressure-range', parameters: { limit: 4 } });
    // The nozzles' own range where it is the narrower.
    const own: Parts = { tables: [table(1, { pressureMinBar: 9.8, pressureMaxBar: 10.5 })], machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) } };
    expect(rows(400 * 1.05, own).pressure!.remarks).toEqual([{ code: 'above-pressure-range', parameters: { limit: 10.5 } }]);
    expect(rows(400 * 0.95, own).pressure!.remarks).toEqual([{ code: 'below-pressure-range', parameters: { limit: 9.8 } }]);
  });
  test('a table that no nozzle has, flow rising faster than pressure, is refused by name', () => {
    const odd: Parts = {
      tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1, points: [{ pressureBar: 2, flowLPerMin: 0.1 }, { pressureBar: 30, flowLPerMin: 3 }] }] })],
      machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) }
    };
    const now = num(result(odd).sprayer.volume);
    const o = rows(now * 1.05, odd).pressure!;
    expect(refusal(o.pressure)).toBe('no-pressure @ setting.pressureBar');
    expect(o.feasible).toBe(false);
    expect(o.droplets).toEqual([]);
  });
  test('size: in proportion, pairs together, pressure trimmed', () => {
    const o = rows(V * (0.8 / 0.6)).size!;
    expect(o.feasible).toBe(true);
    expect(num(o.flow)).toBeCloseTo((FLOW * 0.8) / 0.6, 9);
    expect(o.sizes.every((s) => s.table === 'iso-10625' && s.from === '015')).toBe(true);
    const changed = new Set(o.sizes.map((s) => s.position));
    for (const p of changed) expect(changed.has(p.startsWith('L') ? p.replace('L', 'R') : p.replace('R', 'L'))).toBe(true);
    expect(Math.abs(num(o.pressure) / 10 - 1)).toBeLessThan(0.07);
  });
  test('size: small gaps change few nozzles, none where the pressure is enough', () => {
    expect(rows(V * 1.025).size!.sizes).toEqual([]);
    const few = rows(V * 1.08).size!;
    expect(few.sizes.length).toBeGreaterThan(0);
    expect(few.sizes.length).toBeLessThanOrEqual(6);
    expect(few.sizes.every((s) => s.to === '02')).toBe(true);
    // Nozzles in leaf are changed before those that miss.
    const leaf = new Set(result().sprayer.nozzles.filter((n) => n.would === 'in-leaf').map((n) => n.position.id));
    expect(few.sizes.every((s) => leaf.has(s.position))).toBe(true);
  });
  test('size: none large enough', () => {
    const small: Parts = { tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1 }, { id: 'y', flowLPerMin: 1.1 }] })], machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) } };
    const o = rows(800, small).size!; // from 400
    expect(o.feasible).toBe(false);
    expect(codesOf(o)).toEqual(['above-pressure-range', 'no-size']);
    expect(o.sizes).toHaveLength(16);
    expect(num(o.pressure)).toBeCloseTo(10 * (2 / 1.1) ** 2, 6);
    expect(num(rows(200, small).size!.pressure)).toBeCloseTo(2.5, 6);
  });
  test('size: down as well as up', () => {
    const o = rows(V * (0.4 / 0.6)).size!;
    expect(o.feasible).toBe(true);
    expect(new Set(o.sizes.map((s) => s.to))).toEqual(new Set(['01']));
  });
  test('droplet classes that an option would spray, without repeats', () => {
    const own: Parts = {
      tables: [table(1, { sizes: [{ id: 'x', flowLPerMin: 1, droplets: [{ fromBar: 1, class: 'M' }, { fromBar: 10.5, class: 'F' }] }] })],
      machine: { nozzles: arcNozzles({ table: 'own', size: 'x' }) }
    };
    expect(rows(400 * 1.06, own).keep!.droplets).toEqual(['M']);
    expect(rows(400 * 1.06, own).pressure!.droplets).toEqual(['F']);
    expect(rows(400 * 1.06, own).size!.droplets).toEqual(['F']);
    expect(rows(400 * 1.06).keep!.droplets).toEqual([]);
  });
  test('against the saved setting', () => {
    const r = result({ setting: { nozzles: shut('L8', 'R8') }, saved: {}, block: { ownWaterLPerHa: 100 } });
    expect(r.options.map((o) => o.against)).toEqual(['saved', 'wanted']);
    expect(num(r.options[0]!.target)).toBeCloseTo(V, 9);
    const speed = r.options[0]!.rows[1]!.option;
    expect(num(speed.speed)).toBeCloseTo((6 * 14) / 16, 9);
    expect(num(r.saved!.volume)).toBeCloseTo(V, 9);
    expect(num(r.sprayer.volume)).toBeCloseTo((V * 14) / 16, 9);
  });
  test('nothing to spray with: every option but none feasible', () => {
    const s = sprayer({ setting: { nozzles: onlyOpen() } });
    const o = optionsFor(s, given(400, 'L/ha'), passOf({ kind: 'every-alley' }, given(4, 'm')));
    expect(o.map((x) => x.feasible)).toEqual([false, false, false, false]);
    expect(o.map((x) => x.kind)).toEqual(['keep', 'speed', 'pressure', 'size']);
  });
  test('what the mix would do at each option', () => {
    const r = result({ label: { rate: 2 }, block: { ownWaterLPerHa: V * 1.25 } });
    const [keep, speed] = r.options[0]!.rows;
    expect(num(keep!.sameMix)).toBeCloseTo(1.6, 9);
    expect(keep!.label).toBe('below');
    expect(num(keep!.newMix)).toBeCloseTo(200 / V, 9);
    expect(num(speed!.sameMix)).toBeCloseTo(2, 9);
    expect(speed!.label).toBe('fine');
    expect(num(speed!.newMix)).toBeCloseTo(200 / (V * 1.25), 9);
    expect(result({ label: { rate: 2 }, block: { ownWaterLPerHa: V * 0.8 } }).options[0]!.rows[0]!.label).toBe('above');
    expect(result({ label: { rate: 2, adaptation: 'downward' }, block: { ownWaterLPerHa: V * 1.25 } }).options[0]!.rows[0]!.label).toBe('lowered');
    // Four fifths of the volume leave 1.2 kg/ha of the adapted 1.5; the user's floor is 1.3 there, 1.1 here.
    expect(result({ label: { rate: 2, adaptation: 'downward', floor: 0.65 }, block: { ownWaterLPerHa: V * 1.25 } }).options[0]!.rows[0]!.label).toBe('below');
    expect(result({ label: { rate: 2, adaptation: 'downward', floor: 0.55 }, block: { ownWaterLPerHa: V * 1.25 } }).options[0]!.rows[0]!.label).toBe('lowered');
    const none = result({ block: { ownWaterLPerHa: V * 1.25 } }).options[0]!.rows[0]!;
    expect([none.sameMix, none.newMix, none.label]).toEqual([null, null, null]);
    const refusedDose = result({ label: { basis: 'percent-of-water' }, block: { ownWaterLPerHa: V * 1.25 } }).options[0]!.rows[0]!;
    expect(refusedDose.label).toBeNull();
    expect(refusal(refusedDose.sameMix)).toBe('no-reference-water @ label.referenceWaterLPerHa');
  });
});

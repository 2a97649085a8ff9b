import jstat from 'jstat';
import psychrolib from 'psychrolib';
import { linearRegression, mean, sampleCorrelation, sampleStandardDeviation } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { finiteError, studentT, treesNeeded } from '#core/canopy/survey.ts';
import { coverageFor } from '#core/canopy/uncertainty.ts';
import { flowAt } from '#core/sprayer/flow.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { AIR_PRESSURE, WET_BULB } from '#core/weather/psychrometry.ts';
import { num, result } from '../../support/sample.ts';

psychrolib.SetUnitSystem(psychrolib.SI);

describe('wet bulb against a general psychrometric library', () => {
  // It uses ASHRAE's enthalpy balance, ours FAO-56's psychrometer: they differ by up to 0.25 °C where air is hot and dry. Below 0 °C its wick
  // is frozen and ours is not: half a degree, at temperatures where nobody sprays.
  test.each([0, 5, 10, 15, 20, 25, 30, 35, 40])('%s °C', (T) => {
    for (const RH of [20, 30, 40, 50, 60, 70, 80, 90, 100]) {
      const theirs = psychrolib.GetTWetBulbFromRelHum(T, RH / 100, 101325);
      expect(Math.abs(WET_BULB.compute({ T, RH, p: 101.325 }) - theirs), `${T} °C ${RH} %`).toBeLessThan(theirs < 0.5 ? 0.5 : T > 30 && RH < 40 ? 0.25 : 0.16);
    }
  });
  test('at altitude', () => {
    for (const z of [500, 1200, 2500]) {
      const p = AIR_PRESSURE.compute({ z });
      expect(Math.abs(p * 1000 - psychrolib.GetStandardAtmPressure(z)) / (p * 1000), `${z} m`).toBeLessThan(0.01);
      expect(Math.abs(WET_BULB.compute({ T: 25, RH: 40, p }) - psychrolib.GetTWetBulbFromRelHum(25, 0.4, p * 1000))).toBeLessThan(0.16);
    }
  });
  test('saturated air is as cold as its wet bulb', () => {
    for (const T of [-20, -5, 0, 20, 60]) expect(WET_BULB.compute({ T, RH: 100, p: 101.3 })).toBeCloseTo(T, 8);
  });
  // Lower pressure, stronger evaporation: the wet bulb sinks.
  test('altitude lowers the wet bulb', () => expect(WET_BULB.compute({ T: 25, RH: 40, p: 80 })).toBeLessThan(WET_BULB.compute({ T: 25, RH: 40, p: 101.3 }) - 0.3));
});

describe('Student', () => {
  test.each([1, 2, 3, 4, 5, 7, 10, 19, 30, 99, 500])('%s degrees of freedom', (nu) => {
    for (const level of [0.5, 0.8, 0.9, 0.95, 0.99]) {
      const theirs = jstat.studentt.inv((1 + level) / 2, nu);
      expect(Math.abs(studentT(level, nu) / theirs - 1), `level ${level}`).toBeLessThan(1e-7);
    }
  });
  test('in closed form for one and two degrees', () => {
    expect(studentT(0.95, 1)).toBeCloseTo(Math.tan((Math.PI * 0.95) / 2), 9);
    expect(studentT(0.95, 2)).toBeCloseTo(0.95 * Math.sqrt(2 / (1 - 0.95 ** 2)), 10);
  });
  test('is no number outside its range', () => {
    for (const [level, nu] of [[0, 5], [1, 5], [-0.1, 5], [1.1, 5], [NaN, 5], [0.95, 0], [0.95, 1.5], [0.95, NaN]] as const) expect(studentT(level, nu)).toBeNaN();
  });
});

describe('sample size and cover', () => {
  test('the size holds and one less does not', () => {
    for (const cv of [0.075, 0.13, 0.2, 0.31])
      for (const e of [0.05, 0.1, 0.2]) {
        const n = treesNeeded(cv, e);
        const half = (m: number) => (jstat.studentt.inv(0.975, m - 1) * cv) / Math.sqrt(m);
        expect(half(n)).toBeLessThanOrEqual(e);
        if (n > 2) expect(half(n - 1)).toBeGreaterThan(e);
      }
  });
  test('never fewer than two', () => expect(treesNeeded(0.001, 0.5)).toBe(2));
  test('refuses what has no size', () => {
    for (const [cv, e] of [[0, 0.1], [-1, 0.1], [0.1, 0], [0.1, -1], [NaN, 0.1], [0.1, NaN]] as const) expect(treesNeeded(cv, e)).toBeNaN();
  });
  test('cover by trees measured', () => {
    expect(coverageFor(10)).toBeCloseTo(2.262157, 5);
    expect(coverageFor(2)).toBeCloseTo(12.7062, 3);
    expect(coverageFor(3.9)).toBeCloseTo(4.302653, 5);
    expect(coverageFor(undefined)).toBeCloseTo(1.959964, 6);
    expect(coverageFor(1)).toBeCloseTo(1.959964, 6);
  });
  test('a whole census has no error', () => {
    expect(finiteError(0.1, 40, 40)).toBe(0);
    expect(finiteError(0.1, 10, 40)).toBeCloseTo(0.1 * Math.sqrt(0.75), 12);
    expect(finiteError(0.1, 41, 40)).toBeNaN();
  });
});

test('the flow law has exponent one half by regression on the logarithms', () => {
  const size = ISO_10625.sizes.find((s) => s.id === '02')!;
  const line = linearRegression([3, 5, 8, 10, 15, 20].map((bar) => [Math.log(bar), Math.log(flowAt(ISO_10625, size, bar, 1))]));
  expect(line.m).toBeCloseTo(0.5, 10);
});

test('analytic interval against a Monte Carlo of many growers', () => {
  // A generator of fixed seed (mulberry32), and pairs of normal numbers from it (Box and Muller).
  let s = 20130711;
  const uniform = () => {
    s = (s + 0x6d2b79f5) | 0;
    let t = Math.imul(s ^ (s >>> 15), 1 | s);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const pair = (): [number, number] => {
    const r = Math.sqrt(-2 * Math.log(1 - uniform()));
    const a = 2 * Math.PI * uniform();
    return [r * Math.cos(a), r * Math.sin(a)];
  };
  const H = 3.2, Hs = 0.6, W = 1.4, R = 4;
  const se = { H: 0.1, Hs: 0.05, W: 0.07, R: 0.03 };
  for (const rho of [0, 0.5, -0.4]) {
    const r = result({
      canopy: { heightM: H, skirtM: Hs, widthM: W, errors: { heightSeM: se.H, skirtSeM: se.Hs, widthSeM: se.W, rowSpacingSeM: se.R, heightWidthCorrelation: rho } },
      block: { rowSpacingM: R }
    });
    const water: number[] = [];
    const heights: number[] = [];
    const widths: number[] = [];
    for (let i = 0; i < 40_000; i++) {
      const [a, b] = pair();
      const [c, d] = pair();
      const h = H + se.H * a;
      const w = W + se.W * (rho * a + Math.sqrt(1 - rho * rho) * b);
      heights.push(h);
      widths.push(w);
      // 0.10 L per m³ of crown box.
      water.push((0.1 * 10000 * (h - Hs - se.Hs * c) * w) / (R + se.R * d));
    }
    expect(sampleCorrelation(heights, widths)).toBeCloseTo(rho, 1);
    const interval = r.water.interval!;
    expect(num(r.water.wanted)).toBeCloseTo(910, 9);
    expect(interval.standardError / sampleStandardDeviation(water)).toBeGreaterThan(0.98);
    expect(interval.standardError / sampleStandardDeviation(water)).toBeLessThan(1.02);
    water.sort((x, y) => x - y);
    expect(Math.abs(interval.low / water[1000]! - 1)).toBeLessThan(0.02);
    expect(Math.abs(interval.high / water[39_000]! - 1)).toBeLessThan(0.02);
    expect(Math.abs(mean(water) / 910 - 1)).toBeLessThan(0.01);
  }
});


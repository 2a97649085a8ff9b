import { describe, expect, it } from 'vitest';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { sprayCase } from '#core/spray/case.ts';
import type { SprayCase } from '#core/spray/types.ts';
import { document, machineA, onlyOpen, type Parts } from '../../../support/sample.ts';

const found = (parts: Parts) => {
  const d = document(parts);
  return sprayCase(d, evaluate(d, 'block', 'now') as Result);
};
const caseOf = (parts: Parts): SprayCase => {
  const c = found(parts);
  if ('kind' in c) throw new Error(c.code);
  return c;
};
const refusalOf = (parts: Parts): string => {
  const c = found(parts);
  return 'kind' in c ? c.code : 'a case';
};

describe('what the spray model is told', () => {
  it('holds the nozzles that spray, with their flow and turned direction', () => {
    const c = caseOf({ setting: { nozzles: [{ position: 'L8', open: false }, { position: 'R3', swivelDeg: 5 }] } });
    expect(c.nozzles.map((n) => n.position)).not.toContain('L8');
    expect(c.nozzles).toHaveLength(15);
    const built = machineA().nozzles.find((n) => n.id === 'R3')!.angleDeg;
    expect(c.nozzles.find((n) => n.position === 'R3')!.angleDeg).toBeCloseTo(built + 5, 12);
  });
  it('gives each side half of the fan, by the affinity law at another PTO speed', () => {
    const gear = machineA().gears[0]!;
    const c = caseOf({ setting: { gear: gear.id, ptoRpm: gear.atPtoRpm / 2 } });
    for (const side of c.air) expect(side.flowM3PerS).toBeCloseTo(gear.flowM3PerH / 3600 / 4, 9);
    // Continuity: slot of 0.12 m over 95° of a circle of 0.55 m.
    expect(c.air[0]!.outletMPerS).toBeCloseTo(c.air[0]!.flowM3PerS / (0.12 * 0.55 * ((95 * Math.PI) / 180)), 6);
  });
  it('gives a fan that blows unevenly its own share on each side', () => {
    const c = caseOf({ machine: { gears: machineA().gears.map((g) => ({ ...g, leftShare: 0.6 })) } });
    const of = (side: string) => c.air.find((a) => a.side === side)!;
    expect(of('left').flowM3PerS / of('right').flowM3PerS).toBeCloseTo(1.5, 9);
    expect(of('left').outletMPerS / of('right').outletMPerS).toBeCloseTo(1.5, 9);
  });
  it('gives a side the same air whether it sprays alone or with the other', () => {
    const machine = { gears: machineA().gears.map((g) => ({ ...g, leftShare: 0.6 })) };
    const both = caseOf({ machine }).air;
    for (const side of ['left', 'right'] as const)
      expect(caseOf({ machine, block: { pattern: { kind: 'one-side-one-face', side } } }).air).toEqual(both.filter((a) => a.side === side));
  });
  it('lets the air out of round spouts through all their mouths', () => {
    const outlet = { kind: 'spouts', diameterM: 0.2, spouts: [0.8, 1.2, 1.6].map((heightM) => ({ heightM, offsetM: 0.5, angleDeg: 20 })) } as const;
    const c = caseOf({ machine: { outlet } });
    expect(c.outlet).toEqual(outlet);
    for (const side of c.air) expect(side.outletMPerS).toBeCloseTo(side.flowM3PerS / (3 * Math.PI * 0.1 ** 2), 9);
  });
  it('blows only on the side that sprays', () => {
    const c = caseOf({ block: { pattern: { kind: 'one-side-both-faces', side: 'left' } } });
    expect(c.air.map((a) => a.side)).toEqual(['left']);
    expect(new Set(c.nozzles.map((n) => n.side))).toEqual(new Set(['left']));
  });
  it('takes the delta T of the day before the assumption, and the user’s own value before both', () => {
    expect(caseOf({}).constants.deltaTK).toBe(5);
    const day = { temperatureC: 20, humidityPct: 50 };
    // Wet bulb of 20 °C at 50 %: 13.8 °C.
    expect(caseOf({ day }).constants.deltaTK).toBeCloseTo(6.2, 1);
    const c = caseOf({ day, assumptions: { 'spray.delta-t': 3 } });
    expect(c.constants.deltaTK).toBe(3);
    expect(c.stated).toEqual(['spray.delta-t']);
  });
  it('does not take the day’s wind: the model cannot tell what wind does', () => {
    expect(caseOf({ day: { windMPerS: 4 } }).constants.windMPerS).toBe(1);
  });
  it('lets an assumed leaf density lie farther off than a measured one', () => {
    const assumed = caseOf({});
    const measured = caseOf({ canopy: { ladM2PerM3: 2 } });
    expect(assumed.canopy.ladM2PerM3).toBe(2);
    expect(assumed.ladRange[0]).toBeCloseTo(1.2, 12);
    expect(assumed.ladRange[1]).toBeCloseTo(3, 12);
    expect(measured.ladRange[0]).toBeCloseTo(1.7, 12);
    expect(measured.ladRange[1]).toBeCloseTo(2.3, 12);
  });
  it('hands on the leaf density by height where the profile tells it', () => {
    const profile = [{ heightM: 0.5, widthM: 1, relativeDensity: 0.5 }, { heightM: 1.5, widthM: 1.2 }, { heightM: 3, widthM: 0.6, relativeDensity: 1.5 }];
    expect(caseOf({ canopy: { profile } }).canopy.densityByHeight).toEqual([{ heightM: 0.5, relative: 0.5 }, { heightM: 3, relative: 1.5 }]);
    expect(caseOf({}).canopy.densityByHeight).toBeUndefined();
  });
  it('refuses by name what it cannot fly in front of', () => {
    expect(refusalOf({ canopy: { skirtM: 3.5 } })).toBe('no-outline');
    expect(refusalOf({ setting: { gear: 'none-such' } })).toBe('unknown-gear');
    expect(refusalOf({ setting: { nozzles: onlyOpen() } })).toBe('no-nozzle-open');
    expect(refusalOf({ setting: { nozzles: [{ position: 'L1', size: 'none-such' }] } })).toBe('unknown-nozzle');
  });
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkState } from '#core/check/check.ts';
import { DIAGNOSES } from '#core/check/state.ts';
import { TICK_ITEMS, TOLERANCES, type Check, type Round } from '#core/check/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import { plain } from '#core/working/plain.ts';
import '#words/headland/join.ts';
import { findingSentence } from '#words/index.ts';
import { arcNozzles, defined, document } from '../support/sample.ts';

/** Whatever was measured, within the document's ranges: every figure is a number or refused by name, and every finding a whole sentence. */
const positions = arcNozzles().map((n) => n.id);
const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(a: fc.Arbitrary<T>) => fc.option(a, { nil: undefined });
const size = fc.constantFrom('01', '015', '02', '04');

const setting = fc.record({
  speedKmH: num(1, 15), pressureBar: num(1, 40), gear: fc.constantFrom('low', 'high'), ptoRpm: num(300, 700),
  nozzles: fc.uniqueArray(fc.record({ position: fc.constantFrom(...positions), open: fc.boolean(), size }), { selector: (n) => n.position, maxLength: 16 })
});
const round: fc.Arbitrary<Round> = fc
  .record({
    setting,
    displayKmH: maybe(num(1, 20)),
    runs: maybe(fc.array(fc.record({ distanceM: num(2, 5000), seconds: num(1, 3600), direction: maybe(fc.constantFrom('out' as const, 'back' as const)) }).map(defined), { maxLength: 6 })),
    gauges: maybe(fc.record({ restBar: maybe(num(0, 60)), readBar: maybe(num(0, 60)), masterBar: maybe(num(0, 60)), farBar: maybe(num(0, 60)), oneSideBar: maybe(num(0, 60)) }).map(defined)),
    refill: maybe(
      fc.oneof(
        fc.record({ kind: fc.constant('standing' as const), seconds: maybe(num(5, 14400)), litres: maybe(num(0.1, 10000)), litresErrorL: maybe(num(0, 100)), secondsError: maybe(num(0, 60)) }).map(defined),
        fc.record({ kind: fc.constant('course' as const), distanceM: maybe(num(2, 5000)), litres: maybe(num(0.1, 10000)), litresErrorL: maybe(num(0, 100)) }).map(defined)
      )
    ),
    catches: maybe(fc.uniqueArray(fc.record({ position: fc.constantFrom(...positions), litres: fc.oneof(fc.constant(0), num(0, 100)), seconds: num(1, 3600) }), { selector: (c) => c.position, maxLength: 16 })),
    law: maybe(fc.record({ firstBar: maybe(num(1, 60)), firstLPerMin: maybe(num(0.1, 100)), secondBar: maybe(num(1, 60)), secondLPerMin: maybe(num(0.1, 100)) }).map(defined))
  })
  .map((r) => defined(r) as unknown as Round);
const check: fc.Arbitrary<Check> = fc.record({
  tolerance: fc.constantFrom(...TOLERANCES),
  ticks: fc.uniqueArray(fc.record({ item: fc.constantFrom(...TICK_ITEMS), state: fc.constantFrom('fine' as const, 'fault' as const) }), { selector: (t) => t.item }),
  rounds: fc.array(round, { maxLength: 4 })
});

test('any check is worked out without a number that is none', () => {
  fc.assert(
    fc.property(check, setting, maybe(num(0.1, 1e6)), (c, now, usedL) => {
      const doc = document({ setting: now as never, block: { areaHa: 2, ownWaterLPerHa: 400 }, rung: { check: c, ...(usedL === undefined ? {} : { mix: { usedL } }) } });
      const result = evaluate(doc, 'block', 'now');
      if ('kind' in result) throw new Error(result.code);
      const state = checkState(doc, result)!;
      const bad: string[] = [];
      const visit = (v: unknown, at: string): void => {
        if (typeof v === 'number' && !Number.isFinite(v)) bad.push(at);
        else if (Array.isArray(v)) v.forEach((x, i) => visit(x, `${at}.${i}`));
        else if (v instanceof Map) for (const [k, x] of v) visit(x, `${at}.${k}`);
        else if (typeof v === 'object' && v !== null && !('formula' in v && at.endsWith('formula'))) for (const [k, x] of Object.entries(v)) if (k !== 'sprayer' && k !== 'nozzle' && k !== 'formula' && k !== 'parameters') visit(x, `${at}.${k}`);
      };
      visit(state, 'state');
      expect(bad).toEqual([]);
      expect(() => plain(state.outcome)).not.toThrow();
      for (const f of state.findings) {
        expect(findingSentence(f, 'metric'), f.code).not.toMatch(/undefined|NaN|\{\w+\}|(^|\s)–(\s|[.,:]|$)|(check|setting|mix)\.\w/);
        expect(findingSentence(f, 'us'), f.code).not.toMatch(/undefined|NaN|\{\w+\}|(^|\s)–(\s|[.,:]|$)/);
      }
      for (const r of state.rounds) if (r.catches) expect(DIAGNOSES).toContain(r.catches.diagnosis);
    }),
    { seed: 31, numRuns: 300 }
  );
});

import fc from 'fast-check';
import { create, all, type MathNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import '../../support/engine.ts';
import { CERTAINTIES, type Formula } from '#core/working/answer.ts';
import { formulas } from '#core/working/formula.ts';
import { display, type Unit } from '#core/quantity/units.ts';
import { SOURCES } from '#core/sources/bibliography.ts';
import { CANOPY_SOURCES } from '#core/sources/canopy.ts';
import { HEADLAND_SOURCES } from '#core/sources/headland.ts';
import { SEASON_SOURCES } from '#core/sources/season.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { SEASON_ASSUMPTIONS } from '#core/season/assumptions.ts';
import { SEASON_KINDS } from '#core/season/formulas.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import { STRATEGY_IDS } from '#core/dose/types.ts';
import { saturation } from '#core/weather/psychrometry.ts';

/** Text and code of every formula, held together by a parser that is not ours. */
const math = create(all!);
const ALL = [...formulas().values()];
/** Not plain arithmetic; each has a check of its own below. */
const SUMS = SEASON_KINDS.map((kind) => `season-${kind}`);
const PROCEDURAL = new Set(['total-flow', 'wet-bulb', ...SUMS]);

/** Values that an input may take, inside the formula's own range and of an ordinary size for its unit. */
function values(f: Formula, symbol: string): fc.Arbitrary<number> {
  const unit: Unit = f.inputs[symbol]!;
  const [least, most] = f.range?.[symbol] ?? [-Infinity, Infinity];
  const ordinary: Partial<Record<Unit, [number, number]>> = {
    deg: [-180, 180], degC: [-20, 50], rpm: [100, 1200], 'm3/h': [500, 100_000], 'm3/ha': [10, 100_000], 'm2/ha': [10, 50_000], 'L/ha': [1, 5000], bar: [0.5, 50], m: [0.01, 20]
  };
  const [a, b] = ordinary[unit] ?? [0.001, 100];
  return fc.double({ min: Math.max(a, least), max: Math.min(b, most), noNaN: true });
}

const symbolsOf = (expression: string): Set<string> => {
  const names = new Set<string>();
  const called = new Set<MathNode>();
  math.parse(expression).traverse((node) => {
    if (node.type === 'FunctionNode') called.add((node as unknown as { fn: MathNode }).fn);
  });
  math.parse(expression).traverse((node, path, parent) => {
    if (node.type === 'SymbolNode' && !(parent?.type === 'FunctionNode' && path === 'fn')) names.add((node as unknown as { name: string }).name);
  });
  return names;
};

test('every formula of the engine is registered here', () => {
  expect(ALL.length).toBeGreaterThan(70);
  expect([...PROCEDURAL].every((id) => formulas().has(id))).toBe(true);
});

describe.each(ALL.map((f) => [f.id, f] as const))('%s', (id, f) => {
  test('says what it is', () => {
    expect(f.id).toMatch(/^[a-z0-9]+(-[a-z0-9A-Z]+)*$/);
    expect(f.symbol).toMatch(/^[A-Za-zΔ][A-Za-z0-9]*$/);
    expect(CERTAINTIES).toContain(f.certainty);
    expect(f.sources.length).toBeGreaterThan(0);
    for (const source of f.sources) expect({ ...SOURCES, ...HEADLAND_SOURCES, ...SEASON_SOURCES, ...CANOPY_SOURCES }).toHaveProperty(source);
    for (const unit of [f.unit, ...Object.values(f.inputs)]) expect(display(unit, 'metric')).toBeDefined();
    for (const ranges of [f.range ?? {}, f.published ?? {}])
      for (const [symbol, [least, most]] of Object.entries(ranges as Record<string, [number, number]>)) {
        expect(Object.keys(f.inputs)).toContain(symbol);
        expect(least).toBeLessThan(most);
      }
  });

  if (PROCEDURAL.has(id)) return;

  test('names in its text exactly the inputs of its code', () => {
    expect([...symbolsOf(f.expression)].sort()).toEqual(Object.keys(f.inputs).sort());
  });

  test('text and code agree', () => {
    const code = math.compile(f.expression);
    const inputs = fc.record(Object.fromEntries(Object.keys(f.inputs).map((s) => [s, values(f, s)])));
    fc.assert(
      fc.property(inputs, (v) => {
        // Two printed points at the same pressure have no exponent; the engine never takes such a pair.
        if (id === 'nozzle-flow-between') fc.pre(Math.abs(Math.log((v.P2 ?? 0) / (v.P1 ?? 0))) > 0.1);
        const text: unknown = code.evaluate({ ...v });
        expect(typeof text).toBe('number');
        const value = f.compute(v);
        // Shares are differences of numbers near 1, so that their absolute error counts.
        expect(Math.abs((text as number) - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value) + 1e-12);
      }),
      { seed: 20, numRuns: 100 }
    );
  });
});

test('total-flow adds up what it is given', () => {
  const f = formulas().get('total-flow')!;
  expect(f.compute({ L1: 1.25, L2: 0.5, R1: 2 })).toBe(3.75);
  expect(f.compute({})).toBe(0);
  expect(f.expression).toBe('sum of inputs');
});

test.each(SUMS)('%s adds up the rungs that it is given', (id) => {
  const f = formulas().get(id)!;
  expect(f.compute({ bloom: 400, 'full-leaf': 1250 })).toBe(1650);
  expect(f.compute({})).toBe(0);
});

test('wet-bulb meets the equation that it prints', () => {
  const f = formulas().get('wet-bulb')!;
  const sides = /^Tw where (.+) = (.+)$/.exec(f.expression)!;
  const es = (t: number): number => 0.6108 * Math.exp((17.27 * t) / (t + 237.3));
  fc.assert(
    fc.property(fc.double({ min: -20, max: 60, noNaN: true }), fc.double({ min: 1, max: 100, noNaN: true }), fc.double({ min: 50, max: 108, noNaN: true }), (T, RH, p) => {
      const Tw = f.compute({ T, RH, p });
      const scope = { T, RH, p, Tw, es };
      expect(Math.abs(math.evaluate(sides[1]!, { ...scope }) - math.evaluate(sides[2]!, { ...scope }))).toBeLessThan(1e-9);
      expect(Tw).toBeLessThanOrEqual(T);
      expect(saturation(T)).toBeCloseTo(es(T), 12);
    }),
    { seed: 21, numRuns: 300 }
  );
});

describe('assumptions', () => {
  test.each([...ASSUMPTIONS.values(), ...SEASON_ASSUMPTIONS].map((a) => [a.id, a] as const))('%s stands in its own range', (id, a) => {
    expect(id).toMatch(/^[a-z-]+\.[a-z-]+$/);
    expect(a.least).toBeLessThan(a.most);
    expect(a.value).toBeGreaterThanOrEqual(a.least);
    expect(a.value).toBeLessThanOrEqual(a.most);
    expect(a.sources.length).toBeGreaterThan(0);
    for (const source of a.sources) expect({ ...SOURCES, ...HEADLAND_SOURCES, ...SEASON_SOURCES, ...CANOPY_SOURCES }).toHaveProperty(source);
    expect(display(a.unit, 'us')).toBeDefined();
  });

  test('one registry entry per id', () => {
    const declared = [...STRATEGIES.values()].flatMap((s) => [...Object.values(s.constants), ...(s.choices ?? [])]);
    for (const a of declared) expect(ASSUMPTIONS.get(a.id)).toBe(a);
  });
});

describe('strategies', () => {
  test('are those of the list, in its order', () => expect([...STRATEGIES.keys()]).toEqual([...STRATEGY_IDS]));

  test.each([...STRATEGIES.values()].map((s) => [s.id, s] as const))('%s is whole', (_, s) => {
    expect(s.sources.length).toBeGreaterThan(0);
    for (const source of s.sources) expect({ ...SOURCES, ...HEADLAND_SOURCES, ...SEASON_SOURCES, ...CANOPY_SOURCES }).toHaveProperty(source);
    expect(s.validity.length).toBeGreaterThan(0);
    expect(s.water === undefined).toBe(s.waterKind === undefined);
    expect(s.index.unit).toBe('1');
    if (s.water) expect(s.water.unit).toBe('L/ha');
  });
});

test('every source says what was taken from it and how it was read', () => {
  for (const [id, s] of Object.entries({ ...SOURCES, ...HEADLAND_SOURCES, ...SEASON_SOURCES, ...CANOPY_SOURCES })) {
    expect(s.taken, id).not.toBe('');
    expect(s.authors, id).not.toBe('');
    expect(['work', 'summary', 'memory'], id).toContain(s.read);
  }
});

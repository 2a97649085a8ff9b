import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { differences } from '#core/advice/difference.ts';
import { STRATEGY_IDS, type Label } from '#core/dose/types.ts';
import type { Canopy } from '#core/canopy/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Block, Document, Rung } from '#core/setting/document.ts';
import type { Advised } from '#core/setting/result.ts';
import { DROPLET_CLASSES, type Machine, type NozzleTable, type Outlet, type PassPattern, type Setting } from '#core/sprayer/types.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { RANGES } from '#job/limits.ts';
import { document } from '../support/sample.ts';

/** Whatever passes the reader, and contradictions that do not, the engine answers or refuses by name: no throw, no NaN, no infinity. */

/** A number of the reader's range, its ends included and often hit. */
const num = (range: { readonly least: number; readonly most: number }) =>
  fc.oneof({ weight: 4, arbitrary: fc.double({ min: range.least, max: range.most, noNaN: true }) }, { weight: 1, arbitrary: fc.constantFrom(range.least, range.most) });
const whole = (range: { readonly least: number; readonly most: number }) => fc.integer({ min: range.least, max: range.most });
const optional = <T, K extends keyof T>(model: { [P in keyof T]: fc.Arbitrary<T[P]> }, ...requiredKeys: K[]) => fc.record(model, { requiredKeys }) as fc.Arbitrary<Partial<T> & Pick<T, K>>;

const canopy: fc.Arbitrary<Canopy> = optional(
  {
    heightM: num(RANGES.canopy.heightM),
    widthM: fc.oneof(num(RANGES.canopy.widthM), fc.constant(0)),
    skirtM: num(RANGES.canopy.skirtM),
    shape: fc.constantFrom('box' as const, 'wall' as const, 'spindle' as const, 'ellipse' as const),
    // Rising or not, within the crown or not, all zero or not.
    profile: fc.array(
      optional({ heightM: num(RANGES.profile.heightM), widthM: fc.oneof(num(RANGES.profile.widthM), fc.constant(0)), relativeDensity: num(RANGES.profile.relativeDensity) }, 'heightM', 'widthM'),
      { maxLength: 6 }
    ),
    filledFraction: num(RANGES.canopy.filledFraction),
    missingFraction: num(RANGES.canopy.missingFraction),
    tallestTenthM: num(RANGES.canopy.tallestTenthM),
    densityClass: fc.constantFrom('open' as const, 'medium' as const, 'dense' as const),
    usDensityGalPer1000Ft3: num(RANGES.canopy.usDensityGalPer1000Ft3),
    ladM2PerM3: num(RANGES.canopy.ladM2PerM3),
    errors: optional({
      heightSeM: num(RANGES.errors.heightSeM),
      skirtSeM: num(RANGES.errors.skirtSeM),
      widthSeM: num(RANGES.errors.widthSeM),
      rowSpacingSeM: num(RANGES.errors.rowSpacingSeM),
      heightWidthCorrelation: num(RANGES.errors.heightWidthCorrelation),
      trees: whole(RANGES.errors.trees)
    })
  },
  'heightM',
  'widthM'
);

const IDS = ['L1', 'L2', 'R1', 'R2'];
const TABLES = ['iso-10625', 'own', 'absent'];
const SIZES = ['015', '20', 'x', 'y', 'absent'];
const setting: fc.Arbitrary<Setting> = optional(
  {
    speedKmH: num(RANGES.setting.speedKmH),
    pressureBar: num(RANGES.setting.pressureBar),
    gear: fc.constantFrom('low', 'high', 'absent'),
    ptoRpm: num(RANGES.setting.ptoRpm),
    nozzles: fc.uniqueArray(
      optional(
        { position: fc.constantFrom(...IDS, 'absent'), open: fc.boolean(), size: fc.constantFrom(...SIZES), table: fc.constantFrom(...TABLES), swivelDeg: num(RANGES.nozzles.swivelDeg) },
        'position'
      ),
      { selector: (n) => n.position, maxLength: 5 }
    )
  },
  'speedKmH',
  'pressureBar',
  'gear',
  'ptoRpm'
);

const outlet: fc.Arbitrary<Outlet> = fc.oneof(
  fc.record({ kind: fc.constant('arc' as const), axisHeightM: num(RANGES.outlet.axisHeightM), radiusM: num(RANGES.outlet.radiusM), fromDeg: num(RANGES.outlet.fromDeg), toDeg: num(RANGES.outlet.toDeg), slotWidthM: num(RANGES.outlet.slotWidthM) }),
  fc.record({ kind: fc.constant('tower' as const), fromHeightM: num(RANGES.outlet.fromHeightM), toHeightM: num(RANGES.outlet.toHeightM), offsetM: num(RANGES.outlet.offsetM), slotWidthM: num(RANGES.outlet.slotWidthM) }),
  fc.record({
    kind: fc.constant('spouts' as const),
    diameterM: num(RANGES.outlet.diameterM),
    spouts: fc.array(fc.record({ heightM: num(RANGES.spouts.heightM), offsetM: num(RANGES.spouts.offsetM), angleDeg: num(RANGES.spouts.angleDeg) }), { minLength: 1, maxLength: 4 })
  })
);
const machine: fc.Arbitrary<Machine> = fc.record({
  id: fc.constant('A'),
  name: fc.constant('A'),
  outlet,
  bodyWidthM: num(RANGES.machines.bodyWidthM),
  tankL: num(RANGES.machines.tankL),
  pressureMinBar: num(RANGES.machines.pressureMinBar),
  pressureMaxBar: num(RANGES.machines.pressureMaxBar),
  speedMinKmH: num(RANGES.machines.speedMinKmH),
  speedMaxKmH: num(RANGES.machines.speedMaxKmH),
  ptoMinRpm: num(RANGES.machines.ptoMinRpm),
  ptoMaxRpm: num(RANGES.machines.ptoMaxRpm),
  gears: fc.record({ a: num(RANGES.gears.flowM3PerH), b: num(RANGES.gears.atPtoRpm), leftShare: num(RANGES.gears.leftShare) }).map(({ a, b, leftShare }) => [
    { id: 'low', name: 'Low', flowM3PerH: a, atPtoRpm: b, leftShare },
    { id: 'high', name: 'High', flowM3PerH: a, atPtoRpm: b }
  ]),
  nozzles: fc.tuple(...IDS.map((id) =>
    fc.record({
      id: fc.constant(id),
      side: fc.constant(id.startsWith('L') ? ('left' as const) : ('right' as const)),
      heightM: num(RANGES.nozzles.heightM),
      offsetM: num(RANGES.nozzles.offsetM),
      angleDeg: num(RANGES.nozzles.angleDeg),
      swivelDownDeg: num(RANGES.nozzles.swivelDownDeg),
      swivelUpDeg: num(RANGES.nozzles.swivelUpDeg),
      coneAngleDeg: num(RANGES.nozzles.coneAngleDeg),
      table: fc.constantFrom('iso-10625', 'own'),
      size: fc.constantFrom('015', 'x')
    })
  ))
});
const rising = <T>(list: fc.Arbitrary<T[]>, by: (t: T) => number) => list.map((all) => [...all].sort((a, b) => by(a) - by(b)));
const nozzleTable: fc.Arbitrary<NozzleTable> = fc.record({
  id: fc.constant('own'),
  name: fc.constant('Own'),
  pattern: fc.constantFrom('hollow-cone' as const, 'full-cone' as const, 'flat-fan' as const),
  referenceBar: num(RANGES.nozzleTables.referenceBar),
  pressureMinBar: num(RANGES.nozzleTables.pressureMinBar),
  pressureMaxBar: num(RANGES.nozzleTables.pressureMaxBar),
  sizes: fc.tuple(...['x', 'y', '015'].map((id) =>
    fc.record(
      {
        id: fc.constant(id),
        flowLPerMin: num(RANGES.sizes.flowLPerMin),
        // Printed by mistake: flows that fall, pressures that repeat.
        points: rising(fc.array(fc.record({ pressureBar: num(RANGES.points.pressureBar), flowLPerMin: num(RANGES.points.flowLPerMin) }), { maxLength: 4 }), (p) => p.pressureBar),
        droplets: rising(fc.array(fc.record({ fromBar: num(RANGES.droplets.fromBar), class: fc.constantFrom(...DROPLET_CLASSES) }), { maxLength: 3 }), (d) => d.fromBar)
      },
      { requiredKeys: ['id', 'flowLPerMin'] }
    )
  ))
});
const side = fc.constantFrom('left' as const, 'right' as const);
const pattern: fc.Arbitrary<PassPattern> = fc.oneof(
  fc.record({ kind: fc.constantFrom('every-alley' as const, 'alternate-alleys' as const) }),
  fc.record({ kind: fc.constantFrom('one-side-both-faces' as const, 'one-side-one-face' as const), side }),
  fc.record({ kind: fc.constant('whole-rows' as const), rows: whole(RANGES.pattern.rows) }),
  fc.record({ kind: fc.constant('swath' as const), widthM: num(RANGES.pattern.widthM) })
);
const label: fc.Arbitrary<Label> = optional(
  {
    id: fc.constant('label'),
    name: fc.constant('Label'),
    unit: fc.constantFrom('kg' as const, 'L' as const),
    basis: fc.constantFrom('per-hectare' as const, 'per-100-l-dilute' as const, 'per-leaf-wall' as const, 'per-crown-height' as const, 'per-row-volume' as const, 'percent-of-water' as const),
    rate: num(RANGES.labels.rate),
    referenceWaterLPerHa: num(RANGES.labels.referenceWaterLPerHa),
    maxPerHa: num(RANGES.labels.maxPerHa),
    minWaterLPerHa: num(RANGES.labels.minWaterLPerHa),
    maxWaterLPerHa: num(RANGES.labels.maxWaterLPerHa),
    maxConcentration: num(RANGES.labels.maxConcentration),
    adaptation: fc.constantFrom('none' as const, 'downward' as const, 'required' as const),
    floor: num(RANGES.labels.floor),
    finestClass: fc.constantFrom('VF' as const, 'M' as const, 'UC' as const)
  },
  'id',
  'name',
  'unit',
  'basis',
  'rate'
);
const rung = (id: string): fc.Arbitrary<Rung> =>
  optional({ id: fc.constant(id), name: fc.constant(id), bbch: whole(RANGES.rungs.bbch), canopy, setting, saved: setting }, 'id', 'name', 'canopy', 'setting');
const block: fc.Arbitrary<Block> = optional(
  {
    id: fc.constant('block'),
    name: fc.constant('Block'),
    areaHa: num(RANGES.blocks.areaHa),
    rowSpacingM: num(RANGES.blocks.rowSpacingM),
    treeSpacingM: num(RANGES.blocks.treeSpacingM),
    machine: fc.constant('A'),
    label: fc.constantFrom('label', 'absent'),
    pattern,
    strategy: fc.constantFrom(...STRATEGY_IDS),
    concentration: num(RANGES.blocks.concentration),
    ownWaterLPerHa: num(RANGES.blocks.ownWaterLPerHa),
    rungs: fc.tuple(rung('early'), rung('now')).map((all): readonly Rung[] => all)
  },
  'id',
  'name',
  'rowSpacingM',
  'machine',
  'strategy',
  'rungs'
);
const assumptions = fc.dictionary(fc.constantFrom(...ASSUMPTIONS.keys(), 'absent'), fc.oneof(fc.double({ min: -1e6, max: 1e6, noNaN: true }), fc.constant(1)), { maxKeys: 5 });
const documents: fc.Arbitrary<Document> = fc
  .record({
    block,
    machine,
    table: nozzleTable,
    label,
    assumptions,
    day: optional({ temperatureC: num(RANGES.day.temperatureC), humidityPct: num(RANGES.day.humidityPct), windMPerS: num(RANGES.day.windMPerS), altitudeM: num(RANGES.day.altitudeM), sunLow: fc.boolean() })
  })
  .map((d) => ({ format: 'rowtailor', version: 1, name: 'Any', blocks: [d.block], machines: [d.machine], nozzleTables: [d.table], labels: [d.label], day: d.day, assumptions: d.assumptions }));

/** Paths of numbers that are no numbers, or infinite. `allowed` names the sentinels for "no limit". */
function badNumbers(root: unknown): string[] {
  const bad: string[] = [];
  const seen = new Set<object>();
  const walk = (v: unknown, path: string): void => {
    if (typeof v === 'number') {
      if (!Number.isFinite(v)) bad.push(`${path} = ${v}`);
    } else if (v instanceof Map) for (const [k, each] of v) walk(each, `${path}<${typeof k === 'string' ? k : 'key'}>`);
    else if (typeof v === 'object' && v !== null && !seen.has(v)) {
      seen.add(v);
      // What a formula says of itself is not part of the result.
      for (const [k, each] of Object.entries(v)) if (k !== 'formula' && k !== 'strategy') walk(each, `${path}.${k}`);
    }
  };
  walk(root, '');
  return bad;
}

const of = (d: Document, id: string): Advised => {
  const r = evaluate(d, 'block', id);
  if ('kind' in r) throw new Error(`${r.code} at ${r.path}`);
  return r;
};

test('any document of the reader\'s ranges gives finite numbers or refusals', () => {
  fc.assert(
    fc.property(documents, (d) => {
      const [early, now] = [of(d, 'early'), of(d, 'now')];
      expect(badNumbers(early)).toEqual([]);
      expect(badNumbers(now)).toEqual([]);
      expect(badNumbers(differences(early, now))).toEqual([]);
      expect(now.findings.length).toBeGreaterThan(0);
      for (const r of [early, now]) for (const n of r.sprayer.nozzles) expect(['in-leaf', 'over-top', 'under-skirt', 'shut', 'unknown']).toContain(n.verdict);
    }),
    { seed: 99, numRuns: 300 }
  );
}, 60_000);

test('the same document gives the same result, and is left as it was', () => {
  fc.assert(
    fc.property(documents, (d) => {
      const before = JSON.stringify(d);
      const [a, b] = [of(d, 'now'), of(d, 'now')];
      expect(a.findings).toEqual(b.findings);
      expect(a.sprayer.volume).toEqual(b.sprayer.volume);
      expect(JSON.stringify(d)).toBe(before);
    }),
    { seed: 7, numRuns: 100 }
  );
});

describe('numbers that no reader lets through', () => {
  const hostile = [NaN, Infinity, -Infinity, -1, 0, Number.MAX_VALUE, Number.MIN_VALUE, -0];
  const paths: readonly ((v: number) => Document)[] = [
    (v) => document({ canopy: { heightM: v } }),
    (v) => document({ canopy: { widthM: v } }),
    (v) => document({ canopy: { skirtM: v } }),
    (v) => document({ canopy: { filledFraction: v } }),
    (v) => document({ canopy: { ladM2PerM3: v } }),
    (v) => document({ block: { rowSpacingM: v } }),
    (v) => document({ block: { ownWaterLPerHa: v } }),
    (v) => document({ block: { concentration: v } }),
    (v) => document({ setting: { speedKmH: v } }),
    (v) => document({ setting: { pressureBar: v } }),
    (v) => document({ setting: { ptoRpm: v } }),
    (v) => document({ label: { rate: v } }),
    (v) => document({ label: { maxPerHa: v } })
  ];
  test.each(paths.map((make, i) => [/\{ (\w+: \{ \w+)/.exec(make.toString())?.[1] ?? String(i), make] as const))('%s', (_, make) => {
    for (const v of hostile) {
      const r = evaluate(make(v), 'block', 'now');
      // Nothing but finite numbers in what was computed; what was typed is shown as typed.
      const computed = 'kind' in r ? r : { strategies: r.strategies.map((s) => [s.index, s.water]), volume: r.sprayer.volume, product: r.product?.perHa, wanted: r.water.wanted, air: r.air.needed };
      const walk = (x: unknown): void => {
        if (typeof x !== 'object' || x === null) return;
        if ('kind' in x && x.kind === 'figure') expect(Number.isFinite((x as unknown as { value: number }).value)).toBe(true);
        for (const [k, each] of Object.entries(x)) if (k !== 'formula') walk(each);
      };
      walk(computed);
    }
  });
});

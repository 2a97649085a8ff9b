import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import { barred } from '#core/spray/advice/cautions.ts';
import { changed } from '#core/spray/advice/changes.ts';
import { dominates, goodsOf } from '#core/spray/advice/front.ts';
import { adviceProblem } from '#core/spray/advice/problem.ts';
import { adviseSpray } from '#core/spray/advice/search.ts';
import { caseOf, standOf, withSetting } from '#core/spray/advice/stand.ts';
import { LEAST_GAIN, MOST_PLANS, type Gain, type Objectives, type Plan, type SprayAdvice } from '#core/spray/advice/types.ts';
import { balance } from '#core/spray/balance.ts';
import { sprayCase } from '#core/spray/case.ts';
import { transport } from '#core/spray/transport.ts';
import type { SprayCase } from '#core/spray/types.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Advised } from '#core/setting/result.ts';
import { DROPLET_CLASSES, type NozzleTable, type Setting } from '#core/sprayer/types.ts';
import { arcNozzles, document, num, type Parts } from '../../../support/sample.ts';

/** Every second nozzle of the sample machine: fewer ways to try, and the highest still shoots over the top. */
const few = arcNozzles({ table: 'drops', size: 'a' }).filter((n) => Number(n.id.slice(1)) % 2 === 0);
/** Finer from 9 bar on; `b` gives as much as `a` in coarser drops. */
const table: NozzleTable = {
  id: 'drops',
  name: 'Drops',
  pattern: 'hollow-cone',
  referenceBar: 10,
  pressureMinBar: 4,
  pressureMaxBar: 16,
  sizes: [
    { id: 'a', flowLPerMin: 1.6, droplets: [{ fromBar: 4, class: 'F' }, { fromBar: 12, class: 'VF' }] },
    { id: 'b', flowLPerMin: 1.63, droplets: [{ fromBar: 4, class: 'M' }] },
    { id: 'c', flowLPerMin: 2.4, droplets: [{ fromBar: 4, class: 'C' }] }
  ]
};
/** Every constant as it stands, said by the user: nothing is run over its range, which takes most of the time. */
const SURE = Object.fromEntries(SPRAY_ASSUMPTIONS.map((a) => [a.id, a.value]));

const parts = (more: Parts = {}): Parts => ({
  tables: [table],
  rung: { bbch: 75 },
  label: { minWaterLPerHa: 250, maxConcentration: 10 },
  ...more,
  block: { ownWaterLPerHa: 300, ...more.block },
  machine: { nozzles: few, gears: [{ id: 'high', name: 'High', flowM3PerH: 30000, atPtoRpm: 540 }], ptoMinRpm: 420, ptoMaxRpm: 540, ...more.machine },
  setting: { ptoRpm: 540, pressureBar: 10, ...more.setting }
});

const resultOf = (doc: Document): Advised => {
  const r = evaluate(doc, doc.blocks[0]!.id, doc.blocks[0]!.rungs[0]!.id);
  if ('kind' in r) throw new Error(r.code);
  return r;
};
const problemOf = (doc: Document) => {
  const p = adviceProblem(doc, resultOf(doc));
  if ('kind' in p) throw new Error(p.code);
  return p;
};
function advise(doc: Document): SprayAdvice {
  const found = adviseSpray(problemOf(doc));
  if ('kind' in found) throw new Error(found.code);
  return found;
}
const refusal = (doc: Document): string => {
  const p = adviceProblem(doc, resultOf(doc));
  return 'kind' in p ? p.code : 'none';
};
/** A demo document cut down to one rung. */
function demo(file: string, block: string, rung: string): Document {
  const d = JSON.parse(readFileSync(new URL(`../../../../demo-data/${file}.json`, import.meta.url), 'utf8')) as Document;
  const b = d.blocks.find((each) => each.id === block)!;
  return { ...d, blocks: [{ ...b, rungs: b.rungs.filter((r) => r.id === rung) }] };
}
/** What the model says of a setting, by the plain way: evaluated, flown and weighed anew. */
function plainly(doc: Document, setting: Setting): { readonly objectives: Objectives; readonly volume: number; readonly result: Advised; readonly case: SprayCase } {
  const with_ = withSetting(doc, setting);
  const result = resultOf(with_);
  const c = sprayCase(with_, result);
  if ('kind' in c) throw new Error(c.code);
  const { onTrees, lost, cv } = balance(c, transport(c));
  return { objectives: { onTrees, lost, cv, workRateHaPerH: num(result.sprayer.workRate) }, volume: num(result.sprayer.volume), result, case: c };
}

/** The wall of the demo with its machine of round spouts. */
function spouts(): Document {
  const d = demo('cherry-wall', 'east-wall', 'green-fruit');
  const machine = d.machines.find((m) => m.outlet.kind === 'spouts')!;
  return { ...d, assumptions: SURE, blocks: d.blocks.map((b) => ({ ...b, machine: machine.id, rungs: b.rungs.map((r) => ({ ...r, setting: { speedKmH: 6, pressureBar: 6, ptoRpm: 500, gear: machine.gears[0]!.id } })) })) };
}

const memo = <T>(make: () => T): (() => T) => {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
};
/** Searched once, looked at by several tests. */
const SUBJECTS: readonly (readonly [string, () => Document, () => SprayAdvice])[] = [
  ['four pairs on an arc', () => document(parts())] as const,
  ['an arc with more air than the rule wants', () => demo('lower-bench', 'lower-bench', 'full-leaf')] as const,
  ['a tower', () => demo('cherry-wall', 'east-wall', 'green-fruit')] as const,
  ['spouts', () => spouts()] as const
].map(([name, doc]) => [name, doc, memo(() => advise(doc()))]);
const small = SUBJECTS[0]![2];

describe.each(SUBJECTS)('%s', (_, doc, advice) => {
  it('offers plans, at most as many as said', () => {
    expect(advice().plans.length).toBeGreaterThan(0);
    expect(advice().plans.length).toBeLessThanOrEqual(MOST_PLANS);
    expect(advice().searched.settings).toBeGreaterThan(500);
  });
  it('no plan breaks a limit', () => {
    const before = resultOf(doc());
    const { machine, water, product } = before;
    const today = num(before.sprayer.volume);
    for (const { setting } of advice().plans) {
      const { result, volume } = plainly(doc(), setting);
      expect(result.findings.filter((f) => f.severity === 'stop')).toEqual([]);
      const had = before.findings.map((f) => f.code.replace(/-(turn|shut)$/, ''));
      expect(result.findings.filter((f) => f.severity === 'warn' && !had.includes(f.code.replace(/-(turn|shut)$/, '')) && f.code !== 'air-short').map((f) => f.code)).toEqual([]);
      expect(result.air.ratio!).toBeLessThanOrEqual(Math.max(before.air.ratio!, 1.15) + 1e-9);
      expect(volume).toBeLessThanOrEqual(today * (1 + 1e-9));
      expect(volume).toBeGreaterThanOrEqual(product?.label.minWaterLPerHa ?? 0);
      expect(volume).toBeGreaterThanOrEqual(Math.min(today, num(water.wanted) * 0.95) * (1 - 1e-9));
      expect(setting.speedKmH).toBeGreaterThanOrEqual(machine.speedMinKmH);
      expect(setting.speedKmH).toBeLessThanOrEqual(machine.speedMaxKmH);
      expect(setting.pressureBar).toBeGreaterThanOrEqual(machine.pressureMinBar);
      expect(setting.pressureBar).toBeLessThanOrEqual(machine.pressureMaxBar);
      expect(setting.ptoRpm).toBeGreaterThanOrEqual(machine.ptoMinRpm);
      expect(setting.ptoRpm).toBeLessThanOrEqual(machine.ptoMaxRpm);
      expect(num(result.air.given)).toBeGreaterThan(0);
      for (const n of result.sprayer.nozzles) {
        expect(n.swivelDeg).toBeGreaterThanOrEqual(n.position.swivelDownDeg);
        expect(n.swivelDeg).toBeLessThanOrEqual(n.position.swivelUpDeg);
        if (n.spraying && n.table) {
          expect(setting.pressureBar).toBeGreaterThanOrEqual(n.table.pressureMinBar);
          expect(setting.pressureBar).toBeLessThanOrEqual(n.table.pressureMaxBar);
        }
        const finest = product?.label.finestClass;
        if (n.spraying && finest && n.droplets) expect(DROPLET_CLASSES.indexOf(n.droplets)).toBeGreaterThanOrEqual(DROPLET_CLASSES.indexOf(finest));
      }
      for (const side of result.pass.sides) expect(result.sprayer.nozzles.some((n) => n.spraying && n.position.side === side)).toBe(true);
    }
  });
  it('says of a plan what the model says of its setting', () => {
    for (const plan of [advice().today, ...advice().plans]) {
      const { objectives, volume, result } = plainly(doc(), plan.setting);
      expect(plan.objectives.onTrees).toBeCloseTo(objectives.onTrees, 9);
      expect(plan.objectives.lost).toBeCloseTo(objectives.lost, 9);
      expect(plan.objectives.cv!).toBeCloseTo(objectives.cv!, 9);
      expect(plan.objectives.workRateHaPerH).toBeCloseTo(objectives.workRateHaPerH, 9);
      expect(plan.volumeLPerHa).toBeCloseTo(volume, 9);
      expect(plan.airRatio).toBe(result.air.ratio);
    }
  });
  it('makes the same case of a setting as the engine does', () => {
    const stand = standOf(problemOf(doc()));
    if ('kind' in stand) throw new Error(stand.code);
    for (const { setting } of advice().plans) {
      const [own, engine] = [caseOf(stand, setting), plainly(doc(), setting).case];
      expect(own.nozzles.length).toBe(engine.nozzles.length);
      own.nozzles.forEach((n, i) => {
        expect(n).toEqual({ ...engine.nozzles[i]!, flowLPerMin: n.flowLPerMin });
        expect(n.flowLPerMin).toBeCloseTo(engine.nozzles[i]!.flowLPerMin, 12);
      });
      own.air.forEach((a, i) => {
        expect(a.flowM3PerS).toBeCloseTo(engine.air[i]!.flowM3PerS, 9);
        expect(a.outletMPerS).toBeCloseTo(engine.air[i]!.outletMPerS, 9);
      });
      const rest = ({ nozzles: _n, air: _a, volumeLPerHa: _v, ...others }: SprayCase) => others;
      expect(rest(own)).toEqual(rest(engine));
    }
  });
  it('no plan is dominated by another or by today’s setting', () => {
    const all = [advice().today, ...advice().plans].map((p) => goodsOf(p.objectives));
    for (const plan of advice().plans) for (const other of all) expect(dominates(other, goodsOf(plan.objectives))).toBe(false);
  });
  it('steps lead from today’s setting to the plan’s, and their gains add up to its own', () => {
    const { today, plans } = advice();
    for (const plan of plans) {
      expect(plan.steps.map((s) => s.change).reduce(changed, today.setting)).toEqual(plan.setting);
      const sum = (of: (g: Plan['gains']) => number) => plan.steps.reduce((s, step) => s + of(step.gains), 0);
      for (const of of [(g: Plan['gains']) => g.onTrees.value, (g: Plan['gains']) => g.lost.value, (g: Plan['gains']) => g.evenness?.value ?? 0, (g: Plan['gains']) => g.volumeLPerHa])
        expect(sum(of)).toBeCloseTo(of(plan.gains), 9);
      expect(plan.gains.onTrees.value).toBeCloseTo(plan.objectives.onTrees - today.objectives.onTrees, 9);
      expect(plan.gains.lost.value).toBeCloseTo(today.objectives.lost - plan.objectives.lost, 9);
      expect(plan.gains.volumeLPerHa).toBeCloseTo(plan.volumeLPerHa - today.volumeLPerHa, 9);
    }
  });
  it('each step’s gain is that of its two settings', () => {
    const plan = advice().plans[0]!;
    let setting = advice().today.setting;
    for (const { change, gains } of plan.steps) {
      const next = changed(setting, change);
      const [a, b] = [plainly(doc(), setting).objectives, plainly(doc(), next).objectives];
      expect(gains.onTrees.value).toBeCloseTo(b.onTrees - a.onTrees, 9);
      expect(gains.lost.value).toBeCloseTo(a.lost - b.lost, 9);
      expect(gains.evenness!.value).toBeCloseTo(a.cv! - b.cv!, 9);
      setting = next;
    }
  });
  it('a gain is clear only from 2 points on and where its range has one sign', () => {
    const gains = advice().plans.flatMap((p) => [p.gains, ...p.steps.map((s) => s.gains)]).flatMap((g): Gain[] => [g.onTrees, g.lost, ...(g.evenness ? [g.evenness] : [])]);
    expect(gains.some((g) => g.clear)).toBe(true);
    for (const { value, range: [least, most], clear } of gains) {
      expect(least).toBeLessThanOrEqual(value + 1e-12);
      expect(most).toBeGreaterThanOrEqual(value - 1e-12);
      expect(clear).toBe(Math.abs(value) >= LEAST_GAIN && (least > 0 || most < 0));
    }
    for (const p of advice().plans) {
      const better = [p.gains.onTrees, p.gains.lost, p.gains.evenness].some((g) => g?.clear && g.value > 0);
      expect(p.clear).toBe(better);
      expect(p.remarks.some((f) => f.code === 'spray-advice-no-clear-difference')).toBe(!better);
    }
  });
  it('left and right stay alike', () => {
    for (const { setting } of advice().plans) {
      const of = (id: string) => setting.nozzles?.find((n) => n.position === id);
      for (const n of resultOf(doc()).machine.nozzles.filter((each) => each.side === 'left')) {
        const [left, right] = [of(n.id), of(n.id.replace('L', 'R'))];
        expect([left?.open ?? true, left?.swivelDeg ?? 0, left?.size]).toEqual([right?.open ?? true, right?.swivelDeg ?? 0, right?.size]);
      }
    }
  });
  it('flags what the operator must know', () => {
    const tolerance = resultOf(doc()).assumptions.get('air.tolerance')!.value;
    const { today, plans } = advice();
    for (const plan of plans) {
      const codes = plan.remarks.map((f) => f.code);
      expect(codes.includes('spray-advice-ribbon-decides')).toBe(plan.airRatio! < 1 - tolerance);
      expect(codes.includes('spray-advice-check-pressure')).toBe(plan.setting.ptoRpm !== today.setting.ptoRpm);
      expect(codes.includes('spray-advice-remix')).toBe(Math.abs(plan.volumeLPerHa / today.volumeLPerHa - 1) > 0.005);
      expect(codes.includes('spray-advice-speed-unseen')).toBe(plan.setting.speedKmH > today.setting.speedKmH);
      const given = (s: Setting) => num(plainly(doc(), s).result.air.given);
      for (const step of plan.steps)
        if (step.change.code === 'pto' || step.change.code.startsWith('gear'))
          expect(step.remarks.some((f) => f.code === 'spray-advice-understated')).toBe(given(plan.setting) < given(today.setting) && step.gains.lost.value > 0);
    }
  });
});

describe('cautions', () => {
  const of = (more: Parts['setting']): Advised => resultOf(document(parts({ setting: { ...more } })));
  const today = of({ nozzles: [{ position: 'L8', open: false }, { position: 'R8', open: false }] });
  it('one that today’s setting has may stay, one more nozzle over the top may not come', () => {
    expect(of({}).findings.some((f) => f.code.startsWith('over-top'))).toBe(true);
    const aim = (r: Advised) => ({ ...r, findings: r.findings.filter((f) => f.code.startsWith('over-top')) });
    expect(barred(aim(today), aim(of({})))).toBe(true);
    expect(barred(aim(of({})), aim(today))).toBe(false);
    expect(barred(of({}), of({}))).toBe(false);
    // Less spray than the label's least water is a stop, whatever today's setting has.
    expect(today.findings.map((f) => f.code)).toContain('below-label-water');
    expect(barred(today, today)).toBe(true);
  });
  it('less air than the rule is passed on, more than too much is not', () => {
    expect(of({ ptoRpm: 200 }).findings.map((f) => f.code)).toContain('air-short');
    const within = (r: Advised) => ({ ...r, findings: r.findings.filter((f) => f.code.startsWith('air')) });
    expect(barred(within(of({})), within(of({ ptoRpm: 200 })))).toBe(false);
    const much = of({ speedKmH: 4 });
    expect(much.findings.map((f) => f.code)).toContain('air-too-much');
    expect(barred(within(much), within(of({ speedKmH: 3.5 })))).toBe(true);
    expect(barred(within(of({ speedKmH: 3.5 })), within(much))).toBe(false);
  });
});

describe('the front', () => {
  it('a brute search over pairs, turns and air finds nothing that beats a plan by more than the step in which settings are told apart', () => {
    const wanted = 150;
    const doc = document(parts({ machine: { nozzles: few.filter((n) => n.id !== 'L4' && n.id !== 'R4'), speedMaxKmH: 6 }, label: { minWaterLPerHa: 100 }, block: { ownWaterLPerHa: wanted }, assumptions: SURE }));
    const { plans, today } = advise(doc);
    expect(plans.length).toBeGreaterThan(0);
    const turns = [null, -15, 0, 15];
    const pairs = ['2', '6', '8'];
    const litres = Math.min(today.volumeLPerHa, wanted * 0.95);
    let legal = 0;
    let nearest = Infinity;
    for (const ptoRpm of [420, 480, 540]) {
      const open = plainly(doc, { ...today.setting, ptoRpm });
      const flown = transport(open.case);
      for (let code = 0; code < turns.length ** pairs.length; code++) {
        const chosen = pairs.map((p, i) => ({ p, turn: turns[Math.floor(code / turns.length ** i) % turns.length]! }));
        const nozzles = open.case.nozzles.flatMap((n) => {
          const { turn } = chosen.find((c) => n.position.endsWith(c.p))!;
          return turn === null ? [] : [{ ...n, angleDeg: few.find((f) => f.id === n.position)!.angleDeg + turn }];
        });
        if (nozzles.length === 0) continue;
        const volume = (600 * nozzles.reduce((s, n) => s + n.flowLPerMin, 0)) / (today.setting.speedKmH * 4);
        if (volume < litres || volume > today.volumeLPerHa * (1 + 1e-9)) continue;
        const b = balance({ ...open.case, nozzles }, flown);
        legal++;
        for (const { objectives: o } of plans) {
          if (o.workRateHaPerH > today.objectives.workRateHaPerH + 1e-9) continue;
          const by = Math.min(b.onTrees - o.onTrees, o.lost - b.lost, (o.cv! - b.cv!) / 2);
          nearest = Math.min(nearest, -by);
          expect(by).toBeLessThan(0.012);
        }
      }
    }
    expect(legal).toBeGreaterThan(20);
    // The search does come near to what brute force finds.
    expect(nearest).toBeLessThan(0.08);
  });
  it('the same task gives the same plans', () => {
    const doc = document(parts({ assumptions: SURE }));
    expect(JSON.stringify(advise(doc))).toBe(JSON.stringify(advise(doc)));
  });
  it('today’s setting stands where nothing can be set otherwise', () => {
    const fixed = few.filter((n) => n.id.endsWith('4')).map((n) => ({ ...n, swivelDownDeg: 0, swivelUpDeg: 0, size: 'c' }));
    const found = advise(document(parts({ machine: { nozzles: fixed, ptoMinRpm: 540, ptoMaxRpm: 540, speedMinKmH: 6, speedMaxKmH: 6 }, setting: { pressureBar: 4 }, label: { minWaterLPerHa: 10 }, block: { ownWaterLPerHa: 150 }, assumptions: SURE })));
    expect(found.plans).toEqual([]);
    expect(found.today.beaten).toBe(false);
    expect(found.findings.map((f) => f.code)).toContain('spray-advice-today-stands');
  });
  it('today’s setting is called beaten exactly where a plan is clearly better and worse in nothing', () => {
    for (const [, , advice] of SUBJECTS) {
      const { today, plans } = advice();
      expect(today.beaten).toBe(plans.some((p) => p.clear && dominates(goodsOf(p.objectives), goodsOf(today.objectives))));
    }
  });
});

describe('what is tried', () => {
  const classesOf = (a: SprayAdvice) => new Set(a.plans.flatMap((p) => p.droplets));
  const changesIn = (a: SprayAdvice) => a.plans.flatMap((p) => p.steps.map((s) => s.change));

  it('drops never get finer than the label allows, by pressure or by another size', () => {
    const found = advise(document(parts({ label: { minWaterLPerHa: 250, maxConcentration: 10, finestClass: 'F' }, assumptions: SURE })));
    expect(found.plans.length).toBeGreaterThan(0);
    expect(classesOf(found)).not.toContain('VF');
  });
  it('another size is taken only for other drops at nearly the same flow', () => {
    for (const [, , advice] of SUBJECTS) for (const c of changesIn(advice())) if (c.code === 'size') expect([c.from, c.to, c.fromClass, c.toClass]).toEqual(['a', 'b', 'F', 'M']);
  });
  it('coarser drops are looked for where today’s are finer than the label allows', () => {
    const found = advise(document(parts({ label: { minWaterLPerHa: 250, maxConcentration: 10, finestClass: 'F' }, setting: { pressureBar: 12.5 }, assumptions: SURE })));
    expect(found.findings.map((f) => f.code)).toContain('spray-advice-today-stopped');
    expect(found.plans.length).toBeGreaterThan(0);
    expect(classesOf(found)).not.toContain('VF');
    expect(changesIn(found).some((c) => c.code === 'pressure' || c.code === 'size')).toBe(true);
  });
  it('nozzles that differ left and right today are set one by one', () => {
    const found = advise(document(parts({ setting: { nozzles: [{ position: 'R8', open: false }] }, assumptions: SURE })));
    const sets = changesIn(found).flatMap((c) => ('nozzles' in c && c.code !== 'size' ? [c.nozzles] : []));
    for (const s of sets) if (s.some((id) => id.endsWith('8'))) expect(s.length).toBe(1);
  });
  it('a side that is off stays as it is', () => {
    const found = advise(document(parts({ block: { ownWaterLPerHa: 300, pattern: { kind: 'one-side-both-faces', side: 'left' } }, assumptions: SURE })));
    for (const c of changesIn(found)) if ('nozzles' in c) expect(c.nozzles.every((id) => id.startsWith('L'))).toBe(true);
  });
  it('a constant that the user states has no range', () => {
    expect(small().searched.constants).toContain('spray.projection');
    expect(advise(document(parts({ assumptions: SURE }))).searched.constants).not.toContain('spray.projection');
  });
});

describe('watching', () => {
  it('tells how far it is, always farther, and ends at the whole', () => {
    const told: number[] = [];
    adviseSpray(problemOf(document(parts({ assumptions: SURE }))), { progress: (done) => told.push(done) });
    expect(told.length).toBeGreaterThan(3);
    expect(told).toEqual(told.toSorted((a, b) => a - b));
    expect(told.at(-1)).toBeCloseTo(1, 9);
  });
  it('stops where it is told to, between air settings and between runs', () => {
    for (const after of [0, 1, 3]) {
      let asked = 0;
      const found = adviseSpray(problemOf(document(parts({ assumptions: SURE }))), { cancelled: () => asked++ >= after });
      expect('kind' in found && found.code).toBe('advice-cancelled');
    }
  });
});

describe('refused by name', () => {
  const day = (more: NonNullable<Document['day']>) => refusal(document(parts({ day: { temperatureC: 18, humidityPct: 65, windMPerS: 2, ...more } })));
  it('weather that says wait', () => {
    expect(day({})).toBe('none');
    expect(day({ windMPerS: 5.5 })).toBe('advice-too-windy');
    expect(day({ windMPerS: 0.5 })).toBe('advice-inversion');
    expect(day({ sunLow: true })).toBe('advice-inversion');
    expect(day({ temperatureC: 26, humidityPct: 80 })).toBe('advice-too-hot');
    expect(day({ temperatureC: 12, humidityPct: 45 })).toBe('advice-too-dry');
    expect(day({ temperatureC: 24, humidityPct: 20 })).toMatch(/^advice-/);
  });
  it('water below the label’s least: more is never advised', () => {
    expect(refusal(document(parts({ label: { minWaterLPerHa: 900 } })))).toBe('advice-below-label-water');
  });
  it('what no setting lifts', () => {
    expect(refusal(document(parts({ canopy: { widthM: 4.2 } })))).toBe('advice-stopped');
    expect(refusal(document(parts({ setting: { gear: 'none' } })))).toBe('unknown-gear');
    expect(refusal(document(parts({ setting: { nozzles: few.map((n) => ({ position: n.id, open: false })) } })))).toBe('no-nozzle-open');
  });
  it('a problem holds the one rung and nothing that the search has no use for', () => {
    const doc = demo('lower-bench', 'lower-bench', 'full-leaf');
    const { document: slim } = problemOf(doc);
    expect(slim.blocks.length).toBe(1);
    expect(slim.machines.length).toBe(1);
    expect(slim.records).toBeUndefined();
    expect(Object.keys(slim.blocks[0]!.rungs[0]!)).toEqual(expect.not.arrayContaining(['saved', 'check', 'fitting', 'mix']));
    expect(structuredClone(slim)).toEqual(slim);
  });
});

import { airState } from '../air/air.ts';
import { canopyState } from '../canopy/canopy.ts';
import { intervalOf, type Interval } from '../canopy/uncertainty.ts';
import { evaluateStrategy } from '../dose/evaluate.ts';
import { MIX_STRENGTH, PER_TANK, product, type Product } from '../dose/product.ts';
import { STRATEGIES } from '../dose/strategies.ts';
import { CONCENTRATION, wantedWater } from '../dose/water.ts';
import { sprayerState, type SprayerState } from '../sprayer/sprayer.ts';
import type { Setting } from '../sprayer/types.ts';
import { passOf } from '../sprayer/volume.ts';
import { weatherState } from '../weather/weather.ts';
import { given, refused, type Refused } from '../working/answer.ts';
import { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { ASSUMPTIONS } from './assumptions.ts';
import type { Document } from './document.ts';
import type { ProductState, Result } from './result.ts';

/**
 * One block at one rung of a document: every figure, each with its working. Pure; the document must have come through the reader. Refuses
 * by name a block, rung or machine that is not there.
 */
export function resultOf(document: Document, blockId: string, rungId: string): Result | Refused {
  const block = document.blocks.find((b) => b.id === blockId);
  if (!block) return refused('unknown-block', 'blocks', { id: blockId });
  const rung = block.rungs.find((r) => r.id === rungId);
  if (!rung) return refused('unknown-rung', `blocks.${blockId}.rungs`, { id: rungId });
  const machine = document.machines.find((m) => m.id === block.machine);
  if (!machine) return refused('unknown-machine', `blocks.${blockId}.machine`, { id: block.machine });
  const label = document.labels.find((l) => l.id === block.label);
  const chosen = STRATEGIES.get(block.strategy);
  if (!chosen) return refused('unknown-strategy', `blocks.${blockId}.strategy`, { id: block.strategy });

  const assumptions = new Assumptions(ASSUMPTIONS, document.assumptions);
  const pattern = block.pattern ?? { kind: 'every-alley' };
  const spacing = given(block.rowSpacingM, 'm', 'measured', { path: 'rowSpacingM' });
  const pass = passOf(pattern, spacing);
  const canopy = canopyState(rung.canopy, { rowSpacingM: block.rowSpacingM, bbch: block.evergreen ? undefined : rung.bbch, faces: pass.faces, photographed: rung.photo !== undefined }, assumptions);
  const strategies = [...STRATEGIES.values()].map((s) => evaluateStrategy(s, canopy, assumptions));
  const strategy = strategies.find((s) => s.strategy === chosen)!;
  const dosed = label ? product(label, canopy, strategy) : null;
  const water = wantedWater(strategy, block.ownWaterLPerHa, block.concentration, label);
  assumptions.take('water.little');

  const stateOf = (setting: Setting, beside: SprayerState | null) => sprayerState(machine, setting, document.nozzleTables, canopy, pass, assumptions, beside);
  const sprayer = stateOf(rung.setting, null);
  const saved = rung.saved && !sameSetting(rung.saved, rung.setting) ? stateOf(rung.saved, sprayer) : null;

  return {
    block,
    rung,
    machine,
    setting: rung.setting,
    pattern,
    pass,
    canopy,
    intervals: intervals(canopy),
    strategy,
    strategies,
    water: { ...water, interval: intervalOf(water.wanted, canopy.errors) },
    product: dosed && productState(dosed, strategy, sprayer),
    sprayer,
    saved,
    air: airState(machine, rung.setting, canopy, pass, sprayer.speed, assumptions, sprayer.flow),
    weather: weatherState(document.day),
    assumptions: assumptions.used
  };
}

function intervals(canopy: ReturnType<typeof canopyState>): ReadonlyMap<string, Interval> {
  const out = new Map<string, Interval>();
  for (const [symbol, answer] of Object.entries(canopy.figures)) {
    const interval = intervalOf(answer, canopy.errors);
    if (interval) out.set(symbol, interval);
  }
  return out;
}

function productState(dosed: Product, strategy: ReturnType<typeof evaluateStrategy>, sprayer: SprayerState): ProductState {
  const { label, perHa } = dosed;
  const strength = derive(MIX_STRENGTH[label.unit], { D: perHa, V: sprayer.volume });
  return {
    ...dosed,
    concentration: derive(CONCENTRATION, { V1: strategy.dilute ?? refused('no-dilute-water', 'strategy', { strategy: strategy.strategy.id }), V: sprayer.volume }),
    strength,
    perTank: derive(PER_TANK[label.unit], { M: strength, T: given(sprayer.machine.tankL, 'L', 'stated', { path: 'machine.tankL' }) })
  };
}

/** Alike in every value that the operator sets, whatever was left to the default. */
export function sameSetting(a: Setting, b: Setting): boolean {
  if (a === b) return true;
  if (a.speedKmH !== b.speedKmH || a.pressureBar !== b.pressureBar || a.gear !== b.gear || a.ptoRpm !== b.ptoRpm) return false;
  const of = (s: Setting) => new Map(s.nozzles?.map((n) => [n.position, n]));
  const [x, y] = [of(a), of(b)];
  for (const position of new Set([...x.keys(), ...y.keys()])) {
    const p = x.get(position);
    const q = y.get(position);
    if ((p?.open ?? true) !== (q?.open ?? true) || (p?.swivelDeg ?? 0) !== (q?.swivelDeg ?? 0) || p?.size !== q?.size || p?.table !== q?.table) return false;
  }
  return true;
}

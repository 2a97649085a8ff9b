import { plain, type Plain } from '#core/working/plain.ts';
import type { Advised } from '#core/setting/result.ts';
import type { StrategyAnswer } from '#core/dose/evaluate.ts';
import type { SprayerState } from '#core/sprayer/sprayer.ts';

/**
 * The whole result as plain data, every figure with its working, in the engine's units. Keys stand in the order written here. The document's
 * own block is named by its id; the saved setting is given by its figures.
 */
export function plainResult(r: Advised): Plain {
  return plain({
    block: { id: r.block.id, name: r.block.name, crop: r.block.crop },
    rung: { id: r.rung.id, name: r.rung.name, bbch: r.rung.bbch, date: r.rung.date },
    machine: { id: r.machine.id, name: r.machine.name },
    setting: r.setting,
    pattern: r.pattern,
    pass: r.pass,
    canopy: {
      figures: r.canopy.figures,
      intervals: r.intervals,
      outline: r.canopy.outline,
      densityClass: r.canopy.densityClass,
      densityStated: r.canopy.densityStated,
      aimTopM: r.canopy.aimTopM
    },
    strategy: r.strategy.strategy.id,
    strategies: Object.fromEntries(r.strategies.map((s) => [s.strategy.id, strategy(s)])),
    water: r.water,
    product: r.product && { ...r.product, label: r.product.label },
    sprayer: sprayer(r.sprayer),
    saved: r.saved && { setting: r.saved.setting, flow: r.saved.flow, volume: r.saved.volume },
    options: r.options,
    air: r.air,
    weather: r.weather,
    assumptions: r.assumptions,
    findings: r.findings
  });
}

const strategy = (s: StrategyAnswer) => ({ descriptor: s.descriptor, water: s.water, dilute: s.dilute, index: s.index, validity: s.strategy.validity, sources: s.strategy.sources });

const sprayer = (s: SprayerState) => ({
  speed: s.speed,
  pressure: s.pressure,
  specificGravity: s.specificGravity,
  openCount: s.openCount,
  flow: s.flow,
  volume: s.volume,
  per100m: s.per100m,
  pace: s.pace,
  workRate: s.workRate,
  inLeaf: s.inLeaf,
  overTop: s.overTop,
  underSkirt: s.underSkirt,
  match: s.match,
  bands: s.bands,
  nozzles: Object.fromEntries(
    s.nozzles.map((n) => [
      n.position.id,
      {
        side: n.position.side,
        open: n.open,
        spraying: n.spraying,
        verdict: n.verdict,
        would: n.would,
        table: n.table?.id ?? null,
        size: n.size?.id ?? null,
        colour: n.size?.colour ?? null,
        droplets: n.droplets ?? null,
        flow: n.flow,
        angle: n.angle,
        cone: n.cone,
        swivelDeg: n.swivelDeg,
        shares: n.shares,
        swivel: n.swivel
      }
    ])
  )
});

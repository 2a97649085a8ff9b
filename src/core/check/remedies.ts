import { optionsFor, type Option } from '../sprayer/options.ts';
import type { SprayerState } from '../sprayer/sprayer.ts';
import type { NozzleSize, NozzleTable } from '../sprayer/types.ts';
import { nozzleFlow } from '../sprayer/flow.ts';
import { APPLICATION_VOLUME, FLOW_FOR_VOLUME, WORK_RATE, type Pass } from '../sprayer/volume.ts';
import { isRefused, type Answer, type Quantity } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { AIR_CHANGE, FLOW_RATIO, SHORTCUT_ERROR } from './formulas.ts';
import type { CatchesState, Outcome, Remedies, Remedy } from './state.ts';

/**
 * The three ways from what was measured to the wanted water; null where speed, output or wanted water is missing, or the volume is close
 * enough. Other sizes are judged with the ratio of measured flow to table carried over, since pressure and gauge stay what they are.
 */
export function remediesFor(now: SprayerState, outcome: Outcome, catches: CatchesState | null, pass: Pass, assumptions: Assumptions): Remedies | null {
  const { speed, flow, wanted, verdict } = outcome;
  if (verdict === 'unknown' || verdict === 'within' || verdict === 'bad-nozzles') return null;
  if (isRefused(speed.value) || isRefused(flow.value) || isRefused(wanted) || isRefused(now.flow)) return null;
  const needed = derive(FLOW_FOR_VOLUME, { V: wanted, v: speed.value, B: pass.width });
  const ratio = derive(FLOW_RATIO, { Q2: needed, Q1: flow.value });
  const gap = isRefused(ratio) ? NaN : 100 * Math.abs(ratio.value - 1);
  const reach = gap <= assumptions.take('check.fine-gap').value ? 'fine' : gap <= assumptions.take('check.moderate-gap').value ? 'moderate' : 'large';
  const firstReplace = !catches ? [] : catches.diagnosis === 'worn-set' ? catches.nozzles.map((n) => n.nozzle.position.id) : catches.bad;
  // Neither nozzles nor one side are put right by what moves all of them.
  const first = firstReplace.length > 0 || catches?.diagnosis === 'sides-differ';

  const machine = asMeasured(now, speed.value, flow.value, flow.value.value / now.flow.value, pass);
  const options = optionsFor(machine, wanted, pass);
  const row = (kind: Remedy['kind'], own: Remedy['reach']): Remedy => {
    const option: Option = options.find((o) => o.kind === kind)!;
    return { kind, reach: own, option, airChange: derive(AIR_CHANGE, { v1: speed.value, v2: option.speed }), suits: option.feasible && own === reach && !first };
  };
  return { target: wanted, ratio, rows: [row('size', 'large'), row('speed', 'moderate'), row('pressure', 'fine')], shortcutError: derive(SHORTCUT_ERROR, { r: ratio }), firstReplace };
}

/** The machine as it was found: its measured speed and flow, and tables that give what its nozzles gave. */
function asMeasured(now: SprayerState, speed: Quantity, flow: Answer, factor: number, pass: Pass): SprayerState {
  const known = new Map<NozzleTable, NozzleTable>();
  const found = (table: NozzleTable): NozzleTable => {
    const before = known.get(table);
    if (before) return before;
    const made = { ...table, sizes: table.sizes.map((s) => scaled(s, factor)) };
    known.set(table, made);
    return made;
  };
  return {
    ...now,
    speed,
    flow,
    volume: derive(APPLICATION_VOLUME, { Q: flow, v: speed, B: pass.width }),
    workRate: derive(WORK_RATE, { v: speed, B: pass.width }),
    nozzles: now.nozzles.map((n) => {
      if (!n.table || !n.size) return n;
      const table = found(n.table);
      const size = table.sizes.find((s) => s.id === n.size!.id)!;
      return { ...n, table, size, flow: nozzleFlow(table, size, now.pressure, now.specificGravity) };
    })
  };
}

const scaled = (size: NozzleSize, factor: number): NozzleSize => ({
  ...size,
  flowLPerMin: size.flowLPerMin * factor,
  ...(size.points ? { points: size.points.map((p) => ({ ...p, flowLPerMin: p.flowLPerMin * factor })) } : {})
});

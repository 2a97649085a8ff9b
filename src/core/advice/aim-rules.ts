import type { NozzleState } from '../sprayer/sprayer.ts';
import type { Result } from '../setting/result.ts';
import { isRefused, valueOf } from '../working/answer.ts';
import { amount, finding, share, type Finding } from './finding.ts';

const names = (all: readonly NozzleState[]): string[] => all.map((n) => n.position.id);
const meanOf = (all: readonly NozzleState[], pick: (n: NozzleState) => number): number => all.reduce((s, n) => s + pick(n), 0) / all.length;

/** Nozzles that want the same turn to a degree, so that no mean of up and down is ever advised. */
function byTurn(all: readonly NozzleState[]): NozzleState[][] {
  const groups = new Map<number, NozzleState[]>();
  for (const n of all) {
    const turn = Math.round(n.swivel!.turnDeg);
    groups.set(turn, [...(groups.get(turn) ?? []), n]);
  }
  return [...groups.values()];
}
const turnOf = (alike: readonly NozzleState[]) => ({ value: meanOf(alike, (n) => n.swivel!.turnDeg), unit: 'deg' as const });

/** Nozzles against the canopy: a small turn is preferred to shutting wherever it brings the spray into leaf. */
export function aimFindings({ sprayer, assumptions }: Result): Finding[] {
  const out: Finding[] = [];
  const spraying = sprayer.nozzles.filter((n) => n.spraying);
  if (spraying.length === 0) return [finding('no-nozzle-open', 'stop', {}, [], 'setting.nozzles')];

  const inside = spraying.filter((n) => n.sight?.inside);
  if (inside.length > 0) out.push(finding('nozzle-in-canopy', 'stop', { nozzles: names(inside) }, [], 'rowSpacingM'));
  const near = spraying.filter((n) => n.sight && !n.sight.inside && n.sight.clearanceM < 0.3);
  if (near.length > 0)
    out.push(finding('nozzle-too-near', 'warn', { nozzles: names(near), clearance: { value: Math.min(...near.map((n) => n.sight!.clearanceM)), unit: 'm' }, least: { value: 0.3, unit: 'm' } }, ['comite-citricos-2024'], 'rowSpacingM'));

  const useful = assumptions.get('aim.useful-share')?.value ?? 0.5;
  for (const miss of ['over-top', 'under-skirt'] as const) {
    const missing = spraying.filter((n) => n.verdict === miss);
    const turnable = missing.filter((n) => n.swivel !== null && n.swivel.inLeafAfter >= useful);
    const useless = missing.filter((n) => !turnable.includes(n));
    const lost = (n: NozzleState) => valueOf(miss === 'over-top' ? n.shares.overTop : n.shares.underSkirt) ?? 0;
    for (const alike of byTurn(turnable))
      out.push(finding(`${miss}-turn`, 'warn', { nozzles: names(alike), lost: share(meanOf(alike, lost)), turn: turnOf(alike), after: share(meanOf(alike, (n) => n.swivel!.inLeafAfter)) }, ['duga-2015'], 'setting.nozzles'));
    if (useless.length > 0)
      out.push(finding(`${miss}-shut`, 'warn', { nozzles: names(useless), lost: share(meanOf(useless, lost)) }, ['lwk-nrw'], 'setting.nozzles'));
  }
  const partly = spraying.filter((n) => n.verdict === 'in-leaf' && n.swivel !== null && n.swivel.inLeafAfter - (valueOf(n.shares.inLeaf) ?? 0) >= 0.15);
  for (const alike of byTurn(partly))
    out.push(finding('turn-gains', 'note', { nozzles: names(alike), turn: turnOf(alike), now: share(meanOf(alike, (n) => valueOf(n.shares.inLeaf) ?? 0)), after: share(meanOf(alike, (n) => n.swivel!.inLeafAfter)) }, ['duga-2015'], 'setting.nozzles'));
  const missed = sprayer.nozzles.filter((n) => !n.open && n.would === 'in-leaf' && (valueOf(n.shares.inLeaf) ?? 0) >= 0.75);
  if (missed.length > 0) out.push(finding('shut-in-leaf', 'note', { nozzles: names(missed) }, [], 'setting.nozzles'));
  if (!isRefused(sprayer.inLeaf) && sprayer.inLeaf.value >= 0.9) out.push(finding('well-aimed', 'good', { share: share(sprayer.inLeaf.value) }, ['geometry']));

  const side = (s: 'left' | 'right') => sprayer.nozzles.filter((n) => n.spraying && n.position.side === s).reduce((sum, n) => sum + (valueOf(n.flow) ?? 0), 0);
  const [left, right] = [side('left'), side('right')];
  if (left > 0 && right > 0 && Math.abs(left - right) / Math.max(left, right) > 0.1)
    out.push(finding('sides-differ', 'warn', { left: { value: left, unit: 'L/min' }, right: { value: right, unit: 'L/min' } }, ['habit'], 'setting.nozzles'));
  return out.concat(flowFindings(spraying, sprayer));
}

function flowFindings(spraying: readonly NozzleState[], sprayer: Result['sprayer']): Finding[] {
  const out: Finding[] = [];
  const bar = (value: number) => ({ value, unit: 'bar' as const });
  const unknown = spraying.filter((n) => isRefused(n.flow));
  if (unknown.length > 0) out.push(finding('nozzle-unknown', 'stop', { nozzles: names(unknown) }, [], 'setting.nozzles'));
  const P = sprayer.pressure.value;
  const { machine, speed } = sprayer;
  if (P < machine.pressureMinBar || P > machine.pressureMaxBar)
    out.push(finding('pressure-outside-machine', 'stop', { pressure: bar(P), least: bar(machine.pressureMinBar), most: bar(machine.pressureMaxBar) }, [], 'setting.pressureBar'));
  const tables = new Map(spraying.filter((n) => n.table && (P < n.table.pressureMinBar || P > n.table.pressureMaxBar)).map((n) => [n.table!.id, n.table!]));
  for (const t of tables.values())
    out.push(finding('pressure-outside-nozzle', 'warn', { table: t.name, pressure: bar(P), least: bar(t.pressureMinBar), most: bar(t.pressureMaxBar) }, [], 'setting.pressureBar'));
  if (speed.value < machine.speedMinKmH || speed.value > machine.speedMaxKmH)
    out.push(finding('speed-outside-machine', 'warn', { speed: amount(speed), least: { value: machine.speedMinKmH, unit: 'km/h' }, most: { value: machine.speedMaxKmH, unit: 'km/h' } }, [], 'setting.speedKmH'));
  return out;
}

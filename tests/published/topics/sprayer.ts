import { flowAt, nozzleFlow } from '#core/sprayer/flow.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { given, refused, type Answer } from '#core/working/answer.ts';
import { job, need, type Call, type Inputs } from '../../support/published.ts';

const none = refused('absent', '');
const towardsWanted = (i: Inputs, kind: 'keep' | 'speed' | 'pressure' | 'size') => job(i).options.find((o) => o.against === 'wanted')?.rows.find((r) => r.option.kind === kind)?.option;
const iso = (i: Inputs): Answer => {
  const size = ISO_10625.sizes.find((s) => s.id === i.size);
  return size ? nozzleFlow(ISO_10625, size, given(need(i, 'pressure'), 'bar'), given(1, '1')) : none;
};

export const sprayer: Record<string, Call> = {
  volume: (i) => job(i).sprayer.volume,
  flow: (i) => job(i).sprayer.flow,
  one_nozzle: (i) => job(i).sprayer.nozzles[0]?.flow ?? none,
  work_rate: (i) => job(i).sprayer.workRate,
  pace: (i) => job(i).sprayer.pace,
  width_served: (i) => job(i).pass.width,
  flow_for_wanted: (i) => towardsWanted(i, 'pressure')?.flow ?? none,
  pressure_for_wanted: (i) => towardsWanted(i, 'pressure')?.pressure ?? none,
  speed_for_wanted: (i) => towardsWanted(i, 'speed')?.speed ?? none,
  iso_flow: iso,
  /** Water flow over the liquid's at one pressure. */
  density_factor: (i) => {
    const size = ISO_10625.sizes[0]!;
    return flowAt(ISO_10625, size, 10, 1) / flowAt(ISO_10625, size, 10, need(i, 'specific_gravity'));
  },
  liquid_flow: (i) => {
    const size = ISO_10625.sizes.find((s) => s.id === '03');
    return size ? nozzleFlow(ISO_10625, size, given(need(i, 'pressure'), 'bar'), given(need(i, 'specific_gravity'), '1')) : none;
  },
  printed_flow: (i) => {
    const points = (i.points as [number, number][]).map(([pressureBar, flowLPerMin]) => ({ pressureBar, flowLPerMin }));
    const table = { ...ISO_10625, id: 'printed', sizes: [{ id: 'x', flowLPerMin: points[0]!.flowLPerMin, points }] };
    return nozzleFlow(table, table.sizes[0]!, given(need(i, 'pressure'), 'bar'), given(1, '1'));
  }
};

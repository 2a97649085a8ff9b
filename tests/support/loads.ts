import type { Label } from '#core/dose/types.ts';
import { loadsState, type Measured } from '#core/mix/loads.ts';
import type { LoadsState } from '#core/mix/state.ts';
import type { Mix } from '#core/mix/types.ts';
import type { Block } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Machine } from '#core/sprayer/types.ts';
import type { AssumptionValues } from '#core/working/assumption.ts';
import { document, label, table } from './sample.ts';

export interface Case {
  readonly mix?: Mix;
  /** Of the block, ha; null where it is not entered. */
  readonly areaHa?: number | null;
  readonly block?: Partial<Block>;
  readonly tankL?: number;
  /** null where it is not entered. */
  readonly residualL?: number | null;
  readonly labels?: readonly Partial<Label>[];
  readonly measured?: Measured;
  /** L/ha; 6 km/h in 4 m rows. */
  readonly volume?: number;
  readonly machine?: Partial<Machine>;
  readonly assumptions?: AssumptionValues;
}

/** 6 ha at 500 L/ha from a tank of 1500 L that keeps 20 L; the reference's example of §8.1 unless changed. */
export function loads({ mix = {}, areaHa = 6, block = {}, tankL = 1500, residualL = 20, labels = [{ rate: 1.2 }], measured, volume = 500, machine = {}, assumptions = {} }: Case = {}): LoadsState {
  const flow = (volume * 6 * 4) / 600;
  const written = {
    ...document({
      tables: [table(flow / 16)],
      setting: { nozzles: ['L', 'R'].flatMap((s) => Array.from({ length: 8 }, (_, n) => ({ position: `${s}${n + 1}`, table: 'own', size: 'x' }))) },
      machine: { tankL, ...(residualL === null ? {} : { residualL }), ...machine },
      assumptions,
      block: { ...(areaHa === null ? {} : { areaHa }), ...(labels.length ? { label: 'p1' } : {}), ...block },
      rung: { mix }
    }),
    labels: labels.map((l, i) => label({ id: `p${i + 1}`, name: `Product ${i + 1}`, ...l }))
  };
  const result = evaluate(written, 'block', 'now');
  if ('kind' in result) throw new Error(result.code);
  return loadsState(written, result, measured);
}

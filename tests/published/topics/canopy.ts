import { job, read, type Call } from '../../support/published.ts';

const figure = (symbol: keyof ReturnType<typeof job>['canopy']['figures']): Call => (i) => job(i).canopy.figures[symbol];

export const canopy: Record<string, Call> = {
  trv_ground: figure('TRVg'),
  trv_crown: figure('TRVc'),
  trv_outline: figure('TRVs'),
  lwa: figure('LWA'),
  row_length: figure('RL'),
  ucr: figure('UCR'),
  lai: figure('LAI'),
  lad: figure('LAD'),
  us_density: figure('k'),
  shape_factor: figure('s'),
  filled: figure('f'),
  crown_height: figure('h'),
  /** Relative standard error of the crown's volume. */
  cv_of_volume: (i) => {
    const r = job(i);
    const trv = r.canopy.figures.TRVc;
    const trees = read(i, 'trees') ?? 1;
    return (r.intervals.get('TRVc')?.standardError ?? NaN) / ('value' in trv ? trv.value : NaN) / Math.sqrt(trees);
  }
};

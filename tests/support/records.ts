import type { WorkRecord } from '#core/record/types.ts';

/** Invented records. */
export const calibration = (more: Partial<Extract<WorkRecord, { kind: 'calibration' }>> = {}): WorkRecord => ({
  id: 'c1',
  kind: 'calibration',
  block: 'block',
  at: '2031-04-02T09:15:00+02:00',
  fields: { date: '2031-04-02', machine: 'Arc', speedKmH: 5.4, speedRuns: '100 m 66.8 s out\n100 m 66.5 s back', volumeLPerHa: 559 },
  ...more
});

export const treatment = (more: Partial<Extract<WorkRecord, { kind: 'treatment' }>> = {}): WorkRecord => ({
  id: 't1',
  kind: 'treatment',
  block: 'block',
  at: '2031-05-12T21:40:00+02:00',
  fields: { date: '2031-05-12', startTime: '19:30', crop: 'apple', treatedAreaHa: 1.8, productName: 'Sample', productKgPerHa: 1.5 },
  ...more
});

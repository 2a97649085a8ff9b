import type { Label } from '../dose/types.ts';
import type { Formula } from '../working/answer.ts';
import { NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';

const exact = { sources: ['arithmetic'], certainty: 'exact' } as const;

/** A whole number that a division misses by a hair is meant as that number. */
const HAIR = 1e-9;

/** Area of a block by its rows, ha. */
export const ROWS_AREA = formula('rows-area', 'A', 'ha', { n: '1', L: 'm', R: 'm' }, 'n * L * R / 10000', (v) => (v.n * v.L * v.R) / 10_000, {
  ...exact,
  range: { n: POSITIVE, L: POSITIVE, R: POSITIVE }
});
/** Tank less what the pump cannot draw. */
export const USABLE_TANK = formula('usable-tank', 'Tu', 'L', { T: 'L', r: 'L' }, 'T - r', (v) => v.T - v.r, { ...exact, range: { T: POSITIVE, r: NOT_NEGATIVE } });
/** Land that one usable tank treats. */
export const AREA_PER_TANK = formula('area-per-tank', 'At', 'ha', { Tu: 'L', V: 'L/ha' }, 'Tu / V', (v) => v.Tu / v.V, { ...exact, range: { Tu: POSITIVE, V: POSITIVE } });
/** Mix that is sprayed on the area. */
export const MIX_FOR_AREA = formula('mix-for-area', 'U', 'L', { A: 'ha', V: 'L/ha' }, 'A * V', (v) => v.A * v.V, { ...exact, range: { A: POSITIVE, V: POSITIVE } });
/** The same and once what stays behind. */
export const MIX_TO_PREPARE = formula('mix-to-prepare', 'Um', 'L', { U: 'L', r: 'L' }, 'U + r', (v) => v.U + v.r, { ...exact, range: { U: POSITIVE, r: NOT_NEGATIVE } });
export const LOAD_COUNT = formula('load-count', 'Nl', '1', { U: 'L', Tu: 'L' }, 'ceil(U / Tu)', (v) => Math.ceil(v.U / v.Tu - HAIR), { ...exact, range: { U: POSITIVE, Tu: POSITIVE } });
export const FULL_LOADS = formula('full-loads', 'Nf', '1', { U: 'L', Tu: 'L' }, 'floor(U / Tu)', (v) => Math.floor(v.U / v.Tu + HAIR), { ...exact, range: { U: POSITIVE, Tu: POSITIVE } });
export const LAST_LOAD = formula('last-load', 'Ul', 'L', { U: 'L', Nf: '1', Tu: 'L' }, 'U - Nf * Tu', (v) => v.U - v.Nf * v.Tu, { ...exact, range: { U: POSITIVE, Nf: NOT_NEGATIVE, Tu: POSITIVE } });
export const EQUAL_LOAD = formula('equal-load', 'Ul', 'L', { U: 'L', Nl: '1' }, 'U / Nl', (v) => v.U / v.Nl, { ...exact, range: { U: POSITIVE, Nl: POSITIVE } });
/** Land that one load treats. */
export const LOAD_AREA = formula('load-area', 'Al', 'ha', { Ul: 'L', V: 'L/ha' }, 'Ul / V', (v) => v.Ul / v.V, { ...exact, range: { Ul: NOT_NEGATIVE, V: POSITIVE } });

const doseUnit = { kg: 'kg/ha', L: 'Lprod/ha' } as const;
const amountUnit = { kg: 'kg', L: 'Lprod' } as const;
const strengthUnit = { kg: 'kg/hL', L: 'Lprod/hL' } as const;
const both = <K extends string>(make: (unit: Label['unit']) => Formula<K>): Record<Label['unit'], Formula<K>> => ({ kg: make('kg'), L: make('L') });

/** Product for a piece of land: of one load, or of all. */
export const PRODUCT_FOR_AREA = both((u) =>
  formula(`product-for-area-${u}`, 'm', amountUnit[u], { D: doseUnit[u], A: 'ha' }, 'D * A', (v) => v.D * v.A, { ...exact, range: { D: NOT_NEGATIVE, A: NOT_NEGATIVE } })
);
/** Product in the mix that stays behind. */
export const PRODUCT_LEFT = both((u) =>
  formula(`product-left-${u}`, 'mr', amountUnit[u], { M: strengthUnit[u], r: 'L' }, 'M * r / 100', (v) => (v.M * v.r) / 100, { ...exact, range: { M: NOT_NEGATIVE, r: NOT_NEGATIVE } })
);
/** What the mix that stays behind is of the mix that is sprayed. */
export const OVER_ORDERED = formula('over-ordered', 'S', '%', { r: 'L', U: 'L' }, '100 * r / U', (v) => (100 * v.r) / v.U, { ...exact, range: { r: NOT_NEGATIVE, U: POSITIVE } });

/** Water that dilutes what stays behind tenfold; the standard asks that the rinse tank hold that much, or a tenth of the tank. */
export const RINSE_TENFOLD = formula('rinse-tenfold', 'w', 'L', { r: 'L' }, '10 * r', (v) => 10 * v.r, { sources: ['iso-16119-3'], range: { r: NOT_NEGATIVE } });
export const RINSE_TENTH = formula('rinse-tenth', 'w', 'L', { T: 'L' }, 'T / 10', (v) => v.T / 10, { sources: ['iso-16119-3'], range: { T: POSITIVE } });
/** Share of the mix's strength that is left after rinsing with w in k equal parts, each mixed through and sprayed out. */
export const RINSE_LEFT = formula('rinse-left', 'S', '%', { r: 'L', w: 'L', k: '1' }, '100 * (r / (r + w / k))^k', (v) => 100 * (v.r / (v.r + v.w / v.k)) ** v.k, {
  sources: ['arithmetic'],
  certainty: 'derived',
  range: { r: POSITIVE, w: NOT_NEGATIVE, k: [1, 10] }
});

/** Way driven along the rows. */
export const WAY = formula('way-along-rows', 'X', 'm', { p: '1', L: 'm' }, 'p * L', (v) => v.p * v.L, { sources: ['geometry'], certainty: 'derived', range: { p: POSITIVE, L: POSITIVE } });
/** Flow that meets one row face: the total over the faces of a full pass. */
export const FACE_FLOW = formula('face-flow', 'qf', 'L/min', { V: 'L/ha', v: 'km/h', B: 'm', i: '1' }, 'V * v * B / (600 * i)', (v) => (v.V * v.v * v.B) / (600 * v.i), {
  sources: ['pat-gardonne'],
  certainty: 'derived',
  range: { V: NOT_NEGATIVE, v: POSITIVE, B: POSITIVE, i: POSITIVE }
});
/** Mix on so many row faces: 2·n·L·Qs/v', speed in m/min. */
export const FACES_MIX = formula('faces-mix', 'Uf', 'L', { F: '1', L: 'm', qf: 'L/min', v: 'km/h' }, 'F * L * qf * 60 / (1000 * v)', (v) => (v.F * v.L * v.qf * 60) / (1000 * v.v), {
  sources: ['geometry'],
  certainty: 'derived',
  range: { F: NOT_NEGATIVE, L: POSITIVE, qf: NOT_NEGATIVE, v: POSITIVE }
});
export const SPARE_SHARE = formula('spare-share', 'S', '%', { Fs: '1', F: '1' }, '100 * Fs / F', (v) => (100 * v.Fs) / v.F, { sources: ['geometry'], certainty: 'derived', range: { Fs: NOT_NEGATIVE, F: POSITIVE } });

const work = { sources: ['asabe-d497'], certainty: 'derived' } as const;
export const TIME_SPRAYING = formula('time-spraying', 'ts', 'h', { A: 'ha', C: 'ha/h' }, 'A / C', (v) => v.A / v.C, { ...work, range: { A: POSITIVE, C: POSITIVE } });
/** One-sided outer passes serve half the width: what is driven beyond the area's own way. */
export const TIME_OUTER = formula('time-outer', 'to', 'h', { X: 'm', A: 'ha', B: 'm', v: 'km/h' }, 'max(X - 10000 * A / B, 0) / (1000 * v)', (v) => Math.max(v.X - (10_000 * v.A) / v.B, 0) / (1000 * v.v), {
  sources: ['geometry'],
  certainty: 'derived',
  range: { X: POSITIVE, A: POSITIVE, B: POSITIVE, v: POSITIVE }
});
export const TIME_TURNING = formula('time-turning', 'tt', 'h', { j: '1', T1: 's' }, 'j * T1 / 3600', (v) => (v.j * v.T1) / 3600, { ...work, range: { j: NOT_NEGATIVE, T1: NOT_NEGATIVE } });
export const TIME_FILLING = formula('time-filling', 'tf', 'h', { Nl: '1', T2: 'min' }, 'Nl * T2 / 60', (v) => (v.Nl * v.T2) / 60, { ...work, range: { Nl: NOT_NEGATIVE, T2: NOT_NEGATIVE } });
export const TIME_IN_ALL = formula('time-in-all', 't', 'h', { ts: 'h', to: 'h', tt: 'h', tf: 'h' }, 'ts + to + tt + tf', (v) => v.ts + v.to + v.tt + v.tf, { ...work });
export const RATE_EFFECTIVE = formula('work-rate-effective', 'Ce', 'ha/h', { A: 'ha', t: 'h' }, 'A / t', (v) => v.A / v.t, { ...work, range: { A: POSITIVE, t: POSITIVE } });
export const FIELD_EFFICIENCY = formula('field-efficiency', 'E', '%', { Ce: 'ha/h', C: 'ha/h' }, '100 * Ce / C', (v) => (100 * v.Ce) / v.C, { ...work, range: { Ce: POSITIVE, C: POSITIVE } });

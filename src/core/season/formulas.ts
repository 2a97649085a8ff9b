import type { Label } from '../dose/types.ts';
import type { Unit } from '../quantity/units.ts';
import { NOT_NEGATIVE, POSITIVE } from '../working/figure.ts';
import { formula } from '../working/formula.ts';

/** What a season adds up: water and product on a hectare, mix and product on the block, tank fills. */
export const SEASON_KINDS = ['water', 'mix', 'loads', 'dose-kg', 'dose-L', 'product-kg', 'product-L'] as const;
export type SeasonKind = (typeof SEASON_KINDS)[number];

export const SEASON_UNITS = { water: 'L/ha', mix: 'L', loads: '1', 'dose-kg': 'kg/ha', 'dose-L': 'Lprod/ha', 'product-kg': 'kg', 'product-L': 'Lprod' } as const satisfies Record<SeasonKind, Unit>;

const exact = { sources: ['arithmetic'], certainty: 'exact' } as const;
const each = <F>(make: (kind: SeasonKind, unit: Unit) => F): Readonly<Record<SeasonKind, F>> =>
  Object.fromEntries(SEASON_KINDS.map((kind) => [kind, make(kind, SEASON_UNITS[kind])])) as Record<SeasonKind, F>;

/** The treatments of one rung together: so many times the same. */
export const TREATMENTS = each((kind, unit) => formula(`treatments-${kind}`, 'Xn', unit, { n: '1', X: unit }, 'n * X', (v) => v.n * v.X, { ...exact, range: { n: NOT_NEGATIVE, X: NOT_NEGATIVE } }));

/** The rungs of a season together; the inputs are named by the rungs' ids. */
export const SEASON_SUM = each((kind, unit) =>
  formula(`season-${kind}`, 'Xs', unit, {} as Record<string, Unit>, 'sum of stages', (v) => Object.values(v).reduce((s, x) => s + x, 0), exact)
);

/** What adapting saves against one setting for the whole season; below zero where it takes more. */
export const SAVING = each((kind, unit) => formula(`season-saving-${kind}`, 'Xd', unit, { Xf: unit, Xa: unit }, 'Xf - Xa', (v) => v.Xf - v.Xa, { ...exact, range: { Xf: NOT_NEGATIVE, Xa: NOT_NEGATIVE } }));
export const SAVING_SHARE = each((kind, unit) =>
  formula(`season-share-${kind}`, 'S', '%', { Xf: unit, Xa: unit }, '100 * (Xf - Xa) / Xf', (v) => (100 * (v.Xf - v.Xa)) / v.Xf, { ...exact, range: { Xf: POSITIVE, Xa: NOT_NEGATIVE } })
);

export const doseKind = (unit: Label['unit']): SeasonKind => (unit === 'kg' ? 'dose-kg' : 'dose-L');
export const productKind = (unit: Label['unit']): SeasonKind => (unit === 'kg' ? 'product-kg' : 'product-L');

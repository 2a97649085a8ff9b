import * as F from '../../canopy/formulas.ts';
import type { CanopyState } from '../../canopy/canopy.ts';
import { outlineOf, sectionArea } from '../../canopy/outline.ts';
import { STRATEGIES } from '../strategies.ts';
import type { Strategy } from '../strategy.ts';
import type { Label } from '../types.ts';
import { FT2_PER_ACRE_M2_PER_HA, FT3_PER_ACRE_M3_PER_HA, GAL_PER_ACRE_L_PER_HA } from '../../quantity/constants.ts';
import { ASSUMPTIONS } from '../../setting/assumptions.ts';
import type { Formula } from '../../working/answer.ts';
import type { Assumption } from '../../working/assumption.ts';

/** What the table says, apart from how: the same plan is computed line by line and written as a statement for a database. */

/** Formulas of the canopy figures, each behind those that it needs. */
export const FIGURES_OF_CANOPY: readonly Formula[] = [
  F.CROWN_HEIGHT,
  F.TRV_GROUND,
  F.TRV_CROWN,
  F.SECTION_AREA,
  F.TRV_OUTLINE,
  F.LEAF_WALL,
  F.ROW_LENGTH,
  F.CANOPY_ROWS,
  F.LEAF_AREA_INDEX
];

const assumption = (id: string): Assumption => ASSUMPTIONS.get(id)!;
/** Stand where a line tells nothing else: density, L/m³, and leaf area density, m²/m³. */
export const US_DENSITY = assumption('canopy.us-density');
export const FULL_LEAF = assumption('canopy.full-leaf-density');
/** A table tells no stage, density class or outline: full leaf, medium and the default outline stand, as for a document that is silent. */
export const MULTIPLIER = assumption('canopy.multiplier-medium');
/** Both faces are treated. */
export const FACES = 2;
/** Share of the box that the section of the default outline fills. */
export const FILL = sectionArea(outlineOf({ heightM: 1, widthM: 1 }));

const SILENT = { bbch: undefined, densityClass: 'medium' } as unknown as CanopyState;
/** A strategy's own constants by symbol, chosen for a canopy that tells nothing of itself. */
export const constantsOf = (s: Strategy): Readonly<Record<string, Assumption>> => ({ ...s.constants, ...s.choose?.(SILENT) });

/** What can be asked of a strategy, beside its figures of the canopy. */
export type Says = 'water' | 'dilute' | 'index' | 'dose' | 'concentration';

/**
 * What a strategy says at all: water where it names some, dilute water where it knows it, a dose index always; with a label a dose, with
 * the water that is applied a concentration factor.
 */
export function saysOf(s: Strategy, { label, appliedLPerHa }: { readonly label?: Label | undefined; readonly appliedLPerHa?: unknown }): readonly Says[] {
  const says: Says[] = ['index'];
  const dilute = s.dilute !== undefined || (s.water !== undefined && s.waterKind === 'dilute');
  if (s.water) says.push('water');
  if (dilute) says.push('dilute');
  if (label && (dilute || label.basis !== 'per-100-l-dilute') && (label.basis !== 'percent-of-water' || label.referenceWaterLPerHa !== undefined)) says.push('dose');
  if (dilute && appliedLPerHa !== undefined) says.push('concentration');
  return says;
}

/** A column of figures: `formula` over the symbols of the strategy, or of the bare canopy where there is none; × `times` ÷ `per`. */
export interface Output {
  readonly name: string;
  readonly formula: Formula;
  readonly strategy?: Strategy;
  readonly times?: number;
  /** What one of the column's unit is in the formula's. */
  readonly per?: number;
}

/** A column of what a strategy says. */
export interface SaidOutput {
  readonly name: string;
  readonly strategy: Strategy;
  readonly says: Says;
}

function outputs(): readonly Output[] {
  const us = STRATEGIES.get('us-row-volume')!;
  const swiss = STRATEGIES.get('swiss-affine')!;
  const canopy = (name: string, formula: Formula, per?: number): Output => ({ name, formula, ...(per === undefined ? {} : { per }) });
  const first: Output[] = [
    canopy('trv_ground_m3_per_ha', F.TRV_GROUND),
    canopy('trv_ground_ft3_per_ac', F.TRV_GROUND, FT3_PER_ACRE_M3_PER_HA),
    canopy('trv_crown_m3_per_ha', F.TRV_CROWN),
    canopy('lwa_m2_per_ha', F.LEAF_WALL),
    canopy('lwa_ft2_per_ac', F.LEAF_WALL, FT2_PER_ACRE_M2_PER_HA),
    canopy('row_length_m_per_ha', F.ROW_LENGTH),
    canopy('ucr_per_ha', F.CANOPY_ROWS),
    { name: 'us_trv_water_l_per_ha', strategy: us, formula: us.water! },
    { name: 'us_trv_water_gal_per_ac', strategy: us, formula: us.water!, per: GAL_PER_ACRE_L_PER_HA },
    { name: 'swiss_dose_percent', strategy: swiss, formula: swiss.index, times: 100 },
    { name: 'swiss_water_l_per_ha', strategy: swiss, formula: swiss.water! }
  ];
  // Then what each other strategy says, in the order of the strategy table: its water, or its dose index where it names no water.
  const rest = [...STRATEGIES.values()].flatMap((strategy): Output[] => {
    const name = strategy.id.replaceAll('-', '_');
    if (strategy === us || strategy === swiss || strategy.descriptor === null) return [];
    return strategy.water
      ? [{ name: `${name}_water_l_per_ha`, strategy, formula: strategy.water }]
      : [{ name: `${name}_dose_index`, strategy, formula: strategy.index }];
  });
  return [...first, ...rest];
}

/** Figures of the canopy, then all that every strategy says. */
export function strategyOutputs(options: { readonly label?: Label | undefined; readonly appliedLPerHa?: unknown; readonly own?: readonly Strategy[] | undefined }): readonly (Output | SaidOutput)[] {
  const named = new Set<string>();
  const said = [...STRATEGIES.values(), ...(options.own ?? [])].flatMap((strategy): SaidOutput[] => {
    // Ids of the user's own may differ in what no name of a column has.
    let id = strategy.id.replaceAll(/[^A-Za-z0-9]+/g, '_').toLowerCase();
    while (named.has(id)) id += '_';
    named.add(id);
    const says = saysOf(strategy, options);
    const suffix = { water: 'water_l_per_ha', dilute: 'dilute_l_per_ha', index: 'dose_index', dose: options.label?.unit === 'kg' ? 'dose_kg_per_ha' : 'dose_l_per_ha', concentration: 'concentration_factor' } as const;
    return (['water', 'dilute', 'index', 'dose', 'concentration'] as const).flatMap((what) => (says.includes(what) ? [{ name: `${id}_${suffix[what]}`, strategy, says: what }] : []));
  });
  return [
    { name: 'trv_ground_m3_per_ha', formula: F.TRV_GROUND },
    { name: 'trv_crown_m3_per_ha', formula: F.TRV_CROWN },
    { name: 'trv_outline_m3_per_ha', formula: F.TRV_OUTLINE },
    { name: 'lwa_m2_per_ha', formula: F.LEAF_WALL },
    { name: 'row_length_m_per_ha', formula: F.ROW_LENGTH },
    { name: 'ucr_per_ha', formula: F.CANOPY_ROWS },
    { name: 'lai', formula: F.LEAF_AREA_INDEX },
    ...said
  ];
}

export const OUTPUTS = outputs();
export const FIGURE_NAMES = OUTPUTS.map((o) => o.name);
export const HEADER = ['block', ...FIGURE_NAMES].join(',');

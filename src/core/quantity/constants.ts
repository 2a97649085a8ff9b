/**
 * Exact conversion factors, by definition of the units (international foot, yard and pound 1959; US gallon 231 in³).
 * Each tells how many of the engine's unit are in one of these.
 */
export const FOOT_M = 0.3048;
export const MILE_M = 1609.344;
export const ACRE_M2 = 4046.8564224;
export const HECTARE_M2 = 10_000;
export const US_GALLON_L = 3.785411784;
/** Imperial gallon: 4.54609 L by definition (UK Weights and Measures Act 1985). */
export const IMPERIAL_GALLON_L = 4.54609;
export const US_FLUID_OUNCE_L = US_GALLON_L / 128;
export const IMPERIAL_FLUID_OUNCE_L = IMPERIAL_GALLON_L / 160;
export const POUND_KG = 0.45359237;
/** Pound-force per square inch in bar: 0.45359237 kg × 9.80665 m/s² / (0.0254 m)² / 100 000. */
export const PSI_BAR = (POUND_KG * 9.80665) / (0.0254 * 0.0254) / 100_000;

export const CUBIC_FOOT_M3 = FOOT_M ** 3;
export const ACRE_HA = ACRE_M2 / HECTARE_M2;
/** 1 US gal/acre in L/ha: 9.353956… */
export const GAL_PER_ACRE_L_PER_HA = US_GALLON_L / ACRE_HA;
/** 1 ft³/acre in m³/ha: 0.0699724518… */
export const FT3_PER_ACRE_M3_PER_HA = CUBIC_FOOT_M3 / ACRE_HA;
/** 1 ft²/acre in m²/ha: 1/4.356. */
export const FT2_PER_ACRE_M2_PER_HA = (FOOT_M * FOOT_M) / ACRE_HA;
/** 1 US gal per 1000 ft³ in L/m³: 0.133680556… */
export const GAL_PER_1000FT3_L_PER_M3 = US_GALLON_L / (1000 * CUBIC_FOOT_M3);
export const MPH_M_PER_S = MILE_M / 3600;
export const MPH_KM_PER_H = MILE_M / 1000;
/** 1 cubic foot per minute in m³/h. */
export const CFM_M3_PER_H = CUBIC_FOOT_M3 * 60;

-- Rowtailor: canopy figures, water and dose index by strategy, one row a canopy. Volumes count the filled fraction.
-- Dose indices are before any label rule; the label and local law decide. Works behind the formulas: docs/generated/sources.md.
WITH rowtailor_measured AS (
  SELECT
    CAST(c.`block` AS STRING) AS block,
    TRY_CAST(c.`row_spacing_m` AS DOUBLE) AS row_spacing_m,
    TRY_CAST(c.`tree_height_m` AS DOUBLE) AS tree_height_m,
    COALESCE(TRY_CAST(c.`skirt_height_m` AS DOUBLE), 0e0) AS skirt_height_m,
    TRY_CAST(c.`canopy_width_m` AS DOUBLE) AS canopy_width_m,
    TRY_CAST(c.`density_gal_per_1000ft3` AS DOUBLE) AS density_gal_per_1000ft3,
    TRY_CAST(c.`lad_m2_per_m3` AS DOUBLE) AS lad_m2_per_m3,
    COALESCE(TRY_CAST(c.`filled_fraction` AS DOUBLE), 1e0) AS filled_fraction
  FROM `canopies` AS c
  WHERE TRIM(CAST(c.`block` AS STRING)) <> ''
    AND LENGTH(CAST(c.`block` AS STRING)) <= 200
    AND TRY_CAST(c.`row_spacing_m` AS DOUBLE) BETWEEN 0.5e0 AND 20e0
    AND TRY_CAST(c.`tree_height_m` AS DOUBLE) BETWEEN 0.2e0 AND 20e0
    AND (c.`skirt_height_m` IS NULL OR TRY_CAST(c.`skirt_height_m` AS DOUBLE) BETWEEN 0e0 AND 15e0)
    AND TRY_CAST(c.`canopy_width_m` AS DOUBLE) BETWEEN 0.1e0 AND 12e0
    AND (c.`density_gal_per_1000ft3` IS NULL OR TRY_CAST(c.`density_gal_per_1000ft3` AS DOUBLE) BETWEEN 0.1e0 AND 3e0)
    AND (c.`lad_m2_per_m3` IS NULL OR TRY_CAST(c.`lad_m2_per_m3` AS DOUBLE) BETWEEN 0.05e0 AND 15e0)
    AND (c.`filled_fraction` IS NULL OR TRY_CAST(c.`filled_fraction` AS DOUBLE) BETWEEN 0e0 AND 1e0)
    AND COALESCE(TRY_CAST(c.`skirt_height_m` AS DOUBLE), 0e0) < TRY_CAST(c.`tree_height_m` AS DOUBLE)
),
rowtailor_constants AS (
  SELECT
    *,
    2e0 AS faces_treated, -- 1; both faces of the row are treated
    1e0 AS us_row_volume_season_full, -- 1; published; rutgers-1998
    0.09357638888888886e0 AS canopy_us_density, -- L/m3; published; penn-state-tree-fruit, landers-trv
    0.5e0 AS swiss_affine_least_share, -- 1; from memory, check it; ruegg-viret-1999
    10000e0 AS swiss_affine_reference_volume, -- m3/ha; published; arenenberg-2011
    0.02e0 AS swiss_affine_water_slope, -- L/m3; from memory, check it; ruegg-viret-1999
    200e0 AS swiss_affine_water_intercept, -- L/ha; from memory, check it; ruegg-viret-1999
    3.5e0 AS reference_row_spacing, -- m; assumed, yours to change; habit
    300e0 AS crown_height_water, -- L/ha/m; assumed, yours to change; bvl-2012
    2.8e0 AS reference_crown_height, -- m; assumed, yours to change; habit
    0.1e0 AS row_volume_water, -- L/m3; published; wilton-nz
    0.85e0 AS canopy_multiplier_medium, -- 1; published; canada-trv
    3343e0 AS metric_multiplier_standard_water, -- L/ha; published; canada-trv
    35676e0 AS metric_multiplier_standard_volume, -- m3/ha; published; canada-trv
    10e0 AS unit_canopy_row_volume, -- L/UCR; from memory, check it; furness-1998, wilton-nz
    25e0 AS row_distance_volume, -- L/100m/m; published; furness-thompson
    0.125e0 AS stage_volume_medium, -- L/m3; published; bound-boucher
    0.9211999999999999e0 AS outline_fill, -- 1; share of the box that a trimmed wall's outline fills; assumed, as for a document without measured widths
    0.13e0 AS occupied_volume_water, -- L/m3; from memory, check it; chen-zhu-2012
    2e0 AS canopy_full_leaf_density, -- m2/m3; from memory, check it; habit
    0.7e0 AS leaf_area_deposit, -- uL/cm2; assumed, yours to change; furness-thompson
    0.25e0 AS leaf_area_recovery -- 1; published; herrington-1981
  FROM rowtailor_measured
),
rowtailor_figures_1 AS (
  SELECT
    *,
    10000e0 * tree_height_m * canopy_width_m * filled_fraction / row_spacing_m AS row_volume_ground, -- TRVg = 10000 * H * W * f / R; published; penn-state-tree-fruit, landers-trv
    tree_height_m - skirt_height_m AS crown_height, -- h = H - Hs; exact; geometry
    10000e0 / row_spacing_m AS row_length, -- RL = 10000 / R; exact; arithmetic
    COALESCE(density_gal_per_1000ft3 * 0.13368055555555552e0, canopy_us_density) AS us_density, -- L/m3; as told, else the default
    20000e0 * reference_crown_height / reference_row_spacing AS reference_leaf_wall, -- LWA0 = 20000 * h0 / R0; derived from published figures; toews-friessleben-2012
    COALESCE(lad_m2_per_m3, canopy_full_leaf_density) AS leaf_area_density -- m2/m3; as told, else the default
  FROM rowtailor_constants
),
rowtailor_figures_2 AS (
  SELECT
    *,
    10000e0 * crown_height * canopy_width_m * filled_fraction / row_spacing_m AS row_volume_crown, -- TRVc = 10000 * h * W * f / R; published; furness-1998, arenenberg-2011
    10000e0 * faces_treated * crown_height * filled_fraction / row_spacing_m AS leaf_wall_area, -- LWA = 10000 * n * h * f / R; published; toews-friessleben-2012
    100e0 * crown_height * canopy_width_m * filled_fraction / row_spacing_m AS unit_canopy_rows, -- UCR = 100 * h * W * f / R; published; furness-1998
    outline_fill * crown_height * canopy_width_m AS section_area -- A = s * h * W; derived from published figures; bound-boucher
  FROM rowtailor_figures_1
),
rowtailor_figures_3 AS (
  SELECT
    *,
    10000e0 * section_area * filled_fraction / row_spacing_m AS row_volume_outline -- TRVs = 10000 * A * f / R; published; bound-boucher
  FROM rowtailor_figures_2
),
rowtailor_figures_4 AS (
  SELECT
    *,
    leaf_area_density * row_volume_outline / 10000e0 AS leaf_area_index -- LAI = LAD * TRVs / 10000; derived from published figures; walklate-2003
  FROM rowtailor_figures_3
)
SELECT
  block,
  row_volume_ground AS trv_ground_m3_per_ha,
  row_volume_ground / 0.06997245179063362e0 AS trv_ground_ft3_per_ac,
  row_volume_crown AS trv_crown_m3_per_ha,
  leaf_wall_area AS lwa_m2_per_ha,
  leaf_wall_area / 0.2295684113865932e0 AS lwa_ft2_per_ac,
  row_length AS row_length_m_per_ha,
  unit_canopy_rows AS ucr_per_ha,
  us_row_volume_season_full * us_density * row_volume_ground AS us_trv_water_l_per_ha, -- V = g * k * TRVg; published; landers-trv, penn-state-tree-fruit, rutgers-1998
  (us_row_volume_season_full * us_density * row_volume_ground) / 9.353956228956228e0 AS us_trv_water_gal_per_ac, -- V = g * k * TRVg; published; landers-trv, penn-state-tree-fruit, rutgers-1998
  (swiss_affine_least_share + (1e0 - swiss_affine_least_share) * row_volume_crown / swiss_affine_reference_volume) * 100e0 AS swiss_dose_percent, -- I = e + (1 - e) * TRVc / TRV0; from memory, check it; swiss-register-2026, ruegg-viret-1999
  swiss_affine_water_slope * row_volume_crown + swiss_affine_water_intercept AS swiss_water_l_per_ha, -- V = b * TRVc + V0; from memory, check it; ruegg-viret-1999, arenenberg-2011
  row_length * reference_row_spacing / 10000e0 AS row_length_dose_index, -- I = RL * R0 / 10000; derived from published figures; walklate-2003
  crown_height_water * crown_height AS crown_height_water_l_per_ha, -- V = p * h; published; bvl-2012
  leaf_wall_area / reference_leaf_wall AS leaf_wall_dose_index, -- I = LWA / LWA0; derived from published figures; toews-friessleben-2012
  row_volume_water * row_volume_crown AS row_volume_water_l_per_ha, -- V = c * TRVc; published; wilton-nz
  canopy_multiplier_medium * metric_multiplier_standard_water * row_volume_ground / metric_multiplier_standard_volume AS metric_multiplier_water_l_per_ha, -- V = m * V0 * TRVg / TRV0; published; canada-trv
  unit_canopy_row_volume * unit_canopy_rows AS unit_canopy_row_water_l_per_ha, -- V = q * UCR; published; furness-1998
  row_distance_volume * crown_height * filled_fraction * row_length / 100e0 AS row_distance_water_l_per_ha, -- V = X * h * f * RL / 100; published; furness-thompson
  stage_volume_medium * row_volume_outline AS stage_volume_water_l_per_ha, -- V = z * TRVs; published; bound-boucher
  occupied_volume_water * row_volume_outline AS occupied_volume_water_l_per_ha, -- V = c * TRVs; from memory, check it; chen-zhu-2012
  100e0 * leaf_area_index * leaf_area_deposit / leaf_area_recovery AS leaf_area_water_l_per_ha -- V = 100 * LAI * d / y; derived from published figures; walklate-2003, herrington-1981
FROM rowtailor_figures_4;

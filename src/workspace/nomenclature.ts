import '#core/canopy/growth/propose.ts';
import '#core/canopy/photo/density.ts';
import '#core/check/check.ts';
import '#core/fitting/figures.ts';
import '#core/mix/active.ts';
import '#core/mix/loads.ts';
import '#core/season/season.ts';
import '#core/setting/evaluate.ts';

/** Every formula of the engine, whichever station it belongs to. */
export { formulas } from '#core/working/formula.ts';

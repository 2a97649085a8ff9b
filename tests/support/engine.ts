/** The whole engine and all its words, for tests that look at every formula and every code. Imported for its effect. */
import '#core/canopy/photo/density.ts';
import '#core/check/check.ts';
import '#core/setting/evaluate.ts';
import '#words/deep.ts';
import '#words/headland/join.ts';
import '#words/row/join.ts';
import '#words/season/join.ts';
import '#words/spray/join.ts';
import '#words/strategies/join.ts';
import '#core/mix/loads.ts';
import '#core/mix/active.ts';
import '#core/canopy/growth/propose.ts';
import '#core/fitting/figures.ts';
import '#core/season/season.ts';

import { advise } from '../advice/advise.ts';
import { DELIVERED, MIX_STRENGTH, type Product } from '../dose/product.ts';
import { isWater } from '../dose/water.ts';
import { optionsFor } from '../sprayer/options.ts';
import { isRefused, type Answer, type Refused } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import type { Document } from './document.ts';
import type { Advised, OptionRow, OptionSet, Result } from './result.ts';
import { resultOf } from './result-of.ts';

/** One block at one rung of a document with what follows from its result. Refuses as `resultOf` does. */
export function evaluate(document: Document, blockId: string, rungId: string): Advised | Refused {
  const result = resultOf(document, blockId, rungId);
  return 'kind' in result ? result : advised(result);
}

/** What follows from a result: ways to the water, and findings. */
export const advised = (result: Result): Advised => ({ ...result, options: optionSets(result), findings: advise(result) });

/** After a change, what would hold the saved setting's volume; and what would bring the wanted water, where it is not there yet. */
function optionSets({ sprayer, saved, water: { wanted }, pass, product }: Result): readonly OptionSet[] {
  const sets: OptionSet[] = [];
  const add = (against: OptionSet['against'], target: Answer) => {
    if (!isWater(target) || isRefused(sprayer.volume) || Math.abs(sprayer.volume.value / target.value - 1) < 0.005) return;
    sets.push({ against, target, rows: optionsFor(sprayer, target, pass).map((option) => consequence(option, target, product)) });
  };
  if (saved) add('saved', saved.volume);
  add('wanted', wanted);
  return sets;
}

function consequence(option: OptionRow['option'], target: Answer, dosed: Product | null): OptionRow {
  if (!dosed) return { option, sameMix: null, newMix: null, label: null };
  const { label, perHa: dose, labelDose } = dosed;
  const u = label.unit;
  const sameMix = derive(DELIVERED[u], { M: derive(MIX_STRENGTH[u], { D: dose, V: target }), V: option.volume });
  const newMix = derive(MIX_STRENGTH[u], { D: dose, V: option.volume });
  let stand: OptionRow['label'] = null;
  if (!isRefused(sameMix) && !isRefused(dose)) {
    const ratio = sameMix.value / dose.value;
    // Lowering needs the user's word that label or law allow it, and stops at the user's own floor.
    const floor = (label.floor ?? 0) * (isRefused(labelDose) ? 0 : labelDose.value);
    const lowered = (label.adaptation ?? 'none') === 'none' || sameMix.value < floor * (1 - 1e-9) ? 'below' : 'lowered';
    stand = ratio > 1.005 ? 'above' : ratio < 0.995 ? lowered : 'fine';
  }
  return { option, sameMix, newMix, label: stand };
}

import type { OptionRow, OptionSet } from '#core/setting/result.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Option, Remark, SizeChange } from '#core/sprayer/options.ts';
import { amount } from '#core/advice/finding.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { fill } from './fill.ts';
import { OPTION_SETS, OPTION_TEXT, OPTIONS, REMARKS, STANDINGS } from './en/options.ts';
import { formatShare } from './format.ts';
import { extend, language, look } from './language.ts';
import { refusalSentence } from './sentences.ts';

extend({ options: OPTIONS, optionSets: OPTION_SETS, ...OPTION_TEXT, remarks: REMARKS, standings: STANDINGS });

/** One option in words. */
export interface OptionWords {
  /** "By speed" */
  readonly name: string;
  /** "By speed: 4.6 km/h" */
  readonly title: string;
  /** Volume and work rate, or why it is not possible. */
  readonly consequence: string;
  /** Sizes to be changed, one line for each pair of sizes. */
  readonly sizes: readonly string[];
  /** What becomes of the product; '' where no label is known. */
  readonly product: string;
  readonly standing: string;
  readonly remarks: readonly string[];
}

/** "To hold the saved 552 L/ha" */
export const optionSetTitle = (set: OptionSet, system: UnitSystem): string =>
  fill(language().optionSets[set.against], { target: amount(set.target) }, system);

export function optionWords(row: OptionRow, set: OptionSet, system: UnitSystem): OptionWords {
  const words = language();
  const { option } = row;
  const lost = [option.speed, option.pressure, option.flow, option.volume].find(isRefused);
  const known = (a: Answer | null): a is Answer => a !== null && !isRefused(a);
  const product = known(row.sameMix) && known(row.newMix);
  return {
    name: words.options[option.kind].plain,
    title: lost ? words.options[option.kind].plain : optionTitle(option, system),
    consequence: lost
      ? fill(words.optionRefused, { reason: refusalSentence(lost, system) }, system)
      : fill(words.optionLine, { volume: amount(option.volume), rate: amount(option.workRate) }, system),
    sizes: sizeLines(option.sizes, system),
    product: product ? fill(words.optionProduct, { target: amount(set.target), same: amount(row.sameMix!), mix: amount(row.newMix!) }, system) : '',
    standing: row.label === null ? '' : words.standings[row.label],
    remarks: option.remarks.map((r) => remarkSentence(r, system))
  };
}

const optionTitle = (option: Option, system: UnitSystem): string =>
  fill(language().options[option.kind].title, { speed: amount(option.speed), pressure: amount(option.pressure) }, system);

function sizeLines(sizes: readonly SizeChange[], system: UnitSystem): string[] {
  const groups = new Map<string, SizeChange[]>();
  for (const s of sizes) {
    const key = `${s.table}|${s.from}|${s.to}`;
    groups.set(key, [...(groups.get(key) ?? []), s]);
  }
  return [...groups.values()].map((g) => fill(language().optionSizes, { nozzles: g.map((s) => s.position), from: g[0]!.from, to: g[0]!.to }, system));
}

/** Something that stands against an option, or that it brings along. */
export function remarkSentence(remark: Remark, system: UnitSystem): string {
  const template = look(language().remarks, remark.code);
  if (template === undefined) return remark.code;
  const { limit, change } = remark.parameters;
  const unit = remark.code.endsWith('speed-range') ? 'km/h' : 'bar';
  const signed = (share: number) => (share > 0 ? '+' : '') + formatShare(share);
  return fill(
    template,
    { ...(limit === undefined ? {} : { limit: { value: Number(limit), unit } }), ...(change === undefined ? {} : { change: signed(Number(change)) }) },
    system
  );
}

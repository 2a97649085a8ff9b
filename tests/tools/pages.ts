/** Pages of docs, made from the engine's own declarations, so that they cannot disagree with it. `npm run docs` writes them. */
import type { Source, SourceId } from '#core/sources/bibliography.ts';
import { ALL_SOURCES } from '#core/sources/cite.ts';
import { PHOTO_ASSUMPTIONS } from '#core/canopy/photo/assumptions.ts';
import { SEASON_ASSUMPTIONS } from '#core/season/assumptions.ts';
import { SPRAY_ASSUMPTIONS } from '#core/spray/assumptions.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import '../support/engine.ts';
import { hostingPage } from './hosting.ts';
import { STRATEGIES } from '#core/dose/strategies.ts';
import type { Strategy } from '#core/dose/strategy.ts';
import { formulas } from '#core/working/formula.ts';
import { display } from '#core/quantity/units.ts';
import { nomenclatureOf } from '#words/nomenclature.ts';
import { assumptionWords, certaintyWord, formulaTitle, strategyWords, validitySentence } from '#words/naming.ts';

const row = (cells: readonly (string | number)[]): string => `| ${cells.map((c) => String(c).replaceAll('|', '\\|')).join(' | ')} |`;
const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string => [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
const page = (title: string, intro: string, body: string): string => `# ${title}\n\n${intro}\n\nMade from the engine by \`npm run docs\`; do not edit.\n\n${body}\n`;
const unit = (u: Parameters<typeof display>[0]): string => display(u, 'metric').symbol || '–';
const cite = (ids: readonly SourceId[]): string => ids.map((id) => `[${id}](sources.md#${id})`).join(', ');

function formulaPage(): string {
  const rows = [...formulas().values()].map((f) => [f.id, formulaTitle(f.id), `${f.symbol} = \`${f.expression}\``, unit(f.unit), certaintyWord(f.certainty), cite(f.sources)]);
  return page('Formulas', 'Every formula of the engine: id, result, arithmetic, unit, how sure it is, where it is from. A test evaluates each expression with an independent parser and compares it with the code.', table(['id', 'gives', 'formula', 'unit', 'certainty', 'sources'], rows));
}

function nomenclature(): string {
  const rows = nomenclatureOf(formulas().values()).map((s) => [s.symbol, s.meaning, unit(s.unit), s.usedBy.length > 4 ? `${s.usedBy.slice(0, 3).join(', ')} and ${s.usedBy.length - 3} more` : s.usedBy.join(', ')]);
  return page('Nomenclature', 'Symbols of the formulas. A symbol that means different things in different formulas stands once for each meaning.', table(['symbol', 'meaning', 'unit', 'used by'], rows));
}

function assumptionPage(): string {
  const rows = [...ASSUMPTIONS.values(), ...SEASON_ASSUMPTIONS, ...PHOTO_ASSUMPTIONS, ...SPRAY_ASSUMPTIONS].map((a) => [a.id, assumptionWords(a.id).label, Number(a.value.toPrecision(6)), `${Number(a.least.toPrecision(4))}–${Number(a.most.toPrecision(4))}`, unit(a.unit), certaintyWord(a.certainty), cite(a.sources)]);
  return page('Assumptions', 'Every constant that rests on memory, habit or choice, and published constants that a user may want to change. Set any of them in a document under `assumptions`, or on the Row station.', table(['id', 'what', 'default', 'range', 'unit', 'certainty', 'sources'], rows));
}

function strategyPage(): string {
  const one = (s: Strategy): string => {
    const words = strategyWords(s.id);
    return [
      `## ${words.name}`,
      `\`${s.id}\`: ${words.line} ${words.full}`,
      ...[s.water && `Water (${s.waterKind}): \`${s.water.symbol} = ${s.water.expression}\``, s.dilute && `Dilute water: \`${s.dilute.symbol} = ${s.dilute.expression}\``, `Dose index: \`${s.index.symbol} = ${s.index.expression}\``, s.reference && `Reference: \`${s.reference.symbol} = ${s.reference.expression}\``].filter((l) => l !== undefined).map((l) => `- ${l}`),
      ...s.validity.map((v) => `- ${validitySentence(v)}`),
      `- Sources: ${cite(s.sources)}`
    ].join('\n\n').replaceAll('\n\n- ', '\n- ').replace('\n- ', '\n\n- ');
  };
  return page('Strategies', 'Published ways to let water and dose follow the canopy, in the order of the strategy table. A dose index is 1 on the strategy’s own reference canopy; references differ, so indices of two strategies are not to be mixed.', [...STRATEGIES.values()].map(one).join('\n\n'));
}

function sourcePage(): string {
  const read: Record<Source['read'], string> = { work: 'by definition', summary: 'known from its abstract or a summary', memory: 'quoted from memory, to be checked' };
  const rows = Object.entries(ALL_SOURCES).map(([id, s]) => `<a id="${id}"></a>**${id}**: ${[s.authors, s.year, s.title, s.container, s.locator].filter(Boolean).join(', ')}. Taken: ${s.taken}. (${read[s.read]})`);
  return page('Sources', 'Works that formulas, constants and checks were taken from, and how we know them. Nothing here claims conformity with a standard whose text was not read.', rows.join('\n\n'));
}

/** Pages by file under `docs`. */
export const PAGES: Readonly<Record<string, () => string>> = {
  'hosting.md': hostingPage,
  'generated/formulas.md': formulaPage,
  'generated/nomenclature.md': nomenclature,
  'generated/assumptions.md': assumptionPage,
  'generated/strategies.md': strategyPage,
  'generated/sources.md': sourcePage
};

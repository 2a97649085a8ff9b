import { VERSION, type Document } from '#core/setting/document.ts';
import { bibtex, cslJson } from '#core/sources/cite.ts';
import type { Interval } from '#core/canopy/uncertainty.ts';
import { valueOf } from '#core/working/answer.ts';
import { plain, plainAnswer, type Plain } from '#core/working/plain.ts';
import { matrixScene } from '#section/plots/matrix.ts';
import { unmarked } from '#words/bidi.ts';
import { strategiesScreen as words } from '#words/en/strategies/screen.ts';
import { methods } from '#words/strategies/methods.ts';
import { actWord } from '#words/naming.ts';
import { sha256, version } from '#workspace/manifest.ts';
import type { StrategiesView, StrategyRow } from '#workspace/strategies.svelte.ts';
import type { Sureness } from '#workspace/sureness.svelte.ts';
import { nameOf, signedIndex } from './naming.ts';
import { cell } from '../spray/csv.ts';

/** What goes out as a file; all in the engine's units, whatever the screen shows. */
export interface Out {
  readonly name: string;
  readonly text: string;
  readonly type: string;
}
export const TEXTS = ['csv', 'json', 'methods', 'bibtex', 'csl', 'manifest'] as const;
export type TextKind = (typeof TEXTS)[number];

/** Numbers in the shortest form that reads back the same. */
export const exact = (v: string | number | null | undefined): string => (typeof v === 'number' ? (Number.isFinite(v) ? String(v) : '') : cell(v));

export function rowsCsv(rows: readonly StrategyRow[]): string {
  const c = words.csvColumns;
  const ends = (i: Interval | null) => [i?.low, i?.high];
  const lines = rows.map((r) => [
    r.id, nameOf(r), r.own ? 1 : 0, r.strategy.descriptor ?? '',
    valueOf(r.water), ...ends(r.intervals.water), valueOf(r.dilute), valueOf(r.index), ...ends(r.intervals.index),
    valueOf(r.dose), r.dose && r.dose.kind !== 'refused' ? r.dose.unit.replace('Lprod', 'L') : '', ...ends(r.intervals.dose),
    r.acts.map(actWord).join('; '), valueOf(r.concentration), r.strategy.sources.join(' ')
  ]);
  const head = [c.id, c.name, c.own, c.by, c.water, c.waterLow, c.waterHigh, c.dilute, c.index, c.indexLow, c.indexHigh, c.dose, c.doseUnit, c.doseLow, c.doseHigh, c.acts, c.concentration, c.sources];
  return [head, ...lines].map((line) => line.map(exact).join(',')).join('\n') + '\n';
}

const rowPlain = (r: StrategyRow): Plain => ({
  id: r.id,
  name: nameOf(r),
  own: r.own,
  descriptor: r.descriptor && plainAnswer(r.descriptor),
  water: r.water && plainAnswer(r.water),
  dilute: r.dilute && plainAnswer(r.dilute),
  index: plainAnswer(r.index),
  dose: r.dose && plainAnswer(r.dose),
  acts: [...r.acts],
  concentration: r.concentration && plainAnswer(r.concentration),
  intervals: plain(r.intervals)
});

/** Where and of what these figures are. */
const whose = ({ workspace, changes, trying }: StrategiesView): Plain => ({ block: workspace.block.name, rung: workspace.rung.name, ...(trying ? { whatIf: plain(changes) } : {}) });

/** Makes a text of what is shown. */
export async function textOf(kind: TextKind, view: StrategiesView, sure: Sureness): Promise<Pick<Out, 'text' | 'type'> & { readonly ending: string }> {
  const rows = view.shown;
  switch (kind) {
    case 'csv':
      return { text: rowsCsv(rows), type: 'text/csv', ending: 'csv' };
    case 'json': {
      const shown = new Set(rows.map((r) => r.id));
      const differences = [...view.pairs.values()].filter((p) => shown.has(p.a) && shown.has(p.b));
      const drawn = sure.drawn && !sure.drawn.stale ? { draws: sure.drawn.draws, seed: sure.drawn.seed, assumptions: sure.drawn.assumptions, figures: plain(sure.drawn.given) } : null;
      return { text: JSON.stringify({ of: whose(view), strategies: rows.map(rowPlain), differences: plain(differences), drawn }, null, 1) + '\n', type: 'application/json', ending: 'json' };
    }
    case 'methods':
      return { text: unmarked(written(view, sure).text), type: 'text/plain', ending: 'txt' };
    case 'bibtex':
      return { text: bibtex(written(view, sure).cited), type: 'application/x-bibtex', ending: 'bib' };
    case 'csl':
      return { text: cslJson(written(view, sure).cited), type: 'application/vnd.citationstyles.csl+json', ending: 'csl.json' };
    case 'manifest':
      return { text: JSON.stringify(await manifest(view, sure), null, 2) + '\n', type: 'application/json', ending: 'manifest.json' };
  }
}

function written(view: StrategiesView, sure: Sureness): ReturnType<typeof methods> {
  const { document, result } = view;
  const { drawn } = sure;
  return methods(view.shown, {
    canopy: result.canopy,
    errors: result.rung.canopy.errors,
    label: document.labels.find((l) => l.id === result.block.label),
    draws: drawn && !drawn.stale ? { draws: drawn.draws, seed: drawn.seed, assumptions: drawn.assumptions } : undefined
  });
}

/** What these figures were made of and with: whoever has the same document, version and options gets the same. No clock stands in it. */
async function manifest(view: StrategiesView, sure: Sureness): Promise<Plain> {
  const { workspace, shown, sorting, families, waters, axis } = view;
  const document: Document = workspace.document;
  const { drawn } = sure;
  return {
    format: 'rowtailor-manifest',
    version: 1,
    versions: { rowtailor: version(), document: VERSION },
    of: whose(view),
    document: { sha256: await sha256(JSON.stringify(document)) },
    options: {
      strategies: shown.map((r) => r.id),
      order: sorting && { by: sorting.by, down: sorting.down },
      families: [...families],
      waters,
      axis,
      subject: sure.subject.id,
      quantity: sure.quantity,
      ...(drawn && !drawn.stale ? { draws: drawn.draws, seed: drawn.seed, assumptions: drawn.assumptions, generator: 'philox-4x32-10', normal: 'box-muller' } : {})
    },
    own: plain(document.ownStrategies ?? []),
    assumptions: plain(document.assumptions ?? {}),
    output: { sha256: await sha256(rowsCsv(shown)) }
  };
}

export const stairScene = (view: StrategiesView) =>
  matrixScene({
    names: view.shown.map(nameOf),
    difference: (i, j) => view.pair(view.shown[i]!.id, view.shown[j]!.id)?.difference ?? null,
    figure: (d) => signedIndex(d, 'metric')
  });

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { MOST_TRIES } from '#core/canopy/draws/draws.ts';
import { BELIEFS } from '#core/dose/compare/beliefs.ts';
import { pairs } from '#core/dose/compare/differences.ts';
import type { DrawWish } from '#core/dose/compare/draws.ts';
import { QUANTITIES } from '#core/dose/compare/vary.ts';
import { VERSION, type Document } from '#core/setting/document.ts';
import { valueOf } from '#core/working/answer.ts';
import { plain, type Plain } from '#core/working/plain.ts';
import { assumptionsUnder } from '#core/working/under.ts';
import { csvCell } from '#job/csv/cell.ts';
import { rowName } from '#words/strategies/reasons.ts';
import type { Compared } from './strategies-report.ts';

/** One rung as plain data, every figure with its working. */
export function plainCompared(document: Document, { result, rows, draws, tornado }: Compared): Plain {
  return plain({
    block: result.block.id,
    rung: result.rung.id,
    strategy: result.block.strategy,
    rows: rows.map((r) => ({
      id: r.id,
      own: r.own,
      name: rowName(r),
      symbol: r.strategy.descriptor,
      descriptor: r.descriptor,
      index: r.index,
      water: r.water,
      waterKind: r.strategy.waterKind,
      dilute: r.dilute,
      dose: r.dose,
      acts: r.acts,
      concentration: r.concentration,
      intervals: r.intervals,
      validity: r.strategy.validity,
      sources: r.strategy.sources
    })),
    pairs: pairs(document, result, rows),
    ...(draws ? { draws: { ...draws.wish, figures: draws.drawn } } : {}),
    ...(tornado ? { tornado: { strategy: tornado.row.id, quantity: tornado.quantity, ...tornado.of } } : {})
  });
}

const CSV_HEADER = [
  'block', 'rung', 'strategy', 'name', 'descriptor', 'descriptor_value', 'index', 'index_low', 'index_high', 'water_l_per_ha', 'water_low', 'water_high', 'dilute_l_per_ha',
  'dose_per_ha', 'dose_unit', 'dose_low', 'dose_high', 'rules', 'concentration'
];
const DRAW_HEADER = QUANTITIES.flatMap((q) => [`${q}_mc_mean`, `${q}_mc_sd`, `${q}_mc_low`, `${q}_mc_high`]);

/** One line per rung and strategy; a cell is empty where there is no such figure. */
export function csvText(all: readonly Compared[], withDraws: boolean): string {
  const lines = all.flatMap(({ result, rows, draws }) =>
    rows.map((r) => [
      result.block.id, result.rung.id, r.id, rowName(r), r.strategy.descriptor ?? '', valueOf(r.descriptor),
      valueOf(r.index), r.intervals.index?.low, r.intervals.index?.high,
      valueOf(r.water), r.intervals.water?.low, r.intervals.water?.high, valueOf(r.dilute),
      valueOf(r.dose), result.product?.label.unit, r.intervals.dose?.low, r.intervals.dose?.high,
      r.acts.join(' '), valueOf(r.concentration),
      ...(withDraws ? QUANTITIES.flatMap((q) => {
        const d = draws?.drawn.find((each) => each.id === r.id && each.quantity === q);
        return [d?.mean, d?.sd, d?.low, d?.high];
      }) : [])
    ])
  );
  return [[...CSV_HEADER, ...(withDraws ? DRAW_HEADER : [])], ...lines].map((cells) => cells.map(cell).join(',') + '\n').join('');
}

const cell = (v: string | number | undefined): string => (typeof v === 'string' ? csvCell(v) : String(v ?? ''));

const hashOf = (text: string) => ({ sha256: createHash('sha256').update(text).digest('hex'), bytes: Buffer.byteLength(text) });

/**
 * What an output was made of and with, and its hash: whoever has the same input, versions and options gets the same bytes. No clock, no path,
 * no name of a machine stands in it.
 */
export function strategiesManifest(input: string, output: string, options: Readonly<Record<string, unknown>>, wish: DrawWish | null, all: readonly Compared[]): string {
  const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as { version: string };
  const used = assumptionsUnder(all.flatMap(({ rows }) => rows.flatMap((r) => [r.index, r.water, r.dilute, r.dose])));
  const manifest = {
    format: 'rowtailor-manifest',
    version: 1,
    versions: { rowtailor: version, document: VERSION, node: process.versions.node },
    input: hashOf(input),
    options: { ...options, ...(wish ? { ...wish, generator: 'philox-4x32-10', normal: 'box-muller', mostTries: MOST_TRIES } : {}) },
    constants: [...used.values()].map(({ assumption, value, unit, certainty }) => ({ id: assumption, value, unit, certainty })),
    ...(wish?.assumptions ? { ranges: [...BELIEFS].filter(([id]) => used.has(id)).map(([id, { low, high, certainty }]) => ({ id, low, high, certainty })) } : {}),
    output: hashOf(output)
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

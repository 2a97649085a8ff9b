import { parseArgs } from 'node:util';
import { proposeByDegreeDays, proposeByStage, dateOf, sourcesFor, type Proposal } from '#core/canopy/growth/propose.ts';
import { isUnitSystem } from '#core/quantity/units.ts';
import { SEASON_REGISTRY } from '#core/season/assumptions.ts';
import { seasonOf, type Season } from '#core/season/season.ts';
import type { Document } from '#core/setting/document.ts';
import { DegreeDays } from '#core/weather/degree-days.ts';
import { isRefused } from '#core/working/answer.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { plain } from '#core/working/plain.ts';
import { LONGEST_FILE } from '#job/limits.ts';
import { readWeather } from '#job/weather/read.ts';
import { cli } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { seasonCli as words } from '#words/en/season/cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/season/join.ts';
import { EXIT, Stop, type Exit, type Streams, type Verb } from '../exit.ts';
import { plainResult } from '../json.ts';
import { readText } from '../read-text.ts';
import { documentIn } from '../rungs.ts';
import { seasonReport, type Grown } from '../season-report.ts';

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('season')}`);

/** Prints the season of the wanted blocks; see `words.usage`. */
export const run: Verb = async (args, streams) => {
  const wish = wished(args);
  if (!wish) {
    streams.out(words.usage);
    return EXIT.done;
  }
  const document = documentIn(await readText(wish.file, LONGEST_FILE, streams), wish.file);
  const weather = wish.weather === undefined ? null : await weatherOf(wish.weather, document, streams);
  const blocks = document.blocks.filter((b) => wish.block === undefined || b.id === wish.block);
  if (blocks.length === 0) throw new Stop(EXIT.usage, cli.noBlock(wish.block ?? '', document.blocks.map((b) => b.id)));
  if (wish.fixed !== undefined && !blocks.some((b) => b.rungs.some((r) => r.id === wish.fixed)))
    throw new Stop(EXIT.usage, cli.noRung(wish.fixed, [...new Set(blocks.flatMap((b) => b.rungs.map((r) => r.id)))]));
  const all = blocks.map((block) => {
    const season = seasonOf(document, block.id, wish.fixed);
    if ('kind' in season) throw new Stop(EXIT.refused, refusalSentence(season, 'metric'));
    return { season, grown: grownOf(document, season, weather?.days ?? null) };
  });
  streams.out(wish.json ? jsonText(all) : all.map(({ season, grown }) => seasonReport(season, grown, weather?.days ?? null, wish.system)).join('\n\n'));
  let exit: Exit = weather?.refused ? EXIT.refused : EXIT.done;
  for (const { season } of all)
    for (const r of season.refused) {
      exit = EXIT.refused;
      streams.err(`${cli.refusedIn(`${season.block.name}, ${r.rung.name}`, [...new Set(r.refused.map((a) => refusalSentence(a, wish.system)))])}\n`);
    }
  return exit;
};

function grownOf(document: Document, { block }: Season, weather: DegreeDays | null): readonly Grown[] {
  return block.rungs.map((rung): Grown => {
    const [source] = sourcesFor(block, rung);
    return {
      rung: rung.id,
      name: rung.name,
      stage: source ? proposeByStage(document, block, rung, source) : null,
      degreeDays: weather ? proposeByDegreeDays(document, block, rung, weather) : null,
      date: weather && rung.date === undefined ? (dateOf(block, rung, weather)?.date ?? null) : null
    };
  });
}

async function weatherOf(file: string, document: Document, streams: Streams): Promise<{ readonly days: DegreeDays; readonly refused: boolean }> {
  const { weather, problems, more } = readWeather(await readText(file, LONGEST_FILE, streams));
  const lines = problems.map((p) => `${file}: ${problemSentence(p)}`);
  if (more > 0) lines.push(words.moreLines(more));
  if (!weather) throw new Stop(EXIT.refused, lines.length > 0 ? lines.join('\n') : words.badWeather(file));
  if (lines.length > 0) streams.err(`${lines.join('\n')}\n`);
  return { days: new DegreeDays(weather, new Assumptions(SEASON_REGISTRY, document.assumptions).take('growth.base-temperature')), refused: lines.length > 0 };
}

function jsonText(all: readonly { readonly season: Season; readonly grown: readonly Grown[] }[]): string {
  const growth = (p: Grown['stage']) =>
    p === null || ('kind' in p && isRefused(p)) ? p : { from: (p as Proposal).from.id, to: (p as Proposal).to?.id, by: (p as Proposal).by, canopy: (p as Proposal).canopy, figures: (p as Proposal).figures, volume: (p as Proposal).volume, way: (p as Proposal).way, limits: (p as Proposal).limits };
  const results = all.map(({ season, grown }) =>
    plain({
      block: { id: season.block.id, name: season.block.name },
      fixed: season.fixed.rung.id,
      treatments: season.treatments,
      rungs: season.rungs.map(({ rung, result, ...r }) => ({ id: rung.id, name: rung.name, bbch: rung.bbch, date: rung.date, proposed: rung.canopy.proposed, ...r, result: plainResult(result) })),
      changes: season.changes.map(({ from, to, ...c }) => ({ from: from.id, to: to.id, ...c })),
      nozzles: season.nozzles,
      totals: season.totals.map(({ label, ...t }) => ({ ...t, label: label && { id: label.id, name: label.name } })),
      rules: season.rules.map(({ label, ...r }) => ({ label: label.id, maxPerSeason: label.maxPerSeason, ...r })),
      growth: grown.map((g) => ({ ...g, stage: growth(g.stage), degreeDays: growth(g.degreeDays) }))
    })
  );
  return JSON.stringify({ format: 'rowtailor-season', version: 1, results }, null, 1) + '\n';
}

function wished(args: readonly string[]) {
  const { values, positionals } = parsed(args);
  if (values.help) return null;
  const [file, ...rest] = positionals;
  if (file === undefined) throw usage(cli.noFile);
  if (rest.length > 0) throw usage(cli.tooManyFiles(positionals.length));
  const { units } = values;
  if (!isUnitSystem(units)) throw usage(cli.badUnits(units));
  return { file, block: values.block, fixed: values.fixed, weather: values.weather, system: units, json: values.json } as const;
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        block: { type: 'string' },
        fixed: { type: 'string' },
        weather: { type: 'string' },
        units: { type: 'string', default: 'metric' },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
  } catch (error) {
    throw usage((error as Error).message);
  }
}

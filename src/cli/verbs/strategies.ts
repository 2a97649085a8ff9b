import { statSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { LEAST_DRAWS } from '#core/canopy/draws/coverage.ts';
import { drawSteps, MOST_DRAWS, type Drawn, type DrawWish } from '#core/dose/compare/draws.ts';
import { strategyRows } from '#core/dose/compare/rows.ts';
import { tornado } from '#core/dose/compare/tornado.ts';
import { QUANTITIES, type Quantities } from '#core/dose/compare/vary.ts';
import { bibtex, cslJson } from '#core/sources/cite.ts';
import { isUnitSystem, type UnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import type { Refused } from '#core/working/answer.ts';
import { LONGEST_FILE } from '#job/limits.ts';
import { cli } from '#words/en/cli.ts';
import { strategiesCli as words } from '#words/en/strategies/cli.ts';
import { refusalSentence } from '#words/index.ts';
import { methods } from '#words/strategies/methods.ts';
import { EXIT, Stop, type Exit, type Verb } from '../exit.ts';
import { readText } from '../read-text.ts';
import { documentIn, chosen } from '../rungs.ts';
import { csvText, plainCompared, strategiesManifest } from '../strategies-data.ts';
import { strategiesReport, type Compared } from '../strategies-report.ts';
import { fileSink } from '../table/sink.ts';

/** Sets the strategies side by side; see `strategiesCli.usage`. */
export const run: Verb = async (args, streams) => {
  const values = parsed(args);
  if (values.help) {
    streams.out(words.usage);
    return EXIT.done;
  }
  const asked = askedOf(values);
  const text = await readText(asked.file, LONGEST_FILE, streams);
  const document = documentIn(text, asked.file);
  const results = chosen(document, asked);
  let exit: Exit = EXIT.done;
  const refuse = ({ block, rung }: Result, refused: Refused): null => {
    exit = EXIT.refused;
    streams.err(`${cli.refusedIn(`${block.name}, ${rung.name}`, [refusalSentence(refused, asked.system)])}\n`);
    return null;
  };
  const all = results.map((result) => compared(document, result, asked, (refused) => refuse(result, refused)));
  const output = outputOf(document, all, asked);
  if (values.manifest !== undefined) await writeManifest(values.manifest, strategiesManifest(text, output, optionsOf(asked), asked.draws, all));
  streams.out(output);
  return exit;
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('strategies')}`);

const FORMS = ['json', 'csv', 'methods', 'bibtex', 'csl'] as const;
type Form = (typeof FORMS)[number] | 'text';

function parsed(args: readonly string[]) {
  const text = { type: 'string' } as const;
  const flag = { type: 'boolean', default: false } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        block: text, rung: text, units: { type: 'string', default: 'metric' },
        draws: text, seed: text, assumptions: flag, tornado: text, of: text,
        json: flag, csv: flag, methods: flag, bibtex: flag, csl: flag,
        manifest: text, help: { type: 'boolean', short: 'h', default: false }
      }
    });
    return { ...values, files: positionals };
  } catch (error) {
    throw usage((error as Error).message);
  }
}
type Values = ReturnType<typeof parsed>;

interface Asked {
  readonly file: string;
  readonly block: string | undefined;
  readonly rung: string | undefined;
  readonly system: UnitSystem;
  readonly form: Form;
  readonly draws: DrawWish | null;
  readonly tornado: { readonly strategy: string; readonly quantity: Quantities } | null;
}

function askedOf(values: Values): Asked {
  const [file, ...more] = values.files;
  if (file === undefined) throw usage(cli.noFile);
  if (more.length > 0) throw usage(cli.tooManyFiles(values.files.length));
  const { block, rung, units } = values;
  if (!isUnitSystem(units)) throw usage(cli.badUnits(units));
  const forms = FORMS.filter((f) => values[f]);
  if (forms.length > 1) throw usage(words.twoForms(forms.map((f) => `--${f}`)));
  const { of = 'index' } = values;
  if (values.of !== undefined && values.tornado === undefined) throw usage(words.ofWithoutTornado);
  if (!isQuantity(of)) throw usage(words.badOf(of));
  if (values.manifest !== undefined && isSame(file, values.manifest)) throw usage(words.sameManifest);
  return { file, block, rung, system: units, form: forms[0] ?? 'text', draws: drawsOf(values), tornado: values.tornado === undefined ? null : { strategy: values.tornado, quantity: of } };
}

const isQuantity = (text: string): text is Quantities => (QUANTITIES as readonly string[]).includes(text);

function drawsOf({ draws, seed, assumptions }: Values): DrawWish | null {
  if (draws === undefined) {
    if (seed !== undefined || assumptions) throw usage(words.seedWithoutDraws(seed === undefined ? '--assumptions' : '--seed'));
    return null;
  }
  const whole = (option: string, text: string, least: number, most: number): number => {
    const value = Number(text);
    if (!/^\d+$/.test(text) || !(value >= least && value <= most)) throw usage(words.notWhole(option, text, least, most));
    return value;
  };
  return { draws: whole('--draws', draws, LEAST_DRAWS, MOST_DRAWS), seed: seed === undefined ? 1 : whole('--seed', seed, 0, Number.MAX_SAFE_INTEGER), assumptions };
}

/** The same file, however the two paths are spelt or linked. */
function isSame(a: string, b: string): boolean {
  try {
    const [x, y] = [statSync(a), statSync(b)];
    return x.dev === y.dev && x.ino === y.ino;
  } catch {
    // One of them is not there.
    return false;
  }
}

function compared(document: Document, result: Result, { draws, tornado: wanted }: Asked, refuse: (refused: Refused) => null): Compared {
  const rows = strategyRows(document, result);
  const row = wanted && rows.find((r) => r.id === wanted.strategy);
  if (wanted && !row) throw usage(words.noStrategy(wanted.strategy, rows.map((r) => r.id)));
  const drawn = draws && drawnFor(document, result, draws);
  const moved = wanted && tornado(document, result, wanted.strategy, wanted.quantity);
  // What the whole table rests on; of one strategy a dash says enough.
  const { h } = result.canopy.figures;
  if (h.kind === 'refused') refuse(h);
  return {
    result,
    rows,
    draws: draws && drawn && ('kind' in drawn ? refuse(drawn) : { wish: draws, drawn }),
    tornado: moved && row && wanted ? ('kind' in moved ? refuse(moved) : { row, quantity: wanted.quantity, of: moved }) : null
  };
}

function drawnFor(document: Document, { block, rung }: Result, wish: DrawWish): readonly Drawn[] | Refused {
  const steps = drawSteps(document, block.id, rung.id, wish);
  for (;;) {
    const { done, value } = steps.next();
    if (done) return value;
  }
}

function outputOf(document: Document, all: readonly Compared[], { form, system, draws }: Asked): string {
  switch (form) {
    case 'text':
      return all.map((c) => strategiesReport(document, c, system)).join('\n\n');
    case 'json':
      return JSON.stringify({ format: 'rowtailor-strategies', version: 1, results: all.map((c) => plainCompared(document, c)) }, null, 1) + '\n';
    case 'csv':
      return csvText(all, draws !== null);
    default: {
      const texts = all.map(({ result: { canopy, rung, block }, rows, draws: drawn }) => ({
        title: `${block.name}: ${rung.name}`,
        ...methods(rows, { canopy, errors: rung.canopy.errors, label: document.labels.find((l) => l.id === block.label), draws: drawn?.wish })
      }));
      if (form === 'methods') return texts.map(({ title, text }) => `${title}\n\n${text}`).join('\n');
      const cited = texts.flatMap((t) => t.cited);
      return form === 'bibtex' ? bibtex(cited) : cslJson(cited);
    }
  }
}

const optionsOf = ({ block, rung, system, form, tornado: t }: Asked) => ({
  verb: 'strategies',
  form,
  ...(form === 'text' ? { units: system } : {}),
  ...(block === undefined ? {} : { block }),
  ...(rung === undefined ? {} : { rung }),
  ...(t ? { tornado: t.strategy, of: t.quantity } : {})
});

async function writeManifest(path: string, text: string): Promise<void> {
  const sink = fileSink(path);
  await sink.write(text);
  await sink.close();
}

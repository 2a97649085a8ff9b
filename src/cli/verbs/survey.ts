import { parseArgs } from 'node:util';
import { canopyOfSurvey } from '#core/canopy/survey/canopy.ts';
import { surveyOf } from '#core/canopy/survey/survey.ts';
import { GROUPINGS, type Grouping, type SurveyOptions, type SurveyTree } from '#core/canopy/survey/types.ts';
import { isUnitSystem } from '#core/quantity/units.ts';
import { LONGEST_FILE, RANGES } from '#job/limits.ts';
import { readSurvey } from '#job/survey/table.ts';
import { cli } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { surveyCli as words } from '#words/en/row/survey-cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/row/join.ts';
import { EXIT, Stop, type Verb } from '../exit.ts';
import { readText } from '../read-text.ts';
import { surveyReport } from '../survey-report.ts';

/** Prints what many measured trees say of their block; see `surveyCli.usage`. */
export const run: Verb = async (args, streams) => {
  const { out, err } = streams;
  const values = parsed(args);
  if (values.help) {
    out(words.usage);
    return EXIT.done;
  }
  const [file, ...more] = values.files;
  if (file === undefined) throw usage(words.noFile);
  if (more.length > 0) throw usage(words.tooManyFiles(values.files.length));
  const options = optionsOf(values);
  const system = values.units;
  if (!isUnitSystem(system)) throw usage(cli.badUnits(system));

  const read = readSurvey(await readText(file, LONGEST_FILE, streams));
  for (const problem of read.problems) err(`${problemSentence(problem)}\n`);
  // A table that cannot be read has been told; of one whose lines are all refused the survey tells the rest.
  if (read.trees.length === 0 && read.problems.length > 0) return EXIT.refused;
  const trees = without(read.trees, values['leave-out']);
  const survey = surveyOf(trees, options);
  if ('kind' in survey) {
    err(`${refusalSentence(survey, system)}\n`);
    return EXIT.refused;
  }
  const canopy = canopyOfSurvey(survey, trees);
  out(values.json ? JSON.stringify({ format: 'rowtailor-survey', version: 1, canopy, survey, list: trees, refusedLines: read.refused }, null, 1) + '\n' : surveyReport(survey, trees, canopy, file, system));
  return read.refused > 0 ? EXIT.refused : EXIT.done;
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('survey')}`);

function parsed(args: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        'block-trees': text,
        by: text,
        'group-trees': text,
        'leave-out': text,
        'row-spacing': text,
        units: { type: 'string', default: 'metric' },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', short: 'h', default: false }
      }
    });
    return { ...values, files: positionals };
  } catch (error) {
    throw usage((error as Error).message);
  }
}
type Values = ReturnType<typeof parsed>;

const MOST_TREES = 1_000_000;
/** A whole number of trees; NaN for anything else. */
const treesOf = (written: string): number => (/^\d{1,7}$/.test(written) && Number(written) >= 1 && Number(written) <= MOST_TREES ? Number(written) : NaN);

function optionsOf(values: Values): SurveyOptions {
  const { by } = values;
  if (by !== undefined && !isGrouping(by)) throw usage(words.badBy(by));
  const written = values['block-trees'];
  const blockTrees = written === undefined ? undefined : treesOf(written);
  if (Number.isNaN(blockTrees)) throw usage(words.badBlockTrees(written!));
  const groups = values['group-trees'];
  if (groups !== undefined && by === undefined) throw usage(words.groupsAlone);
  if (groups !== undefined && blockTrees !== undefined) throw usage(words.twoBlocks);
  const spacing = values['row-spacing'];
  return {
    ...(blockTrees === undefined ? {} : { blockTrees }),
    ...(by === undefined ? {} : { by }),
    ...(groups === undefined ? {} : { groupTrees: groupTreesOf(groups) }),
    ...(spacing === undefined ? {} : { rowSpacing: rowSpacingOf(spacing) })
  };
}

const isGrouping = (by: string): by is Grouping => (GROUPINGS as readonly string[]).includes(by);

function groupTreesOf(written: string): Readonly<Record<string, number>> {
  const pairs = written.split(',').map((pair) => {
    const at = pair.lastIndexOf('=');
    return [pair.slice(0, Math.max(at, 0)).trim(), treesOf(pair.slice(at + 1).trim())] as const;
  });
  if (pairs.some(([name, trees]) => name === '' || Number.isNaN(trees)) || new Set(pairs.map(([name]) => name)).size < pairs.length) throw usage(words.badGroupTrees(written));
  return Object.fromEntries(pairs);
}

function rowSpacingOf(written: string): { readonly meanM: number; readonly errorM: number } {
  const { least, most } = RANGES.blocks.rowSpacingM;
  const [meanM, errorM, ...more] = written.split(',').map((part) => (/^\d+(?:\.\d+)?$/.test(part.trim()) ? Number(part) : NaN));
  if (more.length > 0 || !(meanM! >= least && meanM! <= most && errorM! >= 0 && errorM! <= RANGES.errors.rowSpacingSeM.most)) throw usage(words.badRowSpacing(written, least, most));
  return { meanM: meanM!, errorM: errorM! };
}

/** The trees with those marked that the user leaves out: by name, all that bear it, or by place. */
function without(trees: readonly SurveyTree[], written: string | undefined): readonly SurveyTree[] {
  if (written === undefined) return trees;
  const out = new Set<SurveyTree>();
  for (const name of written.split(',').map((n) => n.trim())) {
    const place = /^#(\d+)$/.exec(name);
    const named = trees.filter((t, i) => t.tree === name || (place !== null && i === Number(place[1]) - 1));
    if (named.length === 0) throw usage(words.noSuchTree(name));
    for (const tree of named) out.add(tree);
  }
  return trees.map((t) => (out.has(t) ? { ...t, leftOut: true } : t));
}

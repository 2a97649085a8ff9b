import { parseArgs } from 'node:util';
import { laserCanopy } from '#core/canopy/laser/canopy.ts';
import { placed, proposedPlacement, unitOf, type Placement } from '#core/canopy/laser/place.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import type { LaserRules, Platform } from '#core/canopy/laser/types.ts';
import { FOOT_M } from '#core/quantity/constants.ts';
import { isUnitSystem } from '#core/quantity/units.ts';
import type { Refused } from '#core/working/answer.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { readLaserFile } from '#job/laser/open.ts';
import { MOST_POINTS } from '#job/laser/points.ts';
import { RANGES } from '#job/limits.ts';
import { cli } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { laserCli as words } from '#words/en/spray/laser-cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/row/join.ts';
import '#words/spray/join.ts';
import { EXIT, Stop, type Exit, type Verb } from '../exit.ts';
import { fileSource, memorySource, startUnpacker } from '../laser-file.ts';
import { laserReport, type LaserOrigin } from '../laser-report.ts';
import { isUnreadable, whyUnreadable } from '../read-text.ts';

/** Prints the canopy that laser points show; see `laserCli.usage`. */
export const run: Verb = async (args, { stdin, out, err }) => {
  const values = parsed(args);
  if (values.help) {
    out(words.usage);
    return EXIT.done;
  }
  const [file, ...more] = values.files;
  if (file === undefined) throw usage(words.noFile);
  if (more.length > 0) throw usage(words.tooManyFiles(values.files.length));
  const rules = rulesOf(values);
  const system = values.units;
  if (!isUnitSystem(system)) throw usage(cli.badUnits(system));

  const tell = (problem: RowProblem): void => err(`${problemSentence(problem)}\n`);
  const no = (why: Refused): Exit => {
    err(`${refusalSentence(why, system)}\n`);
    return EXIT.refused;
  };
  const reading = await read(stdin, file, tell);
  if (!reading.ok) {
    reading.problems.forEach(tell);
    return reading.refused ? no(reading.refused) : EXIT.refused;
  }
  const proposed = proposedPlacement(reading.raw, reading.las ? unitOf(values.unit as 'm') : 1);
  if ('kind' in proposed) return no(proposed);
  const placement = reading.las ? placementOf(values, proposed) : proposed;
  const { points, tooFar } = placed(reading.raw, placement);
  const made = laserCanopy(points, rules);
  if ('kind' in made) return no(made);
  const { canopy, ...rest } = made;
  const { las, every, marked, refusedLines } = reading;
  const of: LaserOrigin = { las, placement, every, marked, tooFar };
  out(values.json ? JSON.stringify({ format: 'rowtailor-laser', version: 1, canopy, ...rest, refusedLines, ...of }, null, 1) + '\n' : laserReport(made, of, file, system));
  return refusedLines > 0 ? EXIT.refused : EXIT.done;
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('laser')}`);

async function read(stdin: AsyncIterable<Uint8Array>, file: string, tell: (problem: RowProblem) => void) {
  try {
    if (file === '-') return await readLaserFile(await memorySource(file, stdin), startUnpacker, MOST_POINTS, tell);
    const source = await fileSource(file);
    try {
      return await readLaserFile(source, startUnpacker, MOST_POINTS, tell);
    } finally {
      await source.close();
    }
  } catch (error) {
    if (!isUnreadable(error)) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error)));
  }
}

function parsed(args: readonly string[]) {
  const text = { type: 'string' } as const;
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        'row-spacing': text,
        side: { type: 'string', default: DEFAULT_RULES.side },
        platform: text,
        ground: text,
        skirt: text,
        'scanner-height': text,
        unit: { type: 'string', default: 'm' },
        bearing: text,
        origin: text,
        'ground-level': text,
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

const { rowSpacingM } = RANGES.blocks;
const { skirtM } = RANGES.canopy;

function rulesOf(values: Values): LaserRules {
  const { side } = values;
  if (side !== 'left' && side !== 'right' && side !== 'both') throw usage(words.badSide(side));
  if (values.unit !== 'm' && values.unit !== 'ft') throw usage(words.badUnit(values.unit));
  const length = (option: 'row-spacing' | 'ground' | 'skirt' | 'scanner-height', least: number, most: number): number | undefined => {
    const written = values[option];
    if (written === undefined) return undefined;
    const value = metres(written);
    if (!(value >= least && value <= most)) throw usage(words.badLength(option, written, least, most));
    return value;
  };
  const rowSpacing = length('row-spacing', rowSpacingM.least, rowSpacingM.most);
  const skirt = length('skirt', skirtM.least, skirtM.most);
  const scannerHeight = length('scanner-height', 0, 10);
  return {
    platform: values.platform === undefined ? DEFAULT_RULES.platform : platformOf(values.platform),
    groundM: length('ground', -1, 5) ?? DEFAULT_RULES.groundM,
    side,
    ...(rowSpacing === undefined ? {} : { rowSpacingM: rowSpacing }),
    ...(skirt === undefined ? {} : { skirtM: skirt }),
    ...(scannerHeight === undefined ? {} : { scannerHeightM: scannerHeight })
  };
}

/** A length as it is written: 3.5, 3.5m or 11.5ft; NaN for anything else. */
function metres(written: string): number {
  const found = /^(-?\d+(?:\.\d+)?)(m|ft)?$/.exec(written.trim());
  return found ? Number(found[1]) * (found[2] === 'ft' ? FOOT_M : 1) : NaN;
}

function platformOf(written: string): Platform | null {
  if (written === 'none') return null;
  const [halfWidthM, fromM, toM, ...more] = written.split(',').map(metres);
  if (more.length > 0 || !(halfWidthM! >= 0 && halfWidthM! <= 5 && fromM! < toM!)) throw usage(words.badPlatform(written));
  return { halfWidthM: halfWidthM!, fromM: fromM!, toM: toM! };
}

/** The proposal, with what the user knows better; in the file's own coordinates and unit. */
function placementOf(values: Values, proposed: Placement): Placement {
  const numbers = (option: 'bearing' | 'origin' | 'ground-level', count: number): readonly number[] | null => {
    const written = values[option];
    if (written === undefined) return null;
    const found = written.split(',').map((s) => (s.trim() === '' ? NaN : Number(s)));
    if (found.length !== count || found.some((v) => !Number.isFinite(v))) throw usage(words.badPlace(option, written, count));
    return found;
  };
  const bearing = numbers('bearing', 1);
  const origin = numbers('origin', 2);
  const ground = numbers('ground-level', 1);
  return {
    ...proposed,
    ...(bearing ? { bearingDeg: bearing[0]! } : {}),
    ...(origin ? { originX: origin[0]!, originY: origin[1]! } : {}),
    ...(ground ? { groundZ: ground[0]! } : {})
  };
}

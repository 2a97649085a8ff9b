import { createReadStream } from 'node:fs';
import { parseArgs } from 'node:util';
import { laserCanopy } from '#core/canopy/laser/canopy.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import type { LaserRules, Platform } from '#core/canopy/laser/types.ts';
import { FOOT_M } from '#core/quantity/constants.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { readPoints } from '#job/laser/points.ts';
import { RANGES } from '#job/limits.ts';
import { cli } from '#words/en/cli.ts';
import { problemSentence } from '#words/en/problems.ts';
import { laserCli as words } from '#words/en/spray/laser-cli.ts';
import { refusalSentence } from '#words/index.ts';
import '#words/spray/join.ts';
import { EXIT, Stop, type Verb } from '../exit.ts';
import { laserReport } from '../laser-report.ts';
import { whyUnreadable } from '../read-text.ts';

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
  if (!isSystem(system)) throw usage(cli.badUnits(system));

  const tell = (problem: RowProblem): void => err(`${problemSentence(problem)}\n`);
  const reading = await read(file === '-' ? stdin : createReadStream(file, { highWaterMark: 1 << 18 }), file, tell);
  if (!reading.ok) {
    reading.problems.forEach(tell);
    return EXIT.refused;
  }
  const made = laserCanopy(reading.points, rules);
  if ('kind' in made) {
    err(`${refusalSentence(made, system)}\n`);
    return EXIT.refused;
  }
  const { canopy, ...rest } = made;
  out(values.json ? JSON.stringify({ format: 'rowtailor-laser', version: 1, canopy, ...rest, refusedLines: reading.refused }, null, 1) + '\n' : laserReport(made, file, system));
  return reading.refused > 0 ? EXIT.refused : EXIT.done;
};

const usage = (message: string): Stop => new Stop(EXIT.usage, `${message}\n${cli.tryHelp('laser')}`);
const isSystem = (units: string): units is UnitSystem => units === 'metric' || units === 'us';

async function read(chunks: AsyncIterable<Uint8Array>, file: string, tell: (problem: RowProblem) => void) {
  try {
    return await readPoints(chunks, tell);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall === undefined) throw error;
    throw new Stop(EXIT.unreadable, cli.unreadable(file, whyUnreadable(error as Error)));
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

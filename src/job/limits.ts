import { LONGEST_FORMULA } from '#core/dose/own/types.ts';
import { BLOCKS, CANOPY, PRESSURE, PTO, range, SETTING, SHARE, SPEED, TREE_HEIGHT, TREE_SKIRT, TREE_WIDTH, WATER, whole, type FieldUnit, type Range } from './first-limits.ts';

export type { FieldUnit, Range };

const ANGLE = range(-90, 90, 'deg');
const FLOW = range(0.01, 100, 'L/min');
const SE = range(0, 5, 'm');
const GAUGE = range(0, 100, 'bar');
const COURSE = range(2, 5000, 'm');
const TOTAL_FLOW = range(0.01, 1000, 'L/min');
const AMOUNT = range(0.00001, 10_000, '1');

/**
 * Every number of a document by the object that it stands in. Wide enough for any orchard and any machine that drives in
 * one, narrow enough that a slip of the decimal point or of the unit is seen. The screen's fields use the same table.
 */
export const RANGES = {
  blocks: BLOCKS,
  pattern: { rows: whole(1, 20), widthM: range(0.5, 60, 'm') },
  rungs: { bbch: whole(0, 99), treatments: whole(0, 50) },
  survey: { blockTrees: whole(1, 1_000_000) },
  groups: { trees: whole(1, 1_000_000) },
  photo: { threshold: whole(1, 255) },
  /** Height bands of a photograph. */
  bands: { fromM: range(0, 20, 'm'), toM: range(0, 20, 'm'), widthM: range(0, 12, 'm'), pixels: whole(1, 100_000_000), gaps: whole(0, 100_000_000) },
  trees: { heightM: TREE_HEIGHT, skirtM: TREE_SKIRT, widthM: TREE_WIDTH },
  ribbons: { heightM: range(0, 20, 'm') },
  papers: { heightM: range(0, 20, 'm'), coveragePercent: range(0, 100, '%') },
  canopy: CANOPY,
  profile: { heightM: range(0, 20, 'm'), widthM: range(0, 12, 'm'), relativeDensity: range(0, 5, '1') },
  errors: {
    heightSeM: SE,
    skirtSeM: SE,
    widthSeM: SE,
    rowSpacingSeM: SE,
    heightWidthCorrelation: range(-1, 1, '1'),
    trees: whole(2, 100_000)
  },
  setting: SETTING,
  rounds: { displayKmH: SPEED, courseM: COURSE, catchS: range(1, 3600, 's') },
  runs: { distanceM: COURSE, seconds: range(1, 3600, 's') },
  gauges: { restBar: GAUGE, readBar: GAUGE, masterBar: GAUGE, farBar: GAUGE, oneSideBar: GAUGE },
  refill: { seconds: range(5, 14_400, 's'), distanceM: COURSE, litres: range(0.1, 10_000, 'L'), litresErrorL: range(0, 100, 'L'), secondsError: range(0, 60, 's') },
  catches: { litres: range(0, 100, 'L'), seconds: range(1, 3600, 's') },
  law: { firstBar: PRESSURE, firstLPerMin: TOTAL_FLOW, secondBar: PRESSURE, secondLPerMin: TOTAL_FLOW },
  fitting: { targetLPerHa: WATER, pressureMinBar: PRESSURE, pressureMaxBar: PRESSURE, speedMinKmH: SPEED, speedMaxKmH: SPEED, mostChanges: whole(0, 200) },
  stock: { count: whole(0, 10_000) },
  weights: { weight: range(0, 1000, '1') },
  mix: { areaHa: range(0.001, 10_000, 'ha'), turnSeconds: range(0, 600, 's'), fillMinutes: range(0, 600, 'min'), filled: whole(0, 1000), usedL: range(0.1, 10_000_000, 'L') },
  partners: { orderedAmount: range(0.00001, 1_000_000, '1') },
  putIn: { load: whole(1, 1000), amount: range(0, 100_000, '1') },
  /** Both the places on the machine and what is set there. */
  nozzles: {
    heightM: range(0.05, 10, 'm'),
    offsetM: range(0, 5, 'm'),
    angleDeg: ANGLE,
    swivelDownDeg: range(-90, 0, 'deg'),
    swivelUpDeg: range(0, 90, 'deg'),
    coneAngleDeg: range(1, 150, 'deg'),
    swivelDeg: ANGLE
  },
  outlet: {
    axisHeightM: range(0.1, 5, 'm'),
    radiusM: range(0.1, 2, 'm'),
    fromDeg: ANGLE,
    toDeg: ANGLE,
    fromHeightM: range(0, 8, 'm'),
    toHeightM: range(0.1, 10, 'm'),
    offsetM: range(0, 4, 'm'),
    slotWidthM: range(0.005, 1, 'm'),
    diameterM: range(0.02, 1, 'm')
  },
  spouts: { heightM: range(0, 10, 'm'), offsetM: range(0, 4, 'm'), angleDeg: ANGLE },
  machines: {
    bodyWidthM: range(0.5, 4, 'm'),
    tankL: range(20, 10_000, 'L'),
    residualL: range(0, 500, 'L'),
    pressureMinBar: PRESSURE,
    pressureMaxBar: PRESSURE,
    speedMinKmH: SPEED,
    speedMaxKmH: SPEED,
    ptoMinRpm: PTO,
    ptoMaxRpm: PTO
  },
  gears: { flowM3PerH: range(500, 250_000, 'm3/h'), atPtoRpm: PTO, leftShare: range(0.2, 0.8, '1') },
  nozzleTables: { referenceBar: PRESSURE, pressureMinBar: PRESSURE, pressureMaxBar: PRESSURE },
  sizes: { flowLPerMin: FLOW },
  points: { pressureBar: PRESSURE, flowLPerMin: FLOW },
  droplets: { fromBar: range(0, 60, 'bar') },
  labels: {
    rate: AMOUNT,
    referenceWaterLPerHa: WATER,
    maxPerHa: AMOUNT,
    maxPerSeason: AMOUNT,
    maxUses: whole(1, 50),
    minWaterLPerHa: WATER,
    maxWaterLPerHa: WATER,
    maxConcentration: range(1, 100, '1'),
    floor: SHARE
  },
  day: {
    temperatureC: range(-30, 60, 'degC'),
    humidityPct: range(0, 100, '%'),
    windMPerS: range(0, 60, 'm/s'),
    altitudeM: range(-450, 6000, 'm')
  }
} as const satisfies Record<string, Record<string, Range>>;

/** The user's own values of assumptions whatever they are called; those of the engine bring their own range. */
export const ASSUMPTION_RANGE = range(-1_000_000, 1_000_000, '1');

/** How long a list may be, and how short. */
export const LENGTHS = {
  blocks: [0, 500],
  rungs: [1, 40],
  machines: [0, 100],
  gears: [1, 12],
  /** Of one side. */
  spouts: [1, 12],
  /** Places on a machine, and what is set at them. */
  positions: [1, 100],
  nozzleTables: [0, 50],
  sizes: [1, 100],
  points: [1, 50],
  droplets: [1, 50],
  labels: [0, 200],
  ownStrategies: [0, 50],
  rounds: [0, 50],
  runs: [0, 50],
  catches: [0, 100],
  stock: [0, 500],
  partners: [0, 20],
  putIn: [0, 1000],
  profile: [2, 60],
  /** Trees of a survey. */
  trees: [0, 1000],
  /** Their rows and varieties. */
  groups: [0, 1000],
  /** Of a photograph. */
  bands: [1, 24],
  ribbons: [0, 60],
  papers: [0, 60],
  /** Some years of them; what is kept must still be readable as one file. */
  records: [0, 2000]
} as const;

/** Characters of a text. */
export const NAME_LENGTH = 120;
export const ID_LENGTH = 40;
export const FORMULA_LENGTH = LONGEST_FORMULA;
/** Of a line in a record, and of several. */
export const RECORD_TEXT_LENGTH = 300;
export const LINES_LENGTH = 16_000;
/** An id begins with a letter or a figure and goes on with these and `.`, `_`, `-`. */
export const ID = new RegExp(`^[A-Za-z0-9][A-Za-z0-9._-]{0,${ID_LENGTH - 1}}$`);

/** Characters of a whole file; nothing longer is even parsed. */
export const LONGEST_FILE = 10_000_000;
/** Lists and objects within each other; a document needs 8. */
export const DEEPEST = 32;
/** Numbers, texts, lists and objects of a whole file. */
export const MOST_VALUES = 300_000;
/** Keys of one object. */
export const MOST_KEYS = 1000;
/** Problems after which the fields of a file are not looked at any further. */
export const ENOUGH_PROBLEMS = 2000;
/** Problems told one by one. */
export const MOST_PROBLEMS = 200;

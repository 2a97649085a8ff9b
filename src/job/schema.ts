import * as z from 'zod/mini';
import { FORMAT, VERSION, type Document } from '#core/setting/document.ts';
import { GROUPINGS } from '#core/canopy/survey/types.ts';
import { STRATEGY_IDS } from '#core/dose/types.ts';
import { TICK_ITEMS, TOLERANCES } from '#core/check/types.ts';
import { WEIGHTINGS } from '#core/fitting/types.ts';
import { FORMULATIONS } from '#core/mix/types.ts';
import { PAPER_PLACES, RIBBON_CLASSES } from '#core/spray/seen.ts';
import { DROPLET_CLASSES } from '#core/sprayer/types.ts';
import { RECORD_RULES, RECORDS } from './record/schema.ts';
import { ASSUMPTION_RANGE, FORMULA_LENGTH, ID, LENGTHS, NAME_LENGTH, RANGES, RECORD_TEXT_LENGTH, type Range } from './limits.ts';

// Without this zod writes functions from text, which the page's content security policy forbids.
z.config({ jitless: true });

const id = z.string().check(z.regex(ID));
/** One line of text: no control characters, which a terminal would obey. */
const line = (most: number) => z.string().check(z.minLength(1), z.maxLength(most), z.regex(/^\P{Cc}*$/u));
const name = line(NAME_LENGTH);

const number = ({ least, most, whole }: Range) => (whole ? z.int() : z.number()).check(z.minimum(least), z.maximum(most));

type Numbers<T> = { [K in keyof T]: ReturnType<typeof number> };
/** The numbers of one object, each with its range. */
const numbers = <T extends Record<string, Range>>(ranges: T): Numbers<T> => {
  const fields: Record<string, unknown> = {};
  for (const field in ranges) fields[field] = number(ranges[field]!);
  return fields as Numbers<T>;
};

const list = <T extends z.ZodMiniType>(of: T, [least, most]: readonly [number, number]) =>
  z.array(of).check(z.minLength(least), z.maxLength(most));

const maybe = z.exactOptional;
const side = z.enum(['left', 'right']);

const C = numbers(RANGES.canopy);
const E = numbers(RANGES.errors);
const STATION = numbers(RANGES.profile);
const canopy = z.strictObject({
  heightM: C.heightM,
  widthM: C.widthM,
  skirtM: maybe(C.skirtM),
  shape: maybe(z.enum(['box', 'ellipse', 'spindle', 'wall'])),
  profile: maybe(list(z.strictObject({ ...STATION, relativeDensity: maybe(STATION.relativeDensity) }), LENGTHS.profile)),
  filledFraction: maybe(C.filledFraction),
  missingFraction: maybe(C.missingFraction),
  tallestTenthM: maybe(C.tallestTenthM),
  densityClass: maybe(z.enum(['open', 'medium', 'dense'])),
  usDensityGalPer1000Ft3: maybe(C.usDensityGalPer1000Ft3),
  ladM2PerM3: maybe(C.ladM2PerM3),
  errors: maybe(
    z.strictObject({
      heightSeM: maybe(E.heightSeM),
      skirtSeM: maybe(E.skirtSeM),
      widthSeM: maybe(E.widthSeM),
      rowSpacingSeM: maybe(E.rowSpacingSeM),
      heightWidthCorrelation: maybe(E.heightWidthCorrelation),
      trees: maybe(E.trees)
    })
  ),
  proposed: maybe(z.strictObject({ from: id, to: maybe(id), by: z.enum(['stage', 'degree-days']) }))
});

const TREE = numbers(RANGES.trees);
const survey = z.strictObject({
  trees: list(
    z.strictObject({
      tree: maybe(name),
      row: maybe(name),
      variety: maybe(name),
      heightM: TREE.heightM,
      skirtM: maybe(TREE.skirtM),
      widthM: maybe(TREE.widthM),
      profile: maybe(list(z.strictObject({ heightM: STATION.heightM, widthM: STATION.widthM }), [1, LENGTHS.profile[1]])),
      leftOut: maybe(z.boolean())
    }),
    LENGTHS.trees
  ),
  blockTrees: maybe(number(RANGES.survey.blockTrees)),
  groups: maybe(list(z.strictObject({ by: z.enum(GROUPINGS), name: z.string().check(z.maxLength(NAME_LENGTH), z.regex(/^\P{Cc}*$/u)), trees: number(RANGES.groups.trees) }), LENGTHS.groups))
});

const photo = z.strictObject({
  ...numbers(RANGES.photo),
  bands: list(z.strictObject(numbers(RANGES.bands)), LENGTHS.bands)
});

const N = numbers(RANGES.nozzles);
const setting = z.strictObject({
  ...numbers(RANGES.setting),
  gear: id,
  nozzles: maybe(
    list(
      z.strictObject({
        position: id,
        open: maybe(z.boolean()),
        size: maybe(id),
        table: maybe(id),
        swivelDeg: maybe(N.swivelDeg)
      }),
      [0, LENGTHS.positions[1]]
    )
  )
});

const R = numbers(RANGES.refill);
const G = numbers(RANGES.gauges);
const LAW = numbers(RANGES.law);
const round = z.strictObject({
  at: maybe(z.iso.datetime({ local: true, offset: true })),
  machine: maybe(id),
  setting,
  displayKmH: maybe(number(RANGES.rounds.displayKmH)),
  courseM: maybe(number(RANGES.rounds.courseM)),
  catchS: maybe(number(RANGES.rounds.catchS)),
  runs: maybe(list(z.strictObject({ ...numbers(RANGES.runs), direction: maybe(z.enum(['out', 'back'])) }), LENGTHS.runs)),
  gauges: maybe(
    z.strictObject({ restBar: maybe(G.restBar), readBar: maybe(G.readBar), masterBar: maybe(G.masterBar), farBar: maybe(G.farBar), oneSideBar: maybe(G.oneSideBar) })
  ),
  refill: maybe(
    z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('standing'), seconds: maybe(R.seconds), litres: maybe(R.litres), litresErrorL: maybe(R.litresErrorL), secondsError: maybe(R.secondsError) }),
      z.strictObject({ kind: z.literal('course'), distanceM: maybe(R.distanceM), litres: maybe(R.litres), litresErrorL: maybe(R.litresErrorL) })
    ])
  ),
  catches: maybe(list(z.strictObject({ position: id, ...numbers(RANGES.catches) }), LENGTHS.catches)),
  law: maybe(z.strictObject({ firstBar: maybe(LAW.firstBar), firstLPerMin: maybe(LAW.firstLPerMin), secondBar: maybe(LAW.secondBar), secondLPerMin: maybe(LAW.secondLPerMin) }))
});
const check = z.strictObject({
  tolerance: maybe(z.enum(TOLERANCES)),
  ticks: maybe(list(z.strictObject({ item: z.enum(TICK_ITEMS), state: z.enum(['fine', 'fault']) }), [0, TICK_ITEMS.length])),
  rounds: list(round, LENGTHS.rounds)
});

const F = numbers(RANGES.fitting);
const fitting = z.strictObject({
  stock: maybe(list(z.strictObject({ table: id, size: id, count: maybe(number(RANGES.stock.count)) }), LENGTHS.stock)),
  weighting: maybe(z.enum(WEIGHTINGS)),
  weights: maybe(list(z.strictObject({ position: id, ...numbers(RANGES.weights) }), [0, LENGTHS.positions[1]])),
  targetLPerHa: maybe(F.targetLPerHa),
  pressureMinBar: maybe(F.pressureMinBar),
  pressureMaxBar: maybe(F.pressureMaxBar),
  speedMinKmH: maybe(F.speedMinKmH),
  speedMaxKmH: maybe(F.speedMaxKmH),
  finestClass: maybe(z.enum(DROPLET_CLASSES)),
  coarsestClass: maybe(z.enum(DROPLET_CLASSES)),
  mirrored: maybe(z.boolean()),
  mostChanges: maybe(F.mostChanges)
});

const X = numbers(RANGES.mix);
const mix = z.strictObject({
  partners: maybe(list(z.strictObject({ label: id, orderedAmount: maybe(number(RANGES.partners.orderedAmount)), putIn: maybe(list(z.strictObject(numbers(RANGES.putIn)), LENGTHS.putIn)) }), LENGTHS.partners)),
  fills: maybe(z.enum(['full', 'equal'])),
  areaHa: maybe(X.areaHa),
  outerPasses: maybe(z.enum(['one-sided', 'two-sided'])),
  turnSeconds: maybe(X.turnSeconds),
  fillMinutes: maybe(X.fillMinutes),
  filled: maybe(X.filled),
  usedL: maybe(X.usedL)
});

const PAPER = numbers(RANGES.papers);
const seen = z.strictObject({
  ribbons: maybe(list(z.strictObject({ side, ...numbers(RANGES.ribbons), class: z.enum(RIBBON_CLASSES) }), LENGTHS.ribbons)),
  papers: maybe(list(z.strictObject({ side, heightM: PAPER.heightM, place: z.enum(PAPER_PLACES), coveragePercent: PAPER.coveragePercent }), LENGTHS.papers))
});

const rung = z.strictObject({
  id,
  name,
  bbch: maybe(number(RANGES.rungs.bbch)),
  date: maybe(z.iso.date()),
  treatments: maybe(number(RANGES.rungs.treatments)),
  canopy,
  survey: maybe(survey),
  photo: maybe(photo),
  setting,
  saved: maybe(setting),
  check: maybe(check),
  fitting: maybe(fitting),
  mix: maybe(mix),
  seen: maybe(seen)
});

const P = numbers(RANGES.pattern);
const pattern = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('every-alley') }),
  z.strictObject({ kind: z.literal('one-side-both-faces'), side }),
  z.strictObject({ kind: z.literal('one-side-one-face'), side }),
  z.strictObject({ kind: z.literal('alternate-alleys') }),
  z.strictObject({ kind: z.literal('whole-rows'), rows: P.rows }),
  z.strictObject({ kind: z.literal('swath'), widthM: P.widthM })
]);

const B = numbers(RANGES.blocks);
const block = z.strictObject({
  id,
  name,
  crop: maybe(name),
  evergreen: maybe(z.boolean()),
  areaHa: maybe(B.areaHa),
  rowSpacingM: B.rowSpacingM,
  treeSpacingM: maybe(B.treeSpacingM),
  rows: maybe(B.rows),
  rowLengthM: maybe(B.rowLengthM),
  machine: id,
  label: maybe(id),
  pattern: maybe(pattern),
  strategy: z.enum(STRATEGY_IDS),
  concentration: maybe(B.concentration),
  ownWaterLPerHa: maybe(B.ownWaterLPerHa),
  rungs: list(rung, LENGTHS.rungs)
});

const O = numbers(RANGES.outlet);
const outlet = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('arc'),
    axisHeightM: O.axisHeightM,
    radiusM: O.radiusM,
    fromDeg: O.fromDeg,
    toDeg: O.toDeg,
    slotWidthM: O.slotWidthM
  }),
  z.strictObject({
    kind: z.literal('tower'),
    fromHeightM: O.fromHeightM,
    toHeightM: O.toHeightM,
    offsetM: O.offsetM,
    slotWidthM: O.slotWidthM
  }),
  z.strictObject({
    kind: z.literal('spouts'),
    diameterM: O.diameterM,
    spouts: list(z.strictObject(numbers(RANGES.spouts)), LENGTHS.spouts)
  })
]);

const M = numbers(RANGES.machines);
const GEAR = numbers(RANGES.gears);
const machine = z.strictObject({
  id,
  name,
  outlet,
  ...M,
  residualL: maybe(M.residualL),
  gears: list(z.strictObject({ id, name, ...GEAR, leftShare: maybe(GEAR.leftShare) }), LENGTHS.gears),
  nozzles: list(
    z.strictObject({
      id,
      side,
      heightM: N.heightM,
      offsetM: N.offsetM,
      angleDeg: N.angleDeg,
      swivelDownDeg: N.swivelDownDeg,
      swivelUpDeg: N.swivelUpDeg,
      coneAngleDeg: N.coneAngleDeg,
      table: id,
      size: id
    }),
    LENGTHS.positions
  )
});

const nozzleTable = z.strictObject({
  id,
  name,
  pattern: z.enum(['hollow-cone', 'full-cone', 'flat-fan']),
  ...numbers(RANGES.nozzleTables),
  sizes: list(
    z.strictObject({
      id,
      ...numbers(RANGES.sizes),
      colour: maybe(name),
      points: maybe(list(z.strictObject(numbers(RANGES.points)), LENGTHS.points)),
      droplets: maybe(
        list(z.strictObject({ ...numbers(RANGES.droplets), class: z.enum(DROPLET_CLASSES) }), LENGTHS.droplets)
      )
    }),
    LENGTHS.sizes
  )
});

const L = numbers(RANGES.labels);
const label = z.strictObject({
  id,
  name,
  unit: z.enum(['kg', 'L']),
  formulation: maybe(z.enum(FORMULATIONS)),
  basis: z.enum(['per-hectare', 'per-100-l-dilute', 'per-leaf-wall', 'per-crown-height', 'per-row-volume', 'percent-of-water']),
  rate: L.rate,
  referenceWaterLPerHa: maybe(L.referenceWaterLPerHa),
  maxPerHa: maybe(L.maxPerHa),
  maxPerSeason: maybe(L.maxPerSeason),
  maxUses: maybe(L.maxUses),
  minWaterLPerHa: maybe(L.minWaterLPerHa),
  maxWaterLPerHa: maybe(L.maxWaterLPerHa),
  maxConcentration: maybe(L.maxConcentration),
  adaptation: maybe(z.enum(['none', 'downward', 'required'])),
  floor: maybe(L.floor),
  finestClass: maybe(z.enum(['VF', 'F', 'M', 'C', 'VC', 'XC', 'UC']))
});

const ownStrategy = z.strictObject({
  id,
  name,
  index: line(FORMULA_LENGTH),
  water: maybe(line(FORMULA_LENGTH)),
  waterKind: maybe(z.enum(['dilute', 'applied'])),
  note: maybe(line(RECORD_TEXT_LENGTH))
});

const D = numbers(RANGES.day);
const day = z.strictObject({
  temperatureC: maybe(D.temperatureC),
  humidityPct: maybe(D.humidityPct),
  windMPerS: maybe(D.windMPerS),
  altitudeM: maybe(D.altitudeM),
  sunLow: maybe(z.boolean())
});

/** The whole document. The order of the fields is the order in which a file is written. */
export const DOCUMENT = z.strictObject({
  format: z.literal(FORMAT),
  version: z.literal(VERSION),
  name,
  blocks: list(block, LENGTHS.blocks),
  machines: list(machine, LENGTHS.machines),
  nozzleTables: list(nozzleTable, LENGTHS.nozzleTables),
  labels: list(label, LENGTHS.labels),
  day: maybe(day),
  assumptions: maybe(z.record(id, number(ASSUMPTION_RANGE))),
  ownStrategies: maybe(list(ownStrategy, LENGTHS.ownStrategies)),
  recordRules: maybe(RECORD_RULES),
  records: maybe(RECORDS)
});

// The schema and the engine's types must stay the same thing: the compiler refuses the last line as soon as they part.
type Told<T> = T extends readonly (infer U)[]
  ? readonly Told<U>[]
  : T extends object
    ? { readonly [K in keyof T]-?: object extends Pick<T, K> ? { maybe: Told<T[K]> } : Told<T[K]> }
    : T;
type Same<A, B> = [A, B] extends [B, A] ? true : false;
true satisfies Same<Told<z.output<typeof DOCUMENT>>, Told<Document>>;

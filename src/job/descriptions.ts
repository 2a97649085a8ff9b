import { RECORD_DESCRIPTIONS } from './record/descriptions.ts';

/**
 * What each field of the format means, for the JSON Schema only: never loaded by the page. By the object that it stands in,
 * `document` being the whole; the units of numbers are added from the ranges.
 */
export const DESCRIPTIONS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  document: {
    format: 'Always "rowtailor".',
    version: 'Version of the format.',
    name: 'Name of the orchard or of the file, for people.',
    blocks: 'Blocks of one crop on one row spacing. Ids are unique.',
    machines: 'Sprayers. Ids are unique.',
    nozzleTables: 'Nozzle tables beside the built-in "iso-10625". Ids are unique.',
    labels: 'What product labels say. Ids are unique. The printed label always rules.',
    day: 'What was measured at the block, in the shade, just before spraying.',
    assumptions: "The user's own values in place of the engine's assumptions, by assumption id.",
    ownStrategies: "Strategies of the user's own, compared with the built-in ones. A block follows a built-in one. Ids are unique.",
    recordRules: 'Whose lists records are looked through with. Local law decides what is asked for.',
    records: 'What was done, in the order in which it was written down. A record is never changed: an amendment is another record.'
  },
  ...RECORD_DESCRIPTIONS,
  blocks: {
    id: 'Id of the block.',
    name: 'Name of the block.',
    crop: 'Crop and variety, in free words.',
    evergreen: 'Leaf stands all year: growth stages change neither leaf density nor the water of the season.',
    areaHa: 'Planted area.',
    rowSpacingM: 'Distance between trunk lines.',
    treeSpacingM: 'Distance between trees along the row.',
    rows: 'Rows of the block.',
    rowLengthM: 'Length of each row.',
    machine: 'Id of the machine that sprays the block.',
    label: 'Id of the label used.',
    pattern: 'How the alleys are driven. Default: every alley, both sides on.',
    strategy: 'How water (and, where the label lets it, dose) follows the canopy.',
    concentration: 'How many times the dilute strength the mix is wanted, where the strategy names a dilute volume. Default 1.',
    ownWaterLPerHa: "Water wanted instead of the strategy's.",
    rungs: 'Stages of the season in order, each with its canopy and its setting. Ids are unique within the block.'
  },
  ownStrategies: {
    id: 'Id of the strategy; the comparison calls it by this id behind "own.".',
    name: 'Name of the strategy.',
    index: 'Dose over the label dose as a formula over the canopy: numbers, + - * / ^, brackets, min max sqrt exp log abs, and H Hs h W R f n s A TRVg TRVc TRVs LWA RL UCR LAD LAI k m. Its dimension is not checked.',
    water: 'Water in L/ha as such a formula.',
    waterKind: 'Whether that water is a dilute spray, to the point of run-off, or one applied as it is. Default: dilute.',
    note: 'Where the formula comes from, in free words.'
  },
  pattern: {
    kind: 'Which way of driving.',
    side: 'Side of the machine that sprays.',
    rows: 'Rows that one pass treats whole.',
    widthM: 'Width that one pass serves.'
  },
  rungs: {
    id: 'Id of the stage.',
    name: 'Name of the stage.',
    bbch: 'Growth stage, BBCH.',
    date: 'ISO 8601 date.',
    treatments: 'How many times the block is treated with this setting. Default 1.',
    canopy: 'The canopy that stands at this stage.',
    survey: 'The trees that were measured for it.',
    photo: 'Gaps that were counted in a photograph of it. The picture itself is not kept.',
    setting: 'What the operator sets at this stage.',
    saved: 'The last setting that was saved: what a change is compared with.',
    check: 'How the setting was proved on the headland.',
    fitting: 'What a fitting of nozzles is to reach.',
    mix: 'The treatment: products, loads, work.',
    seen: 'What was seen in the field with this setting, to be set beside the prediction.'
  },
  survey: { trees: 'One entry a tree.', blockTrees: 'Trees that stand in the block.', groups: 'How many trees of each row or variety stand in the block; the whole is then weighted by them.' },
  groups: { by: 'Whether a row or a variety is meant.', name: 'Its name; empty for trees of which it was not told.', trees: 'Trees of it that stand in the block.' },
  photo: { threshold: 'Pixels whose blue, 0 to 255, is this or more are gaps.', bands: 'Height bands, from the lowest up.' },
  bands: {
    fromM: 'Lower edge, above ground.',
    toM: 'Upper edge, above ground.',
    widthM: 'Width of the canopy along the view, across the row.',
    pixels: 'Pixels that were counted.',
    gaps: 'Of these, pixels that showed what is behind the canopy.'
  },
  trees: {
    tree: 'What the tree is called.',
    row: 'Row that it stands in.',
    variety: 'Variety of the tree.',
    heightM: 'Height from the ground.',
    skirtM: 'Height of the lowest foliage.',
    widthM: 'Greatest width across the row. This or a profile is needed.',
    profile: 'Widths of the tree by height, rising.',
    leftOut: 'The tree counts in nothing.'
  },
  seen: { ribbons: 'Ribbons on the face of the row behind the leaf.', papers: 'Water-sensitive papers.' },
  ribbons: { side: 'Side of the machine.', heightM: 'Height above ground.', class: 'What it did, from no air to too much.' },
  papers: {
    side: 'Side of the machine.',
    heightM: 'Height above ground.',
    place: 'Near: the face of the row that the machine drove past. Middle: the trunk line. Far: the face behind it. Over: above the top. Ground: under the row.',
    coveragePercent: 'Part of the paper that is stained.'
  },
  check: {
    tolerance: 'Which set of tolerances judges it. Default "normal".',
    ticks: 'Items that were looked at. Each at most once.',
    rounds: 'Goes at proving the setting, in order; the last is the one in hand.'
  },
  ticks: { item: 'What was looked at.', state: 'What was found.' },
  rounds: {
    at: 'When the round was begun, ISO 8601 with time.',
    machine: "Id of the machine that was tested. Without it, the block's.",
    setting: 'What the machine was set to when it was tested.',
    displayKmH: "Forward speed on the tractor's display.",
    courseM: 'Distance marked for the next run. Default 100 m.',
    catchS: 'How long the next jug is held. Default 60 s.',
    runs: 'Timed runs over a marked distance.',
    gauges: 'Pressures read while the nozzles spray, unless said otherwise.',
    refill: 'What it takes to fill the tank to the mark again.',
    catches: 'What single nozzles gave into a jug. Each position at most once.',
    law: 'The same nozzles at two pressures.'
  },
  runs: { distanceM: 'Distance between the marks.', seconds: 'Time between the marks.', direction: 'Which way along the strip.' },
  gauges: {
    restBar: "The machine's gauge with the pump at rest.",
    readBar: "The machine's gauge.",
    masterBar: 'A gauge known to be right, at the same place.',
    farBar: 'A gauge at the nozzle farthest from the pump.',
    oneSideBar: "The machine's gauge when one side is shut."
  },
  refill: {
    kind: 'Sprayed on the spot for a time, or along a course.',
    seconds: 'Time sprayed.',
    distanceM: 'Distance sprayed.',
    litres: 'Litres to the mark again.',
    litresErrorL: 'How far the litres may be off, either way.',
    secondsError: 'How far the time may be off, either way.'
  },
  catches: { position: 'Name of the position on the machine.', litres: 'Litres in the jug.', seconds: 'Time caught.' },
  law: {
    firstBar: 'One pressure.',
    firstLPerMin: 'Flow at it.',
    secondBar: 'The other pressure.',
    secondLPerMin: 'Flow at that.'
  },
  fitting: {
    stock: 'Sizes to choose from. Default: every size of the tables on the machine.',
    weighting: 'How the flow is to be spread over the open positions. Default "canopy".',
    weights: "The user's own weights; positions not named weigh nothing.",
    targetLPerHa: 'Application volume to reach. Default: the wanted water.',
    pressureMinBar: 'Least pressure to be used.',
    pressureMaxBar: 'Greatest pressure to be used.',
    speedMinKmH: 'Least forward speed to be used.',
    speedMaxKmH: 'Greatest forward speed to be used.',
    finestClass: 'Finest droplet class to be used.',
    coarsestClass: 'Coarsest droplet class to be used.',
    mirrored: 'Left and right alike. Default true.',
    mostChanges: 'Most nozzles to be changed.'
  },
  stock: { table: 'Id of the nozzle table.', size: 'Id of the size in its table.', count: 'How many are at hand.' },
  weights: { position: 'Name of the position on the machine.', weight: 'Its share, on any scale.' },
  mix: {
    partners: "Products together in the tank. Default: the block's own label.",
    fills: 'Full loads and a last one of what is left, or all loads alike. Default "equal".',
    areaHa: 'Area treated where it is not the whole block.',
    outerPasses: 'How the outer faces of the two outer rows are done. Default "one-sided".',
    turnSeconds: 'One turn on the headland.',
    fillMinutes: 'One load: drive, fill, mix, drive back.',
    filled: 'Loads that are filled already, counted from the first.',
    usedL: 'Mix that was really used on the area.'
  },
  partners: { label: 'Id of the label.', orderedAmount: "What was bought or set aside, in the label's unit.", putIn: 'What really went into single loads.' },
  putIn: { load: 'Load, counted from 1.', amount: "What was weighed or measured out for it, in the label's unit." },
  canopy: {
    heightM: 'Mean tree height from the ground.',
    widthM: 'Greatest canopy width across the row.',
    skirtM: 'Height of the lowest foliage. Default 0.',
    shape: 'Outline where no widths were measured.',
    profile: 'Measured widths from skirt to top; heights rise.',
    filledFraction: 'Share of the row length that holds canopy. Default 1.',
    missingFraction: 'Share of the tree places that are empty. Default 0.',
    tallestTenthM: 'Mean height of the tallest tenth of the trees.',
    densityClass: 'How dense the canopy stands, as seen.',
    usDensityGalPer1000Ft3: 'Density factor of the US tree-row-volume method.',
    ladM2PerM3: 'Leaf area density, one-sided.',
    errors: 'Standard errors of the measured means.',
    proposed: 'The canopy was proposed from other rungs and is not measured yet.'
  },
  proposed: {
    from: 'Id of the measured rung that it was proposed from.',
    to: 'Id of the later measured rung where it lies between two.',
    by: 'By the published shares of growth stages, or by the degree-days between two dates.'
  },
  profile: { heightM: 'Height above ground.', widthM: 'Canopy width across the row at this height.', relativeDensity: 'Leaf density at this height over the mean of the canopy. Without it, the station says nothing of density.' },
  errors: {
    heightSeM: 'Standard error of the mean tree height.',
    skirtSeM: 'Standard error of the mean skirt height.',
    widthSeM: 'Standard error of the mean canopy width.',
    rowSpacingSeM: 'Standard error of the row spacing.',
    heightWidthCorrelation: 'Correlation of height and width over the trees.',
    trees: 'Trees measured.'
  },
  setting: {
    speedKmH: 'Forward speed.',
    pressureBar: 'Working pressure at the nozzles.',
    gear: 'Id of the fan gear.',
    ptoRpm: 'PTO speed.',
    nozzles: 'What is set at single positions. Positions not named are open, with the size that the machine carries, unswivelled.'
  },
  nozzles: {
    id: 'Name of the position on the machine, counted from the bottom, such as L1. Unique within the machine.',
    side: 'Side of the machine.',
    heightM: 'Height above ground.',
    offsetM: "Distance from the machine's centre line.",
    angleDeg: "Direction of the spray's centre line above horizontal, pointing outward; 90 is straight up.",
    swivelDownDeg: 'How far the body swivels down.',
    swivelUpDeg: 'How far the body swivels up.',
    coneAngleDeg: 'Full angle of the spray as the air carries it off.',
    table: 'Id of the nozzle table.',
    size: 'Id of the size in its table.',
    position: 'Name of the position on the machine. Each at most once.',
    open: 'Whether the nozzle sprays. Default true.',
    swivelDeg: 'Swivel from the position’s own angle, up positive. Default 0.'
  },
  machines: {
    id: 'Id of the machine.',
    name: "The user's own name for the machine.",
    outlet: 'Where the air leaves.',
    bodyWidthM: 'Overall width of the body.',
    tankL: 'Tank volume.',
    residualL: 'What the pump cannot draw.',
    pressureMinBar: 'Least working pressure.',
    pressureMaxBar: 'Greatest working pressure.',
    speedMinKmH: 'Least forward speed.',
    speedMaxKmH: 'Greatest forward speed.',
    ptoMinRpm: 'Least PTO speed.',
    ptoMaxRpm: 'Greatest PTO speed.',
    gears: 'Gears of the fan. Ids are unique within the machine.',
    nozzles: 'Nozzle positions.'
  },
  outlet: {
    kind: 'Arc: a slot around an axial fan. Tower: an upright slot. Spouts: round mouths. Alike on both sides.',
    axisHeightM: 'Height of the fan axis above ground.',
    radiusM: 'Radius of the slot around the axis.',
    fromDeg: 'Lower end of the slot, above horizontal.',
    toDeg: 'Upper end of the slot, above horizontal.',
    fromHeightM: 'Lower end of the slot above ground.',
    toHeightM: 'Upper end of the slot above ground.',
    offsetM: "Distance of the slot from the machine's centre line.",
    slotWidthM: 'Width of the slot.',
    diameterM: 'Inner diameter of each spout at its mouth.',
    spouts: 'Spouts of one side; the other side mirrors them. No two at the same height and offset.'
  },
  spouts: {
    heightM: 'Height of the middle of the mouth above ground.',
    offsetM: "Distance of the middle of the mouth from the machine's centre line.",
    angleDeg: 'Direction of its air above horizontal, pointing outward.'
  },
  gears: {
    id: 'Id of the gear.',
    name: 'Name of the gear.',
    flowM3PerH: 'Air of both sides together at `atPtoRpm`.',
    atPtoRpm: 'PTO speed at which the air flow holds.',
    leftShare: 'Share of the air that leaves on the left, seen in driving direction. Default 0.5.'
  },
  nozzleTables: {
    id: 'Id of the table; "iso-10625" is taken.',
    name: 'Name of the table.',
    pattern: 'How the spray is spread over its angle.',
    referenceBar: 'Pressure at which `flowLPerMin` of each size holds.',
    pressureMinBar: 'Least pressure at which the nozzles work.',
    pressureMaxBar: 'Greatest pressure at which the nozzles work.',
    sizes: 'Sizes. Ids are unique within the table.'
  },
  sizes: {
    id: 'Id of the size.',
    flowLPerMin: "Flow at the table's reference pressure.",
    colour: 'Name of the colour, as printed in the table.',
    points: 'Measured or printed flows at other pressures; both rise.',
    droplets: 'Droplet classes, each from a pressure upward; pressures rise.'
  },
  points: { pressureBar: 'Pressure.', flowLPerMin: 'Flow at this pressure.' },
  droplets: { fromBar: 'Pressure from which the class holds.', class: 'Droplet size class of ISO 25358, finest first.' },
  labels: {
    id: 'Id of the label.',
    name: "The user's own name for the product.",
    unit: 'Unit of the product.',
    formulation: 'Kind of product by its usual code; decides its place in the order of mixing, unless the label says otherwise.',
    basis: 'What the rate counts.',
    rate: 'Product by the basis, in `unit`; percent for "percent-of-water".',
    referenceWaterLPerHa: 'The water that a percentage is meant for.',
    maxPerHa: 'Most product on a hectare of ground in one treatment, in `unit`.',
    maxPerSeason: 'Most product on a hectare of ground in one season, in `unit`.',
    maxUses: 'Most treatments in one season.',
    minWaterLPerHa: 'Least water that the label allows.',
    maxWaterLPerHa: 'Most water that the label allows.',
    maxConcentration: 'How strong the mix may be against the dilute one.',
    adaptation: 'What the label or the law lets the dose do with the canopy. Default "none".',
    floor: "The user's own floor under an adapted dose, share of the label dose.",
    finestClass: 'Finest droplet class that the label allows.'
  },
  day: {
    temperatureC: 'Air temperature.',
    humidityPct: 'Relative humidity.',
    windMPerS: 'Mean wind speed.',
    altitudeM: 'Height of the block above sea level. Default 0.',
    sunLow: 'True from about two hours before sunset to an hour after sunrise.'
  }
};

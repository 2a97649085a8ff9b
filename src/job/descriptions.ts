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
    assumptions: "The user's own values in place of the engine's assumptions, by assumption id."
  },
  blocks: {
    id: 'Id of the block.',
    name: 'Name of the block.',
    crop: 'Crop and variety, in free words.',
    evergreen: 'Leaf stands all year: growth stages change neither leaf density nor the water of the season.',
    areaHa: 'Planted area.',
    rowSpacingM: 'Distance between trunk lines.',
    treeSpacingM: 'Distance between trees along the row.',
    machine: 'Id of the machine that sprays the block.',
    label: 'Id of the label used.',
    pattern: 'How the alleys are driven. Default: every alley, both sides on.',
    strategy: 'How water (and, where the label lets it, dose) follows the canopy.',
    concentration: 'How many times the dilute strength the mix is wanted, where the strategy names a dilute volume. Default 1.',
    ownWaterLPerHa: "Water wanted instead of the strategy's.",
    rungs: 'Stages of the season in order, each with its canopy and its setting. Ids are unique within the block.'
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
    canopy: 'The canopy that stands at this stage.',
    setting: 'What the operator sets at this stage.',
    saved: 'The last setting that was saved: what a change is compared with.'
  },
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
    errors: 'Standard errors of the measured means.'
  },
  profile: { heightM: 'Height above ground.', widthM: 'Canopy width across the row at this height.' },
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
    kind: 'Arc: a slot around an axial fan. Tower: an upright slot.',
    axisHeightM: 'Height of the fan axis above ground.',
    radiusM: 'Radius of the slot around the axis.',
    fromDeg: 'Lower end of the slot, above horizontal.',
    toDeg: 'Upper end of the slot, above horizontal.',
    fromHeightM: 'Lower end of the slot above ground.',
    toHeightM: 'Upper end of the slot above ground.',
    offsetM: "Distance of the slot from the machine's centre line.",
    slotWidthM: 'Width of the slot.'
  },
  gears: {
    id: 'Id of the gear.',
    name: 'Name of the gear.',
    flowM3PerH: 'Air of both sides together at `atPtoRpm`.',
    atPtoRpm: 'PTO speed at which the air flow holds.'
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
    basis: 'What the rate counts.',
    rate: 'Product by the basis, in `unit`; percent for "percent-of-water".',
    referenceWaterLPerHa: 'The water that a percentage is meant for.',
    maxPerHa: 'Most product on a hectare of ground in one treatment, in `unit`.',
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

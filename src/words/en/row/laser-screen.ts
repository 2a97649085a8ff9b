import type { LeftOut } from '#core/canopy/laser/types.ts';

/** Labels of laser points on the screen, in English. */
export const laserScreen = {
  how: 'Points of a laser scanner that stood or drove in an alley, as LAS, LAZ or CSV (lateral_m, height_m, along_m). They are read on this device and go nowhere.',
  choose: 'Choose a file of points',
  other: 'Choose another file',
  reading: (done: string) => `Reading the points: ${done}`,
  stop: 'Stop',
  failed: 'Reading failed. Try again, or cut the file down to one alley.',
  judging: 'Judging the points …',
  refused: (lines: string) => `${lines} lines of the file were not used. The first of them:`,

  file: (kind: string, points: string) => `${kind}: ${points} points.`,
  kinds: { table: 'Table', las: (version: string, format: number) => `LAS ${version}, point format ${format}`, laz: (version: string, format: number) => `LAZ ${version}, point format ${format}` },
  everyOf: (every: number) => `To keep memory small, every ${every}. point of the file was read.`,
  marked: (n: string) => `${n} are marked in the file as withheld or noise and were passed over.`,
  tooFar: (n: string) => `${n} lie too far off: more than 100 m to the side, 20 m below or 60 m above the ground.`,

  place: 'Where the alley lies in the file',
  placeNote: 'Read off the points. If the two rows below look smeared, correct the way of the rows first.',
  unit: 'The file is in',
  units: { m: 'metres', ft: 'feet' },
  bearing: 'Way of the rows, degrees from y towards x',
  originX: 'Middle of the alley, x',
  originY: 'Middle of the alley, y',
  ground: 'Ground, z',

  rules: 'Which points count',
  platform: 'Leave out the scanner’s own stand or vehicle',
  half: 'Nearer to the track than',
  from: 'Above',
  to: 'Below',
  groundRule: 'Ground and grass below',
  side: 'Rows taken',
  sides: { both: 'both', left: 'left', right: 'right' },
  skirt: 'Lowest foliage',
  scanner: 'Height of the scanner',
  spacing: 'Read the row spacing off the points',
  spacingNote: (spacing: string) => `Otherwise it is the block’s, ${spacing}.`,

  plot: (points: string, height: string, width: string) => `Section of ${points} points with ground, row lines and the outline made of them: ${height} high, ${width} wide`,
  legend: { used: 'counts', out: 'left out', outline: 'outline', face: 'face that was seen', row: 'row line', platform: 'left out as stand or vehicle' },

  says: 'What the points say',
  used: (used: string, all: string) => `${used} of ${all} points count.`,
  leftOut: {
    platform: 'the stand or vehicle',
    ground: 'ground and grass',
    'other-side': 'row that is not taken',
    beyond: 'rows further off',
    'below-skirt': 'below the lowest foliage',
    'above-top': 'above the top'
  } satisfies Record<LeftOut, string>,
  leftOutTitle: 'Left out',
  figures: { height: 'Height', skirt: 'Lowest foliage', width: 'Greatest width', spacing: 'Row spacing', filled: 'Filled share of the row', box: 'Box', outline: 'Inside the outline', occupied: 'Occupied' },
  seen: 'read off the row behind',
  given: 'of the block',
  ofBox: (share: string) => `${share} of the box`,
  box: 'from the lowest foliage to the top, as wide as the widest band, per length of row',
  noGaps: 'too few points, or a stretch too short, to tell gaps of the face',
  noFilled: (stretch: string) => `${stretch} of row is too short to show gaps between trees`,
  noAlong: 'the points do not tell where along the row they are',
  none: 'not told',
  spacingDiffers: (seen: string, block: string) => `The points show rows ${seen} apart, the block has ${block}. Check which is right: the width hangs on it.`,

  bands: 'By height, top first',
  columns: { height: 'Height', points: 'Points', width: 'Width', gaps: 'Gaps', density: 'Density' },
  limits: 'What it cannot tell',
  limit: [
    'The scanner sees the near face. The row line is taken to stand half a row spacing from the middle of the alley, the far side to be like the near one.',
    'Density is points over their mean: a loose sign of leaf. Points and leaf area went together with a correlation of 0.88, volume and leaf area with 0.80, on 20 apple trees in eight parts each (Berk et al. 2020). Leaf area itself is not measured.',
    'Beams lie thinner the steeper they are, so the top looks less dense than it is, unless the height of the scanner is told.',
    'Gaps of the face are cells of 0.1 m along the row without a point. Occupied volume takes each to go right through, which it may not.',
    'On a slope heights must be above the ground below; leaning trees make the mirrored outline too wide or too narrow. Measure some trees by hand.'
  ],
  use: 'Use for this rung',
  taken: 'The canopy of this rung now has the outline of the points.',
  useNote: 'Height, width, lowest foliage, widths and density by height are replaced; the filled share too, where it is told. Undo brings them back.'
} as const;

import type { LaserRules, LeftOut } from '#core/canopy/laser/types.ts';

/** What `rowtailor laser` says, in English. */
export const laserCli = {
  usage: `rowtailor laser FILE [--row-spacing M] [--side left|right|both] [--platform W,FROM,TO|none] [--ground M]
                     [--skirt M] [--scanner-height M] [--unit m|ft] [--bearing DEG] [--origin X,Y] [--ground-level Z]
                     [--units SYSTEM] [--json]

Turns the points of a laser scanner in an alley into a canopy: outline by height band, skirt, top, points by height, gaps along the row.
FILE is a LAS or LAZ file (LAS 1.2 to 1.4, point formats 0 to 10), told by its own mark, or a CSV table (comma, semicolon or tab; - reads
standard input), one point a line, columns in any order:
  lateral_m | lateral_ft    across the rows from the scanner's track, to the right positive
  height_m | height_ft      above ground
  along_m | along_ft        along the row; may be left out
  intensity, time, ring, return, note_...   passed over

Lengths below are in metres; write 10ft for feet.
  --row-spacing M       distance of the rows; without it, it is read off the row behind, if that is seen
  --side                the rows whose near face is taken: left, right or both (default)
  --platform W,FROM,TO  leave out points nearer than W to the scanner's track, between two heights: the stand or vehicle
                        itself (default 0.75,0.2,2); none keeps them
  --ground M            points below are ground and grass (default 0.3)
  --skirt M             lowest foliage; without it, it is read off the points
  --scanner-height M    height of the scanner; with it, points are weighed by how thinly its beams lie where they met
For LAS and LAZ, in the file's own coordinates; without them they are read off the points and told:
  --unit                what the file is in: m (default) or ft
  --bearing DEG         way of the rows, from the file's y axis (north) towards its x axis (east)
  --origin X,Y          a point on the middle of the alley
  --ground-level Z      height of the ground
  --units               metric (default), metric-psi, metric-mph, acres, imperial or us; for the text alone
  --json                everything in metres: {"format": "rowtailor-laser", "version": 1, "canopy": {...}, ...}
  -h, --help            this text

The canopy is printed as it stands in a document, to be put in a rung's "canopy". A scanner sees the near face of a row; the far side is
taken to be like it. Points by height tell leaf area loosely (correlation 0.88 in one study of 20 trees), and leaf area itself not at all.

Lines that cannot be used are told on standard error with line, column, value and reason; the others are still used.
Exit codes: 0 done, 1 some lines refused, or no canopy can be made of the points, 2 wrong usage, 3 unreadable.
`,
  noFile: 'Name one file of points, LAS, LAZ or CSV, or - for standard input.',
  tooManyFiles: (found: number) => `One file of points at a time, not ${found}.`,
  badLength: (option: string, value: string, least: number, most: number) => `--${option} is "${value}"; ${least} to ${most} m is allowed, as 3.5 or 11.5ft.`,
  badUnit: (value: string) => `--unit is "${value}"; it must be m or ft.`,
  badPlace: (option: string, value: string, count: number) => `--${option} is "${value}"; ${count === 1 ? 'a number is' : `${count} numbers are`} needed${count === 1 ? '' : ', as 512345.6,4801234.5'}.`,
  badSide: (value: string) => `--side is "${value}"; it must be left, right or both.`,
  badPlatform: (value: string) => `--platform is "${value}"; write half width and two heights in metres, the lower first, as 0.75,0.2,2, or none.`,

  title: (file: string) => `Canopy from laser points: ${file}`,
  headings: { points: 'Points', place: 'Where the alley lies in the file', rows: 'Rows', canopy: 'Canopy', profile: 'Profile, top first', assumed: 'What is assumed', document: 'The rung’s canopy, for a document' },
  las: 'file',
  lasIs: (version: string, format: number, compressed: boolean) => `${compressed ? 'LAZ' : 'LAS'} ${version}, point format ${format}`,
  bearing: 'way of the rows',
  bearingIs: (deg: string) => `${deg}° from the y axis towards the x axis; --bearing`,
  origin: 'middle of the alley',
  originIs: (x: string, y: string) => `x ${x}, y ${y}; --origin`,
  groundLevel: 'ground',
  groundIs: (z: string, unit: string) => `z ${z} ${unit}; --ground-level, --unit`,
  kept: 'looked at',
  everyOf: (every: number) => `every ${every}. point of the file`,
  marked: 'marked in the file',
  markedRule: 'as withheld or noise',
  tooFar: 'too far off',
  tooFarRule: 'more than 100 m to the side, 20 m below or 60 m above the ground',
  read: 'read',
  used: 'used',
  leftOut: {
    platform: 'the platform itself',
    ground: 'ground and grass',
    'other-side': 'row on the side not taken',
    beyond: 'rows further off',
    'below-skirt': 'below the skirt',
    'above-top': 'above the top'
  } satisfies Record<LeftOut, string>,
  byRule: {
    platform: (half: string, from: string, to: string) => `nearer than ${half} to the track, between ${from} and ${to}; --platform`,
    ground: (most: string) => `below ${most}; --ground`,
    beyond: (distance: string) => `further than ${distance} from the alley’s middle`,
    'below-skirt': 'trunks, weeds; --skirt',
    'above-top': 'the topmost half of a percent: lone shoots, birds, posts'
  },
  rowSpacing: 'row spacing',
  spacingFrom: { given: 'given', seen: 'from the face of a row to the face of the row behind; give it if you know it' },
  middle: 'alley’s middle',
  ofTrack: { left: 'left of the scanner’s track', right: 'right of the scanner’s track' },
  row: { left: 'row on the left', right: 'row on the right' },
  sees: (points: string, face: string, skirt: string, top: string) => `${points} points, face ${face} from the alley’s middle, skirt ${skirt}, top ${top}`,
  height: 'height',
  skirt: 'skirt',
  width: 'greatest width',
  filled: 'filled fraction',
  box: 'box',
  boxIs: 'from skirt to top, as wide as the widest band, a metre of row',
  outline: 'outline',
  occupied: 'occupied',
  ofBox: (share: string) => `${share} of the box`,
  noGaps: 'not told: too few points, or a stretch too short, to tell gaps of the face',
  stretch: (length: string) => `of ${length} of row`,
  tooShort: (length: string) => `not told: ${length} of row is too short to show gaps between trees`,
  noAlong: 'not told: the points do not say where along the row they are',
  columns: { height: 'height', points: 'points', face: 'face at', depth: 'seen to', width: 'width', density: 'density', gap: 'gaps' },
  assumed: (rules: LaserRules): string[] => [
    'The row line stands half the row spacing from the alley’s middle. The face of a height band is where a twentieth of its points lie nearer, each metre of row apart, then averaged.',
    'The far side is seen through leaves alone: it is taken to be like the near face. How far in points still go ("seen to") is told, and not used.',
    'Gaps of the face: cells of 0.1 m along the row without a point, where there are five points a cell or more. Occupied is the outline without them, as if each went right through.',
    'Density is points per area of the section over their mean. It stands for leaf density by height loosely: correlation of points with leaf area 0.88 on 20 apple trees in eight parts each (Berk et al. 2020); in a dense row every beam comes back, whatever stands behind the first leaf.',
    rules.scannerHeightM === undefined
      ? 'Beams lie thinner the steeper they are, so the top looks less dense than it is. Give --scanner-height to allow for it.'
      : 'Points are weighed by how thinly beams lie on an upright face: 1 + (height above the scanner / distance)².',
    'Leaf area itself is not measured: the document’s leaf area density stays assumed until you enter it. Measure a few trees by hand before you rely on this outline.'
  ]
} as const;

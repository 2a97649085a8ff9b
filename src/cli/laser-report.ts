import { LEFT_OUT, type LaserBand, type LaserCanopy, type LeftOut } from '#core/canopy/laser/types.ts';
import { shown, type UnitSystem } from '#core/quantity/units.ts';
import { DASH, formatNumber, formatShare, formatUnit } from '#words/index.ts';
import { laserCli as words } from '#words/en/spray/laser-cli.ts';
import { canopyLines } from './canopy-lines.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** A canopy made of points as text for a terminal, the document's part last so that it is easily taken. */
export function laserReport(l: LaserCanopy, file: string, system: UnitSystem): string {
  const title = words.title(file);
  // A scanner's own error is some centimetres.
  const m = (v: number): string => `${formatNumber(shown(v, 'm', system), 2, system)}\u00a0${formatUnit('m', system)}`;
  return (
    [
      title,
      '='.repeat([...title].length),
      ...section(words.headings.points, points(l, m)),
      ...section(words.headings.rows, rows(l, m)),
      ...section(words.headings.canopy, canopy(l, m)),
      ...section(words.headings.profile, profile(l, system, m)),
      ...section(words.headings.assumed, words.assumed(l.rules).flatMap((line) => paragraph(line, INDENT))),
      ...section(words.headings.document, canopyLines(l.canopy))
    ].join('\n') + '\n'
  );
}

type Metres = (v: number) => string;
const count = (n: number): string => formatNumber(n, 0);

function points(l: LaserCanopy, m: Metres): string[] {
  const { platform, groundM } = l.rules;
  const rule: Partial<Record<LeftOut, string>> = {
    ...(platform ? { platform: words.byRule.platform(m(platform.halfWidthM), m(platform.fromM), m(platform.toM)) } : {}),
    ground: words.byRule.ground(m(groundM)),
    beyond: words.byRule.beyond(m(l.rowSpacingM)),
    'below-skirt': words.byRule['below-skirt'],
    'above-top': words.byRule['above-top']
  };
  return columns(
    [
      [words.read, count(l.total), ''],
      ...LEFT_OUT.filter((why) => l.leftOut[why] > 0 || rule[why] !== undefined).map((why) => [words.leftOut[why], count(l.leftOut[why]), rule[why] ?? '']),
      [words.used, count(l.used), '']
    ],
    ['left', 'right']
  );
}

const rows = (l: LaserCanopy, m: Metres): string[] => [
  ...columns([
    [words.rowSpacing, m(l.rowSpacingM), words.spacingFrom[l.spacingFrom]],
    [words.middle, m(Math.abs(l.middleM)), words.ofTrack[l.middleM < 0 ? 'left' : 'right']]
  ]),
  ...columns(l.sides.map((s) => [words.row[s.side], words.sees(count(s.points), m(s.faceM), m(s.skirtM), m(s.topM))]))
];

function canopy({ canopy: c, gaps }: LaserCanopy, m: Metres): string[] {
  const filled = !gaps ? [DASH, words.noAlong] : gaps.filledFraction === null ? [DASH, words.tooShort(m(gaps.stretchM))] : [formatShare(gaps.filledFraction), words.stretch(m(gaps.stretchM))];
  return columns([
    [words.height, m(c.heightM), ''],
    [words.skirt, m(c.skirtM ?? 0), ''],
    [words.width, m(c.widthM), ''],
    [words.filled, ...filled]
  ]);
}

function profile({ bands }: LaserCanopy, system: UnitSystem, m: Metres): string[] {
  const c = words.columns;
  const known = (v: number | null): string => (v === null ? DASH : m(v));
  const line = (b: LaserBand): string[] => [
    m((b.fromM + b.toM) / 2), count(b.points), known(b.faceM), known(b.depthM), known(b.widthM), b.relativeDensity === null ? DASH : formatNumber(b.relativeDensity, 2, system)
  ];
  return columns([[c.height, c.points, c.face, c.depth, c.width, c.density], ...bands.toReversed().map(line)], Array(6).fill('right'));
}

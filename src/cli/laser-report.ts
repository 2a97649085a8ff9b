import { LEFT_OUT, type LaserBand, type LaserCanopy, type LeftOut } from '#core/canopy/laser/types.ts';
import type { Placement } from '#core/canopy/laser/place.ts';
import { shown, type UnitSystem } from '#core/quantity/units.ts';
import type { LasHeader } from '#job/laser/las/header.ts';
import { DASH, formatAmount, formatNumber, formatShare, formatUnit } from '#words/index.ts';
import { laserCli as words } from '#words/en/spray/laser-cli.ts';
import { canopyLines } from './canopy-lines.ts';
import { columns, INDENT, paragraph, section } from './layout.ts';

/** Where the points are from. */
export interface LaserOrigin {
  /** null for a table. */
  readonly las: LasHeader | null;
  readonly placement: Placement;
  readonly every: number;
  readonly marked: number;
  readonly tooFar: number;
}

/** A canopy made of points as text for a terminal, the document's part last so that it is easily taken. */
export function laserReport(l: LaserCanopy, of: LaserOrigin, file: string, system: UnitSystem): string {
  const title = words.title(file);
  // A scanner's own error is some centimetres.
  const m = (v: number): string => `${formatNumber(shown(v, 'm', system), 2, system)}\u00a0${formatUnit('m', system)}`;
  return (
    [
      title,
      '='.repeat([...title].length),
      ...section(words.headings.points, points(l, of, m)),
      ...(of.las ? section(words.headings.place, place(of.las, of)) : []),
      ...section(words.headings.rows, rows(l, m)),
      ...section(words.headings.canopy, canopy(l, m, system)),
      ...section(words.headings.profile, profile(l, system, m)),
      ...section(words.headings.assumed, words.assumed(l.rules).flatMap((line) => paragraph(line, INDENT))),
      ...section(words.headings.document, canopyLines(l.canopy))
    ].join('\n') + '\n'
  );
}

type Metres = (v: number) => string;
const count = (n: number): string => formatNumber(n, 0);

const place = ({ version, format, compressed }: LasHeader, { placement: p }: LaserOrigin): string[] =>
  columns([
    [words.las, words.lasIs(version, format, compressed)],
    [words.bearing, words.bearingIs(String(p.bearingDeg))],
    [words.origin, words.originIs(formatNumber(p.originX, 2), formatNumber(p.originY, 2))],
    [words.groundLevel, words.groundIs(formatNumber(p.groundZ, 2), p.unitM === 1 ? 'm' : 'ft')]
  ]);

function points(l: LaserCanopy, { every, marked, tooFar }: LaserOrigin, m: Metres): string[] {
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
      ...(every > 1 ? [[words.kept, count(l.total + tooFar + marked), words.everyOf(every)]] : []),
      ...(marked > 0 ? [[words.marked, count(marked), words.markedRule]] : []),
      ...(tooFar > 0 ? [[words.tooFar, count(tooFar), words.tooFarRule]] : []),
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

function canopy({ canopy: c, gaps, volumes: v }: LaserCanopy, m: Metres, system: UnitSystem): string[] {
  const volume = (x: number): string => formatAmount(x, 'm3/m', system);
  const filled = !gaps ? [DASH, words.noAlong] : gaps.filledFraction === null ? [DASH, words.tooShort(m(gaps.stretchM))] : [formatShare(gaps.filledFraction), words.stretch(m(gaps.stretchM))];
  return columns([
    [words.height, m(c.heightM), ''],
    [words.skirt, m(c.skirtM ?? 0), ''],
    [words.width, m(c.widthM), ''],
    [words.filled, ...filled],
    [words.box, volume(v.boxM3PerM), words.boxIs],
    [words.outline, volume(v.outlineM3PerM), words.ofBox(formatShare(v.outlineM3PerM / v.boxM3PerM))],
    v.occupiedM3PerM === null ? [words.occupied, DASH, words.noGaps] : [words.occupied, volume(v.occupiedM3PerM), words.ofBox(formatShare(v.occupiedM3PerM / v.boxM3PerM))]
  ]);
}

function profile({ bands }: LaserCanopy, system: UnitSystem, m: Metres): string[] {
  const c = words.columns;
  const known = (v: number | null): string => (v === null ? DASH : m(v));
  const line = (b: LaserBand): string[] => [
    m((b.fromM + b.toM) / 2), count(b.points), known(b.faceM), known(b.depthM), known(b.widthM), b.relativeDensity === null ? DASH : formatNumber(b.relativeDensity, 2, system), b.gapFraction === null ? DASH : formatShare(b.gapFraction)
  ];
  return columns([[c.height, c.points, c.face, c.depth, c.width, c.density, c.gap], ...bands.toReversed().map(line)], Array(7).fill('right'));
}

import type { RawPoints } from '#core/canopy/laser/place.ts';
import { refused, type Refused } from '#core/working/answer.ts';
import type { RowProblem } from '../csv/header.ts';
import { startsAsLas, type LasHeader } from './las/header.ts';
import { readLas } from './las/read.ts';
import type { StartUnpacker } from './las/unpack.ts';
import { MOST_POINTS, readPoints } from './points.ts';
import { piecesOf, type Source } from './source.ts';

/** What came of a file of laser points, whatever its kind. */
export type LaserFile =
  | {
      readonly ok: true;
      readonly raw: RawPoints;
      /** null for a table. */
      readonly las: LasHeader | null;
      readonly every: number;
      readonly marked: number;
      readonly refusedLines: number;
    }
  | { readonly ok: false; readonly refused: Refused | null; readonly problems: readonly RowProblem[] };

/** Long enough to tell text from something else. */
const LOOK = 4096;

/**
 * Reads a file of laser points by its own mark, whatever it is called: LAS, LAZ, or a table.
 * Of more than `most` points every second, third … is kept.
 * @param tell hears each line of a table that is refused
 * @param mostLines of a table; all are held before some are kept
 */
export async function readLaserFile(source: Source, start: StartUnpacker, most: number, tell: (problem: RowProblem) => void, progress: (done: number) => void = () => {}, mostLines = MOST_POINTS): Promise<LaserFile> {
  const no = (why: Refused): LaserFile => ({ ok: false, refused: why, problems: [] });
  if (source.size === 0) return no(refused('las-empty', 'points'));
  const head = await source.read(0, Math.min(source.size, LOOK));
  // No table has a byte 0 in it, unless it is UTF-16, which is no UTF-8 either.
  if (!startsAsLas(head) && (head.includes(0) || /\.la[sz]$/i.test(source.name))) return no(refused('las-not-las', 'points'));
  if (startsAsLas(head)) {
    const read = await readLas(source, start, most, progress);
    return 'kind' in read ? no(read) : { ok: true, raw: read.raw, las: read.header, every: read.every, marked: read.marked, refusedLines: 0 };
  }
  const table = await readPoints(piecesOf(source, progress), tell, mostLines);
  if (!table.ok) return { ok: false, refused: null, problems: table.problems };
  const { lateralM, alongM, heightM } = table.points;
  const every = Math.max(1, Math.ceil(lateralM.length / most));
  const some = (column: Float64Array): Float64Array => (every === 1 ? column : column.filter((_, i) => i % every === 0));
  return { ok: true, raw: { x: some(lateralM), y: alongM && some(alongM), z: some(heightM) }, las: null, every, marked: 0, refusedLines: table.refused };
}

import type { RawPoints } from '#core/canopy/laser/place.ts';
import { refused, type Refused } from '#core/working/answer.ts';
import type { RowProblem } from '../csv/header.ts';
import { startsAsLas, type LasHeader } from './las/header.ts';
import { readLas } from './las/read.ts';
import type { StartUnpacker } from './las/unpack.ts';
import { readPoints } from './points.ts';
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
 * @param tell hears each line of a table that is refused
 */
export async function readLaserFile(source: Source, start: StartUnpacker, most: number, tell: (problem: RowProblem) => void, progress: (done: number) => void = () => {}): Promise<LaserFile> {
  const no = (why: Refused): LaserFile => ({ ok: false, refused: why, problems: [] });
  if (source.size === 0) return no(refused('las-empty', 'points'));
  const head = await source.read(0, Math.min(source.size, LOOK));
  // No table has a byte 0 in it, unless it is UTF-16, which is no UTF-8 either.
  if (!startsAsLas(head) && (head.includes(0) || /\.la[sz]$/i.test(source.name))) return no(refused('las-not-las', 'points'));
  if (startsAsLas(head)) {
    const read = await readLas(source, start, most, progress);
    return 'kind' in read ? no(read) : { ok: true, raw: read.raw, las: read.header, every: read.every, marked: read.marked, refusedLines: 0 };
  }
  const table = await readPoints(piecesOf(source, progress), tell, most);
  if (!table.ok) return { ok: false, refused: null, problems: table.problems };
  const { lateralM, alongM, heightM } = table.points;
  return { ok: true, raw: { x: lateralM, y: alongM, z: heightM }, las: null, every: 1, marked: 0, refusedLines: table.refused };
}

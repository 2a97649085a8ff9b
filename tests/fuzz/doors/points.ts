import fc from 'fast-check';
import { sortedPoints } from '#core/canopy/laser/canopy.ts';
import { placed, proposedPlacement, type RawPoints } from '#core/canopy/laser/place.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import { isRefused } from '#core/working/answer.ts';
import { memorySource, startUnpacker } from '#cli/laser-file.ts';
import type { Unpacker } from '#job/laser/las/unpack.ts';
import { readLaserFile } from '#job/laser/open.ts';
import { problemSentence } from '#words/en/problems.ts';
import '#words/row/join.ts';
import '#words/spray/join.ts';
import { refusalSentence } from '#words/sentences.ts';
import { las } from '../../support/las.ts';
import { laz } from '../../support/laz.ts';
import { finite, reasons, type Door } from '../door.ts';
import { taken } from './rung.ts';
import { head, wide } from './tables.ts';

export const said = (r: { readonly code: string; readonly parameters: Readonly<Record<string, number | string>> }): string => refusalSentence(r, 'metric');

async function* one(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  yield bytes;
}

/** Goes on with points as the page does, as far as a canopy in the document. */
function used(raw: RawPoints): void {
  finite(raw);
  const where = proposedPlacement(raw);
  if (isRefused(where as never)) return void reasons([where as never], said);
  finite(where);
  for (const rules of [DEFAULT_RULES, { ...DEFAULT_RULES, rowSpacingM: 3.5 }]) {
    const { made } = sortedPoints(placed(raw, where as never).points, rules);
    if ('kind' in made) reasons([made], said);
    else {
      finite(made);
      taken(made.canopy);
    }
  }
}

async function file(name: string, bytes: Uint8Array, start: () => Promise<Unpacker>): Promise<boolean> {
  const r = await readLaserFile(await memorySource(name, one(bytes)), start, 100_000, (p) => void reasons([p], problemSentence));
  if (!r.ok) return r.refused ? reasons([r.refused], said) : reasons(r.problems, problemSentence);
  used(r.raw);
  return true;
}

/** One unpacker for many files: the page starts one for each. */
let unpacker: Promise<Unpacker> | null = null;
let refused = 0;
const again = (): Promise<Unpacker> => (unpacker ??= started());
/** The library listens to the whole process; so many times over, nobody should. */
async function started(): Promise<Unpacker> {
  const kinds = ['uncaughtException', 'unhandledRejection'] as const;
  const before = kinds.map((kind) => new Set<unknown>(process.listeners(kind as never)));
  const one = await startUnpacker();
  kinds.forEach((kind, i) => process.listeners(kind as never).forEach((l) => before[i]!.has(l) || process.removeListener(kind, l as never)));
  return one;
}

const some = Array.from({ length: 60 }, (_, i) => ({ x: 1 + (i % 7) * 0.2, y: i * 0.1, z: (i % 11) * 0.3 }));
/** An alley between two rows, of which a canopy is made. */
const alley = Array.from({ length: 240 }, (_, i) => ({ x: (i % 2 ? 1 : -1) * (1.2 + (i % 5) * 0.1), y: (i * 0.13) % 8, z: 0.5 + ((i * 0.37) % 2.5) }));

/** Numbers of the header that promise more than there is. */
const promises = (file: Uint8Array): fc.Arbitrary<Uint8Array> =>
  fc.tuple(fc.constantFrom(96, 100, 104, 105, 107, 131, 155, 247), fc.bigInt({ min: 0n, max: (1n << 64n) - 1n })).map(([at, v]) => {
    const bytes = file.slice();
    if (at + 8 <= bytes.length) new DataView(bytes.buffer).setBigUint64(at, v, true);
    return bytes;
  });

const PLAIN = [las(some), las(some, { minor: 4, format: 6 }), las(some, { extra: 8 }), las(alley)];
const PACKED = [laz(some), laz(alley), laz(alley, { chunk: 50 })];

export const POINT_DOORS: readonly Door[] = [
  {
    name: 'laser points',
    files: [head('tests/measured/data/lidar-fuji-frame-every-4th.csv', 4000)],
    hostile: wide,
    read: (bytes) => file('points.csv', bytes, again)
  },
  { name: 'laser file', files: PLAIN, hostile: fc.oneof(...PLAIN.map(promises)), read: (bytes) => file('scan.las', bytes, again) },
  {
    name: 'packed laser file',
    files: PACKED,
    hostile: fc.oneof(...PACKED.map(promises)),
    async read(bytes) {
      const took = await file('scan.laz', bytes, again);
      // What gave up over one file would refuse the next, whatever it is: looked at now and then.
      if (!took && ++refused % 20 === 0 && !(await file('scan.laz', PACKED[0]!, again))) {
        unpacker = null;
        if (!(await file('scan.laz', PACKED[0]!, again))) throw new Error('a sound file is not unpacked');
      }
      return took;
    }
  }
];

import { FACE_SHARE, FEWEST_IN_BAND, SKIRT_SHARE, STATION_M, TOP_SHARE } from './rules.ts';
import { gathered, mean, median, quantile } from './statistics.ts';

/** Points of one row, seen from the alley on one of its sides. */
export interface RowPoints {
  /** From the alley's middle, m. */
  readonly distanceM: Float64Array;
  /** How much further the scanner's track is from the row than the alley's middle, m. */
  readonly fromTrackM: number;
  readonly heightM: Float64Array;
  readonly alongM: Float64Array | null;
}

/** Face of a row in one band, from the alley's middle: where it begins and how far in points go. */
export interface Face {
  readonly faceM: number;
  readonly depthM: number;
}

/** Height that all but a few of the points stay under. */
export const topOf = ({ heightM }: RowPoints): number => quantile(heightM.toSorted(), 1 - TOP_SHARE);

/** Lowest height from which on the bands hold half as many points as the middle one, m. */
export function skirtOf({ heightM }: RowPoints, groundM: number, topM: number, bandM: number): number {
  const counts = Array.from({ length: Math.max(1, Math.ceil((topM - groundM) / bandM)) }, () => 0);
  for (const z of heightM) {
    const band = Math.floor((z - groundM) / bandM);
    if (band >= 0 && band < counts.length) counts[band]!++;
  }
  const enough = SKIRT_SHARE * median(counts);
  return groundM + bandM * Math.max(0, counts.findIndex((n) => n >= enough));
}

/**
 * The row's face band by band: at each station along the row the distance that a twentieth of the band's points stay under; the mean over the
 * stations. A band whose stations are all thin is taken as one station; one with too few points in all has no face.
 */
export function facesOf({ distanceM, heightM, alongM }: RowPoints, bandOf: (zM: number) => number, bands: number): readonly (Face | null)[] {
  const key = (i: number): number => {
    const band = bandOf(heightM[i]!);
    return alongM ? Math.floor(alongM[i]! / STATION_M) * bands + band : band;
  };
  const inside = (i: number): boolean => bandOf(heightM[i]!) >= 0;
  const within = Uint32Array.from(indices(distanceM.length, inside));
  const groups = gathered(within.length, (i) => key(within[i]!), (i) => distanceM[within[i]!]!);
  const byBand: Float64Array[][] = Array.from({ length: bands }, () => []);
  for (const [k, distances] of groups) byBand[((k % bands) + bands) % bands]!.push(distances);
  return byBand.map((stations) => {
    const full = stations.filter((s) => s.length >= FEWEST_IN_BAND);
    const all = full.length > 0 ? full : [joined(stations)];
    if (all[0]!.length < FEWEST_IN_BAND) return null;
    const sorted = all.map((s) => s.toSorted());
    return { faceM: mean(sorted.map((s) => quantile(s, FACE_SHARE))), depthM: mean(sorted.map((s) => quantile(s, 1 - FACE_SHARE))) };
  });
}

function* indices(count: number, wanted: (i: number) => boolean): Generator<number> {
  for (let i = 0; i < count; i++) if (wanted(i)) yield i;
}

function joined(parts: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(parts.reduce((n, p) => n + p.length, 0));
  let at = 0;
  for (const p of parts) {
    all.set(p, at);
    at += p.length;
  }
  return all;
}

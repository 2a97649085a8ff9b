import type { SprayBalance, SprayBand, SprayCase, SprayPicture } from '#core/spray/types.ts';
import { airLines } from './air-lines.ts';
import { depositProfile, type ProfileWords } from './deposit-profile.ts';
import type { Frame } from './frame.ts';
import { losses, type LossWords } from './losses.ts';
import { onTrees, type OnTreesWords } from './on-trees.ts';
import type { Mark } from './scene.ts';
import { sprayMap } from './spray-map.ts';

/** Words that stand in the layer. */
export interface SprayWords extends ProfileWords, LossWords, OnTreesWords {
  readonly speed: (mPerS: number) => string;
}

/** What the layer shows. */
export interface SprayDrawn {
  readonly case: SprayCase;
  readonly balance: SprayBalance;
  readonly picture: SprayPicture;
  /** null while it is worked out. */
  readonly band: SprayBand | null;
  /** Of the rung behind, or null. */
  readonly ghost: SprayBalance | null;
  /** Nozzle whose spray alone the picture shows. */
  readonly alone: string | null;
}

/** What the drawing knows of the machine and the trees as they are now; the picture may be a moment older. */
export interface SprayRoom {
  readonly machineTopM: number;
  readonly bodyM: number;
  /** Widest canopy in the drawing, the ghost's included, m. */
  readonly widthM: number;
  /** Highest of canopy and tallest tenth, m. */
  readonly topM: number;
}

/** Between the trees and the machine: spray in the air and the paths of the air. @param widthM widest canopy in the drawing */
export function sprayUnder({ case: c, picture }: Pick<SprayDrawn, 'case' | 'picture'>, widthM: number, words: SprayWords, frame: Frame): Mark[] {
  const { trunkX, skirtM } = rowOf(c);
  const outerM = trunkX + widthM / 2;
  return [sprayMap(picture.map, outerM, frame), airLines(picture.jets, { trunkX, outerM, skirtM }, words.speed, frame)];
}

/** On top: deposit by height, what is lost, and the share on the trees. */
export function sprayOver({ case: c, balance, band, ghost, alone }: SprayDrawn, room: SprayRoom, words: SprayWords, frame: Frame): Mark[] {
  const { outline } = c.canopy;
  const { trunkX, halfM } = rowOf(c);
  const own = balance.perNozzle.find((n) => n.position === alone)?.shares;
  return [
    depositProfile(balance, ghost, trunkX, halfM, words, frame),
    losses(own ?? balance.shares, { outline, trunkX, ...room }, words, frame),
    onTrees({ share: balance.onTrees, band: band?.onTrees ?? null, alone: own && alone ? { position: alone, share: own.near + own.far + own.rows } : null }, room.machineTopM, trunkX, words, frame)
  ];
}

const rowOf = ({ canopy }: SprayCase) => ({ trunkX: canopy.rowSpacingM / 2, halfM: Math.max(0, ...canopy.outline.map((p) => p.widthM)) / 2, skirtM: canopy.outline[0]?.heightM ?? 0 });

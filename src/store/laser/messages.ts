import type { Placement } from '#core/canopy/laser/place.ts';
import type { ThinPoints } from '#core/canopy/laser/thin.ts';
import type { LaserCanopy, LaserRules } from '#core/canopy/laser/types.ts';
import type { Refused } from '#core/working/answer.ts';
import type { RowProblem } from '#job/csv/header.ts';

/** A file that was read. */
export interface OpenedPoints {
  /** null for a table. */
  readonly las: { readonly version: string; readonly format: number; readonly compressed: boolean } | null;
  /** Points kept, and every how many of the file's they are. */
  readonly kept: number;
  readonly every: number;
  /** Points that the file itself marks as withheld or noise. */
  readonly marked: number;
  /** Lines of a table that were refused, and the first of them. */
  readonly refusedLines: number;
  readonly problems: readonly RowProblem[];
  /** Where the alley seems to lie. */
  readonly placement: Placement;
}

/** A file of which nothing can be made. */
export interface NotOpened {
  readonly refused: Refused | null;
  readonly problems: readonly RowProblem[];
}

export interface Asked {
  readonly placement: Placement;
  readonly rules: LaserRules;
}
export interface Judged {
  readonly made: LaserCanopy | Refused;
  readonly shown: ThinPoints;
  /** Points too far from the alley to be of it. */
  readonly tooFar: number;
}

/** The file, with the place of what unpacks it. */
export interface Opening {
  readonly file: Blob;
  readonly name: string;
  readonly wasm: string;
}

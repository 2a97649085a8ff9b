import type { PassPattern } from '../sprayer/types.ts';

/** How the rows of a block are met, in passes and row faces. */
export interface Passes {
  readonly passes: number;
  /** Faces that one pass meets with all that it has on. */
  readonly facesPerPass: number;
  /** Faces to be treated. */
  readonly faces: number;
  /** Faces' worth of spray that meets no row if nothing is shut on the outer passes. */
  readonly spare: number;
}

/**
 * Every alley: n rows have n − 1 alleys between them and an outer pass on either side, of which one side meets no row. One side on: a pass for
 * each face. Every second alley: two rows a pass. Whole rows: so many a pass, the last one perhaps fewer. A swath knows no rows: null.
 */
export function passesOf(pattern: PassPattern, rows: number): Passes | null {
  const of = (passes: number, facesPerPass: number, faces: number): Passes => ({ passes, facesPerPass, faces, spare: passes * facesPerPass - faces });
  switch (pattern.kind) {
    case 'every-alley':
      return of(rows + 1, 2, 2 * rows);
    case 'one-side-both-faces':
      return of(2 * rows, 1, 2 * rows);
    case 'one-side-one-face':
      return of(rows, 1, rows);
    case 'alternate-alleys':
      return of(Math.ceil(rows / 2), 2, rows);
    case 'whole-rows':
      return of(Math.ceil(rows / pattern.rows), 2 * pattern.rows, 2 * rows);
    case 'swath':
      return null;
  }
}

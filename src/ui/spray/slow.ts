/** A drop crosses the alley in a fifth of a second: the eye needs it so many times slower. */
export const SLOW = 8;

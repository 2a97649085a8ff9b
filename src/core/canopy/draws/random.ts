/**
 * Philox 4×32 with ten rounds (Salmon, Moraes, Dror & Shaw 2011, "Parallel random numbers: as easy as 1, 2, 3", SC'11): a counter goes
 * in, four random words of 32 bits come out, and nothing is kept from one call to the next. What is drawn therefore depends on key and
 * counter alone, not on what was drawn before, nor on which thread.
 */
export interface Words {
  a: number;
  b: number;
  c: number;
  d: number;
}

const ROUNDS = 10;
const M0 = 0xd2511f53;
const M1 = 0xcd9e8d57;
const M0_LOW = M0 & 0xffff;
const M0_HIGH = M0 >>> 16;
const M1_LOW = M1 & 0xffff;
const M1_HIGH = M1 >>> 16;
/** Steps of the key: golden ratio and √3 − 1, as 32-bit fractions. */
const W0 = 0x9e3779b9;
const W1 = 0xbb67ae85;

/** Encrypts the counter that stands in `at`, in place. Words and keys are whole, 0 … 2³² − 1. */
export function philox(at: Words, key0: number, key1: number): void {
  let { a, b, c, d } = at;
  let k0 = key0 | 0;
  let k1 = key1 | 0;
  for (let round = 0; round < ROUNDS; round++) {
    const high0 = high(M0_HIGH, M0_LOW, a);
    const high1 = high(M1_HIGH, M1_LOW, c);
    const low0 = Math.imul(M0, a);
    a = high1 ^ b ^ k0;
    b = Math.imul(M1, c);
    c = high0 ^ d ^ k1;
    d = low0;
    k0 = (k0 + W0) | 0;
    k1 = (k1 + W1) | 0;
  }
  at.a = a >>> 0;
  at.b = b >>> 0;
  at.c = c >>> 0;
  at.d = d >>> 0;
}

/** Upper 32 bits of the product of two words, the first in halves; every step stays below 2³². */
function high(xHigh: number, xLow: number, y: number): number {
  const yLow = y & 0xffff;
  const yHigh = y >>> 16;
  const middle = xHigh * yLow + ((xLow * yLow) >>> 16);
  const other = xLow * yHigh + (middle & 0xffff);
  return (xHigh * yHigh + (middle >>> 16) + (other >>> 16)) | 0;
}

/** A word as a number in the open interval 0…1: the middle of its 2³²nd part, so that a logarithm always has a value. */
export const unit = (word: number): number => (word + 0.5) / 0x100000000;

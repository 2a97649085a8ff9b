/** Numbers from 0 up to 1, the same for the same seed (Lehmer, minimal standard). */
export function lehmer(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

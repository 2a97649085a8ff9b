/** The known word that `word` was most likely meant to be; empty when none comes near. */
export function nearest(word: string, known: Iterable<string>): string {
  const wanted = word.slice(0, 60).toLowerCase();
  let best = '';
  let least = Math.max(2, Math.floor(wanted.length / 3)) + 1;
  for (const k of known) {
    const d = edits(wanted, k.toLowerCase());
    if (d < least) [best, least] = [k, d];
  }
  return best;
}

/** Letters to add, drop or change to make `b` of `a` (Levenshtein). */
function edits(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)));
    row = next;
  }
  return row[b.length]!;
}

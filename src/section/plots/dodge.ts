/**
 * Places on a line for labels that want to stand at `wanted`, at least `gap` apart and between `least` and `most`, in the order of what
 * they want: each group of labels that touch is moved as one to the mean of what its labels want. Where there is no room for all,
 * they stand closer, evenly.
 */
export function dodged(wanted: readonly number[], gap: number, least: number, most: number): number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const step = wanted.length > 1 ? Math.min(gap, Math.max(most - least, 0) / (wanted.length - 1)) : gap;
  interface Group {
    /** Place of its first label. */
    at: number;
    /** Sum of what each wants of the first label's place. */
    sum: number;
    count: number;
  }
  const groups: Group[] = [];
  const settle = (g: Group) => (g.at = Math.min(Math.max(g.sum / g.count, least), most - step * (g.count - 1)));
  for (const i of order) {
    const g: Group = { at: 0, sum: wanted[i]!, count: 1 };
    settle(g);
    groups.push(g);
    for (;;) {
      const [a, b] = [groups.at(-2), groups.at(-1)!];
      if (!a || a.at + step * a.count <= b.at + 1e-9) break;
      groups.pop();
      a.sum += b.sum - step * a.count * b.count;
      a.count += b.count;
      settle(a);
    }
  }
  const places: number[] = [];
  let n = 0;
  for (const g of groups) for (let k = 0; k < g.count; k++) places[order[n++]!] = g.at + step * k;
  return places;
}

/** L7 and R7 as "7", when both sides share a number; else the names. */
function together(ids: readonly string[]): string {
  const numbers = new Map<string, number>();
  for (const id of ids) {
    const n = id.replace(/^\D+/, '');
    numbers.set(n, (numbers.get(n) ?? 0) + 1);
  }
  const paired = [...numbers.values()].every((count) => count === 2);
  const names = paired ? [...numbers.keys()] : [...ids];
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

export const sectionWords = {
  bars: 'aimed flow (filled) and leaf, by height',
  over: (ids: readonly string[], share: string, short: boolean) => `over the top: ${short ? '' : `${together(ids)}, `}${share} of the flow`,
  under: (ids: readonly string[], share: string, short: boolean) => `under the skirt: ${short ? '' : `${together(ids)}, `}${share} of the flow`,
  shutNozzles: (ids: readonly string[]) => `${together(ids)} shut`,
  ghost: (name: string) => name,
  tallest: 'tallest tenth',
  percent: (share: number) => `${Math.round(share * 100)} %`
};

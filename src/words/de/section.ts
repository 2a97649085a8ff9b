import type { sectionWords as EN } from '../en/section.ts';
import type { Translated } from '../translation.ts';

/** L7 und R7 als „7“, wenn beide Seiten die Nummer teilen; sonst die Namen. */
function together(ids: readonly string[]): string {
  const numbers = new Map<string, number>();
  for (const id of ids) {
    const n = id.replace(/^\D+/, '');
    numbers.set(n, (numbers.get(n) ?? 0) + 1);
  }
  const paired = [...numbers.values()].every((count) => count === 2);
  const names = paired ? [...numbers.keys()] : [...ids];
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;
}

export const sectionWords: Translated<typeof EN> = {
  bars: 'gezielter Ausstoß (gefüllt) und Laub, nach Höhe',
  over: (ids, share, short) => `über die Krone: ${short ? '' : `${together(ids)}, `}${share} des Ausstoßes`,
  under: (ids, share, short) => `unter die Krone: ${short ? '' : `${together(ids)}, `}${share} des Ausstoßes`,
  shutNozzles: (ids) => `${together(ids)} geschlossen`,
  ghost: (name) => name,
  tallest: 'höchstes Zehntel',
  percent: (share) => `${Math.round(share * 100)} %`
};

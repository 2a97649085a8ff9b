import type { sectionWords as EN } from '../en/section.ts';
import type { Translated } from '../translation.ts';

/** L7 and R7 as "7", when both sides share a number; else the names. */
function together(ids: readonly string[]): string {
  const numbers = new Map<string, number>();
  for (const id of ids) {
    const n = id.replace(/^\D+/, '');
    numbers.set(n, (numbers.get(n) ?? 0) + 1);
  }
  const paired = [...numbers.values()].every((count) => count === 2);
  const names = paired ? [...numbers.keys()] : [...ids];
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} e ${names.at(-1)}`;
}

export const sectionWords: Translated<typeof EN> = {
  bars: 'caudal apontado (cheio) e folha, por altura',
  over: (ids, share, short) => `por cima: ${short ? '' : `${together(ids)}, `}${share} do caudal`,
  under: (ids, share, short) => `sob a saia: ${short ? '' : `${together(ids)}, `}${share} do caudal`,
  shutNozzles: (ids) => `${together(ids)} ${ids.length === 1 ? 'fechado' : 'fechados'}`,
  ghost: (name) => name,
  tallest: 'décimo mais alto',
  percent: (share) => `${Math.round(share * 100)} %`
};

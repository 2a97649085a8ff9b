import type { keepNames as EN } from '../../en/keep/names.ts';
import type { Translated } from '../../translation.ts';

/** Names that the store gives, cut so that they stay within what a name may be. */
const cut = (name: string): string => [...name].slice(0, 50).join('');

export const keepNames: Translated<typeof EN> = {
  copy: (name) => `${cut(name)}, copia`,
  rescued: (name) => `${cut(name)}, recuperato`
};

import type { keepNames as EN } from '../../en/keep/names.ts';
import type { Translated } from '../../translation.ts';

/** Namen, die der Speicher vergibt, gekürzt auf das, was ein Name sein darf. */
const cut = (name: string): string => [...name].slice(0, 50).join('');

export const keepNames: Translated<typeof EN> = {
  copy: (name) => `${cut(name)}, Kopie`,
  rescued: (name) => `${cut(name)}, gerettet`
};

/** Names that the store gives, cut so that they stay within what a name may be. */
const cut = (name: string): string => [...name].slice(0, 50).join('');

export const keepNames = {
  copy: (name: string) => `${cut(name)}, copy`,
  rescued: (name: string) => `${cut(name)}, rescued`
} as const;

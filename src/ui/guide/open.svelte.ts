/** What lies open beside the stations: symbols and terms (some `only`, where a working asks), or licences. */
export type Guide = { readonly kind: 'glossary'; readonly only?: readonly string[] } | { readonly kind: 'licences' };

export const guide = $state<{ open: Guide | null }>({ open: null });

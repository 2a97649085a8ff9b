/** The menu's own words, beside those of the screen. */
export const guideMenu = {
  large: 'Large figures, for a projector',
  glossary: 'Symbols and terms',
  licences: 'Licences'
} as const;

/** The menu's own words, beside those of the screen. */
export const guideMenu = {
  large: 'Large figures, for a projector',
  unitsGuessed: (region: string) => `Units by the region of your browser: ${region}.`,
  unitsUsual: 'Metric units: your browser names no region.',
  glossary: 'Symbols and terms',
  licences: 'Licences'
} as const;

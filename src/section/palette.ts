/** Screen colours for the colour names of nozzle tables; anything else is drawn without a fill. The word is always written too. */
export const NOZZLE_COLOURS: Readonly<Record<string, string>> = {
  purple: '#7a3f98',
  olive: '#7b7a32',
  pink: '#ee9bb9',
  orange: '#f08a24',
  'light-green': '#9acb5a',
  green: '#2e9e48',
  yellow: '#f4d33a',
  lilac: '#9a6fb8',
  blue: '#2f6fc4',
  'brown-red': '#93432f',
  red: '#d3392f',
  brown: '#7a4f2e',
  grey: '#8f9496',
  white: '#ffffff',
  'light-blue': '#7ec4e8',
  'yellow-green': '#c4d63a',
  black: '#1d1d1d'
};
export const nozzleColour = (name: string | undefined): string => NOZZLE_COLOURS[name ?? ''] ?? 'none';

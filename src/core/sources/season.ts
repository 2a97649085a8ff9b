import { source, type Source } from './source.ts';

/** Works that growth between the rungs of a season rests on, by id; loaded with it. */
export const SEASON_SOURCES = {
  'arenenberg-growth': source('BBZ Arenenberg', 'n.d.', 'Crop-adapted dosing, as summarised', '', 'tree-row volume grows by 20 to 30 % from spring to summer, by 50 % at the most'),
  'litschmann-2016': source('Litschmann, T.; et al.', '2016', 'Leaf area of apple through the season, as summarised', 'Acta Horticulturae 1137:241', 'leaf area goes with degree-days above 5 °C'),
  'mcmaster-wilhelm-1997': source('McMaster, G. S.; Wilhelm, W. W.', '1997', 'Growing degree-days: one equation, two interpretations', 'Agricultural and Forest Meteorology 87:291–300', 'the mean of the day’s highest and lowest temperature less the base, nothing below the base', 'memory')
} as const satisfies Record<string, Source>;

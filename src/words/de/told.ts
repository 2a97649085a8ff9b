import type { told as EN } from '../en/told.ts';
import type { Translated } from '../translation.ts';

/** Was ein Screenreader erfährt, wenn eine Änderung zur Ruhe gekommen ist, mit Einheiten, wie man sie spricht. */
export const told: Translated<typeof EN> = {
  water: (is, wanted) => `Wasser ${is}, Soll ${wanted}.`,
  waterAlone: (is) => `Wasser ${is}.`,
  product: (name, dose) => `${name} ${dose}.`,
  aimed: (open, all, inLeaf) => `${open} von ${all} Düsen offen, ${inLeaf} auf Laub gerichtet.`,
  units: {
    'L/ha': 'Liter je Hektar',
    'L/ac': 'Liter je Acre',
    'gal/ac': 'Gallonen je Acre',
    'imp gal/ac': 'britische Gallonen je Acre',
    'kg/ha': 'Kilogramm je Hektar',
    'kg/ac': 'Kilogramm je Acre',
    'lb/ac': 'Pfund je Acre',
    'fl oz/ac': 'Flüssigunzen je Acre',
    'imp fl oz/ac': 'britische Flüssigunzen je Acre'
  }
};

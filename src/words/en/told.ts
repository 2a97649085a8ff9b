/** What a screen reader is told once a change has come to rest, with units as they are spoken. */
export const told = {
  water: (is: string, wanted: string) => `Water ${is}, wanted ${wanted}.`,
  waterAlone: (is: string) => `Water ${is}.`,
  product: (name: string, dose: string) => `${name} ${dose}.`,
  aimed: (open: number, all: number, inLeaf: string) => `${open} of ${all} nozzles open, ${inLeaf} aimed in leaf.`,
  units: {
    'L/ha': 'litres per hectare',
    'L/ac': 'litres per acre',
    'gal/ac': 'gallons per acre',
    'imp gal/ac': 'imperial gallons per acre',
    'kg/ha': 'kilograms per hectare',
    'kg/ac': 'kilograms per acre',
    'lb/ac': 'pounds per acre',
    'fl oz/ac': 'fluid ounces per acre',
    'imp fl oz/ac': 'imperial fluid ounces per acre'
  }
} as const;

/** Symbols come from the engine's own formulas; terms are those of the trade and our own. */
export const glossary = {
  title: 'Symbols and terms',
  find: 'Find a symbol, a word or a unit',
  found: (n: number) => (n === 1 ? '1 found' : `${n} found`),
  none: 'Nothing found. Try a shorter word.',
  all: 'Show all',
  symbols: 'Symbols',
  terms: 'Terms',
  more: (n: number) => `and ${n} more`,
  same: 'A symbol stands once for each of its meanings. Formulas count in the units written here, whatever the screen shows.',
  close: 'Close'
} as const;

export const terms = {
  alley: ['alley', 'Ground between two tree rows, where the sprayer drives.'],
  skirt: ['skirt', 'Lower edge of the canopy. Height above ground of its lowest leaf.'],
  trv: ['tree-row volume, TRV', 'Volume that the canopies of a hectare would fill, as a wall as high and as wide as the trees.'],
  lwa: ['leaf wall area, LWA', 'Area of both faces of the canopy on a hectare: height of the wall times length of the rows, twice.'],
  lad: ['leaf area density, LAD', 'Leaf area, one side, in a cubic metre of canopy.'],
  bbch: ['growth stage, BBCH', 'Two digits for how far the crop has come, from dormant bud to leaf fall.'],
  ladder: ['season ladder', 'Growth stages of a block in their order; one rung for each, with its canopy and its setting.'],
  section: ['section', 'Drawing across the alley: machine in the middle, a half row on each side.'],
  setting: ['setting', 'What is set for one block at one stage: open nozzles, sizes, pressure, speed, fan.'],
  working: ['working', 'How a number was made: formula, values, source, and how sure it is.'],
  verdict: ['in leaf, over the top, under the skirt, shut', 'What becomes of the spray that a nozzle aims: by geometry alone, without wind and drops.'],
  rate: ['application volume', 'Litres of spray on a hectare.'],
  concentration: ['concentration factor', 'How many times less water is used than the label’s dilute volume.'],
  load: ['load', 'One fill of the tank.'],
  headland: ['headland check', 'Speed runs, refill and catch tests that prove a setting.'],
  card: ['cab card', 'One printed page with the setting, for the cab.'],
  strategies: ['strategy table', 'Published ways to scale water and dose to the canopy, side by side.'],
  vmd: ['droplet size class', 'Fine to coarse, by the drops that a nozzle makes at a pressure.'],
  deltaT: ['delta T', 'Dry bulb less wet bulb temperature: how fast drops dry.'],
  buffer: ['buffer zone', 'Strip beside water or neighbours that must not be sprayed. The label and local law say how wide.'],
  drift: ['drift', 'Spray that leaves the treated land through the air.'],
  ucr: ['UCR', 'Unit canopy row: a canopy of a fixed small volume along the row, as one strategy counts.']
} as const;

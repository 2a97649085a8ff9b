import type { NozzleSize, NozzleTable } from './types.ts';

/**
 * Sizes of ISO 10625: nominal flow at 3 bar is 0.4 L/min times the size number; colours as the standard names them, quoted
 * from memory (its text was not read). Colour never sets a flow: many hollow cones for orchards carry other colours at another
 * reference pressure, and two-part nozzles (disc and core) are outside the standard.
 */
const size = (id: string, flowLPerMin: number, colour: string): NozzleSize => ({ id, flowLPerMin, colour });

export const ISO_TABLE_ID = 'iso-10625';

export const ISO_10625: NozzleTable = {
  id: ISO_TABLE_ID,
  name: 'ISO 10625',
  pattern: 'hollow-cone',
  referenceBar: 3,
  // A working range for cones in orchards, from memory; the nozzle's own sheet rules.
  pressureMinBar: 3,
  pressureMaxBar: 20,
  sizes: [
    size('0050', 0.2, 'purple'),
    size('0067', 0.27, 'olive'),
    size('0075', 0.3, 'pink'),
    size('01', 0.4, 'orange'),
    size('0125', 0.5, 'light-green'),
    size('015', 0.6, 'green'),
    size('02', 0.8, 'yellow'),
    size('025', 1, 'lilac'),
    size('03', 1.2, 'blue'),
    size('035', 1.4, 'brown-red'),
    size('04', 1.6, 'red'),
    size('05', 2, 'brown'),
    size('06', 2.4, 'grey'),
    size('08', 3.2, 'white'),
    size('10', 4, 'light-blue'),
    size('15', 6, 'yellow-green'),
    size('20', 8, 'black')
  ]
};

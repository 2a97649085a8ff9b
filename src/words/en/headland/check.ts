import type { Part } from '../../language.ts';

const ASSUMPTIONS: Part['assumptions'] = {
  'check.watch-error': { label: 'Stopwatch, start and stop', meaning: 'How far starting and stopping the watch may put one run off.' },
  'check.least-course': { label: 'Shortest course', meaning: 'Shorter courses give the watch too much weight.' },
  'check.least-runs': { label: 'Fewest runs', meaning: 'Speed runs that make a mean worth trusting.' },
  'check.run-differs': { label: 'Run that differs', meaning: 'A run this far from its mates is named, where the watch does not explain it.' },
  'check.display': { label: 'Display tolerance', meaning: 'How far the tractor’s display may be from the timed speed.' },
  'check.refill-litres': { label: 'Refill, litres', meaning: 'How far the refilled litres may be off, either way, unless you say.' },
  'check.refill-seconds': { label: 'Refill, seconds', meaning: 'How far the time sprayed may be off, either way, unless you say.' },
  'check.refill-wanted': { label: 'Refill, wanted closeness', meaning: 'How closely a refill is to tell the output.' },
  'check.catch-litres': { label: 'Jug, litres', meaning: 'How far one catch may be misread.' },
  'check.catch-seconds': { label: 'Jug, seconds', meaning: 'How far the time of one catch may be off.' },
  'check.volume-adjust': { label: 'Volume, adjust', meaning: 'Measured against wanted water: beyond this, adjust.' },
  'check.volume-nozzles': { label: 'Volume, other nozzles', meaning: 'Measured against wanted water: beyond this, fit other nozzles.' },
  'check.mean-strict': { label: 'Nozzle to mean, strict', meaning: 'How far one nozzle may be from the mean of all; 5 % is used where turf is at stake.' },
  'check.mean-normal': { label: 'Nozzle to mean, normal', meaning: 'How far one nozzle may be from the mean of all.' },
  'check.mean-inspection': { label: 'Nozzle to mean, inspection', meaning: 'How far nozzles may be apart before they are cleaned or replaced.' },
  'check.nominal-strict': { label: 'Nozzle to table, strict', meaning: 'How far a nozzle may be from its table; 5 % is used where turf is at stake.' },
  'check.nominal-normal': { label: 'Nozzle to table, normal', meaning: 'How far a nozzle may be from its table at the true pressure.' },
  'check.nominal-inspection': { label: 'Nozzle to table, inspection', meaning: 'As inspections of sprayers in use are remembered; the standard was not read.' },
  'check.sides': { label: 'Left to right', meaning: 'How far the sums of the two sides may be apart.' },
  'check.gauge-rest': { label: 'Gauge at rest', meaning: 'A gauge that shows more than this with the pump at rest is not at zero.' },
  'check.gauge-off': { label: 'Gauge tolerance', meaning: 'How far the machine’s gauge may be from one known to be right.' },
  'check.pressure-loss': { label: 'Loss to the far nozzle', meaning: 'Pressure that may be lost between gauge and farthest nozzle.' },
  'check.one-side': { label: 'One side shut', meaning: 'How far the pressure may change when one side is shut.' },
  'check.exponent-least': { label: 'Exponent, least', meaning: 'Below this the nozzles do not follow the square root of the pressure.' },
  'check.exponent-most': { label: 'Exponent, most', meaning: 'Above this the nozzles do not follow the square root of the pressure.' },
  'check.fine-gap': { label: 'Gap for pressure', meaning: 'Up to this gap of flow, pressure can close it.' },
  'check.moderate-gap': { label: 'Gap for speed', meaning: 'Up to this gap of flow, speed can close it; beyond it, other nozzles.' },
  'check.used-alarm': { label: 'Litres used, alarm', meaning: 'Litres used against those predicted: beyond this, look for the reason.' },
  'check.used-stop': { label: 'Litres used, stop', meaning: 'Litres used against those predicted: beyond this, stop and check again.' }
};

const REFUSALS: Part['refusals'] = {
  'speed-not-measured': 'No speed was measured. Time a run.',
  'output-not-measured': 'No output was measured. Refill the tank or catch every open nozzle.',
  'speed-stale': 'The speed was timed with another setting. Time it again.',
  'output-stale': 'The output was measured with another setting. Measure it again.',
  'too-few-runs': 'One run tells no spread. Drive another.'
};

const FIELDS: Part['fields'] = {
  'setting.sizes': 'nozzle sizes',
  'check.runs': 'speed runs',
  'check.runs.distanceM': 'distance',
  'check.runs.seconds': 'time',
  'check.runs.number': 'runs that the mean counts for',
  'check.runs.meanSeconds': 'mean time of a run',
  'check.runs.spread': 'spread of the runs',
  'check.runs.middle': 'middle run of this direction',
  'check.studentT': 'Student’s t, 95 %',
  'check.displayKmH': 'speed on the display',
  'check.output': 'output',
  'check.openNozzles': 'open nozzles',
  'check.refill.litres': 'litres to refill',
  'check.refill.seconds': 'time sprayed',
  'check.refill.distanceM': 'distance sprayed',
  'check.refill.litresErrorL': 'error of the litres',
  'check.refill.secondsError': 'error of the time',
  'check.gauges.restBar': 'gauge at rest',
  'check.gauges.readBar': 'machine’s gauge',
  'check.gauges.masterBar': 'gauge known to be right',
  'check.gauges.farBar': 'gauge at the far nozzle',
  'check.gauges.oneSideBar': 'gauge with one side shut'
};

/** What is said of a check on the headland. */
export const CHECK: Part = { assumptions: ASSUMPTIONS, refusals: REFUSALS, fields: FIELDS };

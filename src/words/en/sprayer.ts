import type { Language } from '../words.ts';

export const VERDICTS: Language['verdicts'] = {
  'in-leaf': 'in leaf',
  'over-top': 'over the top',
  'under-skirt': 'under the skirt',
  shut: 'shut',
  unknown: 'unknown'
};

export const SIDES: Language['sides'] = { left: 'left', right: 'right' };

export const PATTERNS: Language['patterns'] = {
  'every-alley': 'every alley, both sides on',
  'one-side-both-faces': 'every alley twice, {side} side on, both faces in the end',
  'one-side-one-face': 'one face of each row, {side} side on',
  'alternate-alleys': 'every second alley, both sides on',
  'whole-rows': '{rows} whole rows per pass',
  swath: 'a swath of {width} per pass'
};

/** Droplet size classes as ISO 25358 names them. */
export const DROPLETS: Language['droplets'] = {
  XF: 'extremely fine',
  VF: 'very fine',
  F: 'fine',
  M: 'medium',
  C: 'coarse',
  VC: 'very coarse',
  XC: 'extremely coarse',
  UC: 'ultra coarse'
};

/** English names the colours as the tables do; other languages give a word for each of ISO 10625. */
export const COLOURS: Language['colours'] = {};

/** Air given against air needed, ways to match them, and the judge. */
export const AIR: Language['air'] = {
  short: 'Air needed about {needed}, given {given}: {off} short.',
  over: 'Air needed about {needed}, given {given}: {off} too much.',
  matched: 'Air needed about {needed}, given {given}: matched within {tolerance}.',
  unknown: 'Air is not worked out: {reason}',
  rule: 'The rule fills the alley: air carried along {k} times, {certainty}.',
  speed: 'Speed {value} would match; the same flow then gives {volume}.',
  'speed-bare': 'Speed {value} would match; the litres per hectare change with it.',
  'speed-beyond': 'Speed {value} would match, but the machine’s limit is {limit}.',
  gear: 'Gear {gear} gives {value} at this PTO speed, {share} of the need; flow and speed stay.',
  pto: 'PTO {value} in gear {gear} would match. A pump on that shaft changes flow with it: set the pressure again.',
  'pto-beyond': 'PTO {value} in gear {gear} would match, but the machine’s limit is {limit}.',
  judge:
    'The judge: tie ribbons in the tree tops, drive past with the fan on, no spray. They should swing out slantwise. Hanging still means too fast or too little air; standing straight up means you can go faster or use less air. Leaves on the far face just flutter.'
};

import { amount, finding, type Finding } from '../advice/finding.ts';
import { ACRE_HA, FOOT_M, GAL_PER_ACRE_L_PER_HA, MPH_KM_PER_H, PSI_BAR, US_GALLON_L } from '../quantity/constants.ts';
import { isRefused, type Answer } from '../working/answer.ts';

/** Imperial gallon in litres, by definition. */
const IMPERIAL_GALLON_L = 4.54609;
/** Feet per minute in a mile per hour. */
const FT_PER_MIN_PER_MPH = 88;

/** What is compared: a value that was measured or typed, and what it ought to be. */
export interface Pair {
  readonly of: 'speed' | 'flow' | 'volume' | 'pressure' | 'litres';
  /** Path for the words: what looks wrong. */
  readonly path: string;
  readonly found: Answer;
  readonly expected: Answer;
}

type Make = (p: Finding['parameters'], path: string) => Finding;

/** A factor that mistakes leave, whichever way round. */
interface Suspect {
  readonly factor: number;
  readonly of: readonly Pair['of'][];
  readonly make: Make;
}

const SUSPECTS: readonly Suspect[] = [
  { factor: 2, of: ['flow', 'volume', 'litres'], make: (p, path) => finding('check-suspect-half', 'warn', p, ['arithmetic'], path) },
  { factor: MPH_KM_PER_H, of: ['speed'], make: (p, path) => finding('check-suspect-mph', 'warn', p, ['arithmetic'], path) },
  { factor: FT_PER_MIN_PER_MPH, of: ['speed', 'volume'], make: (p, path) => finding('check-suspect-feet-per-minute', 'warn', p, ['arithmetic'], path) },
  { factor: 1 / FOOT_M, of: ['speed', 'volume'], make: (p, path) => finding('check-suspect-feet', 'warn', p, ['arithmetic'], path) },
  { factor: US_GALLON_L, of: ['flow', 'volume', 'litres'], make: (p, path) => finding('check-suspect-gallon', 'warn', p, ['arithmetic'], path) },
  { factor: IMPERIAL_GALLON_L, of: ['flow', 'volume', 'litres'], make: (p, path) => finding('check-suspect-imperial', 'warn', p, ['arithmetic'], path) },
  { factor: IMPERIAL_GALLON_L / US_GALLON_L, of: ['flow', 'volume', 'litres'], make: (p, path) => finding('check-suspect-gallons', 'note', p, ['arithmetic'], path) },
  { factor: 1 / ACRE_HA, of: ['volume', 'litres'], make: (p, path) => finding('check-suspect-acre', 'warn', p, ['arithmetic'], path) },
  { factor: GAL_PER_ACRE_L_PER_HA, of: ['volume'], make: (p, path) => finding('check-suspect-gallons-per-acre', 'warn', p, ['arithmetic'], path) },
  { factor: 60, of: ['flow'], make: (p, path) => finding('check-suspect-minutes', 'warn', p, ['arithmetic'], path) },
  { factor: 1 / PSI_BAR, of: ['pressure'], make: (p, path) => finding('check-suspect-psi', 'warn', p, ['arithmetic'], path) },
  // Flow goes with the square root of the pressure.
  { factor: Math.sqrt(1 / PSI_BAR), of: ['flow'], make: (p, path) => finding('check-suspect-psi-flow', 'warn', p, ['sqrt-law'], path) }
];
/** Closer than this to a factor is suspicious. */
const CLOSE = 0.02;

/** Factors by which a value is off that some mix-up would leave; a suspicion each, never a correction. */
export function suspicions(pairs: readonly Pair[]): Finding[] {
  return pairs.flatMap(({ of, path, found, expected }) => {
    if (isRefused(found) || isRefused(expected) || !(found.value > 0 && expected.value > 0)) return [];
    const ratio = found.value / expected.value;
    const fits = (factor: number) => Math.abs(ratio / factor - 1) <= CLOSE;
    const larger = ratio > 1;
    return SUSPECTS.filter((s) => s.of.includes(of) && (fits(s.factor) || fits(1 / s.factor))).map((s) =>
      s.make({ measurement: path, found: amount(found), expected: amount(expected), factor: { value: larger ? s.factor : 1 / s.factor, unit: '1' } }, path)
    );
  });
}

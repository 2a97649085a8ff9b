/**
 * Searching the short list for 8, 12 and 20 positions and 17 sizes: milliseconds a search, by the clock and in processor time (other work
 * on the machine is not in the latter). Free: every position by itself. Mirrored: as many positions, in pairs.
 */
import { fit } from '#core/fitting/fit.ts';
import type { FittingPosition, FittingProblem } from '#core/fitting/problem.ts';
import { ISO_10625 } from '#core/sprayer/iso10625.ts';
import { percentiles, report } from './report.ts';

/** A generator of its own, so that every run asks the same. */
let seed = 7;
const chance = (): number => (seed = (seed * 16807) % 2147483647) / 2147483647;

const sizes = ISO_10625.sizes.map((size) => ({ table: ISO_10625, size, offered: true }));

function problem(positions: number, mirrored: boolean, factor = 1): FittingProblem {
  const places = mirrored ? positions / 2 : positions;
  const weights = Array.from({ length: places }, () => 0.3 + chance());
  const present = Array.from({ length: places }, () => 4 + Math.floor(chance() * 5));
  const sum = weights.reduce((a, b) => a + b, 0) * (positions / places);
  const side = (which: 'left' | 'right'): FittingPosition[] =>
    weights.map((w, i) => ({ id: `${which === 'left' ? 'L' : 'R'}${i}`, side: which, heightM: 0.5 + 0.2 * i, angleDeg: 0, weight: w / sum, present: present[i]! }));
  return {
    positions: mirrored ? [...side('left'), ...side('right')] : side('left'),
    // Another factor for every second size: flows without a common step, as tables of two reference pressures have.
    sizes: factor === 1 ? sizes : sizes.map((s, i) => (i % 2 ? { ...s, size: { ...s.size, flowLPerMin: s.size.flowLPerMin * factor } } : s)),
    weighting: 'own',
    targetLPerHa: (600 * 1.4 * positions) / (6 * 4),
    widthM: 4,
    specificGravity: 1,
    speed: { presentKmH: 6, leastKmH: 3, mostKmH: 9 },
    pressure: { presentBar: 10, leastBar: 4, mostBar: 20 },
    mirrored,
    mostChanges: positions,
    outlet: { kind: 'tower', fromHeightM: 0.5, toHeightM: 3, offsetM: 0.5, slotWidthM: 0.1 },
    canopyTopM: 3,
    evergreen: false,
    positionTolerance: 0.15,
    fewGain: 0.5
  };
}

const RUNS = 40;
const cpu = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

function measure(name: string, make: () => FittingProblem): void {
  const clock: number[] = [];
  const processor: number[] = [];
  for (let i = 0; i < RUNS; i++) {
    const p = make();
    const [t, c] = [performance.now(), cpu()];
    const found = fit(p);
    clock.push(performance.now() - t);
    processor.push(cpu() - c);
    if ('kind' in found) throw new Error(found.code);
  }
  report(`fitting, ${name}: by the clock`, percentiles(clock), 'ms');
  report('  processor time', percentiles(processor), 'ms');
}

const [start, used] = [performance.now(), cpu()];
fit(problem(12, false));
console.log(`fitting, 12 free positions, the very first: ${(performance.now() - start).toFixed(0)} ms by the clock, ${(cpu() - used).toFixed(0)} ms of processor time`);
for (const n of [8, 12, 20]) {
  measure(`${n} free`, () => problem(n, false));
  measure(`${n} mirrored`, () => problem(n, true));
}
measure('12 free, no common step', () => problem(12, false, 1.0371));

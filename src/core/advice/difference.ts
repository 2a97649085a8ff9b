import type { Result } from '../setting/result.ts';
import { valueOf, type Answer } from '../working/answer.ts';
import { amount, share, type Parameter } from './finding.ts';

/** One line of what changes between two rungs: a code for the words, and the two values. */
export interface Difference {
  readonly code: string;
  readonly parameters: Readonly<Record<string, Parameter>>;
}

/** What is different between two stages of a block, one line each; what stays the same within 1 % is left out. */
export function differences(from: Result, to: Result): readonly Difference[] {
  const out: Difference[] = [];
  const line = (code: string, a: Answer | null, b: Answer | null) => {
    const [x, y] = [valueOf(a), valueOf(b)];
    if (x === undefined || y === undefined || Math.abs(y - x) <= 0.01 * Math.max(Math.abs(x), Math.abs(y))) return;
    // From nothing there is no percentage.
    const change = share(Math.abs(y / x - 1));
    out.push({ code, parameters: { from: amount(a!), to: amount(b!), ...(Number.isFinite(change.value) ? { change } : {}), direction: y > x ? 'more' : 'less' } });
  };
  line('row-volume', from.canopy.figures.TRVc, to.canopy.figures.TRVc);
  line('leaf-area', from.canopy.figures.LAI, to.canopy.figures.LAI);
  line('water', from.water.wanted, to.water.wanted);
  line('volume', from.sprayer.volume, to.sprayer.volume);
  line('product', from.product?.perHa ?? null, to.product?.perHa ?? null);
  line('air', from.air.needed, to.air.needed);
  line('speed', from.sprayer.speed, to.sprayer.speed);
  line('pressure', from.sprayer.pressure, to.sprayer.pressure);
  const useful = (r: Result) => new Set(r.sprayer.nozzles.filter((n) => n.would === 'in-leaf').map((n) => n.position.id));
  const [before, after] = [useful(from), useful(to)];
  const gained = [...after].filter((id) => !before.has(id));
  const lost = [...before].filter((id) => !after.has(id));
  if (gained.length > 0) out.push({ code: 'nozzles-gain-leaf', parameters: { nozzles: gained } });
  if (lost.length > 0) out.push({ code: 'nozzles-lose-leaf', parameters: { nozzles: lost } });
  return out;
}

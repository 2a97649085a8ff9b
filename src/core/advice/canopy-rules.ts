import type { Result } from '../setting/result.ts';
import { finding, share, type Finding } from './finding.ts';

/** What is wrong or doubtful about the canopy as entered. */
export function canopyFindings({ canopy, rung, block, machine, water }: Result): Finding[] {
  const out: Finding[] = [];
  const { H, Hs, W, R, h } = canopy.figures;
  const m = (value: number) => ({ value, unit: 'm' as const });
  if (h.kind === 'refused') out.push(finding('skirt-above-top', 'stop', { skirt: m(Hs.value), height: m(H.value) }, [], 'canopy.skirtM'));
  const gap = R.value - W.value;
  if (gap <= 0) out.push(finding('canopy-closes-alley', 'stop', { width: m(W.value), spacing: m(R.value) }, [], 'canopy.widthM'));
  else if (gap < machine.bodyWidthM) out.push(finding('machine-wider-than-alley', 'stop', { gap: m(gap), body: m(machine.bodyWidthM) }, [], 'rowSpacingM'));
  const tallest = rung.canopy.tallestTenthM;
  if (tallest !== undefined && tallest < H.value) out.push(finding('tallest-below-mean', 'warn', { tallest: m(tallest), height: m(H.value) }, [], 'canopy.tallestTenthM'));
  else if (tallest !== undefined && tallest > H.value * 1.02) out.push(finding('tallest-sets-top', 'note', { tallest: m(tallest), height: m(H.value) }, ['lwk-nrw'], 'canopy.tallestTenthM'));
  // Orchards in metres hardly exceed these; in feet they are ordinary.
  if (H.value > 9 && R.value > 9) out.push(finding('looks-like-feet', 'warn', { height: m(H.value), spacing: m(R.value) }, [], 'canopy.heightM'));
  const widest = Math.max(0, ...(rung.canopy.profile ?? []).map((p) => p.widthM));
  if (rung.canopy.profile?.length && Math.abs(widest / W.value - 1) > 0.1) out.push(finding('profile-differs', 'note', { widest: m(widest), width: m(W.value) }, [], 'canopy.profile'));
  const tree = block.treeSpacingM;
  if (tree !== undefined && tree > 2 * W.value && rung.canopy.filledFraction === undefined) out.push(finding('gaps-likely', 'note', { spacing: m(tree), width: m(W.value) }, ['canada-trv'], 'canopy.filledFraction'));
  const shares = water.interval?.shares;
  if (shares && shares.size > 1) {
    const [path, part] = [...shares].reduce((a, b) => (b[1] > a[1] ? b : a));
    out.push(finding('measure-this-next', 'note', { measurement: path, share: share(part) }, ['error-propagation'], path));
  }
  return out;
}

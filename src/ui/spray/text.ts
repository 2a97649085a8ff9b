import type { Range } from '#core/spray/types.ts';
import { ltr } from '#words/bidi.ts';
import { formatNumber, formatShare } from '#words/format.ts';

const FIXED_SPACE = '\u00a0';
/** Whole percent, without the sign. */
export const percent = (share: number): string => formatNumber(Math.round(share * 100), 0);
/** Less than this is nothing to the eye. */
const NOTHING = 0.0005;
export const shareText = (share: number): string => formatShare(Math.abs(share) < NOTHING ? 0 : share);

/** A band of shares in whole percent: 37–67 %. */
export const shareRange = ([least, most]: Range): string => ltr(`${percent(least)}–${percent(most)}${FIXED_SPACE}%`);

/** With its sign, for a difference of shares, in points: +9. */
export function points(difference: number): string {
  const size = percent(Math.abs(difference));
  return size === '0' ? size : ltr(`${difference < 0 ? '−' : '+'}${size}`);
}

/** Any difference with its sign. */
export const signed = (value: number, text: (size: number) => string): string => ltr((/[1-9]/.test(text(Math.abs(value))) ? (value < 0 ? '−' : '+') : '') + text(Math.abs(value)));

/** Seconds as a watch shows them: 01:02.4, 1:00:00.0. Cut, not rounded: a watch never shows a tenth that has not passed. */
export function watchFace(seconds: number): string {
  const tenths = Math.floor(seconds * 10 + 1e-6);
  const two = (n: number) => String(n).padStart(2, '0');
  const s = Math.floor(tenths / 10);
  const hours = Math.floor(s / 3600);
  return `${hours > 0 ? `${hours}:` : ''}${two(Math.floor(s / 60) % 60)}:${two(s % 60)}.${tenths % 10}`;
}

/** Reads 62.4, 62,4 or 1:02.4 as seconds; NaN where it is no time. */
export function readTime(text: string): number {
  const found = /^(?:(\d+):(?=[0-5]?\d(?!\d)))?(\d+(?:[.,]\d*)?|[.,]\d+)$/.exec(text.trim());
  return found ? Number(found[1] ?? 0) * 60 + Number(found[2]!.replace(',', '.')) : NaN;
}

/** A time to plan by, in whole seconds, rounded up. */
export function lasting(seconds: number, say: (minutes: number, seconds: number) => string): string {
  const whole = Math.ceil(seconds - 1e-9);
  return say(Math.floor(whole / 60), whole % 60);
}

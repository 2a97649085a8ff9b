const two = (n: number): string => String(Math.abs(n)).padStart(2, '0');

/** A moment as it is read off the clock on the wall, with its offset: 2031-05-12T21:40:07+02:00. */
export function localIso(now: Date): string {
  const offset = -now.getTimezoneOffset();
  const zone = `${offset < 0 ? '-' : '+'}${two(Math.trunc(offset / 60))}:${two(offset % 60)}`;
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}T${two(now.getHours())}:${two(now.getMinutes())}:${two(now.getSeconds())}${zone}`;
}

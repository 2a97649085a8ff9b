/** A moment on the wall clock, without seconds: 12 mag 2031, 21:40. */
export const momentText = (ms: number): string => new Date(ms).toLocaleString('it', { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });

/** A span in its two largest parts: 2 h 5 min. */
export const spanText = (seconds: number): string => {
  const minutes = Math.round(seconds / 60);
  const [d, h, m] = [Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60];
  if (d > 0) return h > 0 ? `${d} d ${h} h` : `${d} d`;
  if (h > 0) return m > 0 ? `${h} h ${m} min` : `${h} h`;
  return `${m} min`;
};

/** An amount of data: 27 kB, 1,4 MB. */
export const bytesText = (bytes: number): string => {
  if (bytes < 1000) return `${Math.round(bytes)} B`;
  if (bytes < 1e6) return `${Math.round(bytes / 1e3)} kB`;
  if (bytes < 1e9) return `${(bytes / 1e6).toFixed(1).replace('.', ',')} MB`;
  return `${(bytes / 1e9).toFixed(1).replace('.', ',')} GB`;
};

/** Ein Zeitpunkt der Uhr, ohne Sekunden: 12. Mai 2031, 21:40. */
export const momentText = (ms: number): string => new Date(ms).toLocaleString('de', { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' });

/** Eine Spanne in ihren zwei größten Teilen: 2 h 5 min. */
export const spanText = (seconds: number): string => {
  const minutes = Math.round(seconds / 60);
  const [d, h, m] = [Math.floor(minutes / 1440), Math.floor(minutes / 60) % 24, minutes % 60];
  if (d > 0) return h > 0 ? `${d} d ${h} h` : `${d} d`;
  if (h > 0) return m > 0 ? `${h} h ${m} min` : `${h} h`;
  return `${m} min`;
};

const tenths = (amount: number): string => amount.toFixed(1).replace('.', ',');

/** Eine Datenmenge: 27 kB, 1,4 MB. */
export const bytesText = (bytes: number): string => {
  if (bytes < 1000) return `${Math.round(bytes)} B`;
  if (bytes < 1e6) return `${Math.round(bytes / 1e3)} kB`;
  if (bytes < 1e9) return `${tenths(bytes / 1e6)} MB`;
  return `${tenths(bytes / 1e9)} GB`;
};

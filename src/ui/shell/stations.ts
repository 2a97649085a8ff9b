/** The stations in the order of the job. */
export const STATIONS = ['row', 'section', 'headland', 'strategies'] as const;
export type Station = (typeof STATIONS)[number];

/** Station and step that an address names: `#headland/speed`. */
export function placeOf(hash: string): [station: Station, step: string] {
  const [name, step = ''] = hash.replace(/^#/, '').split('/');
  return [STATIONS.find((s) => s === name) ?? 'section', step];
}

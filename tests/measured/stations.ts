import { readFileSync } from 'node:fs';

export const DATA = new URL('data/', import.meta.url);
export const readRows = (name: string): Record<string, string>[] => {
  const [head, ...lines] = readFileSync(new URL(name, DATA), 'utf8').trim().split(/\r?\n/);
  const names = head!.split(',');
  return lines.map((l) => Object.fromEntries(l.split(',').map((v, i) => [names[i]!, v])));
};

/** One place along a tree, metres. */
export interface Station {
  readonly tree: string;
  readonly location: number;
  readonly height: number;
  readonly skirt: number;
  /**
   * Sum of the two opposite half spreads. Each tree has one pair alone, either to north and south or to east and west, read at every
   * station along the tree: so the stations follow the row, and the pair is what lies across it.
   */
  readonly width: number;
}

export type Species = 'apple' | 'cherry';
/** Assumed: the data give none. Metres. */
export const ROW_SPACING: Readonly<Record<Species, number>> = { apple: 6, cherry: 8 };

export const READINGS = readRows('canopy-stations-kaysville-2013.csv');

export const STATIONS: readonly Station[] = [...new Set(READINGS.map((r) => `${r['species']}-${r['tree']} ${r['location']}`))].map((key) => {
  const [tree, location] = key.split(' ') as [string, string];
  const here = READINGS.filter((r) => `${r['species']}-${r['tree']}` === tree && r['location'] === location);
  const at = (position: string): number => Number(here.find((r) => r['position'] === position)?.['m'] ?? 0);
  return { tree, location: Number(location), height: at('mh'), skirt: at('ml'), width: at('nd') + at('sd') + at('ed') + at('wd') };
});

export interface Tree {
  readonly id: string;
  readonly species: Species;
  readonly height: number;
  readonly skirt: number;
  readonly width: number;
  /** Share of its stations that hold foliage. */
  readonly filled: number;
}

export const mean = (x: readonly number[]): number => x.reduce((s, v) => s + v, 0) / x.length;
export const bare = (s: Station): boolean => s.height === 0;

export const TREES: readonly Tree[] = [...new Set(STATIONS.map((s) => s.tree))].map((id) => {
  const all = STATIONS.filter((s) => s.tree === id);
  const green = all.filter((s) => !bare(s));
  return {
    id,
    species: id.split('-')[0] as Species,
    height: mean(green.map((s) => s.height)),
    skirt: mean(green.map((s) => s.skirt)),
    width: mean(green.map((s) => s.width)),
    filled: green.length / all.length
  };
});

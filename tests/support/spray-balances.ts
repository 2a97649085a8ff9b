import { sprayCaseOf, type Orchard } from './spray.ts';
import type { SprayCase } from '#core/spray/types.ts';

/**
 * Published balances with the trees that we guessed for them: the summaries at hand give neither tree size, leaf, plume nor drops. The guesses are
 * not blind: those for apple were changed once after a first result was seen (bushes 3 m wide without gaps gave 57 % in full leaf, a box hedge without gaps 38 %).
 */
export interface PublishedBalance {
  readonly id: string;
  readonly name: string;
  /** Share of what was sprayed that was found on the trees, percent, least and most. */
  readonly published: readonly [least: number, most: number];
  readonly source: 'pergher-2013' | 'herrington-1981';
  readonly guess: Partial<Orchard>;
  /** What may as well have been, one end and the other. */
  readonly range: Partial<{ readonly [K in keyof Orchard]: readonly [Orchard[K], Orchard[K]] }>;
  /** G was fitted to this series: it is no test. */
  readonly fitted?: true;
}

/** A wall of vines between two halves of a tunnel: what flies through is caught and is not on the vine. Leaf layers × wall width⁻¹ is the density. */
const vine = (layers: number): Pick<PublishedBalance, 'source' | 'guess' | 'range' | 'fitted'> => ({
  source: 'pergher-2013',
  fitted: true,
  guess: {
    outlet: 'tower', rowSpacingM: 2.5, heightM: 2, skirtM: 0.8, widthM: 0.4, ladM2PerM3: layers / 0.4, filled: 1, airM3PerH: 12_000, outletMPerS: 15,
    slotFromM: 0.7, slotToM: 2, offsetM: 0.5, angleDeg: 0, vmdUm: 175, constants: { windMPerS: 0, rows: 1 }
  },
  range: { vmdUm: [125, 225], airM3PerH: [8000, 16_000], nozzlesPerSide: [4, 10] }
});

/** Free-standing bush trees, broad and loose, gaps between the crowns; an air-blast sprayer whose plume was hardly matched to them. */
const BUSH: Partial<Orchard> = { rowSpacingM: 5, heightM: 3.5, skirtM: 0.6, widthM: 2.5, topWidthM: 1.5, filled: 0.85, toDeg: 65, constants: {} };
const BUSH_RANGE = { widthM: [2, 3], filled: [0.7, 1], toDeg: [55, 75] } as const;
/** Dwarf trees in a closed hedge. */
const HEDGE: Partial<Orchard> = { rowSpacingM: 4, heightM: 2.5, skirtM: 0.5, widthM: 1.2, topWidthM: 0.7, filled: 0.95, toDeg: 65, constants: {} };
const HEDGE_RANGE = { widthM: [1, 1.5], filled: [0.85, 1], toDeg: [55, 75] } as const;
const wood = (m2PerM3: number): Partial<Orchard> => ({ ladM2PerM3: 0, constants: { woodM2PerM3: m2PerM3 } });

export const PUBLISHED_BALANCES: readonly PublishedBalance[] = [
  { id: 'vine-thin', name: 'vine, 0.69 leaf layers', published: [14.8, 14.8], ...vine(0.69) },
  { id: 'vine-dense', name: 'vine, 2.74 leaf layers', published: [53.9, 53.9], ...vine(2.74) },
  { id: 'bush-full', name: 'bush apple, full leaf', published: [22, 37], source: 'herrington-1981', guess: { ...BUSH, ladM2PerM3: 0.9 }, range: { ...BUSH_RANGE, ladM2PerM3: [0.6, 1.2] } },
  { id: 'bush-bare', name: 'bush apple, dormant', published: [9, 22], source: 'herrington-1981', guess: { ...BUSH, ...wood(0.14) }, range: { ...BUSH_RANGE, constants: [{ woodM2PerM3: 0.08 }, { woodM2PerM3: 0.2 }] } },
  { id: 'hedge-full', name: 'hedgerow apple, full leaf', published: [25, 25], source: 'herrington-1981', guess: { ...HEDGE, ladM2PerM3: 1.5 }, range: { ...HEDGE_RANGE, ladM2PerM3: [1, 2] } },
  { id: 'hedge-bare', name: 'hedgerow apple, dormant', published: [6, 6], source: 'herrington-1981', guess: { ...HEDGE, ...wood(0.25) }, range: { ...HEDGE_RANGE, constants: [{ woodM2PerM3: 0.15 }, { woodM2PerM3: 0.4 }] } }
];

/** The guess as a case, and every corner of what may as well have been. */
export function casesOf({ guess, range }: PublishedBalance): { readonly guess: SprayCase; readonly corners: readonly SprayCase[] } {
  const corners = (Object.entries(range) as [keyof Orchard, readonly [unknown, unknown]][]).reduce<Partial<Orchard>[]>(
    (all, [name, ends]) => all.flatMap((o) => ends.map((end) => ({ ...o, [name]: end }))),
    [guess]
  );
  return { guess: sprayCaseOf(guess), corners: corners.map(sprayCaseOf) };
}

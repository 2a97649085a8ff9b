import type { DropletClass } from '../sprayer/types.ts';
import type { Assumption } from '../working/assumption.ts';
import type { SourceId } from '../sources/bibliography.ts';
import type { SprayConstants } from './types.ts';

/** A constant of the model with the range in which it may well lie: the band of the result comes from running it. */
export interface SprayAssumption extends Assumption {
  readonly plausible: readonly [least: number, most: number];
}

const of = (
  name: string,
  value: number,
  unit: Assumption['unit'],
  plausible: readonly [number, number],
  [least, most]: readonly [number, number],
  certainty: Assumption['certainty'],
  ...sources: SourceId[]
): SprayAssumption => ({ id: `spray.${name}`, value, unit, least, most, certainty, sources, plausible });

const BY_CONSTANT = {
  // Fitted to one published vineyard series, with the drag-corrected relaxation time in the Stokes number; random leaves would have 0.5.
  projection: of('projection', 0.32, '1', [0.25, 0.4], [0.05, 1], 'derived', 'pergher-2013'),
  leafBeta: of('leaf-beta', 0.47, '1', [0.47, 0.8], [0.1, 2], 'published', 'petroff-2009'),
  leafSizeM: of('leaf-size', 0.05, 'm', [0.03, 0.08], [0.002, 0.3], 'memory', 'habit'),
  woodBeta: of('wood-beta', 0.6, '1', [0.6, 0.8], [0.1, 2], 'published', 'petroff-2008'),
  woodSizeM: of('wood-size', 0.01, 'm', [0.005, 0.015], [0.001, 0.1], 'memory', 'habit'),
  woodM2PerM3: of('wood-density', 0.25, 'm2/m3', [0.1, 0.4], [0.01, 2], 'memory', 'habit'),
  canopyDrag: of('canopy-drag', 0.2, '1', [0.1, 0.3], [0.01, 1], 'published', 'katul-2004'),
  entrainment: of('entrainment', 0.053, '1', [0.05, 0.06], [0.02, 0.12], 'memory', 'rajaratnam-1976', 'pope-2000'),
  // dQ/ds over √M: 0.32 · √(π/4).
  roundEntrainment: of('round-entrainment', 0.284, '1', [0.27, 0.3], [0.1, 0.6], 'memory', 'ricou-spalding-1961'),
  // 6° for a cone of 24°: standard deviation of the plume's direction.
  plumeSpread: of('plume-spread', 0.25, '1', [0.125, 0.375], [0.05, 0.6], 'assumed', 'habit'),
  shellShare: of('shell-share', 0.3, '1', [0.3, 0.3], [0.05, 0.95], 'memory', 'habit'),
  coreRatio: of('core-ratio', 0.7, '1', [0.4, 1], [0.05, 3], 'memory', 'habit'),
  windMPerS: of('cross-wind', 1, 'm/s', [0, 2], [0, 5], 'assumed', 'habit'),
  windDecay: of('wind-decay', 1.15, '1', [0.5, 2], [0, 4], 'memory', 'cionco-1978'),
  deltaTK: of('delta-t', 5, 'K', [2, 8], [0, 20], 'assumed', 'habit'),
  finePart: of('fine-part', 0.45, '1', [0.4, 0.5], [0.2, 0.8], 'memory', 'habit'),
  nonVolatile: of('non-volatile', 0.005, '1', [0.002, 0.02], [0.0001, 0.5], 'memory', 'habit'),
  releaseMPerS: of('release-speed', 15, 'm/s', [10, 25], [1, 50], 'memory', 'habit'),
  rows: of('rows', 4, '1', [4, 4], [1, 12], 'assumed', 'habit')
} satisfies Record<Exclude<keyof SprayConstants, 'fullLeafM2PerM3'>, SprayAssumption>;

/** Which assumption stands behind which constant. */
export const SPRAY_CONSTANTS: Readonly<Record<keyof typeof BY_CONSTANT, SprayAssumption>> = BY_CONSTANT;

/**
 * Volume median diameter of a droplet class, µm: the middle of the ranges in extension use, from memory. The classes are comparative
 * and have no boundaries in µm; the trade's sets differ by some 25 µm.
 */
const vmd = (name: DropletClass, value: number, plausible: readonly [number, number]) => of(`vmd-${name}`, value, 'um', plausible, [20, 1500], 'memory', 'habit');
export const VMD_OF: Readonly<Record<DropletClass, SprayAssumption>> = {
  XF: vmd('XF', 50, [35, 60]),
  VF: vmd('VF', 105, [75, 145]),
  F: vmd('F', 185, [145, 225]),
  M: vmd('M', 275, [225, 325]),
  C: vmd('C', 363, [325, 400]),
  VC: vmd('VC', 450, [400, 500]),
  XC: vmd('XC', 575, [500, 650]),
  UC: vmd('UC', 750, [650, 900])
};
/** Orchard hollow cones measured 156, 198 and 237 µm: for a nozzle whose table tells no class. */
export const VMD_UNKNOWN = of('vmd-unknown', 200, 'um', [156, 237], [20, 1500], 'published', 'cross-2001');

export const SPRAY_ASSUMPTIONS: readonly SprayAssumption[] = [...Object.values(BY_CONSTANT), ...Object.values(VMD_OF), VMD_UNKNOWN];

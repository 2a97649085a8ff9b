import type { CanopyFigures } from '../../canopy/canopy.ts';
import type { Unit } from '../../quantity/units.ts';

/** What a formula of the user's own may name: the canopy's figures by their symbols, in the engine's units. */
export const OWN_NAMES: Readonly<Record<keyof CanopyFigures, Unit>> = {
  H: 'm',
  Hs: 'm',
  h: 'm',
  W: 'm',
  R: 'm',
  f: '1',
  n: '1',
  s: '1',
  A: 'm2',
  TRVg: 'm3/ha',
  TRVc: 'm3/ha',
  TRVs: 'm3/ha',
  LWA: 'm2/ha',
  RL: 'm/ha',
  UCR: 'UCR/ha',
  LAD: 'm2/m3',
  LAI: '1',
  k: 'L/m3',
  m: '1'
};

/** Functions that it may call, with the least and the most of their arguments. */
export const OWN_FUNCTIONS: Readonly<Record<string, readonly [number, number]>> = {
  min: [2, 8],
  max: [2, 8],
  sqrt: [1, 1],
  exp: [1, 1],
  log: [1, 1],
  abs: [1, 1]
};

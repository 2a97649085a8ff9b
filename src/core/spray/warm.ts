import { balance } from './balance.ts';
import { picture } from './picture.ts';
import { transport } from './transport.ts';
import type { SprayCase, SprayConstants } from './types.ts';

/** Of the size of real ones; what they are does not matter, nobody sees the answer. */
const CONSTANTS: SprayConstants = {
  projection: 0.3, leafBeta: 0.5, leafSizeM: 0.05, woodBeta: 0.6, woodSizeM: 0.01, woodM2PerM3: 0.2, fullLeafM2PerM3: 2, canopyDrag: 0.2, entrainment: 0.05, roundEntrainment: 0.3,
  plumeSpread: 0.25, shellShare: 0.3, coreRatio: 0.7, windMPerS: 1, windDecay: 1, deltaTK: 5, finePart: 0.45, nonVolatile: 0.005, releaseMPerS: 15, rows: 4
};
const CASE: SprayCase = {
  canopy: { rowSpacingM: 4, outline: [{ heightM: 0.5, widthM: 1.2 }, { heightM: 3, widthM: 0.8 }], ladM2PerM3: 1.5, filled: 0.95 },
  outlet: { kind: 'arc', axisHeightM: 1, radiusM: 0.5, fromDeg: -15, toDeg: 75, slotWidthM: 0.12 },
  air: [{ side: 'right', flowM3PerS: 3.5, outletMPerS: 30 }],
  nozzles: [{ position: 'R1', side: 'right', heightM: 1, offsetM: 0.5, angleDeg: 20, coneDeg: 24, flowLPerMin: 1, vmdUm: 200, droplets: null }],
  vanes: [{ heightM: 1, angleDeg: 20 }],
  anglesDeg: [-15, 75],
  volumeLPerHa: 300,
  constants: CONSTANTS,
  ladRange: [1, 2],
  stated: []
};

/** Flies an invented case, so that the code is compiled before the first real one comes: a worker does it while the page fetches the rest. */
export function warm(): void {
  const first = transport(CASE);
  const t = transport(CASE, first);
  balance(CASE, t);
  picture(CASE, t);
}

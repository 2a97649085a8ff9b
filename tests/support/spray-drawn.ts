import type { BandRun, DropTrack, Fate, HeightCell, JetPoint, Range, Shares8, SprayBalance, SprayBand, SprayCase, SprayPicture } from '#core/spray/types.ts';
import { HEIGHTS } from '#core/spray/types.ts';

/** A balance and a picture with invented numbers, for what draws and tells them: nothing here came out of the model. */

export const SHARES: Shares8 = { near: 0.33, far: 0.13, rows: 0.08, 'ground-in': 0.16, 'ground-out': 0.05, over: 0.12, through: 0.1, dried: 0.03 };

const cells = (skirt: number, top: number): HeightCell[] =>
  Array.from({ length: HEIGHTS }, (_, i) => {
    const u = (i + 0.5) / HEIGHTS;
    const share = 0.54 / HEIGHTS;
    return {
      fromM: skirt + ((top - skirt) * i) / HEIGHTS,
      toM: skirt + ((top - skirt) * (i + 1)) / HEIGHTS,
      areaIndex: 0.08,
      share,
      byDepth: [0.4, 0.3, 0.2, 0.1].map((d) => d * share * 0.8),
      depositUlPerCm2: 0.25 + 0.3 * Math.sin(Math.PI * u) - 0.1 * u
    };
  });

export const sprayBalance = (more: Partial<SprayBalance> = {}): SprayBalance => ({
  shares: SHARES,
  onTrees: 0.54,
  lost: 0.3,
  perNozzle: ['L1', 'L2', 'R1', 'R2'].map((position, i) => ({ position, shares: { ...SHARES, near: SHARES.near - 0.02 * i, over: SHARES.over + 0.02 * i } })),
  heights: cells(0.5, 3),
  depositUlPerCm2: 0.4,
  cv: 0.3,
  faces: [
    { side: 'left', heightM: 1, inMPerS: 14.2, outMPerS: 5.1 },
    { side: 'right', heightM: 2.5, inMPerS: 7.6, outMPerS: null }
  ],
  bare: false,
  ...more
});

const range = (middle: number, half: number): Range => [Math.max(middle - half, 0), Math.min(middle + half, 1)];

export const sprayBand = (more: Partial<SprayBand> = {}): SprayBand => ({
  shares: Object.fromEntries(Object.entries(SHARES).map(([fate, share]) => [fate, range(share, 0.04)])) as Record<Fate, Range>,
  onTrees: [0.39, 0.69],
  lost: [0.2, 0.42],
  cv: [0.25, 0.4],
  depositUlPerCm2: [0.3, 0.5],
  runs: ([['spray.projection', 0.25, 0.4, 0.46, 0.6], ['spray.leaf-beta', 0.47, 0.8, 0.54, 0.45]] as const).map(([assumption, a, b, c, d]): BandRun => ({ assumption, values: [a, b], onTrees: [c, d] })),
  ...more
});

/** Straight jets that slow down, one every 15°, both sides alike. */
function jets(): { readonly side: 'left' | 'right'; readonly points: readonly JetPoint[] }[] {
  return (['left', 'right'] as const).flatMap((side) =>
    [-15, 0, 15, 30, 45, 60, 75].map((deg) => {
      const a = (deg * Math.PI) / 180;
      const sign = side === 'left' ? -1 : 1;
      return {
        side,
        points: Array.from({ length: 20 }, (_, i): JetPoint => {
          const s = 0.55 + 0.25 * i;
          return { xM: sign * s * Math.cos(a), zM: Math.max(0.95 + s * Math.sin(a), 0.05), speedMPerS: 18 / s, halfWidthM: 0.1 * s };
        })
      };
    })
  );
}

const COLUMNS = 60;
const ROWS = 44;
const CELL_M = 0.1;

/** A plume to each side that thins out with distance, the greatest cell 1. */
function density(): Float32Array {
  const out = new Float32Array(COLUMNS * ROWS);
  for (let r = 0; r < ROWS; r++)
    for (let c = 0; c < COLUMNS; c++) {
      const x = Math.abs((c + 0.5) * CELL_M - (COLUMNS * CELL_M) / 2);
      const z = (r + 0.5) * CELL_M - 0.95;
      const far = Math.max(Math.hypot(x, z), 0.5);
      const turned = Math.atan2(z, x) - 0.5;
      out[r * COLUMNS + c] = (0.5 / far) ** 1.5 * Math.exp(-turned * turned * 2.5);
    }
  const most = Math.max(...out);
  return out.map((v) => v / most);
}

/** Drops of two sizes on falling curves. */
const tracks = (): DropTrack[] =>
  (['left', 'right'] as const).flatMap((side) =>
    [80, 300].map((dropUm, i) => ({
      side,
      dropUm,
      share: 0.25,
      points: Float32Array.from({ length: 80 }, (_, k) => {
        const t = Math.floor(k / 2) * 0.04;
        return k % 2 === 0 ? (side === 'left' ? -1 : 1) * (0.55 + (6 - 2 * i) * t) : Math.max(1 + 1.5 * t - (i + 1) * t * t, 0);
      })
    }))
  );

export const sprayPicture = (more: Partial<SprayPicture> = {}): SprayPicture => ({
  map: { xM: (-COLUMNS * CELL_M) / 2, zM: 0, cellM: CELL_M, columns: COLUMNS, rows: ROWS, density: density() },
  jets: jets(),
  tracks: tracks(),
  ...more
});

export const sprayCaseOf = (more: Partial<SprayCase> = {}): SprayCase => ({
  canopy: { rowSpacingM: 4, outline: [{ heightM: 0.5, widthM: 1.2 }, { heightM: 3, widthM: 0.8 }], ladM2PerM3: 2, filled: 1 },
  outlet: { kind: 'arc', axisHeightM: 0.95, radiusM: 0.55, fromDeg: -15, toDeg: 80, slotWidthM: 0.12 },
  air: [
    { side: 'left', flowM3PerS: 4.2, outletMPerS: 35 },
    { side: 'right', flowM3PerS: 4.2, outletMPerS: 35 }
  ],
  nozzles: ['L1', 'L2', 'R1', 'R2'].map((position, i) => ({ position, side: i < 2 ? 'left' : 'right', heightM: 1 + 0.2 * (i % 2), offsetM: 0.55, angleDeg: 20 * (i % 2), coneDeg: 25, flowLPerMin: 1, vmdUm: 185, droplets: 'F' })),
  vanes: [{ heightM: 1, angleDeg: 0 }, { heightM: 1.2, angleDeg: 20 }],
  anglesDeg: [-15, 80],
  volumeLPerHa: 360,
  ladRange: [1.2, 3],
  stated: [],
  constants: { projection: 0.32, leafBeta: 0.47, leafSizeM: 0.05, woodBeta: 0.6, woodSizeM: 0.01, woodM2PerM3: 0.25, fullLeafM2PerM3: 1.5, canopyDrag: 0.2, entrainment: 0.053, roundEntrainment: 0.284, plumeSpread: 0.25, shellShare: 0.3, coreRatio: 0.7, windMPerS: 1, windDecay: 1.15, deltaTK: 5, finePart: 0.45, nonVolatile: 0.005, releaseMPerS: 15, rows: 4 },
  ...more
});

/** evaluate() for 8, 24 and 40 nozzles, with a saved setting to compare: milliseconds a call, once warm. */
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { NozzlePosition } from '#core/sprayer/types.ts';
import { percentiles, report } from './report.ts';

function document(nozzlesPerSide: number): Document {
  const nozzles = (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: nozzlesPerSide }, (_, i): NozzlePosition => {
      const angleDeg = -15 + (90 * i) / Math.max(nozzlesPerSide - 1, 1);
      const a = (angleDeg * Math.PI) / 180;
      return { id: `${side === 'left' ? 'L' : 'R'}${i + 1}`, side, heightM: 0.95 + 0.55 * Math.sin(a), offsetM: 0.55 * Math.cos(a), angleDeg, swivelDownDeg: -15, swivelUpDeg: 15, coneAngleDeg: 24, table: 'iso-10625', size: '015' };
    })
  );
  const saved = { speedKmH: 5.8, pressureBar: 10, gear: 'low', ptoRpm: 540 };
  return {
    format: 'rowtailor',
    version: 1,
    name: 'bench',
    machines: [
      { id: 'm', name: 'arc', outlet: { kind: 'arc', axisHeightM: 0.95, radiusM: 0.55, fromDeg: -20, toDeg: 80, slotWidthM: 0.12 }, bodyWidthM: 1.3, tankL: 1000, pressureMinBar: 3, pressureMaxBar: 25, speedMinKmH: 3, speedMaxKmH: 9, ptoMinRpm: 400, ptoMaxRpm: 560, gears: [{ id: 'low', name: 'low', flowM3PerH: 24000, atPtoRpm: 540 }, { id: 'high', name: 'high', flowM3PerH: 32000, atPtoRpm: 540 }], nozzles }
    ],
    nozzleTables: [],
    labels: [{ id: 'l', name: 'A', unit: 'kg', basis: 'per-hectare', rate: 0.75, maxPerHa: 0.75 }],
    day: { temperatureC: 20, humidityPct: 60, windMPerS: 2 },
    blocks: [
      {
        id: 'b', name: 'b', rowSpacingM: 3.8, machine: 'm', label: 'l', strategy: 'us-row-volume', concentration: 2.5,
        rungs: [{ id: 'r', name: 'r', bbch: 75, canopy: { heightM: 3.2, widthM: 1.4, skirtM: 0.6, shape: 'spindle', errors: { heightSeM: 0.1, widthSeM: 0.08, trees: 10 } }, setting: { ...saved, nozzles: [{ position: `L${nozzlesPerSide}`, open: false }, { position: `R${nozzlesPerSide}`, open: false }] }, saved }]
      }
    ]
  };
}

for (const n of [8, 24, 40]) {
  const doc = document(n / 2);
  const times: number[] = [];
  for (let i = 0; i < 4000; i++) {
    const start = performance.now();
    evaluate(doc, 'b', 'r');
    if (i >= 1000) times.push(performance.now() - start);
  }
  report(`evaluate, ${n} nozzles`, percentiles(times), 'ms');
}

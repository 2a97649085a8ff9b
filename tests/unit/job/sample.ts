/** A small sound document as plain JSON, to be spoilt one place at a time. */
export const sample = () => ({
  format: 'rowtailor',
  version: 1,
  name: 'Sample',
  blocks: [
    {
      id: 'north',
      name: 'North',
      rowSpacingM: 4,
      machine: 'arc',
      label: 'cover',
      pattern: { kind: 'every-alley' } as Record<string, unknown>,
      strategy: 'row-volume',
      rungs: [
        {
          id: 'full',
          name: 'Full leaf',
          bbch: 75,
          date: '2032-02-29',
          canopy: { heightM: 3, widthM: 1.5, profile: [{ heightM: 0.5, widthM: 1 }, { heightM: 3, widthM: 0.4 }] },
          setting: {
            speedKmH: 6,
            pressureBar: 8,
            gear: 'low',
            ptoRpm: 540,
            nozzles: [{ position: 'L1', open: false, table: 'own', size: 'a' }] as Record<string, unknown>[]
          }
        }
      ]
    }
  ],
  machines: [
    {
      id: 'arc',
      name: 'Arc',
      outlet: { kind: 'arc', axisHeightM: 0.95, radiusM: 0.55, fromDeg: -15, toDeg: 80, slotWidthM: 0.12 },
      bodyWidthM: 1.3,
      tankL: 1000,
      pressureMinBar: 4,
      pressureMaxBar: 20,
      speedMinKmH: 3,
      speedMaxKmH: 9,
      ptoMinRpm: 400,
      ptoMaxRpm: 560,
      gears: [{ id: 'low', name: 'Low', flowM3PerH: 24000, atPtoRpm: 540 }],
      nozzles: [
        { id: 'L1', side: 'left', heightM: 1, offsetM: 0.5, angleDeg: 0, swivelDownDeg: -15, swivelUpDeg: 15, coneAngleDeg: 24, table: 'iso-10625', size: '015' },
        { id: 'R1', side: 'right', heightM: 1, offsetM: 0.5, angleDeg: 0, swivelDownDeg: -15, swivelUpDeg: 15, coneAngleDeg: 24, table: 'own', size: 'a' }
      ]
    }
  ],
  nozzleTables: [
    {
      id: 'own',
      name: 'Own',
      pattern: 'hollow-cone',
      referenceBar: 10,
      pressureMinBar: 4,
      pressureMaxBar: 20,
      sizes: [
        {
          id: 'a',
          flowLPerMin: 1,
          points: [{ pressureBar: 5, flowLPerMin: 0.7 }, { pressureBar: 10, flowLPerMin: 1 }],
          droplets: [{ fromBar: 4, class: 'F' }, { fromBar: 12, class: 'VF' }]
        }
      ]
    }
  ],
  labels: [{ id: 'cover', name: 'Cover', unit: 'kg', basis: 'per-hectare', rate: 1.5, minWaterLPerHa: 200, maxWaterLPerHa: 1000 }],
  day: { temperatureC: 20 },
  assumptions: { 'aim.overshoot': 0.4 } as Record<string, unknown>
});

type Plain = Record<string, unknown>;

/** The sample as text with the value at `path` (JSON pointer) put in place of what stands there; `undefined` takes it away. */
export function spoilt(path: string, value: unknown): string {
  const document = sample() as unknown as Plain;
  const steps = path.split('/').slice(1);
  let here = document;
  for (const s of steps.slice(0, -1)) here = here[s] as Plain;
  if (value === undefined) delete here[steps.at(-1)!];
  else here[steps.at(-1)!] = value;
  return JSON.stringify(document);
}

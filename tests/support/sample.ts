import type { Canopy } from '#core/canopy/types.ts';
import { ISO_TABLE_ID } from '#core/sprayer/iso10625.ts';
import type { Label } from '#core/dose/types.ts';
import type { Block, Document, Rung } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Advised } from '#core/setting/result.ts';
import type { Machine, NozzlePosition, NozzleTable, Setting, Side } from '#core/sprayer/types.ts';
import type { AssumptionValues } from '#core/working/assumption.ts';

/** Small builders of valid documents: an invented orchard, one value changed at a time. */

/** A copy without the keys that are undefined, as a document is read. */
export const defined = <T extends object>(o: T): { [K in keyof T]: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(o).filter(([, v]) => v !== undefined)) as { [K in keyof T]: Exclude<T[K], undefined> };

export const canopy = (more: Partial<Canopy> = {}): Canopy => ({ heightM: 3, skirtM: 0.5, widthM: 1.2, shape: 'box', ...more });

/**
 * Example machine A of the reference: axial fan, axis 0.95 m high, arc of 0.55 m, eight nozzles a side from −15° to +75°.
 * The cone and the swivel are ours.
 */
export const ARC = { axisHeightM: 0.95, radiusM: 0.55, fromDeg: -15, toDeg: 75, perSide: 8 } as const;

export const arcNozzles = (more: Partial<NozzlePosition> = {}): NozzlePosition[] =>
  (['left', 'right'] as const).flatMap((side: Side) =>
    Array.from({ length: ARC.perSide }, (_, i) => {
      const angleDeg = ARC.fromDeg + ((ARC.toDeg - ARC.fromDeg) * i) / (ARC.perSide - 1);
      const a = (angleDeg * Math.PI) / 180;
      return {
        id: `${side === 'left' ? 'L' : 'R'}${i + 1}`,
        side,
        heightM: ARC.axisHeightM + ARC.radiusM * Math.sin(a),
        offsetM: ARC.radiusM * Math.cos(a),
        angleDeg,
        swivelDownDeg: -15,
        swivelUpDeg: 15,
        coneAngleDeg: 25,
        table: ISO_TABLE_ID,
        size: '015',
        ...more
      };
    })
  );

export const machineA = (more: Partial<Machine> = {}): Machine => ({
  id: 'A',
  name: 'Arc',
  outlet: { kind: 'arc', axisHeightM: 0.95, radiusM: 0.55, fromDeg: -15, toDeg: 80, slotWidthM: 0.12 },
  bodyWidthM: 1.3,
  tankL: 1000,
  pressureMinBar: 4,
  pressureMaxBar: 18,
  speedMinKmH: 3,
  speedMaxKmH: 8,
  ptoMinRpm: 400,
  ptoMaxRpm: 560,
  gears: [
    { id: 'low', name: 'Low', flowM3PerH: 22500, atPtoRpm: 540 },
    { id: 'high', name: 'High', flowM3PerH: 30000, atPtoRpm: 540 }
  ],
  nozzles: arcNozzles(),
  ...more
});

export const setting = (more: Partial<Setting> = {}): Setting => ({ speedKmH: 6, pressureBar: 10, gear: 'high', ptoRpm: 540, ...more });

export const label = (more: Partial<Label> = {}): Label => ({ id: 'label', name: 'Sample', unit: 'kg', basis: 'per-hectare', rate: 2, ...more });

/** A user table of one size, so that a flow can be set freely. */
export const table = (flowLPerMin: number, more: Partial<NozzleTable> = {}): NozzleTable => ({
  id: 'own',
  name: 'Own table',
  pattern: 'hollow-cone',
  referenceBar: 10,
  pressureMinBar: 2,
  pressureMaxBar: 30,
  sizes: [{ id: 'x', flowLPerMin }],
  ...more
});

export interface Parts {
  readonly canopy?: Partial<Canopy>;
  readonly machine?: Partial<Machine>;
  readonly setting?: Partial<Setting>;
  readonly saved?: Partial<Setting>;
  readonly block?: Partial<Block>;
  readonly rung?: Partial<Rung>;
  readonly label?: Partial<Label>;
  readonly tables?: readonly NozzleTable[];
  readonly assumptions?: AssumptionValues;
  readonly day?: NonNullable<Document['day']>;
}

/** A whole document of one block with one rung; 4 m rows, tree-row volume, no label unless one is given. */
export function document(parts: Parts = {}): Document {
  const rung: Rung = {
    id: 'now',
    name: 'Now',
    canopy: canopy(parts.canopy),
    setting: setting(parts.setting),
    ...(parts.saved ? { saved: setting(parts.saved) } : {}),
    ...parts.rung
  };
  const block: Block = {
    id: 'block',
    name: 'Block',
    rowSpacingM: 4,
    machine: 'A',
    strategy: 'row-volume',
    rungs: [rung],
    ...(parts.label ? { label: 'label' } : {}),
    ...parts.block
  };
  return {
    format: 'rowtailor',
    version: 1,
    name: 'Sample',
    blocks: [block],
    machines: [machineA(parts.machine)],
    nozzleTables: parts.tables ?? [],
    labels: parts.label ? [label(parts.label)] : [],
    ...(parts.day ? { day: parts.day } : {}),
    ...(parts.assumptions ? { assumptions: parts.assumptions } : {})
  };
}

/** The one block at its one rung, evaluated; a refusal of the whole is a fault of the test. */
export function result(parts: Parts = {}): Advised {
  const r = evaluate(document(parts), 'block', 'now');
  if ('kind' in r) throw new Error(`${r.code} at ${r.path}`);
  return r;
}

/** The number of an answer; a refusal is a fault of the test. */
export function num(a: { readonly kind: string; readonly value?: number; readonly code?: string } | null | undefined): number {
  if (!a || a.value === undefined) throw new Error(`no number: ${a?.code ?? 'nothing'}`);
  return a.value;
}

/** Code and path of a refusal; a number is a fault of the test. */
export function refusal(a: { readonly kind: string; readonly code?: string; readonly path?: string } | null | undefined): string {
  if (a?.kind !== 'refused') throw new Error('not refused');
  return `${a.code} @ ${a.path}`;
}

/** Opens only the named positions of machine A. */
export const onlyOpen = (...ids: string[]): NonNullable<Setting['nozzles']> =>
  arcNozzles().map((n) => ({ position: n.id, open: ids.includes(n.id) }));

export const shut = (...ids: string[]): NonNullable<Setting['nozzles']> => ids.map((position) => ({ position, open: false }));

/** The findings' codes. */
export const codes = (r: Advised): string[] => r.findings.map((f) => f.code);

import { outletArea } from '../air/air.ts';
import { ASSUMPTIONS } from '../setting/assumptions.ts';
import type { Document } from '../setting/document.ts';
import type { Result } from '../setting/result.ts';
import type { NozzleState } from '../sprayer/sprayer.ts';
import { Assumptions, type Assumption } from '../working/assumption.ts';
import { isRefused, refused, type Quantity, type Refused } from '../working/answer.ts';
import { SPRAY_ASSUMPTIONS, SPRAY_CONSTANTS, VMD_OF, VMD_UNKNOWN } from './assumptions.ts';
import type { Release, SideAir, SprayCase, SprayConstants } from './types.ts';

/** Every assumption of the model, those that it shares with the rest of the engine included, by id. */
export const SPRAY_REGISTRY: ReadonlyMap<string, Assumption> = new Map([ASSUMPTIONS.get('canopy.full-leaf-density')!, ...SPRAY_ASSUMPTIONS].map((a) => [a.id, a]));

/**
 * What the model is told of a setting in front of a canopy: outline, leaf, air, nozzles that spray, constants with the user's own values.
 * Refuses by name a canopy without outline, rows that meet, a fan without a gear, a setting in which nothing sprays or a flow is not known.
 */
export function sprayCase(document: Document, result: Result): SprayCase | Refused {
  const { canopy, sprayer, machine, pass, setting } = result;
  const { LAD, f, R } = canopy.figures;
  if (canopy.outline.length < 2) return refused('no-outline', 'canopy', {});
  for (const needed of [canopy.figures.h, LAD, f, sprayer.flow, sprayer.volume]) if (isRefused(needed)) return needed;
  if (isRefused(LAD) || isRefused(f) || isRefused(sprayer.volume)) return refused('no-outline', 'canopy', {});
  if (canopy.outline.some((w) => w.widthM >= R.value)) return refused('no-alley', 'canopy.widthM', {});
  const air = airOf(result);
  if ('kind' in air) return air;

  const assumptions = new Assumptions(SPRAY_REGISTRY, document.assumptions);
  const take = (id: string) => assumptions.take(id).value;
  const nozzles = sprayer.nozzles.filter((n) => n.spraying).flatMap((n) => releaseOf(n, take));
  const angles = machine.nozzles.flatMap((n) => [n.angleDeg + n.swivelDownDeg, n.angleDeg + n.swivelUpDeg, n.angleDeg + (setting.nozzles?.find((s) => s.position === n.id)?.swivelDeg ?? 0)]);
  const density = result.rung.canopy.profile?.flatMap((p) => (p.relativeDensity === undefined ? [] : [{ heightM: p.heightM, relative: p.relativeDensity }])) ?? [];
  const measured = result.weather?.deltaT;
  return {
    canopy: {
      rowSpacingM: R.value,
      outline: canopy.outline,
      ladM2PerM3: LAD.value,
      filled: f.value,
      ...(density.length > 0 ? { densityByHeight: density } : {})
    },
    outlet: machine.outlet,
    air: air.filter((a) => pass.sides.includes(a.side)),
    nozzles,
    vanes: vanesOf(result),
    anglesDeg: [Math.min(...angles), Math.max(...angles)],
    volumeLPerHa: sprayer.volume.value,
    ladRange: ladRange(LAD),
    stated: SPRAY_ASSUMPTIONS.map((a) => a.id).filter((id) => document.assumptions?.[id] !== undefined),
    constants: {
      ...constantsOf(take),
      // What was measured on the day goes before the assumption.
      ...(measured && !isRefused(measured) && document.assumptions?.[SPRAY_CONSTANTS.deltaTK.id] === undefined ? { deltaTK: Math.max(measured.value, 0) } : {})
    }
  };
}

/** Measured leaf area is good to some 15 %; where it was assumed, orchards differ by this much (both from memory). */
function ladRange(lad: Quantity): SprayCase['ladRange'] {
  const [low, high] = lad.kind === 'given' && lad.certainty === 'measured' ? [0.85, 1.15] : [0.6, 1.5];
  return [lad.value * low, lad.value * high];
}

const constantsOf = (take: (id: string) => number): SprayConstants => ({
  ...(Object.fromEntries(Object.entries(SPRAY_CONSTANTS).map(([name, a]) => [name, take(a.id)])) as Record<keyof typeof SPRAY_CONSTANTS, number>),
  fullLeafM2PerM3: take('canopy.full-leaf-density')
});

/** A nozzle of unknown flow has already refused the whole. */
function releaseOf(n: NozzleState, take: (id: string) => number): Release[] {
  if (isRefused(n.flow)) return [];
  const { id, side, heightM, offsetM } = n.position;
  const vmdUm = take((n.droplets ? VMD_OF[n.droplets] : VMD_UNKNOWN).id);
  return [{ position: id, side, heightM, offsetM, angleDeg: n.angle.value, coneDeg: n.cone.value, flowLPerMin: n.flow.value, vmdUm, droplets: n.droplets ?? null }];
}

function airOf({ machine, setting, air }: Result): readonly SideAir[] | Refused {
  const gear = machine.gears.find((g) => g.id === setting.gear);
  if (!gear) return refused('unknown-gear', 'setting.gear', { gear: setting.gear });
  if (isRefused(air.outletSpeed)) return air.outletSpeed;
  const flow = (gear.flowM3PerH * setting.ptoRpm) / gear.atPtoRpm / 3600;
  const left = gear.leftShare ?? 0.5;
  // Both sides' outlets are alike, so the speed there follows the share.
  const area = outletArea(machine.outlet);
  const of = (side: SideAir['side'], share: number): SideAir => ({ side, flowM3PerS: flow * share, outletMPerS: (flow * share) / area });
  return [of('left', left), of('right', 1 - left)];
}

function vanesOf({ machine }: Result): SprayCase['vanes'] {
  const byHeight = new Map<number, number[]>();
  for (const n of machine.nozzles) byHeight.set(n.heightM, [...(byHeight.get(n.heightM) ?? []), n.angleDeg]);
  return [...byHeight].map(([heightM, all]) => ({ heightM, angleDeg: all.reduce((a, b) => a + b, 0) / all.length })).toSorted((a, b) => a.heightM - b.heightM);
}

import type { Result } from '#core/setting/result.ts';
import type { SprayRoom } from '#section/spray-layer.ts';

/** How much of the drawing machine and trees take up. */
export function roomOf({ machine, canopy }: Result, ghost: Result | null): SprayRoom {
  const { outlet, nozzles, bodyWidthM } = machine;
  return {
    machineTopM: Math.max(...nozzles.map((n) => n.heightM), outlet.kind === 'tower' ? outlet.toHeightM + 0.12 : 0),
    bodyM: bodyWidthM / 2,
    widthM: Math.max(canopy.figures.W.value, ghost?.canopy.figures.W.value ?? 0),
    topM: canopy.aimTopM
  };
}

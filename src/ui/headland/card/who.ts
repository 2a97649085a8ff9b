import { threads } from '#core/record/thread.ts';
import type { AnyFields } from '#core/record/types.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';

export interface Who {
  readonly driver: string;
  readonly tractorGear: string;
  readonly engineRpm: number | undefined;
}

/**
 * What the newest records of this block say of the driver; and of the tractor's gear and revolutions, as long as they were written down
 * at the speed and PTO speed that the card asks for. What no record says is left to the pen.
 */
export function whoOf(document: Document, { block, setting }: Result): Who {
  const mine = threads(document.records ?? [])
    .map((t) => t.standing)
    .filter((r) => r.block === block.id && r.fields.madeInError === undefined)
    .map((r): AnyFields => r.fields);
  const driver = mine.find((f) => f['operator'] !== undefined)?.['operator'];
  const same = mine.find((f) => f['tractorGear'] !== undefined && f['setSpeedKmH'] === setting.speedKmH && f['ptoRpm'] === setting.ptoRpm);
  const engine = same?.['engineRpm'];
  return { driver: String(driver ?? ''), tractorGear: String(same?.['tractorGear'] ?? ''), engineRpm: typeof engine === 'number' ? engine : undefined };
}

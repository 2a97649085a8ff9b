import type { Finding } from '#core/advice/finding.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';

export interface Proof {
  readonly state: 'within' | 'off' | 'stale' | 'none';
  readonly at: Date | null;
  /** Measured and wanted, L/ha. */
  readonly volume: number | undefined;
  readonly wanted: number | undefined;
  /** What the tractor's display shows at the speed of the setting, km/h. */
  readonly display: number | undefined;
  readonly findings: readonly Finding[];
}

/** Whether the setting on the card was proved on the headland. */
export function proofOf(_document: Document, _result: Result): Proof {
  return { state: 'none', at: null, volume: undefined, wanted: undefined, display: undefined, findings: [] };
}

import { unitOf, type Placement } from '#core/canopy/laser/place.ts';
import { DEFAULT_RULES } from '#core/canopy/laser/rules.ts';
import type { LaserRules } from '#core/canopy/laser/types.ts';
import type { Refused } from '#core/working/answer.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { FileClient } from '#store/file/client.ts';
import { startLaser, wasm, type LaserClient } from '#store/laser/client.ts';
import type { Judged, OpenedPoints } from '#store/laser/messages.ts';
import { patchCanopy } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

/** A file of laser points, the rules by which they are judged, and the canopy that they make. The points are kept nowhere. */
export class LaserBench {
  file = $state.raw<OpenedPoints | null>(null);
  /** Part that is read, 0…1; null while nothing is. */
  reading = $state<number | null>(null);
  /** Points are being judged. */
  busy = $state(false);
  /** Why nothing could be read. */
  problem = $state.raw<Refused | null>(null);
  problems = $state.raw<readonly RowProblem[]>([]);
  /** The worker itself failed. */
  failed = $state(false);
  judged = $state.raw<Judged | null>(null);
  rules = $state.raw<LaserRules>(DEFAULT_RULES);
  /** Whether the rows are as far apart as the document says, or as the points show. */
  spacingFromPoints = $state(false);
  placement = $state.raw<Placement | null>(null);
  private client: LaserClient | null = null;

  constructor(private readonly workspace: Workspace) {}

  /** The rules with the block's row spacing, unless the points are to tell it. */
  readonly asked: LaserRules = $derived.by(() => {
    const { rowSpacingM: _, ...rules } = this.rules;
    return this.spacingFromPoints ? rules : { ...rules, rowSpacingM: this.workspace.block.rowSpacingM };
  });

  async open(file: Blob, name: string): Promise<void> {
    this.close();
    this.reading = 0;
    const client: LaserClient = (this.client = new FileClient(
      startLaser,
      (judged) => {
        this.judged = judged;
        this.busy = false;
      },
      () => this.lose(),
      (done) => {
        if (this.client === client) this.reading = done;
      }
    ));
    try {
      const opened = await client.open({ file, name, wasm });
      if (this.client !== client || opened === null) return;
      this.reading = null;
      this.problems = opened.problems;
      if ('placement' in opened) {
        this.file = opened;
        this.placement = opened.placement;
        this.judge();
      } else {
        this.problem = opened.refused;
        this.client = null;
        client.close();
      }
    } catch {
      if (this.client === client) this.lose();
    }
  }
  private lose(): void {
    this.close();
    this.failed = true;
  }
  /** Lets go of the points and ends their worker. */
  close(): void {
    const { client } = this;
    this.client = null;
    client?.close();
    this.file = this.judged = this.problem = this.placement = null;
    this.reading = null;
    this.problems = [];
    this.failed = this.busy = false;
  }

  /** Judges the points anew; what is shown meanwhile is the judgement before. */
  judge(): void {
    if (!this.client || !this.placement) return;
    this.busy = true;
    this.client.ask({ placement: this.placement, rules: this.asked });
  }
  setRules(patch: { readonly [K in keyof LaserRules]?: LaserRules[K] | undefined }): void {
    const next = { ...this.rules, ...patch };
    this.rules = Object.fromEntries(Object.entries(next).filter(([, v]) => v !== undefined)) as unknown as LaserRules;
    this.judge();
  }
  place(patch: Partial<Placement>): void {
    if (!this.placement) return;
    this.placement = { ...this.placement, ...patch };
    this.judge();
  }
  /** The file's numbers stay; what they are in changes. */
  setUnit(unit: 'm' | 'ft'): void {
    this.place({ unitM: unitOf(unit) });
  }

  /** Takes the canopy into the rung, in one step. What the points do not tell stays as it is. */
  use(): boolean {
    const made = this.judged?.made;
    if (!made || 'kind' in made) return false;
    this.workspace.editRung((r) => patchCanopy(r, made.canopy));
    return true;
  }
}

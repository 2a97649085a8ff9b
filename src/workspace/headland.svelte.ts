import { checkState } from '#core/check/check.ts';
import type { CheckState, Remedy, RoundState } from '#core/check/state.ts';
import type { Check, Round } from '#core/check/types.ts';
import type { Fitting } from '#core/fitting/types.ts';
import { loadsState } from '#core/mix/loads.ts';
import type { LoadsState } from '#core/mix/state.ts';
import type { Mix } from '#core/mix/types.ts';
import { watchStore } from '#store/watch.ts';
import { patched, takeOption } from './edits.ts';
import { Stopwatch } from './stopwatch.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

type Patch<T> = { readonly [K in keyof T]?: T[K] | undefined };

const EMPTY: Check = { rounds: [] };

/** What is done on the headland for the rung in view. All of it is part of the document, so it is kept and can be undone. */
export class Headland {
  constructor(
    readonly workspace: Workspace,
    /** The clock; a round says when it was begun. */
    private readonly clock: () => Date = () => new Date(),
    readonly watch: Stopwatch = new Stopwatch(watchStore())
  ) {}

  readonly check: Check = $derived.by(() => this.workspace.rung.check ?? EMPTY);
  /** The round in hand; before anything was measured, an empty one of the present setting. */
  readonly round: Round = $derived.by(() => this.check.rounds.at(-1) ?? { setting: this.workspace.rung.setting });

  /** All that follows from it, with the empty round as the one in hand where none was begun. */
  readonly state: CheckState = $derived.by(() => checkState(this.workspace.document, this.workspace.result, { ...this.check, rounds: this.check.rounds.length > 0 ? this.check.rounds : [this.round] })!);
  readonly now: RoundState = $derived.by(() => this.state.current!);

  /** Loads of the treatment, with what was measured of the setting where it holds. */
  readonly loads: LoadsState = $derived.by(() => {
    const { volume, speed } = this.state.outcome;
    return loadsState(this.workspace.document, this.workspace.result, { volume: volume.value, speed: speed.value });
  });

  editCheck(patch: Patch<Check>, gesture: string | null = null): void {
    this.workspace.editRung((r) => ({ ...r, check: patched(r.check ?? EMPTY, patch) }), gesture);
  }

  /** Changes the round in hand. The first change begins it: it belongs to the setting of that moment. */
  editRound(patch: Patch<Omit<Round, 'setting' | 'at'>>, gesture: string | null = null): void {
    this.workspace.editRung((r) => {
      const check = r.check ?? EMPTY;
      const before = check.rounds.slice(0, -1);
      const round = check.rounds.at(-1) ?? this.begun(r.setting);
      return { ...r, check: { ...check, rounds: [...before, patched(round, patch)] } };
    }, gesture);
  }

  /** Begins another round, of the setting as it is now. What was measured before stays in the trail. */
  again(): void {
    this.workspace.editRung((r) => {
      const check = r.check ?? EMPTY;
      return { ...r, check: { ...check, rounds: [...check.rounds, this.begun(r.setting)] } };
    });
  }

  /** Takes a remedy into the setting and begins the round that is to prove it: one step for undo. */
  use({ option }: Remedy): void {
    this.workspace.editRung((r) => {
      const next = takeOption(r, option);
      const check = r.check ?? EMPTY;
      return { ...next, check: { ...check, rounds: [...check.rounds, this.begun(next.setting)] } };
    });
  }

  /** Takes the round in hand back; the one before is in hand again. */
  dropRound(): void {
    this.editCheck({ rounds: this.check.rounds.slice(0, -1) });
  }

  editFitting(patch: Patch<Fitting>, gesture: string | null = null): void {
    this.workspace.editRung((r) => ({ ...r, fitting: patched(r.fitting ?? {}, patch) }), gesture);
  }

  editMix(patch: Patch<Mix>, gesture: string | null = null): void {
    this.workspace.editRung((r) => ({ ...r, mix: patched(r.mix ?? {}, patch) }), gesture);
  }

  private begun(setting: Round['setting']): Round {
    return { at: this.clock().toISOString(), machine: this.workspace.block.machine, setting };
  }
}

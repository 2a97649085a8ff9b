/** States before and after the one that stands: the nearest last in both. */
export interface Steps<T> {
  readonly past: readonly T[];
  readonly future: readonly T[];
}

/**
 * Undo and redo over whole immutable states. Edits of one gesture (a drag, a run of key presses in one field) share a key and make
 * one step.
 */
export class History<T> {
  private readonly past: T[];
  private future: T[];
  private gesture: string | null = null;
  private static readonly DEPTH = 200;

  /** `fits` is asked before a state comes back: one that was kept may have been changed by another hand. */
  constructor(
    steps: Steps<T> = { past: [], future: [] },
    private readonly fits: (state: T) => boolean = () => true
  ) {
    this.past = steps.past.slice(-History.DEPTH);
    this.future = steps.future.slice(-History.DEPTH);
  }

  get steps(): Steps<T> {
    return { past: this.past, future: this.future };
  }
  get canUndo(): boolean {
    return this.past.length > 0;
  }
  get canRedo(): boolean {
    return this.future.length > 0;
  }

  /** Notes that `before` is about to be replaced. */
  note(before: T, gesture: string | null): void {
    if (gesture === null || gesture !== this.gesture) {
      this.past.push(before);
      if (this.past.length > History.DEPTH) this.past.shift();
    }
    this.gesture = gesture;
    this.future = [];
  }

  /** Ends the gesture: the next edit is a step of its own. */
  rest(): void {
    this.gesture = null;
  }

  undo(now: T): T {
    const before = this.taken(this.past);
    if (before === undefined) return now;
    this.future.push(now);
    this.gesture = null;
    return before;
  }

  redo(now: T): T {
    const after = this.taken(this.future);
    if (after === undefined) return now;
    this.past.push(now);
    this.gesture = null;
    return after;
  }

  /** The nearest state. Where it does not fit, neither do those behind it, which were made of it. */
  private taken(from: T[]): T | undefined {
    const state = from.pop();
    if (state === undefined || this.fits(state)) return state;
    from.length = 0;
    return undefined;
  }
}

/**
 * Says when to save: after a pause in the edits, within a second of the first where they do not pause, and at once when asked. One
 * save runs at a time; what is edited meanwhile is saved after it.
 */
export class Autosave {
  private timer: ReturnType<typeof setTimeout> | null = null;
  private dirty = false;
  private firstMs: number | null = null;
  private running: Promise<void> | null = null;

  /** `save` saves what stands when it is called, and tells of failures itself. */
  constructor(
    private readonly save: () => Promise<void>,
    private readonly pauseMs = 300,
    private readonly longestMs = 700
  ) {}

  /** Something is not saved yet, or is being saved. */
  get pending(): boolean {
    return this.dirty || this.running !== null;
  }

  later(): void {
    this.dirty = true;
    // Not by the clock on the wall, which may be set back.
    const now = performance.now();
    this.firstMs ??= now;
    if (this.timer) clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.now(), Math.max(0, Math.min(this.pauseMs, this.firstMs + this.longestMs - now)));
  }

  /** Resolves when all that was edited until now went to its save. */
  async now(): Promise<void> {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    if (this.running) await this.running;
    // Another caller may have begun the next one meanwhile.
    if (this.running) return this.running;
    if (!this.dirty) return;
    this.dirty = false;
    this.firstMs = null;
    this.running = this.save().finally(() => (this.running = null));
    await this.running;
  }

  /** Forgets what is not saved yet: another document is open now. */
  drop(): void {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    this.dirty = false;
    this.firstMs = null;
  }
}

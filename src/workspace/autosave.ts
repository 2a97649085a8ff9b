/** Saves the latest text after a pause, and at once when the page is about to go away. A failed save is told, never swallowed. */
export class Autosave {
  private timer: ReturnType<typeof setTimeout> | null = null;
  private pending: (() => string) | null = null;

  constructor(
    private readonly save: (text: string) => Promise<void>,
    private readonly told: (state: 'saved' | 'failed') => void,
    private readonly pauseMs = 400
  ) {}

  /** The text is made only when it is really written. */
  later(text: () => string): void {
    this.pending = text;
    if (this.timer) clearTimeout(this.timer);
    this.timer = setTimeout(() => void this.now(), this.pauseMs);
  }

  async now(): Promise<void> {
    if (this.timer) clearTimeout(this.timer);
    this.timer = null;
    const text = this.pending;
    if (!text) return;
    this.pending = null;
    try {
      await this.save(text());
      this.told('saved');
    } catch {
      this.told('failed');
    }
  }
}

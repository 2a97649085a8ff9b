import type { Refused } from '#core/working/answer.ts';
import type { Running, Start } from '#store/search/client.ts';

/** A search for the rung in view: its task, the one that runs, what the last one found. */
export abstract class Search<Problem extends object, Found> {
  constructor(private readonly begin: Start<Problem, Found>) {}

  abstract readonly problem: Problem | Refused;
  /** What the task says, to tell whether an answer still belongs to it. */
  readonly key: string = $derived.by(() => JSON.stringify(this.problem));

  running = $state.raw<Running<Found> | null>(null);
  /** Share of the search that is done. */
  done = $state(0);
  stopped = $state(false);
  failed = $state(false);
  found = $state.raw<{ readonly key: string; readonly problem: Problem; readonly answer: Found | Refused } | null>(null);

  /** Searches for the task as it stands, unless that is already known; a search for another task is given up. */
  async start(): Promise<void> {
    this.running?.cancel();
    this.running = null;
    this.stopped = false;
    this.failed = false;
    const { problem, key } = this;
    if ('kind' in problem || this.found?.key === key) return;
    this.done = 0;
    try {
      const run = this.begin(problem, (done) => {
        if (this.running === run) this.done = done;
      });
      this.running = run;
      const answer = await run.found;
      if (this.running !== run) return;
      this.found = { key, problem, answer };
    } catch {
      this.failed = true;
    }
    this.running = null;
  }

  /** Gives the search up; what was found before stays. */
  stop(): void {
    const run = this.running;
    this.running = null;
    this.stopped = run !== null;
    run?.cancel();
  }
}

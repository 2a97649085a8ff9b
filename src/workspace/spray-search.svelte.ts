import { adviceProblem, type AdviceProblem } from '#core/spray/advice/problem.ts';
import type { Plan, SprayAdvice } from '#core/spray/advice/types.ts';
import { sameSetting } from '#core/setting/evaluate.ts';
import type { Refused } from '#core/working/answer.ts';
import { startSpraySearch, type Running, type StartSpraySearch } from '#store/spray-search/client.ts';
import type { Workspace } from './workspace.svelte.ts';

/** The search for a better setting of the rung in view: its task, a search that runs, what the last one found. */
export class SpraySearch {
  constructor(
    private readonly workspace: Workspace,
    private readonly begin: StartSpraySearch = startSpraySearch
  ) {}

  readonly problem: AdviceProblem | Refused = $derived.by(() => adviceProblem(this.workspace.document, this.workspace.result));
  /** What the task says, to tell whether an answer still belongs to it. */
  readonly key: string = $derived.by(() => JSON.stringify(this.problem));

  running = $state.raw<Running | null>(null);
  /** Share of the search that is done. */
  done = $state(0);
  stopped = $state(false);
  failed = $state(false);
  found = $state.raw<{ readonly key: string; readonly advice: SprayAdvice | Refused } | null>(null);
  /** The setting has changed since: what was found is of another one. */
  readonly outdated: boolean = $derived.by(() => this.found !== null && this.found.key !== this.key);

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
      const advice = await run.found;
      if (this.running !== run) return;
      this.found = { key, advice };
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

  /** Sets the rung as a plan says, in one step of undo. */
  use({ setting }: Plan): void {
    this.workspace.editRung((rung) => ({ ...rung, setting }));
  }
  /** Is a plan what is set now? */
  inUse = ({ setting }: Plan): boolean => sameSetting(setting, this.workspace.rung.setting);
}

import type { FittingList } from '#core/fitting/fit.ts';
import { fittingProblem, type FittingProblem } from '#core/fitting/problem.ts';
import type { FittingRow } from '#core/fitting/row.ts';
import type { Rung } from '#core/setting/document.ts';
import type { Machine } from '#core/sprayer/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { startFitting, type Running, type StartFitting } from '#store/fitting/client.ts';
import { patchNozzles, patchSetting } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

/** The fitting of the rung in view: its task, a search that runs, what the last one found. */
export class FittingSearch {
  constructor(
    private readonly workspace: Workspace,
    private readonly begin: StartFitting = startFitting
  ) {}

  readonly problem: FittingProblem | Refused = $derived.by(() => fittingProblem(this.workspace.document, this.workspace.result));
  /** What the task says, to tell whether an answer still belongs to it. */
  readonly key: string = $derived.by(() => JSON.stringify(this.problem));

  running = $state.raw<Running | null>(null);
  /** Share of the search that is done. */
  done = $state(0);
  stopped = $state(false);
  failed = $state(false);
  found = $state.raw<{ readonly key: string; readonly problem: FittingProblem; readonly list: FittingList | Refused } | null>(null);

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
      const list = await run.found;
      if (this.running !== run) return;
      this.found = { key, problem, list };
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

  /** Sets sizes, pressure and speed as a fitting says, in one step of undo. */
  use(row: FittingRow): void {
    const { machine } = this.workspace.result;
    this.workspace.editRung((rung) => fitted(rung, machine, row));
  }
}

/** As fine as it can be set and more: a thousandth of a bar and of a km/h. */
const settable = (v: number): number => Math.round(v * 1000) / 1000;

/** A size that the machine carries anyway is not written down. */
function fitted(rung: Rung, machine: Machine, row: FittingRow): Rung {
  const on = new Map(machine.nozzles.map((n) => [n.id, n]));
  const sized = row.nozzles.reduce((r, n) => {
    const own = on.get(n.position);
    const same = own?.table === n.table;
    return patchNozzles(r, [n.position], { table: same ? undefined : n.table, size: same && own?.size === n.size ? undefined : n.size });
  }, rung);
  return patchSetting(sized, { pressureBar: settable(row.pressureBar), ...(row.atPresentSpeed ? {} : { speedKmH: settable(row.speedKmH) }) });
}

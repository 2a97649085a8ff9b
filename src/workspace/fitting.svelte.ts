import type { FittingList } from '#core/fitting/fit.ts';
import { fittingProblem, type FittingProblem } from '#core/fitting/problem.ts';
import type { FittingRow } from '#core/fitting/row.ts';
import type { Rung } from '#core/setting/document.ts';
import type { Machine } from '#core/sprayer/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { startFitting, type StartFitting } from '#store/fitting/client.ts';
import { patchNozzles, patchSetting } from './edits.ts';
import { Search } from './search.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

/** The fitting of the rung in view. */
export class FittingSearch extends Search<FittingProblem, FittingList> {
  constructor(
    private readonly workspace: Workspace,
    begin: StartFitting = startFitting
  ) {
    super(begin);
  }

  readonly problem: FittingProblem | Refused = $derived.by(() => fittingProblem(this.workspace.document, this.workspace.result));

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

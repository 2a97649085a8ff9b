import { adviceProblem, type AdviceProblem } from '#core/spray/advice/problem.ts';
import type { Plan, SprayAdvice } from '#core/spray/advice/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { startAdvice, type StartAdvice } from '#store/advice/client.ts';
import { Search } from './search.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

/** Settings of the rung in view that put more on the trees, more evenly, with less lost. */
export class AdviceSearch extends Search<AdviceProblem, SprayAdvice> {
  constructor(
    private readonly workspace: Workspace,
    begin: StartAdvice = startAdvice
  ) {
    super(begin);
  }

  readonly problem: AdviceProblem | Refused = $derived.by(() => adviceProblem(this.workspace.document, this.workspace.result));

  /** Sets what a plan says, in one step of undo. */
  use({ setting }: Plan): void {
    this.workspace.editRung((rung) => ({ ...rung, setting }));
  }
}

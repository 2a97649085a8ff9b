import { adviceProblem, type AdviceProblem } from '#core/spray/advice/problem.ts';
import type { Plan, SprayAdvice } from '#core/spray/advice/types.ts';
import { sameSetting } from '#core/setting/result-of.ts';
import type { Refused } from '#core/working/answer.ts';
import { startSpraySearch, type StartSpraySearch } from '#store/spray-search/client.ts';
import { Search } from './search.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

/** The search for a better setting of the rung in view. */
export class SpraySearch extends Search<AdviceProblem, SprayAdvice> {
  constructor(
    private readonly workspace: Workspace,
    begin: StartSpraySearch = startSpraySearch
  ) {
    super(begin);
  }

  readonly problem: AdviceProblem | Refused = $derived.by(() => adviceProblem(this.workspace.document, this.workspace.result));
  /** The setting has changed since: what was found is of another one. */
  readonly outdated: boolean = $derived.by(() => this.found !== null && this.found.key !== this.key);

  /** Sets the rung as a plan says, in one step of undo. */
  use({ setting }: Plan): void {
    this.workspace.editRung((rung) => ({ ...rung, setting }));
  }
  /** Is a plan what is set now? */
  inUse = ({ setting }: Plan): boolean => sameSetting(setting, this.workspace.rung.setting);
}

import { canopyOfSurvey } from '#core/canopy/survey/canopy.ts';
import { surveyOf } from '#core/canopy/survey/survey.ts';
import type { GroupSize, Grouping, Survey, SurveyTree, TreeSurvey } from '#core/canopy/survey/types.ts';
import type { Refused } from '#core/working/answer.ts';
import type { RowProblem } from '#job/csv/header.ts';
import { LENGTHS } from '#job/limits.ts';
import { patchCanopy, patched } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

/** What came of a table of trees: how many were added, what was refused, and how many found no room. */
export interface TableTaken {
  readonly added: number;
  readonly problems: readonly RowProblem[];
  readonly noRoom: number;
}

export const MOST_TREES = LENGTHS.trees[1];
const NONE: readonly SurveyTree[] = [];

/** The trees of the rung in view, what they say, and every way to change them. Each change is one step of undo. */
export class TreeBench {
  /** How the trees are grouped on the screen; no part of the document. */
  by = $state<Grouping | undefined>(undefined);

  constructor(private readonly workspace: Workspace) {
    // Where sizes were told, the whole is weighted by them from the start.
    this.by = workspace.rung.survey?.groups?.[0]?.by;
  }

  readonly trees: readonly SurveyTree[] = $derived.by(() => this.workspace.rung.survey?.trees ?? NONE);
  readonly blockTrees: number | undefined = $derived.by(() => this.workspace.rung.survey?.blockTrees);
  private readonly sizes: readonly GroupSize[] = $derived.by(() => this.workspace.rung.survey?.groups ?? []);
  /** Groups of the trees that count, and those whose size was told, by name, with their size. */
  readonly groupSizes: ReadonlyMap<string, number | undefined> = $derived.by(() => {
    const { by } = this;
    if (!by) return new Map();
    const sizes = new Map(this.sizes.filter((s) => s.by === by).map((s) => [s.name, s.trees]));
    const names = new Set([...this.trees.filter((t) => !t.leftOut).map((t) => t[by] ?? ''), ...sizes.keys()]);
    return new Map([...names].sort().map((name) => [name, sizes.get(name)]));
  });
  /** Sizes of all groups; the whole is weighted by them. undefined while one is not told. */
  private readonly groupTrees: Readonly<Record<string, number>> | undefined = $derived.by(() => {
    const all = [...this.groupSizes];
    return all.length > 0 && all.every(([, trees]) => trees !== undefined) ? Object.fromEntries(all as [string, number][]) : undefined;
  });
  /** Some groups have their size and some do not. */
  readonly sizesPartly: boolean = $derived.by(() => this.groupTrees === undefined && [...this.groupSizes.values()].some((n) => n !== undefined));
  /** null where nothing was measured yet. */
  readonly survey: Survey | Refused | null = $derived.by(() => {
    if (this.trees.length === 0) return null;
    const { rowSpacingM } = this.workspace.block;
    const errorM = this.workspace.rung.canopy.errors?.rowSpacingSeM;
    return surveyOf(this.trees, {
      ...(this.by ? { by: this.by } : {}),
      ...(this.groupTrees ? { groupTrees: this.groupTrees } : {}),
      ...(this.blockTrees === undefined ? {} : { blockTrees: this.blockTrees }),
      ...(errorM === undefined ? {} : { rowSpacing: { meanM: rowSpacingM, errorM } })
    });
  });

  get full(): boolean {
    return this.trees.length >= MOST_TREES;
  }
  add(tree: SurveyTree): void {
    if (!this.full) this.set([...this.trees, tree]);
  }
  replace(index: number, tree: SurveyTree): void {
    this.set(this.trees.map((t, i) => (i === index ? tree : t)));
  }
  remove(index: number): void {
    this.set(this.trees.filter((_, i) => i !== index));
  }
  leaveOut(index: number, leftOut: boolean): void {
    this.set(this.trees.map((t, i) => (i === index ? patched(t, { leftOut: leftOut || undefined }) : t)));
  }
  setBlockTrees(blockTrees: number | undefined, gesture: string): void {
    this.keep({ blockTrees }, gesture);
  }
  /** Tells how many trees of a group stand in the block; undefined takes it back. */
  setGroupTrees(name: string, trees: number | undefined, gesture: string): void {
    const { by } = this;
    if (!by) return;
    const others = this.sizes.filter((s) => s.by !== by || s.name !== name);
    const groups = trees === undefined ? others : [...others, { by, name, trees }];
    this.keep({ groups: groups.length > 0 ? groups : undefined }, gesture);
  }

  /** Adds the trees of a table behind those that are there; the lines that cannot be used are given back. */
  async read(text: string): Promise<TableTaken> {
    const { readSurvey } = await import('#job/survey/table.ts');
    const { trees, problems } = readSurvey(text);
    const room = trees.slice(0, MOST_TREES - this.trees.length);
    if (room.length > 0) this.set([...this.trees, ...room]);
    return { added: room.length, problems, noRoom: trees.length - room.length };
  }

  /** Takes the means into the rung's canopy, in one step. What the survey does not tell stays as it is. */
  use(): void {
    const { survey } = this;
    if (survey === null || 'kind' in survey) return;
    const canopy = canopyOfSurvey(survey, this.trees);
    this.workspace.editRung((r) => {
      const spacing = r.canopy.errors?.rowSpacingSeM;
      const errors = { ...canopy.errors, ...(spacing === undefined ? {} : { rowSpacingSeM: spacing }) };
      return patchCanopy(r, { ...canopy, errors: Object.keys(errors).length > 0 ? errors : undefined });
    });
  }

  private set(trees: readonly SurveyTree[]): void {
    this.keep({ trees }, null);
  }
  private keep(patch: { readonly [K in keyof TreeSurvey]?: TreeSurvey[K] | undefined }, gesture: string | null): void {
    const survey = patched<TreeSurvey>(this.workspace.rung.survey ?? { trees: NONE }, patch);
    const empty = survey.trees.length === 0 && survey.blockTrees === undefined && survey.groups === undefined;
    this.workspace.editRung((r) => patched(r, { survey: empty ? undefined : survey }), gesture);
  }
}

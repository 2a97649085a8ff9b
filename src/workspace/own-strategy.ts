import { answerOf } from '#core/dose/compare/rows.ts';
import { compileOwn } from '#core/dose/own/own.ts';
import type { OwnStrategy } from '#core/dose/own/types.ts';
import type { Result } from '#core/setting/result.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import type { Answer, Refused } from '#core/working/answer.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { patched } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

export type { OwnStrategy };

/** What is wrong with a formula, or what it gives on the canopy of a result. */
export interface OwnSays {
  readonly index: Answer;
  readonly water: Answer | null;
}

/** A strategy of the user's own while it is written: each formula by itself, so that each has its own problem. */
export function tryOwn(own: OwnStrategy, result: Result): OwnSays {
  return { index: said(own, result, 'index')!, water: own.water === undefined ? null : said(own, result, 'water') };
}
function said({ id, name, index, water, waterKind = 'dilute' }: OwnStrategy, result: Result, which: 'index' | 'water'): Answer | null {
  // The other formula is left out, so that its mistakes are not told here.
  const compiled = compileOwn(which === 'index' ? { id, name, index } : { id, name, index: '1', ...(water === undefined ? {} : { water, waterKind }) });
  if ('kind' in compiled) return compiled satisfies Refused;
  return answerOf(compiled, result.canopy, new Assumptions(ASSUMPTIONS))[which];
}

/** Keeps a strategy of the user's own in the document: a new one behind the others, one that is there in its place. One step of undo. */
export function keepOwn(workspace: Workspace, own: OwnStrategy): void {
  workspace.edit((d) => {
    const all = d.ownStrategies ?? [];
    return { ...d, ownStrategies: all.some((o) => o.id === own.id) ? all.map((o) => (o.id === own.id ? own : o)) : [...all, own] };
  });
}
export function dropOwn(workspace: Workspace, id: string): void {
  workspace.edit((d) => {
    const left = (d.ownStrategies ?? []).filter((o) => o.id !== id);
    return patched(d, { ownStrategies: left.length > 0 ? left : undefined });
  });
}
/** An id that no other has. */
export function freshOwnId(workspace: Workspace): string {
  const ids = new Set(workspace.document.ownStrategies?.map((o) => o.id));
  let n = ids.size + 1;
  while (ids.has(`own-${n}`)) n++;
  return `own-${n}`;
}

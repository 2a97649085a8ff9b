import type { Document } from '#core/setting/document.ts';
import { leaveWords } from '#words/en/headland/leave.ts';

/** Whether the open document may give way to another: asked only where records would go with it. */
export function mayLeave(open: Document, next: Document): boolean {
  const there = new Set(next.records?.map((r) => r.id));
  const lost = open.records?.filter((r) => !there.has(r.id)).length ?? 0;
  return lost === 0 || confirm(leaveWords.records(lost));
}

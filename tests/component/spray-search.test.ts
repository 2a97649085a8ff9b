import { describe, expect, it } from 'vitest';
import { adviseSpray } from '../../src/core/spray/advice/search.ts';
import type { Document } from '../../src/core/setting/document.ts';
import { refused } from '../../src/core/working/answer.ts';
import { checkDocument } from '../../src/job/read.ts';
import type { StartSpraySearch } from '../../src/store/spray-search/client.ts';
import { SpraySearch } from '../../src/workspace/spray-search.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/cherry-wall.json';

const open = (begin?: StartSpraySearch) => {
  const workspace = new Workspace(demo as unknown as Document);
  return { workspace, search: begin ? new SpraySearch(workspace, begin) : new SpraySearch(workspace) };
};
const atOnce: StartSpraySearch = (problem) => ({ found: Promise.resolve(adviseSpray(problem)), cancel: () => {} });

describe('looking for a better setting', () => {
  it('a worker finds the same plans as the page’s own thread, and tells how far it is', async () => {
    const [one, other] = [open(), open(atOnce)];
    await Promise.all([one.search.start(), other.search.start()]);
    expect(one.search.done).toBeGreaterThan(0);
    expect(one.search.running).toBe(null);
    expect(JSON.stringify(one.search.found?.answer)).toBe(JSON.stringify(other.search.found?.answer));
  }, 60_000);
  it('a plan is set in one step of undo, in a document that can be read again', async () => {
    const { workspace, search } = open(atOnce);
    const before = workspace.document;
    await search.start();
    const { answer } = search.found!;
    if ('kind' in answer) throw new Error(answer.code);
    const plan = answer.plans[0]!;
    expect(search.inUse(plan)).toBe(false);
    search.use(plan);
    expect(checkDocument(workspace.document).ok).toBe(true);
    expect(workspace.rung.setting).toEqual(plan.setting);
    expect(search.inUse(plan)).toBe(true);
    expect(search.outdated).toBe(true);
    workspace.undo();
    expect(workspace.document).toBe(before);
    expect(search.outdated).toBe(false);
  }, 60_000);
  it('is stopped by name, and what was found before stays', async () => {
    let cancel = (): void => {};
    const { search } = open(() => {
      const found = new Promise<ReturnType<typeof refused>>((resolve) => (cancel = () => resolve(refused('advice-cancelled', 'setting', {}))));
      return { found, cancel: () => cancel() };
    });
    const run = search.start();
    expect(search.running).not.toBe(null);
    search.stop();
    await run;
    expect([search.running, search.stopped, search.found]).toEqual([null, true, null]);
  });
  it('is not begun in weather that says wait', async () => {
    let begun = 0;
    const { workspace, search } = open(() => (begun++, { found: Promise.resolve(refused('advice-cancelled', 'setting', {})), cancel: () => {} }));
    workspace.edit((d) => ({ ...d, day: { ...d.day, windMPerS: 7 } }));
    await search.start();
    expect(begun).toBe(0);
    expect(search.problem).toMatchObject({ code: 'advice-too-windy' });
  });
});

import { describe, expect, it } from 'vitest';
import { render } from 'vitest-browser-svelte';
import type { WorkRecord } from '../../src/core/record/types.ts';
import type { Document } from '../../src/core/setting/document.ts';
import { checkDocument } from '../../src/job/read.ts';
import RecordStep from '../../src/ui/headland/RecordStep.svelte';
import { Headland } from '../../src/workspace/headland.svelte.ts';
import { localIso } from '../../src/workspace/moment.ts';
import { readDraft } from '../../src/workspace/record-draft.ts';
import { Records } from '../../src/workspace/records.svelte.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

/** The demo with the block's own product alone. */
const plain = (): Document => {
  const d = demo as unknown as Document;
  return { ...d, records: [], blocks: d.blocks.map((b) => ({ ...b, rungs: b.rungs.map(({ mix: _, ...rung }) => rung) })) };
};
const open = () => new Workspace(plain());
const stored = new Map<string, string>();
const storage = { getItem: (k: string) => stored.get(k) ?? null, setItem: (k: string, v: string) => void stored.set(k, v), removeItem: (k: string) => void stored.delete(k) };
const NOON = new Date('2031-05-12T12:00:00Z');
const records = (w: Workspace) => {
  let n = 0;
  return new Records(w, { now: () => NOON, letters: () => `x${++n}`, storage });
};
const kept = (w: Workspace): readonly WorkRecord[] => w.document.records ?? [];
const treated = (w: Workspace) => {
  const r = records(w);
  r.begin('treatment');
  r.set('operator', 'O. Perator');
  expect(r.make()).toBeNull();
  return r;
};

describe('records and undo', () => {
  it('a step back takes the edit back and leaves the record', () => {
    const w = open();
    w.editCanopy({ heightM: 2 });
    treated(w);
    w.undo();
    expect([w.rung.canopy.heightM, kept(w).length]).toEqual([3.3, 1]);
    w.redo();
    expect([w.rung.canopy.heightM, kept(w).length]).toEqual([2, 1]);
    w.undo();
    w.undo();
    expect(kept(w)).toHaveLength(1);
  });
  it('there is nothing to undo after a record alone', () => {
    const w = open();
    treated(w);
    expect(w.canUndo).toBe(false);
  });
  it('an edit that went on over a record is two steps', () => {
    const w = open();
    w.editCanopy({ heightM: 3 }, 'drag');
    treated(w);
    w.editCanopy({ heightM: 2 }, 'drag');
    w.undo();
    expect(w.rung.canopy.heightM).toBe(3);
  });
  it('the document with its records is one that the reader takes', () => {
    const w = open();
    treated(w);
    expect(checkDocument(JSON.parse(JSON.stringify(w.document)))).toMatchObject({ ok: true });
  });
});

describe('making and amending', () => {
  it('takes what is set and what was typed, and says when', () => {
    const w = open();
    treated(w);
    const [record] = kept(w);
    expect(record).toMatchObject({ id: `${localIso(NOON).slice(0, 10)}-x1`, kind: 'treatment', block: 'lower-bench', at: localIso(NOON), fields: { operator: 'O. Perator', date: localIso(NOON).slice(0, 10), blockName: w.block.name } });
    expect(Date.parse(record!.at)).toBe(NOON.getTime());
  });
  it('an amendment needs a reason and a difference, and leaves the first as it was', () => {
    const w = open();
    const r = treated(w);
    const first = JSON.stringify(kept(w)[0]);
    r.amend(r.ofBlock[0]!);
    expect(r.make()).toEqual({ code: 'no-reason' });
    r.setReason('  measured again ');
    expect(r.make()).toEqual({ code: 'unchanged' });
    r.set('treatedAreaHa', 1.25);
    expect(r.make()).toBeNull();
    expect(JSON.stringify(kept(w)[0])).toBe(first);
    expect(kept(w)[1]).toMatchObject({ amends: kept(w)[0]!.id, reason: 'measured again', fields: { treatedAreaHa: 1.25, operator: 'O. Perator' } });
    expect(r.ofBlock).toHaveLength(1);
  });
  it('what cannot be kept is refused with nothing made, and the draft stays', () => {
    const w = open();
    const r = records(w);
    r.begin('treatment');
    r.set('operator', 'a\u0007b');
    expect(r.make()).toMatchObject({ code: 'problems', problems: [{ path: '/records/0/fields/operator', code: 'unfit-characters' }] });
    expect([kept(w).length, r.draft === null]).toEqual([0, false]);
    r.drop();
  });
  it('blanks and tabs around are not kept, empty text says nothing', () => {
    const w = open();
    const r = records(w);
    r.begin('treatment');
    r.set('operator', ' A\tB ');
    r.set('remarks', '  \n');
    r.make();
    expect(kept(w)[0]!.fields).toMatchObject({ operator: 'A B' });
    expect(kept(w)[0]!.fields).not.toHaveProperty('remarks');
  });
  it('one record for each product', () => {
    const w = open();
    const r = records(w);
    r.begin('treatment');
    r.addProduct();
    r.setUnit('L', 1);
    r.set('productName', 'Second', 1);
    r.set('productLPerHa', 0.5, 1);
    r.set('startTime', '06:30');
    expect(r.make()).toBeNull();
    expect(kept(w).map((x) => [(x.fields as Record<string, unknown>)['startTime'], (x.fields as Record<string, unknown>)['productLPerHa']])).toEqual([['06:30', undefined], ['06:30', 0.5]]);
    expect(new Set(kept(w).map((x) => x.id)).size).toBe(2);
  });
  it('what was said of people, place and product comes again in the next draft', () => {
    const w = open();
    const r = treated(w);
    r.begin('treatment');
    expect(r.draft!.fields['operator']).toBe('O. Perator');
    r.drop();
  });
});

describe('a draft', () => {
  it('lasts over a reload, and goes with the record', () => {
    const w = open();
    const r = records(w);
    r.begin('calibration');
    r.set('tractor', 'T1');
    expect(records(w).draft).toMatchObject({ kind: 'calibration', fields: { tractor: 'T1' } });
    r.make();
    expect(records(w).draft).toBeNull();
  });
  it('that was spoilt is no draft', () => {
    for (const text of ['', '{', '[]', 'null', '{"kind":"harvest","block":"x"}', '{"kind":"treatment"}']) expect(readDraft(text)).toBeNull();
    expect(readDraft('{"kind":"treatment","block":"x","fields":{"crop":"apple","__proto__":1,"evil":2,"date":{}},"products":[7]}')).toEqual({
      kind: 'treatment',
      block: 'x',
      fields: { crop: 'apple' },
      products: [{ unit: 'kg', fields: {} }]
    });
  });
  it('of a block that is not there waits until it is', () => {
    const w = open();
    const r = records(w);
    r.begin('treatment');
    const other = new Workspace({ ...plain(), blocks: plain().blocks.slice(1) });
    const there = records(other);
    expect(there.draft).toBeNull();
    // The kept document is opened after the step was drawn: then it is.
    other.open(plain());
    expect(there.draft).toMatchObject({ kind: 'treatment', block: 'lower-bench' });
    r.drop();
  });
});

describe('a file', () => {
  it('is taken whole or not at all, and what is here is never replaced', () => {
    const w = open();
    const r = treated(w);
    const mine = kept(w)[0]!;
    const file = (list: readonly object[]) => JSON.stringify({ format: 'rowtailor-records', version: 1, records: list });
    expect(r.take(file([mine, { ...mine, id: 'other' }]))).toEqual({ ok: true, added: 1, passed: 1 });
    expect(r.take(file([{ ...mine, fields: {} }, { ...mine, id: 'third' }]))).toMatchObject({ ok: false, problems: [{ code: 'other-content' }] });
    expect(kept(w).map((x) => x.id)).toEqual([mine.id, 'other']);
  });
});

describe('the step', () => {
  const show = async (w = open(), system: 'metric' | 'us' = 'metric') => {
    localStorage.removeItem('rowtailor-record-draft');
    return { w, screen: await render(RecordStep, { workspace: w, system, headland: new Headland(w) }) };
  };
  it('a treatment: fill in, make, see it; nothing can be changed in it', async () => {
    const { w, screen } = await show();
    await screen.getByLabelText('European Union').click();
    await screen.getByRole('button', { name: /^Treatment record/ }).click();
    const list = screen.getByText(/Asked for: European Union/);
    await expect.element(list).toHaveTextContent(/\d+ of 11 there/);
    const before = Number(/(\d+) of 11/.exec(list.element().textContent!)![1]);
    await screen.getByLabelText('EPPO code of the crop').fill('MABSD');
    await expect.element(list).toHaveTextContent(`${before + 1} of 11 there`);
    await screen.getByLabelText('start time').fill('19:30');
    await screen.getByLabelText('operator').fill('O. Perator');
    await screen.getByRole('button', { name: /^Make/ }).click();
    await expect.element(screen.getByText(/made\.$/)).toBeVisible();
    expect(kept(w)[0]!.fields).toMatchObject({ cropEppo: 'MABSD', startTime: '19:30', operator: 'O. Perator' });
    const entry = screen.getByRole('group').filter({ hasText: 'How it came to this' }).first();
    expect(entry.element().querySelectorAll('input, textarea, select')).toHaveLength(0);
  });
  it('an amendment shows the old value struck beside the new one', async () => {
    const w = open();
    const r = treated(w);
    r.amend(r.ofBlock[0]!);
    r.set('operator', 'S. Econd');
    r.setReason('wrong name');
    r.make();
    const { screen } = await show(w);
    const row = screen.getByRole('row', { name: /operator/, includeHidden: true });
    expect(row.element().querySelector('del')!.textContent).toContain('O. Perator');
    expect(row.element().querySelector('ins')!.textContent).toContain('S. Econd');
    expect(screen.container.textContent).toMatch(/Amended 2031-05-12 \d\d:\d\d: wrong name/);
    expect(screen.container.textContent).toContain('amended');
  });
  it('an amendment without a reason says so', async () => {
    const w = open();
    treated(w);
    const { screen } = await show(w);
    await screen.getByText(/^2031-05-12 · Treatment/).click();
    await screen.getByRole('button', { name: /^Amend: / }).click();
    await screen.getByRole('button', { name: 'Make the amendment' }).click();
    await expect.element(screen.getByRole('alert')).toHaveTextContent(/Write why/);
    expect(kept(w)).toHaveLength(1);
    await screen.getByRole('button', { name: 'Do not make it' }).click();
    await expect.element(screen.getByRole('button', { name: /^Calibration record/ })).toBeVisible();
  });
  it('US units are typed and shown, metric ones are kept', async () => {
    const { w, screen } = await show(open(), 'us');
    await screen.getByRole('button', { name: /^Treatment record/ }).click();
    await screen.getByRole('spinbutton', { name: 'area treated' }).fill('2');
    await screen.getByRole('button', { name: /^Make/ }).click();
    // 2 acres of 0.40468564224 ha
    expect((kept(w)[0]!.fields as { treatedAreaHa: number }).treatedAreaHa).toBeCloseTo(0.80937, 5);
    expect(screen.container.textContent).toContain('2\u00a0ac');
  });
  it('every list defers and none claims', async () => {
    const { screen } = await show();
    await expect.element(screen.getByText(/Your authority decides what must be recorded/).first()).toBeVisible();
  });
  it('whatever can be pressed is 56 px high inside the station', async () => {
    const { screen } = await show();
    screen.container.style.setProperty('--target', '56px');
    await screen.getByRole('button', { name: /^Treatment record/ }).click();
    for (const e of screen.container.querySelectorAll('input:not([hidden]):not([role]):not([type=checkbox]), textarea, label:has([type=checkbox])'))
      if ((e as HTMLElement).offsetParent) expect(e.getBoundingClientRect().height, e.id).toBeGreaterThanOrEqual(56);
  });
});

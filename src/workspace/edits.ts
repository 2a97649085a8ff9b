import type { Canopy } from '#core/canopy/types.ts';
import type { Block, Document, Rung } from '#core/setting/document.ts';
import type { Option } from '#core/sprayer/options.ts';
import type { NozzleSetting, Setting } from '#core/sprayer/types.ts';
import { valueOf } from '#core/working/answer.ts';

/** Pure edits of a document: each gives a new document and leaves the old one for undo. A value of `undefined` removes the field. */
type Patch<T> = { readonly [K in keyof T]?: T[K] | undefined };

export function patched<T extends object>(target: T, patch: Patch<T>): T {
  const next = { ...target, ...patch } as Record<string, unknown>;
  for (const key of Object.keys(patch)) if (next[key] === undefined) delete next[key];
  return next as T;
}

export const editBlock = (doc: Document, blockId: string, edit: (block: Block) => Block): Document => ({
  ...doc,
  blocks: doc.blocks.map((b) => (b.id === blockId ? edit(b) : b))
});

export const editRung = (doc: Document, blockId: string, rungId: string, edit: (rung: Rung) => Rung): Document =>
  editBlock(doc, blockId, (b) => ({ ...b, rungs: b.rungs.map((r) => (r.id === rungId ? edit(r) : r)) }));

/** What is measured in a row, by the end of its name (heights and widths, leaf area density, profile): one of these, and the canopy is no longer a proposal. */
const MEASURED = /M3?$|le$/;

export const patchCanopy = (rung: Rung, patch: Patch<Canopy>): Rung => ({
  ...rung,
  canopy: patched(rung.canopy, Object.entries(patch).some(([field, v]) => v !== undefined && MEASURED.test(field)) ? { ...patch, proposed: undefined } : patch)
});
export const patchSetting = (rung: Rung, patch: Patch<Setting>): Rung => ({ ...rung, setting: patched(rung.setting, patch) });

/** Sets something at some positions; what they had besides stays. */
export function patchNozzles(rung: Rung, positions: readonly string[], patch: Patch<Omit<NozzleSetting, 'position'>>): Rung {
  const nozzles = new Map(rung.setting.nozzles?.map((n) => [n.position, n]));
  for (const position of positions) nozzles.set(position, patched<NozzleSetting>(nozzles.get(position) ?? { position }, patch));
  return patchSetting(rung, { nozzles: [...nozzles.values()] });
}

/** Takes an option into the setting: what it changes, and nothing else. */
export function takeOption(rung: Rung, option: Option): Rung {
  const speed = valueOf(option.speed);
  const pressure = valueOf(option.pressure);
  let next = patchSetting(rung, {
    ...(option.kind === 'speed' && speed !== undefined ? { speedKmH: speed } : {}),
    ...((option.kind === 'pressure' || option.kind === 'size') && pressure !== undefined ? { pressureBar: pressure } : {})
  });
  for (const c of option.sizes) next = patchNozzles(next, [c.position], { size: c.to });
  return next;
}

import { differences, type Difference } from '../advice/difference.ts';
import { product, type Act, type Product } from '../dose/product.ts';
import type { Label } from '../dose/types.ts';
import { LOAD_COUNT, MIX_FOR_AREA, PRODUCT_FOR_AREA, USABLE_TANK } from '../mix/formulas.ts';
import { partnersOf, treatedArea } from '../mix/loads.ts';
import type { Block, Document, Rung } from '../setting/document.ts';
import { evaluate } from '../setting/evaluate.ts';
import type { Advised } from '../setting/result.ts';
import type { Side } from '../sprayer/types.ts';
import type { Verdict } from '../sprayer/aim.ts';
import { given, isRefused, refused, valueOf, type Answer, type Given, type Refused } from '../working/answer.ts';
import { derive } from '../working/figure.ts';
import { doseKind, productKind, SAVING, SAVING_SHARE, SEASON_SUM, TREATMENTS, type SeasonKind } from './formulas.ts';

/** One product at one rung: what its label gives there with the setting adapted, and with one setting for the whole season. */
export interface SeasonDose {
  readonly label: Label;
  readonly adapted: Answer;
  readonly acts: readonly Act[];
  /** The dose of the fixed rung. */
  readonly fixed: Answer;
  /** More than the label gives for this rung's canopy: the fixed dose is shown to be compared with, not to be sprayed. */
  readonly fixedAboveLabel: boolean;
}

/** One rung of the season with everything that it adds. */
export interface SeasonRung {
  readonly rung: Rung;
  readonly result: Advised;
  readonly treatments: Given;
  /** What the setting sprays, L/ha, and what the strategy wants. */
  readonly volume: Answer;
  readonly wanted: Answer;
  readonly area: Answer;
  /** One treatment of the block. */
  readonly mix: Answer;
  readonly loads: Answer;
  readonly doses: readonly SeasonDose[];
  /** What could not be worked out here, first of all by name. */
  readonly refused: readonly Refused[];
}

/** A total of the season, fixed and adapted, and what adapting saves. */
export interface SeasonTotal {
  readonly kind: SeasonKind;
  /** Of products. */
  readonly label: Label | null;
  readonly fixed: Answer;
  readonly adapted: Answer;
  readonly saving: Answer;
  readonly share: Answer;
}

/** What one product's label says of a season, and how the plan stands to it. */
export interface SeasonRule {
  readonly label: Label;
  readonly uses: number;
  readonly mostUses: number | null;
  readonly usesPassed: boolean;
}

/** What changes from a rung to the next. */
export interface SeasonChange {
  readonly from: Rung;
  readonly to: Rung;
  readonly lines: readonly Difference[];
  readonly opened: readonly string[];
  readonly shut: readonly string[];
}

export interface NozzleCell {
  readonly open: boolean;
  /** What it meets, or would meet if it were open. */
  readonly would: Exclude<Verdict, 'shut'>;
}
/** One nozzle, or a pair that is alike at every rung, over the season. */
export interface NozzleRow {
  readonly ids: readonly string[];
  readonly side: Side | 'both';
  readonly heightM: number;
  /** In the order of the rungs. */
  readonly at: readonly NozzleCell[];
}

export interface Season {
  readonly block: Block;
  readonly rungs: readonly SeasonRung[];
  /** Whose setting stands for the whole season where nothing is adapted. */
  readonly fixed: SeasonRung;
  readonly treatments: number;
  readonly changes: readonly SeasonChange[];
  readonly nozzles: readonly NozzleRow[];
  readonly totals: readonly SeasonTotal[];
  readonly rules: readonly SeasonRule[];
  /** Rungs that are treated and could not be worked out. */
  readonly refused: readonly SeasonRung[];
}

/**
 * The season of a block: every rung with its setting, what changes between neighbours, and the totals of adapting against one setting throughout.
 * Pure. The fixed setting is that of the rung named, else of the one with most leaf. Refuses a block that is not there.
 */
export function seasonOf(document: Document, blockId: string, fixedRung?: string): Season | Refused {
  const block = document.blocks.find((b) => b.id === blockId);
  if (!block) return refused('unknown-block', 'blocks', { id: blockId });
  const results: Advised[] = [];
  for (const { id } of block.rungs) {
    const result = evaluate(document, block.id, id);
    if ('kind' in result) return result;
    results.push(result);
  }
  const reference = results.find((r) => r.rung.id === fixedRung) ?? fullest(results);
  const rungs = results.map((r) => seasonRung(document, r, reference));
  const fixed = rungs.find((r) => r.result === reference)!;
  const labels = [...new Map(rungs.flatMap((r) => r.doses.map((d) => [d.label.id, d.label] as const))).values()];
  return {
    block,
    rungs,
    fixed,
    treatments: rungs.reduce((n, r) => n + r.treatments.value, 0),
    changes: rungs.slice(1).map((to, i) => change(rungs[i]!.result, to.result)),
    nozzles: nozzleRows(results),
    totals: [
      total('water', rungs, fixed, (r) => r.volume, () => fixed.volume),
      total('mix', rungs, fixed, (r) => r.mix, (r) => derive(MIX_FOR_AREA, { A: r.area, V: fixed.volume })),
      total('loads', rungs, fixed, (r) => r.loads, (r) => loadsOf(derive(MIX_FOR_AREA, { A: r.area, V: fixed.volume }), r.result)),
      ...labels.flatMap((label) => productTotals(label, rungs, fixed))
    ],
    rules: labels.map((label) => {
      const uses = rungs.reduce((n, r) => n + (r.doses.some((d) => d.label === label) ? r.treatments.value : 0), 0);
      return { label, uses, mostUses: label.maxUses ?? null, usesPassed: label.maxUses !== undefined && uses > label.maxUses };
    }),
    refused: rungs.filter((r) => r.treatments.value > 0 && r.refused.length > 0)
  };
}

/** The rung with most leaf, and of those alike the one with the largest row; where leaf is not known, the largest row. */
function fullest(results: readonly Advised[]): Advised {
  const leaf = (r: Advised): number => valueOf(r.canopy.figures.LAI) ?? -1;
  const row = (r: Advised): number => valueOf(r.canopy.figures.TRVc) ?? -1;
  return results.reduce((best, r) => (leaf(r) > leaf(best) || (leaf(r) === leaf(best) && row(r) > row(best)) ? r : best));
}

/** Tank fills of one treatment; the last one of what is left counts whole. */
function loadsOf(mix: Answer, { machine }: Advised): Answer {
  const T = given(machine.tankL, 'L', 'stated', { path: 'machine.tankL' });
  const r = given(machine.residualL ?? 0, 'L', machine.residualL === undefined ? 'assumed' : 'stated', { path: 'machine.residualL' });
  if (!(r.value < T.value)) return refused('no-usable-tank', 'machine.residualL');
  return derive(LOAD_COUNT, { U: mix, Tu: derive(USABLE_TANK, { T, r }) });
}

function seasonRung(document: Document, result: Advised, reference: Advised): SeasonRung {
  const { rung, block } = result;
  const treatments = given(rung.treatments ?? 1, '1', rung.treatments === undefined ? 'assumed' : 'stated', { path: 'treatments' });
  const volume = result.sprayer.volume;
  const area = treatedArea(result);
  const mix = derive(MIX_FOR_AREA, { A: area, V: volume });
  const loads = loadsOf(mix, result);
  const doses = partnersOf(rung.mix ?? {}, block.label).flatMap(({ label: id }): SeasonDose[] => {
    const label = document.labels.find((l) => l.id === id);
    if (!label) return [];
    const here = product(label, result.canopy, result.strategy);
    const there = product(label, reference.canopy, reference.strategy).perHa;
    return [{ label, adapted: here.perHa, acts: here.acts, fixed: there, fixedAboveLabel: (valueOf(there) ?? 0) > mostHere(here) * (1 + 1e-9) }];
  });
  const faults = [volume, ...doses.map((d) => d.adapted)].filter(isRefused);
  return { rung, result, treatments, volume, wanted: result.water.wanted, area, mix, loads, doses, refused: faults };
}

/**
 * The most that a label gives for this canopy: where the dose must follow it, or the label's own basis does, no more than that; else the label's
 * dose, from which adapting may only go down. Never above its maximum.
 */
function mostHere({ label, labelDose, perHa }: Product): number {
  const fixed = label.basis === 'per-hectare' || label.basis === 'percent-of-water';
  const most = valueOf(fixed && label.adaptation === 'required' ? perHa : labelDose) ?? Infinity;
  return Math.min(most, label.maxPerHa ?? Infinity);
}

const named = (a: Refused, rung: Rung): Refused => refused('season-rung-refused', a.path, { rung: rung.name, reason: a.code });

/** A sum over the rungs that are treated. One that cannot be worked out is named, and the sum with it: a season with a hole is no season. */
function sumOver(kind: SeasonKind, rungs: readonly SeasonRung[], of: (r: SeasonRung) => Answer, fixed: SeasonRung | null = null): Answer {
  const parts: Record<string, Answer> = {};
  for (const r of rungs) {
    if (r.treatments.value === 0) continue;
    const X = of(r);
    // Where one setting stands for all, it may be that setting which cannot be worked out.
    if (isRefused(X)) return named(X, fixed && (isRefused(fixed.volume) || fixed.refused.length > 0) ? fixed.rung : r.rung);
    parts[r.rung.id] = derive(TREATMENTS[kind], { n: r.treatments, X });
  }
  return derive(SEASON_SUM[kind], parts);
}

function compared(kind: SeasonKind, label: Label | null, fixed: Answer, adapted: Answer): SeasonTotal {
  return { kind, label, fixed, adapted, saving: derive(SAVING[kind], { Xf: fixed, Xa: adapted }), share: derive(SAVING_SHARE[kind], { Xf: fixed, Xa: adapted }) };
}

const total = (kind: SeasonKind, rungs: readonly SeasonRung[], fixed: SeasonRung, adapted: (r: SeasonRung) => Answer, ofFixed: (r: SeasonRung) => Answer): SeasonTotal =>
  compared(kind, null, sumOver(kind, rungs, ofFixed, fixed), sumOver(kind, rungs, adapted));

/** A product's season on a hectare and on the block. Above the label's season maximum there is no total to go by. */
function productTotals(label: Label, rungs: readonly SeasonRung[], fixed: SeasonRung): SeasonTotal[] {
  const using = rungs.filter((r) => r.doses.some((d) => d.label === label));
  const dose = (which: 'fixed' | 'adapted') => (r: SeasonRung): Answer => r.doses.find((d) => d.label === label)![which];
  const onBlock = (which: 'fixed' | 'adapted') => (r: SeasonRung): Answer => derive(PRODUCT_FOR_AREA[label.unit], { D: dose(which)(r), A: r.area });
  const perHa = { fixed: sumOver(doseKind(label.unit), using, dose('fixed'), fixed), adapted: sumOver(doseKind(label.unit), using, dose('adapted')) };
  const held = (which: 'fixed' | 'adapted', a: Answer): Answer => {
    const planned = valueOf(perHa[which]);
    return label.maxPerSeason !== undefined && planned !== undefined && planned > label.maxPerSeason * (1 + 1e-9)
      ? refused('season-above-label', 'label.maxPerSeason', { product: label.name, planned, most: label.maxPerSeason, unit: label.unit === 'kg' ? 'kg/ha' : 'Lprod/ha' })
      : a;
  };
  const kind = productKind(label.unit);
  return [
    compared(doseKind(label.unit), label, held('fixed', perHa.fixed), held('adapted', perHa.adapted)),
    compared(kind, label, held('fixed', sumOver(kind, using, onBlock('fixed'), fixed)), held('adapted', sumOver(kind, using, onBlock('adapted'))))
  ];
}

function change(from: Advised, to: Advised): SeasonChange {
  const open = (r: Advised) => new Map(r.sprayer.nozzles.map((n) => [n.position.id, n.open]));
  const [before, after] = [open(from), open(to)];
  const turned = (now: boolean) => [...after].filter(([id, is]) => is === now && before.get(id) !== is).map(([id]) => id);
  return { from: from.rung, to: to.rung, lines: differences(from, to), opened: turned(true), shut: turned(false) };
}

/** One row for each nozzle, the highest first; left and right are one where they are alike all season. */
function nozzleRows(results: readonly Advised[]): readonly NozzleRow[] {
  const first = results[0];
  if (!first) return [];
  const cells = (i: number): NozzleCell[] => results.map((r) => ({ open: r.sprayer.nozzles[i]!.open, would: r.sprayer.nozzles[i]!.would }));
  const rows: { ids: string[]; side: Side | 'both'; heightM: number; offsetM: number; at: NozzleCell[] }[] = [];
  first.sprayer.nozzles.forEach(({ position }, i) => {
    const at = cells(i);
    const mate = rows.find((r) => r.side !== 'both' && r.side !== position.side && r.heightM === position.heightM && r.offsetM === position.offsetM && same(r.at, at));
    if (mate) {
      mate.ids.push(position.id);
      mate.side = 'both';
    } else rows.push({ ids: [position.id], side: position.side, heightM: position.heightM, offsetM: position.offsetM, at });
  });
  return rows.map(({ offsetM: _, ...row }) => row).sort((a, b) => b.heightM - a.heightM);
}

const same = (a: readonly NozzleCell[], b: readonly NozzleCell[]): boolean => a.every((c, i) => c.open === b[i]!.open && c.would === b[i]!.would);

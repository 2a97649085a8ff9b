import { ASSUMPTIONS } from '../../setting/assumptions.ts';
import type { Block, Document, Rung } from '../../setting/document.ts';
import { SEASON_REGISTRY, VOLUME_GROWTH } from '../../season/assumptions.ts';
import { dayNumber, isoOf } from '../../weather/days.ts';
import type { DegreeDays, Span } from '../../weather/degree-days.ts';
import { given, isRefused, refused, valueOf, type Answer, type Refused } from '../../working/answer.ts';
import { Assumptions } from '../../working/assumption.ts';
import { derive } from '../../working/figure.ts';
import { canopyState, type CanopyState } from '../canopy.ts';
import { unfoldedShare } from '../growth.ts';
import { outlineOf, widthAt } from '../outline.ts';
import type { Canopy, Proposed, ProfileStation } from '../types.ts';
import { DENSITY_OF_LEAF, GROWN_DENSITY, GROWN_HEIGHT, GROWN_WIDTH, LEAF_BETWEEN, LENGTH_BETWEEN, VOLUME_RATIO, WAY } from './formulas.ts';
import { grownShare } from './stages.ts';

export const PROPOSED_FIELDS = ['heightM', 'widthM', 'skirtM', 'ladM2PerM3'] as const;
export type ProposedField = (typeof PROPOSED_FIELDS)[number];

/** One measurement as it stands and as growth would have it. */
export interface ProposedFigure {
  readonly field: ProposedField;
  readonly now: Answer;
  readonly proposed: Answer;
  /** Null where nothing is known of it. */
  readonly range: { readonly low: number; readonly high: number } | null;
  /** Whether it goes into the canopy: a density that nobody measured at the source is left to the stage. */
  readonly written: boolean;
}

/** What a proposal rests on and cannot tell, for the words. */
export type GrowthLimit = 'apple-shares' | 'volume-range' | 'alike' | 'pruning' | 'one-stage' | 'straight-between' | 'a-week' | 'density-left' | 'from-bare' | 'typical-year' | 'bridged';

/** A canopy for a rung, from others that were measured. Nothing is changed until the user takes it. */
export interface Proposal {
  readonly rung: string;
  readonly from: Rung;
  readonly to: Rung | null;
  readonly by: Proposed['by'];
  /** As it would stand in the document. */
  readonly canopy: Canopy;
  readonly figures: readonly ProposedFigure[];
  readonly volume: { readonly now: Answer; readonly proposed: Answer };
  /** By degree-days alone: how far on the way, and the days counted. */
  readonly way: Answer | null;
  readonly spans: { readonly done: Span; readonly whole: Span } | null;
  readonly limits: readonly GrowthLimit[];
}

/** A stage read from the trees may be one off. */
const STAGE_OFF = 1;
/** Seasons differ by more than this; a week either way says how much a date is worth. */
const DAYS_OFF = 7;
/** Below this a density is not written into a document. */
const LEAST_DENSITY = 0.05;

const measured = (rung: Rung): boolean => rung.canopy.proposed === undefined;
const centi = (m: number): number => Math.round(m * 100) / 100;
const stateOf = (document: Document, block: Block, canopy: Canopy, bbch: number | undefined): CanopyState =>
  canopyState(canopy, { rowSpacingM: block.rowSpacingM, bbch: block.evergreen ? undefined : bbch, faces: 2 }, new Assumptions(ASSUMPTIONS, document.assumptions));
const spread = (values: readonly (number | undefined)[]) => {
  const known = values.filter((v) => v !== undefined);
  return known.length === 0 ? null : { low: Math.min(...known), high: Math.max(...known) };
};

/** Rungs that a rung's canopy may be proposed from by stage: measured, with a stage; the fullest leaf first, for a small share says little of a large one. */
export const sourcesFor = (block: Block, rung: Rung): readonly Rung[] =>
  block.rungs
    .filter((r) => r.id !== rung.id && measured(r) && r.bbch !== undefined)
    .sort((a, b) => unfoldedShare(b.bbch!) - unfoldedShare(a.bbch!) || Math.abs(a.bbch! - (rung.bbch ?? 0)) - Math.abs(b.bbch! - (rung.bbch ?? 0)));

/**
 * The canopy of `rung` from that of `from` by their growth stages: leaf area by the published shares of apple, the outline by the published growth
 * of the row's volume, crown height and width alike. Refuses by name where a stage is missing, where leaf stands all year, and where the
 * source is itself a proposal.
 */
export function proposeByStage(document: Document, block: Block, rung: Rung, from: Rung): Proposal | Refused {
  if (block.evergreen) return refused('growth-evergreen', 'evergreen');
  if (!measured(from)) return refused('growth-not-measured', 'canopy.proposed', { rung: from.name });
  if (rung.bbch === undefined) return refused('growth-no-stage', 'bbch', { rung: rung.name });
  if (from.bbch === undefined) return refused('growth-no-stage', 'bbch', { rung: from.name });
  const before = stateOf(document, block, from.canopy, from.bbch);
  const now = stateOf(document, block, rung.canopy, rung.bbch);
  const assumptions = new Assumptions(SEASON_REGISTRY, document.assumptions);
  const gv = assumptions.take('growth.volume');
  const share = (value: number) => given(value, '1', 'memory', { path: 'bbch', sources: ['forshey-1987'] });
  const grown = (growth: Answer, stage: number) => {
    const b = Math.min(Math.max(stage, 0), 99);
    const Gv = derive(VOLUME_RATIO, { gv: growth, sa: given(grownShare(from.bbch!), '1', 'assumed', { path: 'bbch' }), sb: given(grownShare(b), '1', 'assumed', { path: 'bbch' }) });
    const { H: Ha, Hs, W: Wa, LAD: LADa } = before.figures;
    return {
      Gv,
      heightM: derive(GROWN_HEIGHT, { Hs, Ha, Gv }),
      widthM: derive(GROWN_WIDTH, { Wa, Gv }),
      ladM2PerM3: unfoldedShare(from.bbch!) < 0.01 ? refused('growth-from-bare', 'bbch', { rung: from.name }) : derive(GROWN_DENSITY, { LADa, ua: share(unfoldedShare(from.bbch!)), ub: share(unfoldedShare(b)), Gv })
    };
  };
  const best = grown(gv, rung.bbch);
  // The growth of the volume within its published range (or to the user's own value beyond it), the stage one off either way.
  const corners = [Math.min(VOLUME_GROWTH.low, gv.value), Math.max(VOLUME_GROWTH.high, gv.value)].flatMap((growth) =>
    [-STAGE_OFF, 0, STAGE_OFF].map((off) => grown(given(growth, '1', 'published', { sources: ['arenenberg-growth'] }), rung.bbch! + off))
  );
  const k = Math.sqrt(valueOf(best.Gv) ?? NaN);
  const skirt = from.canopy.skirtM ?? 0;
  const up = (heightM: number): number => centi(heightM > skirt ? skirt + (heightM - skirt) * k : heightM);
  const density = densityOf(best.ladM2PerM3, from.canopy.ladM2PerM3 !== undefined);
  const canopy = carried(from.canopy, rung.canopy, {
    heightM: centi(valueOf(best.heightM) ?? from.canopy.heightM),
    widthM: centi(valueOf(best.widthM) ?? from.canopy.widthM),
    ...(from.canopy.skirtM === undefined ? {} : { skirtM: from.canopy.skirtM }),
    ...(from.canopy.tallestTenthM === undefined ? {} : { tallestTenthM: up(from.canopy.tallestTenthM) }),
    ...(from.canopy.profile ? { profile: rising(from.canopy.profile.map((p) => ({ ...p, heightM: up(p.heightM), widthM: centi(p.widthM * k) }))) } : {}),
    ...density.canopy,
    proposed: { from: from.id, by: 'stage' }
  });
  const after = stateOf(document, block, canopy, rung.bbch);
  const figure = (field: 'heightM' | 'widthM' | 'ladM2PerM3', symbol: 'H' | 'W' | 'LAD'): ProposedFigure => ({
    field,
    now: now.figures[symbol],
    proposed: best[field],
    range: isRefused(best[field]) ? null : spread(corners.map((c) => valueOf(c[field]))),
    written: field !== 'ladM2PerM3' || density.canopy.ladM2PerM3 !== undefined
  });
  return {
    rung: rung.id,
    from,
    to: null,
    by: 'stage',
    canopy,
    figures: [figure('heightM', 'H'), figure('widthM', 'W'), { field: 'skirtM', now: now.figures.Hs, proposed: before.figures.Hs, range: null, written: from.canopy.skirtM !== undefined }, figure('ladM2PerM3', 'LAD')],
    volume: { now: now.figures.TRVs, proposed: after.figures.TRVs },
    way: null,
    spans: null,
    limits: ['apple-shares', 'volume-range', 'one-stage', 'alike', 'pruning', ...density.limits]
  };
}

/** The measured rungs with a date right before and right after a date. */
export function neighboursOf(block: Block, rung: Rung): { readonly before: Rung; readonly after: Rung } | null {
  if (rung.date === undefined) return null;
  const at = dayNumber(rung.date);
  const dated = block.rungs.filter((r) => r.id !== rung.id && measured(r) && r.date !== undefined).sort((a, b) => dayNumber(a.date!) - dayNumber(b.date!));
  const before = dated.findLast((r) => dayNumber(r.date!) < at);
  const after = dated.find((r) => dayNumber(r.date!) > at);
  return before && after ? { before, after } : null;
}

/**
 * The canopy of a rung with a date on the way between two measured ones: as far as degree-days have gone, in lengths and in leaf area, which is
 * published to go with them. Refuses by name an evergreen, and where a date, a neighbour or the weather is missing.
 */
export function proposeByDegreeDays(document: Document, block: Block, rung: Rung, weather: DegreeDays): Proposal | Refused {
  if (block.evergreen) return refused('growth-evergreen', 'evergreen');
  if (rung.date === undefined) return refused('growth-no-date', 'date', { rung: rung.name });
  const between = neighboursOf(block, rung);
  if (!between) return refused('growth-no-neighbours', 'date', { rung: rung.name });
  const { before: a, after: b } = between;
  const whole = weather.span(a.date!, b.date!);
  const done = weather.span(a.date!, rung.date);
  if ('kind' in whole) return whole;
  if ('kind' in done) return done;
  const way = derive(WAY, { DDx: done.sum, DDt: whole.sum });
  if (isRefused(way)) return refused('growth-no-warmth', 'weather', { from: a.name, to: b.name });
  const [first, last, now] = [stateOf(document, block, a.canopy, a.bbch), stateOf(document, block, b.canopy, b.bbch), stateOf(document, block, rung.canopy, rung.bbch)];
  const told = a.canopy.ladM2PerM3 !== undefined || b.canopy.ladM2PerM3 !== undefined;
  const at = (fw: Answer) => {
    const length = (symbol: 'H' | 'W' | 'Hs'): Answer => derive(LENGTH_BETWEEN, { La: first.figures[symbol], Lb: last.figures[symbol], fw });
    const lengths = { heightM: length('H'), widthM: length('W'), skirtM: length('Hs') };
    const values = { heightM: centi(valueOf(lengths.heightM) ?? NaN), widthM: centi(valueOf(lengths.widthM) ?? NaN), skirtM: centi(valueOf(lengths.skirtM) ?? NaN) };
    const shape = a.canopy.shape ?? b.canopy.shape;
    const bare = carried(a.canopy, rung.canopy, {
      ...values,
      ...tallestBetween(a, b, valueOf(fw) ?? NaN),
      ...(a.canopy.profile && b.canopy.profile ? { profile: profileBetween(a.canopy, b.canopy, valueOf(fw) ?? NaN, values) } : shape === undefined ? {} : { shape }),
      proposed: { from: a.id, to: b.id, by: 'degree-days' }
    });
    const volume = stateOf(document, block, bare, rung.bbch).figures.TRVs;
    const LAI = derive(LEAF_BETWEEN, { LAIa: first.figures.LAI, LAIb: last.figures.LAI, fw });
    return { ...lengths, bare, volume, ladM2PerM3: derive(DENSITY_OF_LEAF, { LAI, TRVs: volume }) };
  };
  const best = at(way);
  const part = (days: number): Answer => {
    const sum = whole.perDay.slice(0, Math.max(done.perDay.length + days, 0)).reduce((x, y) => x + y, 0);
    return given(Math.min(sum / (valueOf(whole.sum) ?? NaN), 1), '1', 'derived', { path: 'date' });
  };
  const corners = [at(part(-DAYS_OFF)), best, at(part(DAYS_OFF))];
  const density = densityOf(best.ladM2PerM3, told);
  const { proposed, ...rest } = best.bare;
  const figure = (field: ProposedField, symbol: 'H' | 'W' | 'Hs' | 'LAD'): ProposedFigure => ({
    field,
    now: now.figures[symbol],
    proposed: best[field],
    range: spread(corners.map((c) => valueOf(c[field]))),
    written: field !== 'ladM2PerM3' || density.canopy.ladM2PerM3 !== undefined
  });
  return {
    rung: rung.id,
    from: a,
    to: b,
    by: 'degree-days',
    canopy: { ...rest, ...density.canopy, ...(proposed ? { proposed } : {}) },
    figures: [figure('heightM', 'H'), figure('widthM', 'W'), figure('skirtM', 'Hs'), figure('ladM2PerM3', 'LAD')],
    volume: { now: now.figures.TRVs, proposed: best.volume },
    way,
    spans: { done, whole },
    limits: ['straight-between', 'a-week', 'pruning', ...(whole.by === 'month-day' ? (['typical-year'] as const) : []), ...(whole.bridged.length > 0 ? (['bridged'] as const) : []), ...density.limits]
  };
}

/** The day on which a rung with a stage but no date stands, by the leaf that must have unfolded between two dated rungs; null where that cannot be told. */
export function dateOf(block: Block, rung: Rung, weather: DegreeDays): { readonly date: string; readonly before: Rung; readonly after: Rung } | null {
  if (block.evergreen || rung.bbch === undefined) return null;
  const share = unfoldedShare(rung.bbch);
  const dated = block.rungs.filter((r) => r.id !== rung.id && r.date !== undefined && r.bbch !== undefined).sort((a, b) => a.bbch! - b.bbch!);
  const before = dated.findLast((r) => r.bbch! < rung.bbch!);
  const after = dated.find((r) => r.bbch! > rung.bbch!);
  if (!before || !after) return null;
  const [s0, s1] = [unfoldedShare(before.bbch!), unfoldedShare(after.bbch!)];
  const whole = weather.span(before.date!, after.date!);
  // Only where leaf unfolds do degree-days tell anything of the stage.
  if ('kind' in whole || !(s1 > s0)) return null;
  const wanted = ((share - s0) / (s1 - s0)) * (valueOf(whole.sum) ?? NaN);
  let sum = 0;
  for (let i = 0; i < whole.perDay.length; i++) {
    if (sum >= wanted) return { date: isoOf(dayNumber(before.date!) + i), before, after };
    sum += whole.perDay[i]!;
  }
  return { date: after.date!, before, after };
}

/** What is not a matter of growth: the rung's own word where it has one, else the source's. Errors are of a measurement and do not come along. */
function carried(from: Canopy, own: Canopy, grown: Canopy): Canopy {
  const kept = {} as { -readonly [K in keyof Canopy]: Canopy[K] };
  if (from.shape !== undefined) kept.shape = from.shape;
  for (const field of ['filledFraction', 'missingFraction', 'densityClass', 'usDensityGalPer1000Ft3'] as const) {
    const value = own[field] ?? (own === from || own.proposed ? from[field] : undefined);
    if (value !== undefined) Object.assign(kept, { [field]: value });
  }
  return { ...kept, ...grown };
}

/** A density goes into the document where one was measured at the source, and where it is enough to be written. */
function densityOf(LAD: Answer, told: boolean): { readonly canopy: { readonly ladM2PerM3?: number }; readonly limits: readonly GrowthLimit[] } {
  if (isRefused(LAD)) return { canopy: {}, limits: ['from-bare'] };
  if (!told || LAD.value < LEAST_DENSITY) return { canopy: {}, limits: ['density-left'] };
  return { canopy: { ladM2PerM3: centi(LAD.value) }, limits: [] };
}

function tallestBetween(a: Rung, b: Rung, way: number): { readonly tallestTenthM?: number } {
  const [x, y] = [a.canopy.tallestTenthM, b.canopy.tallestTenthM];
  return x === undefined || y === undefined ? {} : { tallestTenthM: centi(x + (y - x) * way) };
}

/** Widths at even shares of the crown, between those of two measured profiles. */
function profileBetween(a: Canopy, b: Canopy, way: number, { heightM, skirtM }: { readonly heightM: number; readonly skirtM: number }): readonly ProfileStation[] {
  const [x, y] = [outlineOf(a), outlineOf(b)];
  const at = (outline: typeof x, share: number): number => {
    const [low, high] = [outline[0]?.heightM ?? 0, outline.at(-1)?.heightM ?? 0];
    return widthAt(outline, low + (high - low) * share);
  };
  return rising(
    [0.1, 0.25, 0.4, 0.55, 0.7, 0.85].map((share) => ({
      heightM: centi(skirtM + (heightM - skirtM) * share),
      widthM: centi(at(x, share) + (at(y, share) - at(x, share)) * way)
    }))
  );
}

/** Stations that rounding to the centimetre has laid on each other are one. */
const rising = (profile: readonly ProfileStation[]): readonly ProfileStation[] => profile.filter((p, i) => i === 0 || p.heightM > profile[i - 1]!.heightM);


import { dateOf, neighboursOf, proposeByDegreeDays, proposeByStage, sourcesFor, type Proposal } from '#core/canopy/growth/propose.ts';
import type { Canopy } from '#core/canopy/types.ts';
import type { Label } from '#core/dose/types.ts';
import { SEASON_REGISTRY } from '#core/season/assumptions.ts';
import { seasonOf, type Season } from '#core/season/season.ts';
import type { Rung } from '#core/setting/document.ts';
import { DegreeDays } from '#core/weather/degree-days.ts';
import type { Given, Refused } from '#core/working/answer.ts';
import { Assumptions } from '#core/working/assumption.ts';
import { LENGTHS, RANGES } from '#job/limits.ts';
import { editBlock, editRung, patched } from './edits.ts';
import { weatherFile } from './weather.svelte.ts';
import type { Workspace } from './workspace.svelte.ts';

/** A rung with the canopies that growth would give it. */
export interface Growth {
  readonly rung: Rung;
  /** Measured rungs that it may come from by stage, the fullest leaf first. */
  readonly sources: readonly Rung[];
  readonly stage: Proposal | Refused | null;
  /** Null without a weather file, or where no measured rungs with dates stand around it. */
  readonly degreeDays: Proposal | Refused | null;
  /** The day on which its stage is reached, where it has no date. */
  readonly date: string | null;
}

/** The season of the block in view, what growth would have, and every way to change it. Each change is one step of undo. */
export class SeasonBench {
  /** Rung whose setting stands for the whole season; null leaves it to the one with most leaf. No part of the document. */
  private chosen = $state<string | null>(null);
  /** By rung, from which other one it is proposed; no part of the document. */
  private from = $state.raw<Readonly<Record<string, string>>>({});

  constructor(private readonly workspace: Workspace) {}

  readonly season: Season = $derived.by(() => seasonOf(this.workspace.document, this.workspace.block.id, this.chosen ?? undefined) as Season);
  private readonly assumptions = $derived.by(() => new Assumptions(SEASON_REGISTRY, this.workspace.document.assumptions));
  readonly volumeGrowth: Given = $derived.by(() => this.assumptions.take('growth.volume'));
  readonly base: Given = $derived.by(() => this.assumptions.take('growth.base-temperature'));
  readonly weather: DegreeDays | null = $derived.by(() => weatherFile.weather && new DegreeDays(weatherFile.weather, this.base));

  readonly growth: readonly Growth[] = $derived.by(() => {
    const { document, block } = this.workspace;
    return block.rungs.map((rung): Growth => {
      const sources = sourcesFor(block, rung);
      const source = sources.find((r) => r.id === this.from[rung.id]) ?? sources[0];
      return {
        rung,
        sources,
        stage: source ? proposeByStage(document, block, rung, source) : null,
        degreeDays: this.weather && !block.evergreen && neighboursOf(block, rung) ? proposeByDegreeDays(document, block, rung, this.weather) : null,
        date: this.weather && rung.date === undefined ? (dateOf(block, rung, this.weather)?.date ?? null) : null
      };
    });
  });

  setFixed(rungId: string | null): void {
    this.chosen = rungId;
  }
  setSource(rungId: string, from: string): void {
    this.from = { ...this.from, [rungId]: from };
  }

  setTreatments(rungId: string, treatments: number | undefined, gesture: string): void {
    this.rung(rungId, (r) => patched(r, { treatments }), gesture);
  }
  setStage(rungId: string, bbch: number | undefined, gesture: string): void {
    this.rung(rungId, (r) => patched(r, { bbch }), gesture);
  }
  setDate(rungId: string, date: string | undefined): void {
    this.rung(rungId, (r) => patched(r, { date }), null);
  }
  /** What the printed label says of a season. */
  setLabel(labelId: string, patch: { readonly maxPerSeason?: number | undefined } | { readonly maxUses?: number | undefined }, gesture: string): void {
    this.workspace.edit((d) => ({ ...d, labels: d.labels.map((l) => (l.id === labelId ? patched<Label>(l, patch) : l)) }), gesture);
  }
  setAssumption(id: string, value: number | undefined, gesture: string): void {
    this.workspace.edit((d) => {
      const assumptions = patched<Record<string, number>>({ ...d.assumptions }, { [id]: value });
      return patched(d, { assumptions: Object.keys(assumptions).length > 0 ? assumptions : undefined });
    }, gesture);
  }

  /** Whether a document could hold this canopy: growth of what is already at the edge may leave it. */
  fits({ heightM, widthM, skirtM = 0, ladM2PerM3 }: Canopy): boolean {
    const within = (v: number | undefined, { least, most }: { readonly least: number; readonly most: number }) => v === undefined || (v >= least && v <= most);
    const C = RANGES.canopy;
    return within(heightM, C.heightM) && within(widthM, C.widthM) && within(skirtM, C.skirtM) && within(ladM2PerM3, C.ladM2PerM3) && skirtM < heightM;
  }
  /** Takes a proposal into its rung: the canopy and where it is from, nothing else. */
  accept({ rung, canopy }: Proposal): void {
    if (this.fits(canopy)) this.rung(rung, (r) => ({ ...r, canopy }), null);
  }

  get full(): boolean {
    return this.workspace.block.rungs.length >= LENGTHS.rungs[1];
  }
  /** A new rung at its place in the season, with the canopy that growth gives it and the setting of the rung before it. */
  add(name: string, bbch: number, date: string | undefined): string | null {
    const { block, document } = this.workspace;
    if (this.full) return null;
    const ids = new Set(block.rungs.map((r) => r.id));
    let n = 1;
    while (ids.has(`rung-${n}`)) n++;
    const at = block.rungs.findIndex((r) => (r.bbch ?? -1) > bbch);
    const place = at < 0 ? block.rungs.length : at;
    const near = block.rungs[Math.max(place - 1, 0)]!;
    const bare: Rung = { id: `rung-${n}`, name, bbch, ...(date === undefined ? {} : { date }), canopy: near.canopy, setting: near.setting };
    const [source] = sourcesFor(block, bare);
    const grown = source ? proposeByStage(document, block, { ...bare, canopy: { ...near.canopy, proposed: { from: near.id, by: 'stage' } } }, source) : null;
    if (!grown || 'kind' in grown || !this.fits(grown.canopy)) return null;
    const rungs = [...block.rungs.slice(0, place), { ...bare, canopy: grown.canopy }, ...block.rungs.slice(place)];
    this.workspace.edit((d) => editBlock(d, block.id, (b) => ({ ...b, rungs })));
    return bare.id;
  }

  private rung(rungId: string, change: (rung: Rung) => Rung, gesture: string | null): void {
    const { block } = this.workspace;
    this.workspace.edit((d) => editRung(d, block.id, rungId, change), gesture);
  }
}

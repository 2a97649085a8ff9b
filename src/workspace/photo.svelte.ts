import { bandEdges, photoOf } from '#core/canopy/photo/counts.ts';
import { canopyOfPhoto } from '#core/canopy/photo/canopy.ts';
import { photoDensity, type PhotoDensity } from '#core/canopy/photo/density.ts';
import type { Frame } from '#core/canopy/photo/frame.ts';
import { otsu, type Parted } from '#core/canopy/photo/otsu.ts';
import { BAND_M, THRESHOLD_DOUBT } from '#core/canopy/photo/rules.ts';
import { LEVELS, type CanopyPhoto } from '#core/canopy/photo/types.ts';
import { outlineOf } from '#core/canopy/outline.ts';
import type { Refused } from '#core/working/answer.ts';
import { FileClient } from '#store/file/client.ts';
import { startPhoto, type PhotoClient } from '#store/photo/client.ts';
import type { Opened } from '#store/photo/messages.ts';
import { patchCanopy } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

/** A part of the picture to begin with, well inside it. */
const FIRST: Frame = { left: 0.1, right: 0.9, top: 0.1, bottom: 0.9 };
/** The least that a frame is wide and high. */
const LEAST = 0.02;
const EDGES = ['left', 'right', 'top', 'bottom'] as const;
export type Edge = (typeof EDGES)[number];

/** A photograph of the canopy of the rung in view, what is counted in it, and what that says. The picture is kept nowhere. */
export class PhotoBench {
  picture = $state.raw<Opened | null>(null);
  /** Part that is read, 0…1; null while nothing is. */
  reading = $state<number | null>(null);
  /** Why there is no picture. */
  problem = $state.raw<Refused | null>(null);
  /** The worker itself failed. */
  failed = $state(false);
  frame = $state.raw<Frame>(FIRST);
  bandM = $state(BAND_M);
  /** Heights that the upper and the lower edge of the frame stand for, where they are not top and skirt. */
  ownTopM = $state<number | undefined>(undefined);
  ownSkirtM = $state<number | undefined>(undefined);
  /** The user's own threshold; without it, the proposal. */
  ownThreshold = $state<number | undefined>(undefined);
  private histograms = $state.raw<Uint32Array | null>(null);
  /** Edges that the histograms were asked for with. */
  private counted = $state.raw<readonly number[]>([]);
  private client: PhotoClient | null = null;
  private asked: readonly number[] = [];

  constructor(private readonly workspace: Workspace) {}

  readonly topM: number = $derived.by(() => this.ownTopM ?? this.workspace.rung.canopy.heightM);
  readonly skirtM: number = $derived.by(() => this.ownSkirtM ?? this.workspace.rung.canopy.skirtM ?? 0);
  readonly edges: readonly number[] = $derived.by(() => (this.skirtM < this.topM ? bandEdges(this.skirtM, this.topM, this.bandM) : []));

  private readonly bands: readonly Uint32Array[] = $derived.by(() => {
    const { histograms } = this;
    if (!histograms) return [];
    return Array.from({ length: histograms.length / LEVELS }, (_, k) => histograms.subarray(k * LEVELS, (k + 1) * LEVELS));
  });
  /** The level that parts the pixels of the whole frame best. */
  readonly proposal: Parted | Refused | null = $derived.by(() => {
    if (this.bands.length === 0) return null;
    const all = new Float64Array(LEVELS);
    for (const b of this.bands) for (let level = 0; level < LEVELS; level++) all[level]! += b[level]!;
    return otsu(all);
  });
  readonly threshold: number | null = $derived.by(() => this.ownThreshold ?? (this.proposal && 'threshold' in this.proposal ? this.proposal.threshold : null));

  private photoAt(threshold: number): CanopyPhoto | null {
    if (this.bands.length === 0 || this.counted.length !== this.bands.length + 1) return null;
    return photoOf(this.bands, this.counted, outlineOf(this.workspace.rung.canopy), threshold);
  }
  private saidAt(threshold: number): PhotoDensity | null {
    const photo = this.photoAt(threshold);
    return photo && photoDensity(photo, this.workspace.document.assumptions);
  }
  readonly said: PhotoDensity | null = $derived.by(() => (this.threshold === null ? null : this.saidAt(this.threshold)));
  /** What it would be with the threshold somewhat lower and higher. */
  readonly doubt: readonly (PhotoDensity | null)[] = $derived.by(() => {
    const { threshold } = this;
    return threshold === null ? [] : [-THRESHOLD_DOUBT, THRESHOLD_DOUBT].map((d) => this.saidAt(Math.min(LEVELS - 1, Math.max(1, threshold + d))));
  });

  /** What the document keeps of an earlier photograph, with the assumptions of now. */
  readonly kept: PhotoDensity | null = $derived.by(() => {
    const { photo } = this.workspace.rung;
    return photo ? photoDensity(photo, this.workspace.document.assumptions) : null;
  });

  async open(file: Blob): Promise<void> {
    this.close();
    this.reading = 0;
    const client: PhotoClient = (this.client = new FileClient(
      startPhoto,
      (histograms) => {
        this.counted = this.asked;
        this.histograms = histograms;
      },
      () => this.lose(),
      (done) => {
        if (this.client === client) this.reading = done;
      }
    ));
    try {
      const opened = await client.open({ file });
      if (this.client !== client || opened === null) return;
      this.reading = null;
      if ('kind' in opened) {
        this.problem = opened;
        this.client = null;
        client.close();
      } else {
        this.picture = opened;
        this.count();
      }
    } catch {
      if (this.client === client) this.lose();
    }
  }
  private lose(): void {
    this.close();
    this.failed = true;
  }
  /** Lets go of the picture and ends its worker. */
  close(): void {
    const { client } = this;
    this.client = null;
    client?.close();
    this.picture = this.histograms = this.problem = null;
    this.reading = null;
    this.failed = false;
    this.ownThreshold = undefined;
    this.frame = FIRST;
  }

  /** Counts anew; what is shown meanwhile is the count before. */
  count(): void {
    if (!this.picture || this.edges.length < 2) return;
    this.asked = this.edges;
    this.client?.ask({ frame: this.frame, bands: this.edges.length - 1 });
  }

  /** Moves an edge of the frame, as far as the picture and the edge across let it. */
  moveEdge(edge: Edge, to: number): void {
    const { left, right, top, bottom } = this.frame;
    const [least, most] = { left: [0, right - LEAST], right: [left + LEAST, 1], top: [0, bottom - LEAST], bottom: [top + LEAST, 1] }[edge] as [number, number];
    this.frame = { ...this.frame, [edge]: Math.min(most, Math.max(least, to)) };
    this.count();
  }

  /** Takes leaf area density, and density by height where it is wanted, into the rung's canopy with the counts, in one step. */
  use(byHeight: boolean): boolean {
    const { said, threshold } = this;
    const photo = threshold === null ? null : this.photoAt(threshold);
    const canopy = said && canopyOfPhoto(this.workspace.rung.canopy, said, byHeight);
    if (!photo || !canopy) return false;
    this.workspace.editRung((r) => ({ ...patchCanopy(r, canopy), photo }));
    return true;
  }
  /** Forgets the counts; the canopy stays as it is. */
  forget(): void {
    this.workspace.editRung(({ photo: _, ...r }) => r);
  }
}

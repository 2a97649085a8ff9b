import { untrack } from 'svelte';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { sprayCase } from '#core/spray/case.ts';
import type { SprayBalance, SprayBand, SprayCase, SprayPicture } from '#core/spray/types.ts';
import type { Refused } from '#core/working/answer.ts';
import { SprayClient } from '#store/spray/client.ts';
import { download } from '#store/files.ts';
import { editRung, patched } from './edits.ts';
import type { Workspace } from './workspace.svelte.ts';

/** What the model said, and of what. */
export interface SprayShown {
  readonly case: SprayCase;
  /** Nozzle whose spray alone the picture shows. */
  readonly alone: string | null;
  readonly balance: SprayBalance;
  readonly picture: SprayPicture;
}

/** The band takes some forty runs of the model: it is begun when nothing has changed for so long. */
const REST_MS = 250;
/** A picture is dimmed when its setting changed longer ago than this. */
const STALE_MS = 300;

/** Where the spray of the rung in view goes, and what of it is shown. Made when it is first asked for. */
export class SprayView {
  /** Whether it is shown; nothing is worked out while it is not. */
  on = $state(false);
  /** Whether one pass is played. */
  playing = $state(false);
  busy = $state(false);
  /** The picture belongs to a setting that was changed a while ago. */
  stale = $state(false);
  failed = $state(false);
  private shown = $state.raw<(SprayShown & { readonly key: string }) | null>(null);
  private bandFound = $state.raw<{ readonly key: string; readonly band: SprayBand } | null>(null);
  private ghostFound = $state.raw<{ readonly key: string; readonly balance: SprayBalance } | null>(null);
  /** Tries again what failed. */
  private tries = $state(0);

  readonly case: SprayCase | Refused = $derived.by(() => sprayCase(this.workspace.document, this.workspace.result));
  /** What is set beside it: the ghost's rung, or the saved setting of the rung in view. */
  against = $state<'rung' | 'saved'>('rung');
  private readonly saved: Result | null = $derived.by(() => {
    const { document, block, rung, result } = this.workspace;
    // A result tells of a saved setting only while the present one differs from it.
    if (!rung.saved || !result.saved) return null;
    const then = evaluate(editRung(document, block.id, rung.id, (r) => patched(r, { setting: rung.saved })), block.id, rung.id);
    return 'kind' in then ? null : then;
  });
  readonly other: Result | null = $derived.by(() => (this.against === 'saved' && this.saved) || this.workspace.ghost);
  private readonly ghostCase: SprayCase | Refused | null = $derived.by(() => (this.other ? sprayCase(this.workspace.document, this.other) : null));
  // Most edits change nothing that the model is told: cases are compared by what they say.
  private readonly key: string = $derived.by(() => JSON.stringify(this.case));
  private readonly ghostKey: string = $derived.by(() => JSON.stringify(this.ghostCase));

  /** The nozzle whose spray is to be seen alone: the one under pointer or focus, else the chosen one, where it sprays. May be set to another. */
  alone: string | null = $derived.by(() => {
    const { pointed, selected } = this.workspace;
    return this.sprays(pointed) ? pointed : this.sprays(selected) ? selected : null;
  });
  private sprays(position: string | null): boolean {
    return !('kind' in this.case) && this.case.nozzles.some((n) => n.position === position);
  }

  /** What was worked out last; the setting may have moved on. */
  readonly answer: SprayShown | null = $derived.by(() => ('kind' in this.case ? null : this.shown));
  /** null while it is worked out. */
  readonly band: SprayBand | null = $derived.by(() => (this.answer && this.bandFound?.key === this.shown?.key ? (this.bandFound?.band ?? null) : null));
  /** Of what is set beside it. */
  readonly ghost: SprayBalance | null = $derived.by(() => (this.ghostFound?.key === this.ghostKey ? (this.ghostFound?.balance ?? null) : null));

  constructor(
    readonly workspace: Workspace,
    private readonly client: SprayClient = new SprayClient()
  ) {}

  private end: (() => void) | null = null;

  toggle(): void {
    if (this.on) this.hide();
    else this.show();
  }
  show(): void {
    if (this.on) return;
    this.on = true;
    this.end = $effect.root(() => {
      $effect(() => {
        void [this.key, this.alone, this.playing, this.tries];
        untrack(() => void this.ask());
      });
      $effect(() => {
        void [this.key, this.tries];
        const timer = setTimeout(() => void this.askBand(), REST_MS);
        return () => {
          clearTimeout(timer);
          this.client.dropBand();
        };
      });
      $effect(() => {
        void [this.ghostKey, this.tries];
        untrack(() => void this.askGhost());
      });
    });
  }
  hide(): void {
    this.on = false;
    this.playing = false;
    this.end?.();
    this.end = null;
  }
  retry(): void {
    this.failed = false;
    this.tries++;
  }

  private asked = 0;
  private staleTimer: ReturnType<typeof setTimeout> | undefined;

  private async ask(): Promise<void> {
    const { case: c, key, playing } = this;
    if ('kind' in c) return;
    const alone = this.sprays(this.alone) ? this.alone : null;
    const number = ++this.asked;
    this.busy = true;
    this.waiting();
    try {
      const given = await this.client.ask('answer', { case: c, position: alone, tracks: playing });
      if (given) {
        this.shown = { key, case: c, alone, ...given };
        this.failed = false;
        this.rested();
        // Another setting came while this one was worked on.
        if (number !== this.asked) this.waiting();
      }
    } catch {
      this.failed = true;
    }
    if (number !== this.asked) return;
    this.busy = false;
    this.rested();
  }
  private waiting(): void {
    this.staleTimer ??= setTimeout(() => (this.stale = true), STALE_MS);
  }
  private rested(): void {
    clearTimeout(this.staleTimer);
    this.staleTimer = undefined;
    this.stale = false;
  }

  private async askBand(): Promise<void> {
    const { case: c, key } = this;
    if ('kind' in c || this.bandFound?.key === key) return;
    try {
      const given = await this.client.ask('band', { case: c });
      if (given) this.bandFound = { key, band: given.band };
    } catch {
      this.failed = true;
    }
  }

  private async askGhost(): Promise<void> {
    const { ghostCase: c, ghostKey: key } = this;
    if (!c || 'kind' in c || this.ghostFound?.key === key) return;
    try {
      const given = await this.client.ask('balance', { case: c });
      if (given) this.ghostFound = { key, balance: given.balance };
    } catch {
      this.failed = true;
    }
  }

  /** Hands what was made of it to the user as a file. */
  save(name: string, content: string | Blob, type: string): void {
    download(name, content, type);
  }
}

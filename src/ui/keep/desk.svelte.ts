import type { Document } from '#core/setting/document.ts';
import { keepBar } from '#words/en/keep/bar.ts';
import { unmarked } from '#words/bidi.ts';
import { keepNames } from '#words/en/keep/names.ts';
import { orchardWords } from '#words/en/keep/orchards.ts';
import { Faults } from '#workspace/keep/faults.svelte.ts';
import { saveFile } from '#workspace/keep/files.ts';
import { Keeping, type Opening, type Unread } from '#workspace/keep/keeping.svelte.ts';
import { Versions } from '#workspace/keep/versions.svelte.ts';
import type { Workspace } from '#workspace/workspace.svelte.ts';

/** What lies on top of the page. */
export type Sheet = { readonly kind: 'orchards' | 'send' } | { readonly kind: 'unread'; readonly unread: Unread } | { readonly kind: 'link'; readonly hash: string };

/** All that has to do with keeping, behind one door: the page knows it by a few calls. */
export class Desk {
  readonly keeping: Keeping;
  readonly faults = new Faults();
  readonly versions: Versions;
  sheet = $state.raw<Sheet | null>(null);
  readonly status: string = $derived.by(() => keepBar.status[this.keeping.state.kind]);

  constructor(
    readonly workspace: Workspace,
    demo: Document
  ) {
    const area = (name: 'localStorage' | 'sessionStorage') => {
      try {
        return globalThis[name];
      } catch {
        return null;
      }
    };
    this.versions = new Versions((navigator as { serviceWorker?: ServiceWorkerContainer }).serviceWorker);
    this.keeping = new Keeping(workspace, demo, {
      nowMs: Date.now,
      ownMs: () => performance.now(),
      letters: () => crypto.getRandomValues(new Uint32Array(3)).reduce((text, n) => text + n.toString(36), ''),
      local: area('localStorage'),
      session: area('sessionStorage'),
      mayLeave: () => confirm(orchardWords.leave),
      // Names of the document: no mark of a sentence belongs into them.
      names: { copy: (name) => unmarked(keepNames.copy(name)), rescued: (name) => unmarked(keepNames.rescued(name)) }
    });
  }

  async start(): Promise<void> {
    this.told(await this.keeping.start());
    document.addEventListener('visibilitychange', () => (document.visibilityState === 'hidden' ? this.keeping.goodbye() : this.look()));
    addEventListener('pageshow', (e) => e.persisted && this.look());
    addEventListener('pagehide', () => this.keeping.goodbye());
    // Asked only where the browser would keep nothing at all of it.
    addEventListener('beforeunload', (e) => this.keeping.goodbye() || e.preventDefault());
  }

  private look(): void {
    void this.keeping.look();
    this.versions.look();
  }

  /** Shows why something was not opened. */
  told(opening: Opening): void {
    if (!opening.ok && opening.unread) this.sheet = { kind: 'unread', unread: opening.unread };
  }

  async openFile(file: File): Promise<void> {
    // A film opened by mistake is not read to its end: the reader refuses what is far shorter.
    const bytes = new Uint8Array(await file.slice(0, 40_000_000).arrayBuffer());
    this.told(await this.keeping.openText(new TextDecoder().decode(bytes), 'file', bytes));
  }
  saveFile(): Promise<void> {
    return saveFile(this.workspace.document);
  }
  async reload(): Promise<void> {
    await this.keeping.flush();
    location.reload();
  }
}

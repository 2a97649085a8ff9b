import { isUnitSystem, type UnitSystem } from '#core/quantity/units.ts';

export const THEMES = ['paper', 'sun', 'shed'] as const;
export type Theme = (typeof THEMES)[number];

/** What a first visitor may try, in this order. */
export const FIRST_STEPS = ['top', 'shut', 'why'] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

const KEY = 'rowtailor-preferences';

/** Units, theme, size of figures, first steps that were taken: the reader's, not the document's. Kept where the browser lets us, else for this visit. */
export class Preferences {
  system = $state<UnitSystem>('metric');
  theme = $state<Theme>('paper');
  /** Large figures, for a room that looks at a projector. */
  large = $state(false);
  /** First steps that were taken: they are not asked for again. */
  tried = $state.raw<readonly FirstStep[]>([]);

  constructor(private readonly storage: Pick<Storage, 'getItem' | 'setItem'> | null) {
    try {
      const kept: unknown = JSON.parse(storage?.getItem(KEY) ?? 'null');
      if (kept && typeof kept === 'object') {
        if ('system' in kept && isUnitSystem(kept.system)) this.system = kept.system;
        if ('large' in kept) this.large = kept.large === true;
        if ('tried' in kept && Array.isArray(kept.tried)) this.tried = FIRST_STEPS.filter((s) => (kept.tried as unknown[]).includes(s));
        if ('theme' in kept && THEMES.includes(kept.theme as Theme)) this.theme = kept.theme as Theme;
      }
    } catch {
      // Unreadable or forbidden storage: the defaults serve.
    }
  }

  keep(): void {
    try {
      this.storage?.setItem(KEY, JSON.stringify({ system: this.system, theme: this.theme, large: this.large, tried: this.tried }));
    } catch {
      // Full or forbidden storage loses a preference, nothing else.
    }
  }
}

import { isUnitSystem, type UnitSystem } from '#core/quantity/units.ts';
import { lookOf, PREFERENCES_KEY, type Theme } from './look.ts';

/** What a first visitor may try, in this order. */
export const FIRST_STEPS = ['top', 'shut', 'why'] as const;
export type FirstStep = (typeof FIRST_STEPS)[number];

/** Where another set than the metric one is usual: the US and its territories, the United Kingdom and the Crown dependencies. */
const USUAL: Readonly<Record<string, UnitSystem>> = {
  US: 'us', PR: 'us', GU: 'us', VI: 'us', AS: 'us', MP: 'us',
  GB: 'metric-mph', IM: 'metric-mph', JE: 'metric-mph', GG: 'metric-mph'
};

/** The first region that a list of languages names, as "US" in en-US (BCP 47). */
const regionOf = (languages: readonly string[]): string | undefined => languages.flatMap((tag) => /-([A-Z]{2})(?:-|$)/i.exec(tag)?.[1]?.toUpperCase() ?? [])[0];

/** Units, theme, size of figures, first steps that were taken: the reader's, not the document's. Kept where the browser lets us, else for this visit. */
export class Preferences {
  private given = $state<UnitSystem>();
  /** Region by which units are guessed while none were chosen; undefined where the browser names none. */
  readonly region: string | undefined;
  theme = $state<Theme>('paper');
  /** Large figures, for a room that looks at a projector. */
  large = $state(false);
  /** First steps that were taken: they are not asked for again. */
  tried = $state.raw<readonly FirstStep[]>([]);

  /** @param languages those of the browser, the dearest first */
  constructor(private readonly storage: Pick<Storage, 'getItem' | 'setItem'> | null, languages: readonly string[] = []) {
    this.region = regionOf(languages);
    try {
      const kept: unknown = JSON.parse(storage?.getItem(PREFERENCES_KEY) ?? 'null');
      ({ theme: this.theme, large: this.large } = lookOf(kept));
      if (kept && typeof kept === 'object') {
        if ('system' in kept && isUnitSystem(kept.system)) this.given = kept.system;
        if ('tried' in kept && Array.isArray(kept.tried)) this.tried = FIRST_STEPS.filter((s) => (kept.tried as unknown[]).includes(s));
      }
    } catch {
      // Unreadable or forbidden storage: the defaults serve.
    }
  }

  get system(): UnitSystem {
    return this.given ?? USUAL[this.region ?? ''] ?? 'metric';
  }
  set system(system: UnitSystem) {
    this.given = system;
  }
  /** Whether the units were guessed and not chosen. */
  get guessed(): boolean {
    return this.given === undefined;
  }

  keep(): void {
    try {
      this.storage?.setItem(PREFERENCES_KEY, JSON.stringify({ system: this.given, theme: this.theme, large: this.large, tried: this.tried }));
    } catch {
      // Full or forbidden storage loses a preference, nothing else.
    }
  }
}

/** What the page looks like before anything is read: kept with the preferences. */
export const PREFERENCES_KEY = 'rowtailor-preferences';

export const THEMES = ['paper', 'sun', 'shed'] as const;
export type Theme = (typeof THEMES)[number];

export interface Look {
  readonly theme: Theme;
  /** Large figures, for a room that looks at a projector. */
  readonly large: boolean;
}

/** @returns what was kept and can be shown, of an object of any kind; paper at its usual size where there is nothing sound */
export const lookOf = (kept: unknown): Look => {
  const { theme, large } = Object(kept) as { readonly theme?: unknown; readonly large?: unknown };
  return { theme: THEMES.includes(theme as Theme) ? (theme as Theme) : 'paper', large: large === true };
};

/** Puts it on the page. */
export function wear({ theme, large }: Look): void {
  const page = document.documentElement;
  page.dataset.theme = theme;
  page.toggleAttribute('data-large', large);
}

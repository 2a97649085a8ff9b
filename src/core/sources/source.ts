/** One work that a formula, a constant or a check was taken from. */
export interface Source {
  readonly authors: string;
  readonly year: string;
  readonly title: string;
  readonly container?: string;
  /** DOI, standard number or other locator. */
  readonly locator?: string;
  /** What was taken from it. */
  readonly taken: string;
  /** How we know it: the work itself was read, a summary of it was, or it is quoted from memory. */
  readonly read: 'work' | 'summary' | 'memory';
}

export const source = (
  authors: string,
  year: string,
  title: string,
  container: string,
  taken: string,
  read: Source['read'] = 'summary',
  locator?: string
): Source => ({ authors, year, title, container, taken, read, ...(locator ? { locator } : {}) });

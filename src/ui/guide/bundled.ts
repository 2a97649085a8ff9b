/** A package whose code or fonts are part of the built page. */
export interface Bundled {
  readonly name: string;
  readonly version: string;
  /** SPDX expression of its package. */
  readonly licence: string;
  /** Its licence file word for word; '' where the package has none. */
  readonly text: string;
}

/** The build puts what it really took into the place of this text; see `tests/tools/licences.ts`. */
const TAKEN = '__LICENCES__';

/** Packages in the built page, by name; none where it was not built. */
export function bundled(): readonly Bundled[] {
  try {
    return JSON.parse(TAKEN) as readonly Bundled[];
  } catch {
    return [];
  }
}

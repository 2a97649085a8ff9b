import { VERSION } from '#core/setting/document.ts';

/**
 * One step from version `from` to the next: a pure function over plain JSON that never throws, whatever it is given.
 * Steps are only ever added; an old file of each version stays in the tests for ever.
 */
export interface Migration {
  readonly from: number;
  readonly step: (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;
}

/** Version 1 is the first, and frozen. */
export const MIGRATIONS: readonly Migration[] = [];

/** Lifts a document of an older version, step by step, to the version that this program reads. */
export function migrated(
  document: Readonly<Record<string, unknown>>,
  version: number,
  steps: readonly Migration[] = MIGRATIONS,
  newest: number = VERSION
): Readonly<Record<string, unknown>> {
  let lifted = document;
  for (let v = version; v < newest; v++) {
    const migration = steps.find((m) => m.from === v);
    if (!migration) throw new Error(`no migration leads on from version ${v}`);
    lifted = { ...migration.step(lifted), version: v + 1 };
  }
  return lifted;
}

import { createHash, type Hash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { MOST_TRIES } from '#core/canopy/draws/draws.ts';
import { VERSION } from '#core/setting/document.ts';
import type { Assumption } from '#core/working/assumption.ts';
import type { IntervalWish } from './interval-wish.ts';
import { constantsOf, FILL, FULL_LEAF, MULTIPLIER, OUTPUTS, US_DENSITY } from '#core/dose/table/plan.ts';
import type { Sink } from './sink.ts';

/** Version of the manifest's own form. */
const MANIFEST_VERSION = 1;

/** What went through, hashed on its way. */
export interface Passed {
  readonly hash: Hash;
  bytes: number;
}
export const nothingYet = (): Passed => ({ hash: createHash('sha256'), bytes: 0 });

/** The same chunks, counted and hashed as they pass. */
export async function* noting(chunks: AsyncIterable<Uint8Array>, passed: Passed): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) {
    note(passed, chunk);
    yield chunk;
  }
}

/** The same sink, what it is given counted and hashed. */
export const notingSink = (sink: Sink, passed: Passed): Sink => ({
  write(part) {
    note(passed, part);
    return sink.write(part);
  },
  close: () => sink.close()
});

function note(passed: Passed, part: string | Uint8Array): void {
  passed.hash.update(part);
  passed.bytes += Buffer.byteLength(part);
}

/**
 * What a table was made of and with, and the hash of what came out: whoever has the same input, versions and options gets the same bytes.
 * No clock, no path, no name of a machine stands in it.
 */
export function manifestText(input: Passed, output: Passed, columns: readonly string[], wish: IntervalWish | null): string {
  const { version } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as { version: string };
  const assumption = ({ id, value, unit, certainty }: Assumption) => ({ id, value, unit, certainty });
  const manifest = {
    format: 'rowtailor-manifest',
    version: MANIFEST_VERSION,
    versions: { rowtailor: version, document: VERSION, node: process.versions.node },
    input: { sha256: input.hash.digest('hex'), bytes: input.bytes },
    options: wish
      ? { intervals: true, level: 0.95, ...(wish.draws ? { draws: wish.draws, seed: wish.seed, generator: 'philox-4x32-10', normal: 'box-muller', mostTries: MOST_TRIES } : {}) }
      : { intervals: false },
    columns,
    strategies: Object.fromEntries(
      OUTPUTS.flatMap(({ strategy: s }) => (s ? [[s.id, Object.fromEntries(Object.entries(constantsOf(s)).map(([symbol, a]) => [symbol, assumption(a)]))]] : []))
    ),
    standingIn: [...[US_DENSITY, FULL_LEAF, MULTIPLIER].map(assumption), { id: 'outline-share', value: FILL, unit: '1', certainty: 'assumed' }],
    output: { sha256: output.hash.digest('hex'), bytes: output.bytes }
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

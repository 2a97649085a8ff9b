import { createHash, type Hash } from 'node:crypto';
import { createReadStream, readFileSync } from 'node:fs';
import { MOST_TRIES } from '#core/canopy/draws/draws.ts';
import { constantsOf, FILL, FULL_LEAF, MULTIPLIER, US_DENSITY } from '#core/dose/table/plan.ts';
import { ASSUMPTIONS } from '#core/setting/assumptions.ts';
import { VERSION } from '#core/setting/document.ts';
import { Assumptions, type Assumption } from '#core/working/assumption.ts';
import { figuresFor } from './figure-columns.ts';
import type { SettingRead } from './front.ts';
import type { Work } from './pool.ts';
import type { Sink } from './sink.ts';
import type { Form } from './wanted.ts';

/** Version of the manifest's own form. */
const MANIFEST_VERSION = 2;

export interface Hashed {
  readonly sha256: string;
  readonly bytes: number;
}

/** What went through, hashed on its way. */
export class Passed {
  private readonly hash: Hash = createHash('sha256');
  bytes = 0;
  note(part: string | Uint8Array): void {
    this.hash.update(part);
    this.bytes += Buffer.byteLength(part);
  }
  end(): Hashed {
    return { sha256: this.hash.digest('hex'), bytes: this.bytes };
  }
}
export const nothingYet = (): Passed => new Passed();

/** The same chunks, counted and hashed as they pass. */
export async function* noting(chunks: AsyncIterable<Uint8Array>, passed: Passed): AsyncGenerator<Uint8Array> {
  for await (const chunk of chunks) {
    passed.note(chunk);
    yield chunk;
  }
}

/** The same sink, what it is given counted and hashed. */
export const notingSink = (sink: Sink, passed: Passed): Sink => ({
  write(part) {
    passed.note(part);
    return sink.write(part);
  },
  close: () => sink.close()
});

export async function hashedFile(path: string): Promise<Hashed> {
  const passed = nothingYet();
  for await (const _ of noting(createReadStream(path), passed));
  return passed.end();
}

/** A run of the table. */
export interface Ran {
  readonly input: Hashed;
  readonly inputForm: Form;
  readonly output: Hashed;
  readonly setting: SettingRead | null;
  readonly work: Work;
}

/**
 * What a table was made of and with, and the hash of what came out: whoever has the same input, document, versions and options gets the same
 * bytes, with however many threads. No clock, no path, no name of a machine stands in it.
 */
export function manifestText({ input, inputForm, output, setting, work: { wanted, names } }: Ran): string {
  const { strategies, intervals, spray, form } = wanted;
  const { version } = JSON.parse(readFileSync(new URL('../../../package.json', import.meta.url), 'utf8')) as { version: string };
  const values = new Assumptions(ASSUMPTIONS, strategies?.assumptions);
  const assumption = ({ id }: Assumption) => {
    const { value, unit, certainty } = values.take(id);
    return { id, value, unit, certainty };
  };
  const asked = [...new Set(figuresFor(strategies).outputs.flatMap(({ strategy }) => (strategy ? [strategy] : [])))];
  const manifest = {
    format: 'rowtailor-manifest',
    version: MANIFEST_VERSION,
    versions: { rowtailor: version, document: VERSION, node: process.versions.node },
    input: { format: inputForm, ...input },
    ...(setting ? { setting: { sha256: setting.sha256, bytes: setting.bytes, block: setting.result.block.id, rung: setting.result.rung.id } } : {}),
    options: {
      strategies: strategies !== null,
      ...(strategies?.label ? { label: strategies.label.id } : {}),
      ...(intervals
        ? { intervals: true, level: 0.95, ...(intervals.draws ? { draws: intervals.draws, seed: intervals.seed, generator: 'philox-4x32-10', normal: 'box-muller', mostTries: MOST_TRIES } : {}) }
        : { intervals: false }),
      spray: spray !== null,
      format: form
    },
    columns: ['block', ...names],
    strategies: Object.fromEntries(
      asked.map((s) => [
        s.id,
        s.id.startsWith('own.')
          ? { index: s.index.expression, ...(s.water ? { water: s.water.expression, waterKind: s.waterKind } : {}) }
          : Object.fromEntries(Object.entries(constantsOf(s)).map(([symbol, a]) => [symbol, assumption(a)]))
      ])
    ),
    standingIn: [...[US_DENSITY, FULL_LEAF, MULTIPLIER].map(assumption), { id: 'outline-share', value: FILL, unit: '1', certainty: 'assumed' }],
    ...(strategies?.label ? { label: strategies.label } : {}),
    ...(strategies?.applied ? { applied: strategies.applied } : {}),
    output: { format: form, ...output }
  };
  return `${JSON.stringify(manifest, null, 2)}\n`;
}

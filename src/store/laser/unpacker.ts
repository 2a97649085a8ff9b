import createLazPerf from 'laz-perf/lib/worker/laz-perf.js';
import type { Unpacker } from '#job/laser/las/unpack.ts';

const quiet = (): void => {};

/**
 * The library that unpacks LAZ. Only a worker may start it: the page's policy lets no WebAssembly run.
 * @param wasm where its code is, a file of the page's own
 */
export async function startUnpacker(wasm: string): Promise<Unpacker> {
  const response = await fetch(wasm);
  if (!response.ok) throw new Error(`what unpacks LAZ could not be loaded (${response.status})`);
  return (await createLazPerf({ wasmBinary: new Uint8Array(await response.arrayBuffer()), print: quiet, printErr: quiet })) as unknown as Unpacker;
}

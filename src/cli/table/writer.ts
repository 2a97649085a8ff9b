import type { Done } from './piece.ts';
import type { Sink } from './sink.ts';
import type { Form } from './wanted.ts';

/** Writes a table that is made, piece by piece. */
export interface Writer {
  begin(): Promise<void>;
  add(done: Done): Promise<void>;
  /** What only the end can tell. */
  end(): Promise<void>;
}

export async function writerOf(form: Form, names: readonly string[], mayLack: readonly boolean[], sink: Sink): Promise<Writer> {
  if (form === 'parquet') return (await import('./parquet-out.ts')).parquetWriter(names, mayLack, sink);
  return {
    begin: () => sink.write(`${['block', ...names].join(',')}\n`),
    add: ({ bytes }) => sink.write(bytes),
    async end() {}
  };
}

import type { Sink, Writer } from './sink.ts';
import type { Form } from './wanted.ts';

export async function writerOf(form: Form, names: readonly string[], mayLack: readonly boolean[], sink: Sink): Promise<Writer> {
  if (form === 'parquet') return (await import('./parquet-out.ts')).parquetWriter(names, mayLack, sink);
  return {
    begin: () => sink.write(`${['block', ...names].join(',')}\n`),
    add: ({ bytes }) => sink.write(bytes),
    async end() {}
  };
}

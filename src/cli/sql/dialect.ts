/** What databases spell apart. All else in the statement is common to them. */
export const DIALECTS = ['duckdb', 'spark'] as const;
export type Dialect = (typeof DIALECTS)[number];
export const isDialect = (written: string): written is Dialect => (DIALECTS as readonly string[]).includes(written);

const QUOTE: Readonly<Record<Dialect, string>> = { duckdb: '"', spark: '`' };

/** A name as an identifier that can be nothing else: in the dialect's quotes, those within it doubled. */
export const identifier = (dialect: Dialect, name: string): string => {
  const quote = QUOTE[dialect];
  return quote + name.replaceAll(quote, quote + quote) + quote;
};

const TWINS = import.meta.glob<Readonly<Record<string, unknown>>>('./{de,es,fr,it,pt}/**/*.ts');

/** A module of another language; English stands where it is not there or does not come. */
export const twin = (language: string, module: string): Promise<Readonly<Record<string, unknown>> | undefined> =>
  TWINS[`./${language}/${module}.ts`]?.().catch(() => undefined) ?? Promise.resolve(undefined);

/** The headers that the page is to be served with; see the module. */
export interface HeaderRule {
  readonly path: string;
  readonly headers: readonly (readonly [name: string, value: string])[];
}
export function headerRules(text?: string): readonly HeaderRule[];
export function headersFor(path: string, rules?: readonly HeaderRule[]): Readonly<Record<string, string>>;

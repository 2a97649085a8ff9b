import type { SourceId } from '../sources/bibliography.ts';
import type { Unit } from '../quantity/units.ts';
import { isRefused, type Answer } from '../working/answer.ts';

/** stop: the setting can't be used so · warn: act before spraying · note: worth knowing · good: checked and fine. */
export const SEVERITIES = ['stop', 'warn', 'note', 'good'] as const;
export type Severity = (typeof SEVERITIES)[number];

export interface Amount {
  readonly value: number;
  readonly unit: Unit;
}
export type Parameter = string | readonly string[] | Amount;

/** Something the engine has noticed: a code for the words, the values that go with it, where they come from. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly parameters: Readonly<Record<string, Parameter>>;
  readonly sources: readonly SourceId[];
  /** Field of the document that it is about. */
  readonly path?: string;
}

export const finding = (
  code: string,
  severity: Severity,
  parameters: Finding['parameters'] = {},
  sources: readonly SourceId[] = [],
  path?: string
): Finding => ({ code, severity, parameters, sources, ...(path === undefined ? {} : { path }) });

/** An answer as a parameter; a refused one has nothing to say and is NaN, which the words print as a dash. */
export const amount = (a: Answer): Amount => (isRefused(a) ? { value: NaN, unit: '1' } : { value: a.value, unit: a.unit });
export const share = (value: number): Amount => ({ value: value * 100, unit: '%' });

/** Worst first; within one severity in the order found. */
export const ranked = (findings: readonly Finding[]): readonly Finding[] =>
  [...findings].sort((a, b) => SEVERITIES.indexOf(a.severity) - SEVERITIES.indexOf(b.severity));

import { OWN_REFUSALS } from '../en/strategies/own.ts';

/** Why a formula of the user's own is none, for the reader of documents, which tells the engine's code as `reason`. */
export const whyNoFormula = (p: Readonly<Record<string, number | string>>): string =>
  (OWN_REFUSALS[String(p['reason'])] ?? '').replace(/\{(\w+)\}/g, (_, key: string) => String(p[key] ?? ''));

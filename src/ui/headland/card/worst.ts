import { ranked, type Finding } from '#core/advice/finding.ts';

/** As many as a driver reads before setting off. */
const MOST = 4;

/** The worst findings of a setting: those that forbid it or want something done first. */
export function worst(findings: readonly Finding[]): { readonly first: readonly Finding[]; readonly more: number; readonly stop: boolean } {
  const bad = ranked(findings.filter((f) => f.severity === 'stop' || f.severity === 'warn'));
  return { first: bad.slice(0, MOST), more: Math.max(bad.length - MOST, 0), stop: bad.some((f) => f.severity === 'stop') };
}

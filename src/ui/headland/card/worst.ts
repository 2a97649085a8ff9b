import { ranked, type Finding } from '#core/advice/finding.ts';

/** As many as a driver reads before setting off. */
const MOST = 4;

/** The worst findings of a setting: those that forbid it or want something done first; what two parts of the work find is told once. */
export function worst(findings: readonly Finding[]): { readonly first: readonly Finding[]; readonly more: number; readonly stop: boolean } {
  const once = new Map(findings.map((f) => [f.code + JSON.stringify(f.parameters), f]));
  const bad = ranked([...once.values()].filter((f) => f.severity === 'stop' || f.severity === 'warn'));
  return { first: bad.slice(0, MOST), more: Math.max(bad.length - MOST, 0), stop: bad.some((f) => f.severity === 'stop') };
}

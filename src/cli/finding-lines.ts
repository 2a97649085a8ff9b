import type { Finding } from '#core/advice/finding.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { findingSentence, severityWord } from '#words/index.ts';
import { paragraph } from './layout.ts';

/** Findings in the order given, each with its severity before it and its further lines hung under the first. */
export function findingLines(findings: readonly Finding[], system: UnitSystem): string[] {
  const words = findings.map((f) => severityWord(f.severity));
  const width = Math.max(0, ...words.map((w) => w.length)) + 2;
  return findings.flatMap((f, i) => paragraph(words[i]!.padEnd(width, '\u00a0') + findingSentence(f, system), ' '.repeat(width))).map((l) => l.replace(/^\p{L}+(?: \p{L}+)*\u00a0+/u, (lead) => lead.replaceAll('\u00a0', ' ')));
}

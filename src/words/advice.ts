import type { Finding } from '#core/advice/finding.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { FINDINGS, SEVERITIES } from './en/findings.ts';
import { fill } from './fill.ts';
import { extend, language, look } from './language.ts';
import { capital, spell } from './sentences.ts';

extend({ findings: FINDINGS, severities: SEVERITIES });

/** One line: what is so, and what to do about it. */
export function findingSentence(finding: Finding, system: UnitSystem): string {
  const template = look<string>(language().findings, finding.code);
  return template === undefined ? finding.code : capital(fill(template, finding.parameters, system, spell));
}

import type { Finding } from '../../advice/finding.ts';
import type { Advised } from '../../setting/result.ts';

/** Less air than the alley rule asks for is passed on as a remark: the ribbon decides. */
const PASSED_ON: ReadonlySet<string> = new Set(['air-short']);

/** One caution for each nozzle that it names: over the top is over the top, whether a turn would help or not. */
const cautions = (all: readonly Finding[]): string[] =>
  all
    .filter((f) => f.severity === 'warn' && !PASSED_ON.has(f.code))
    .flatMap((f) => {
      const code = f.code.replace(/^(over-top|under-skirt)-.*/, '$1');
      return Array.isArray(f.parameters.nozzles) ? f.parameters.nozzles.map((n) => `${code} ${n}`) : [code];
    });

/** May a setting not be offered? A stop bars it, so does a caution that today's setting does not have, and more air where today's is too much by the rule. */
export function barred(today: Advised, then: Advised): boolean {
  if (then.findings.some((f) => f.severity === 'stop')) return true;
  const had = new Set(cautions(today.findings));
  if (cautions(then.findings).some((c) => !had.has(c))) return true;
  return then.findings.some((f) => f.code === 'air-too-much') && (then.air.ratio ?? 0) > (today.air.ratio ?? 0) * (1 + 1e-9);
}

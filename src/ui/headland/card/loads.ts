import type { Finding } from '#core/advice/finding.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { cardScreen as words } from '#words/en/headland/card-screen.ts';
import { DASH, formatAmount } from '#words/format.ts';

/** What is poured in, as a table: a column for each kind of load, a line for each product. */
export interface CardLoads {
  readonly area: string;
  readonly columns: readonly { readonly name: string; readonly mix: string }[];
  readonly products: readonly { readonly name: string; readonly perHa: string; readonly amounts: readonly string[] }[];
  readonly findings: readonly Finding[];
}

export function loadsOf(_document: Document, result: Result, system: UnitSystem): CardLoads {
  const amount = (a: Answer) => (isRefused(a) ? DASH : formatAmount(a.value, a.unit, system));
  const { product, machine } = result;
  return {
    area: '',
    columns: [{ name: words.fullTank, mix: formatAmount(machine.tankL, 'L', system) }],
    products: product ? [{ name: product.label.name, perHa: amount(product.perHa), amounts: [amount(product.perTank)] }] : [],
    findings: []
  };
}

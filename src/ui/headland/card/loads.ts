import { PER_TANK } from '#core/dose/product.ts';
import type { Load, LoadsState, PartnerState } from '#core/mix/state.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import { isRefused, type Answer } from '#core/working/answer.ts';
import { derive } from '#core/working/figure.ts';
import { cardScreen as words } from '#words/en/headland/card-screen.ts';
import { DASH, formatAmount } from '#words/format.ts';
import { nozzleNames } from '#words/names.ts';

/** What is poured in, as a table: a column for each kind of load, a line for each product in the order of mixing. */
export interface CardLoads {
  readonly area: string;
  readonly columns: readonly { readonly name: string; readonly mix: string }[];
  readonly products: readonly { readonly name: string; readonly perHa: string; readonly amounts: readonly string[] }[];
}

const UNIT = { kg: 'kg', L: 'Lprod' } as const;

export function loadsOf(state: LoadsState, system: UnitSystem): CardLoads {
  const said = (a: Answer) => (isRefused(a) ? DASH : formatAmount(a.value, a.unit, system));
  const amount = (value: number, { label }: PartnerState) => formatAmount(value, UNIT[label.unit], system);
  const inOrder = state.order.flatMap((step) => (step.kind === 'product' ? state.partners.filter((p) => p.label === step.label) : []));
  const perHa = (p: PartnerState) => said(p.perHa);

  // Without an area there are no loads; what a full tank takes is known all the same.
  if (state.loads.length === 0)
    return {
      area: '',
      columns: [{ name: words.fullTank, mix: said(state.tank) }],
      products: inOrder.map((p) => ({ name: p.label.name, perHa: perHa(p), amounts: [said(derive(PER_TANK[p.label.unit], { M: p.strength, T: state.tank }))] }))
    };

  const of = (load: Load, p: PartnerState) => {
    const mine = load.products.find((each) => each.label === p.label);
    return mine === undefined || isRefused(mine.exact) ? DASH : amount(mine.total, p);
  };
  // Loads that read alike are one column.
  const kinds = new Map<string, { numbers: string[]; mix: string; amounts: string[] }>();
  for (const load of state.loads) {
    const mix = said(load.fill);
    const amounts = inOrder.map((p) => of(load, p));
    const key = [mix, ...amounts].join('|');
    const kind = kinds.get(key) ?? { numbers: [], mix, amounts };
    kind.numbers.push(String(load.number));
    kinds.set(key, kind);
  }
  const columns = [...kinds.values()];
  const name = (numbers: readonly string[]) => (numbers.length === 1 ? words.loadName : numbers.length === state.loads.length ? words.loadsAlike : words.loadNames)(nozzleNames(numbers), String(numbers.length));
  return {
    area: said(state.area),
    columns: columns.map((k) => ({ name: name(k.numbers), mix: k.mix })),
    products: inOrder.map((p, i) => ({ name: p.label.name, perHa: perHa(p), amounts: columns.map((k) => k.amounts[i]!) }))
  };
}

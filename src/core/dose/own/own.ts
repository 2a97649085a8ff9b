import type { Unit } from '../../quantity/units.ts';
import type { Formula, Refused } from '../../working/answer.ts';
import type { Strategy } from '../strategy.ts';
import { OWN_NAMES } from './names.ts';
import { parseOwn } from './parse.ts';
import { computeOf, namesOf, textOf, type Tree } from './tree.ts';
import type { OwnStrategy } from './types.ts';

export type { OwnStrategy };

/**
 * A strategy of the user's own in the shape of the others; refused by name where one of its formulas is none. Whether metres are added to
 * litres is not looked at: the results are taken as L/ha and as a share of the label's dose. Where a formula has no finite value, or one
 * below 0, it gives none (see `derive`).
 */
export function compileOwn(own: OwnStrategy): Strategy | Refused {
  const at = (field: string) => `ownStrategies.${own.id}.${field}`;
  const index = parseOwn(own.index, at('index'));
  if (index.kind === 'refused') return index;
  const water = own.water === undefined ? null : parseOwn(own.water, at('water'));
  if (water?.kind === 'refused') return water;
  const names = namesOf(index);
  return {
    id: `own.${own.id}`,
    name: own.name,
    descriptor: descriptorOf(names),
    ...conventionsOf(names),
    index: formulaOf(index, `own.${own.id}.index`, 'I', '1'),
    ...(water ? { water: formulaOf(water, `own.${own.id}.water`, 'V', 'L/ha'), waterKind: own.waterKind ?? 'dilute' } : {}),
    constants: {},
    validity: ['own-formula'],
    sources: []
  };
}

/** Not in the registry of formulas: those are the engine's. */
function formulaOf(tree: Tree, id: string, symbol: string, unit: Unit): Formula {
  const compute = computeOf(tree);
  return {
    id,
    symbol,
    unit,
    expression: textOf(tree),
    inputs: Object.fromEntries([...namesOf(tree)].map((name) => [name, OWN_NAMES[name as keyof typeof OWN_NAMES]])),
    sources: [],
    certainty: 'stated',
    compute: (v) => {
      const value = compute(v);
      return value >= 0 ? value : NaN;
    }
  };
}

const DESCRIPTORS = ['RL', 'h', 'LWA', 'TRVc', 'TRVg', 'TRVs', 'UCR', 'LAI'] as const;

/** The one descriptor that it scales by; none where there are several. */
function descriptorOf(names: ReadonlySet<string>): Strategy['descriptor'] {
  const used = DESCRIPTORS.filter((d) => names.has(d));
  return used.length === 1 ? used[0]! : null;
}

/** What the names that it uses say of height and width; where it mixes, the crown's and the outline's. */
function conventionsOf(names: ReadonlySet<string>): Pick<Strategy, 'height' | 'width'> {
  const some = (...of: string[]) => of.some((name) => names.has(name));
  return {
    height: some('h', 'A', 'TRVc', 'TRVs', 'LWA', 'UCR', 'LAI', 'Hs') ? 'crown' : some('H', 'TRVg') ? 'ground' : 'none',
    width: some('s', 'A', 'TRVs', 'LAI') ? 'outline' : some('W', 'TRVg', 'TRVc', 'UCR') ? 'greatest' : 'none'
  };
}

/** The strategies of a document that compile, in their order. The reader lets no others in; a document made by other means is passed over there. */
export const ownStrategies = (own: readonly OwnStrategy[] | undefined): readonly Strategy[] =>
  (own ?? []).flatMap((each) => {
    const compiled = compileOwn(each);
    return 'kind' in compiled ? [] : [compiled];
  });

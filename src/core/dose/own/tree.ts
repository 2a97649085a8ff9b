/** Arithmetic as a tree. */
export type Tree =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'minus'; readonly of: Tree }
  | { readonly kind: 'binary'; readonly sign: Sign; readonly left: Tree; readonly right: Tree }
  | { readonly kind: 'call'; readonly name: string; readonly of: readonly Tree[] };
export type Sign = '+' | '-' | '*' | '/' | '^';

type Values = Readonly<Record<string, number>>;

/** Every symbol of a tree, in the order met. */
export function namesOf(tree: Tree, found: Set<string> = new Set()): ReadonlySet<string> {
  if (tree.kind === 'name') found.add(tree.name);
  else if (tree.kind === 'minus') namesOf(tree.of, found);
  else if (tree.kind === 'binary') for (const side of [tree.left, tree.right]) namesOf(side, found);
  else if (tree.kind === 'call') for (const each of tree.of) namesOf(each, found);
  return found;
}

/** Nothing but a finite number goes on, so that 1 / (1 / 0) is not taken for 0, nor (0 / 0) ^ 0 for 1. */
const sure = (value: number): number => (Number.isFinite(value) ? value : NaN);

const SIGNS: Readonly<Record<Sign, (a: number, b: number) => number>> = {
  '+': (a, b) => sure(a + b),
  '-': (a, b) => sure(a - b),
  '*': (a, b) => sure(a * b),
  '/': (a, b) => sure(a / b),
  '^': (a, b) => (a !== a || b !== b ? NaN : sure(a ** b))
};
const FUNCTIONS: Readonly<Record<string, (...of: number[]) => number>> = { min: Math.min, max: Math.max, sqrt: Math.sqrt, exp: Math.exp, log: Math.log, abs: Math.abs };

/** What computes a tree: functions of functions, no text is ever run as code. NaN wherever a step has no finite value. */
export function computeOf(tree: Tree): (v: Values) => number {
  switch (tree.kind) {
    case 'number': {
      const { value } = tree;
      return () => value;
    }
    case 'name': {
      const { name } = tree;
      return (v) => v[name]!;
    }
    case 'minus': {
      const of = computeOf(tree.of);
      return (v) => -of(v);
    }
    case 'binary': {
      const [left, right, apply] = [computeOf(tree.left), computeOf(tree.right), SIGNS[tree.sign]];
      return (v) => apply(left(v), right(v));
    }
    case 'call': {
      const [apply, of] = [FUNCTIONS[tree.name]!, tree.of.map(computeOf)];
      return (v) => sure(apply(...of.map((each) => each(v))));
    }
  }
}

/** How closely a sign binds; a minus before a term looser than a power, closer than a product. */
const RANK = { '+': 1, '-': 1, '*': 2, '/': 2, minus: 3, '^': 4, atom: 5 } as const;
const rank = (t: Tree): number => (t.kind === 'binary' ? RANK[t.sign] : t.kind === 'minus' ? RANK.minus : RANK.atom);

/** A tree as plain arithmetic, as formulas are written here, with no bracket too many and in the order in which it is computed. */
export function textOf(tree: Tree): string {
  const within = (t: Tree, least: number): string => (rank(t) >= least ? textOf(t) : `(${textOf(t)})`);
  switch (tree.kind) {
    case 'number':
      return String(tree.value);
    case 'name':
      return tree.name;
    case 'minus':
      return `-${within(tree.of, RANK.minus)}`;
    case 'call':
      return `${tree.name}(${tree.of.map(textOf).join(', ')})`;
    case 'binary': {
      const own = RANK[tree.sign];
      // A power is read from right to left and its base is a bare term; all others from left to right.
      return tree.sign === '^' ? `${within(tree.left, RANK.atom)} ^ ${within(tree.right, RANK.minus)}` : `${within(tree.left, own)} ${tree.sign} ${within(tree.right, own + 1)}`;
    }
  }
}

import jsep from 'jsep';
import { nearest } from '../../working/nearest.ts';
import { refused, type Refused } from '../../working/answer.ts';
import { OWN_FUNCTIONS, OWN_NAMES } from './names.ts';
import type { Sign, Tree } from './tree.ts';
import { LONGEST_FORMULA } from './types.ts';

/** Terms within each other. */
const DEEPEST = 40;

// The library is made to know our arithmetic and nothing else; nobody else uses it.
jsep.removeAllUnaryOps();
jsep.removeAllBinaryOps();
jsep.removeAllLiterals();
for (const [sign, rank] of [['+', 1], ['-', 1], ['*', 2], ['/', 2]] as const) jsep.addBinaryOp(sign, rank);
jsep.addBinaryOp('^', 4, true);
// A minus before a term binds looser than a power: -a ^ 2 is -(a ^ 2).
jsep.hooks.add('gobble-token', function (env) {
  if (this.char !== '-') return;
  this.index++;
  env.node = { type: 'UnaryExpression', operator: '-', prefix: true, argument: power(this) };
});
function power(scope: jsep.HookScope): jsep.Expression {
  scope.gobbleSpaces();
  const signed = scope.char === '-';
  const base = scope.gobbleToken();
  if (!base) return scope.throwError('a term is missing');
  scope.gobbleSpaces();
  // Behind another minus all powers are taken already; a minus in brackets is a base.
  if (signed || scope.char !== '^') return base;
  scope.index++;
  return { type: 'BinaryExpression', operator: '^', left: base, right: power(scope) };
}

/** Signs as they are printed and typed elsewhere. */
const SAME: Readonly<Record<string, string>> = { '−': '-', '·': '*', '×': '*', '÷': '/', ':': '/' };
const ALLOWED = /[\p{L}\p{N}_.+\-*/^(), \t\n]/u;

/** Carries a refusal out of the walk. */
class Stop extends Error {
  constructor(readonly refusal: Refused) {
    super(refusal.code);
  }
}

/**
 * A formula of the user's own as a tree; it may be any text. Allowed are + - * / ^, a minus before a term, brackets, numbers, the names of
 * `OWN_NAMES` and calls of `OWN_FUNCTIONS`. All else is refused by name, with the place where it stands, counted from 1.
 */
export function parseOwn(text: string, path: string): Tree | Refused {
  const refuse = (code: string, parameters: Record<string, number | string> = {}): Refused => refused(code, path, parameters);
  if (text.length > LONGEST_FORMULA) return refuse('own-too-long', { length: text.length, most: LONGEST_FORMULA });
  const plain = [...text].map((c) => SAME[c] ?? c).join('');
  if (plain.trim() === '') return refuse('own-empty');
  const odd = [...plain].findIndex((c) => !ALLOWED.test(c));
  if (odd >= 0) return refuse('own-character', { character: visible([...plain][odd]!), at: odd + 1 });
  let parsed: jsep.Expression;
  try {
    parsed = jsep(plain);
  } catch (error) {
    const at = error instanceof Error && 'index' in error ? Number(error.index) : plain.length;
    return refuse('own-syntax', { at: Math.min(at, plain.length) + 1 });
  }
  try {
    return walked(parsed as jsep.CoreExpression, 1, refuse);
  } catch (stop) {
    if (stop instanceof Stop) return stop.refusal;
    throw stop;
  }
}

function walked(e: jsep.CoreExpression | null, depth: number, refuse: (code: string, parameters?: Record<string, number | string>) => Refused): Tree {
  const stop = (code: string, parameters: Record<string, number | string> = {}): never => {
    throw new Stop(refuse(code, parameters));
  };
  const below = (each: jsep.Expression | null): Tree => walked(each as jsep.CoreExpression | null, depth + 1, refuse);
  if (depth > DEEPEST) return stop('own-too-deep', { most: DEEPEST });
  switch (e?.type) {
    case 'Literal': {
      const value = Number(e.value);
      // Numbers whose shortest form needs no exponent: formulas are written without.
      return typeof e.value === 'number' && /^\d+(\.\d+)?$/.test(String(value)) ? { kind: 'number', value } : stop('own-number', { number: String(e.raw) });
    }
    case 'Identifier':
      if (Object.hasOwn(OWN_NAMES, e.name)) return { kind: 'name', name: e.name };
      return stop(...unknown('own-unknown-name', e.name, OWN_NAMES));
    case 'UnaryExpression':
      return { kind: 'minus', of: below(e.argument) };
    case 'BinaryExpression':
      return { kind: 'binary', sign: e.operator as Sign, left: below(e.left), right: below(e.right) };
    case 'CallExpression': {
      const name = e.callee.type === 'Identifier' ? String(e.callee['name']) : '';
      const arity = Object.hasOwn(OWN_FUNCTIONS, name) ? OWN_FUNCTIONS[name]! : null;
      if (!arity) return stop(...unknown('own-unknown-function', name, OWN_FUNCTIONS));
      const [least, most] = arity;
      const count = e.arguments.length;
      if (count < least || count > most) return stop('own-arguments', { name, count, least, most });
      return { kind: 'call', name, of: e.arguments.map(below) };
    }
    case 'MemberExpression':
      return stop('own-member');
    case undefined:
    case 'Compound':
    case 'SequenceExpression':
      return stop('own-several');
    default:
      return stop('own-not-arithmetic');
  }
}

/** With the names that were most likely meant, where some come near. */
function unknown(code: string, name: string, all: Readonly<Record<string, unknown>>): [code: string, parameters: Record<string, string>] {
  const known = Object.keys(all);
  const nearest = near(name, known);
  return nearest ? [`${code}-near`, { name, nearest, known: known.join(', ') }] : [code, { name: name || '( )', known: known.join(', ') }];
}

/** What a terminal would obey, or nobody would see, by its code. */
const visible = (c: string): string => (/^\p{C}$/u.test(c) ? `U+${c.codePointAt(0)!.toString(16).toUpperCase().padStart(4, '0')}` : c);

/** Names that begin alike, else the one with the fewest letters to change. */
function near(name: string, known: readonly string[]): string {
  const alike = name.length > 1 ? known.filter((k) => k.toLowerCase().startsWith(name.toLowerCase())) : known.filter((k) => k.toLowerCase() === name.toLowerCase());
  return alike.length > 0 ? alike.join(', ') : nearest(name, known);
}

/** Plain arithmetic of a formula → the same arithmetic in SQL, operation by operation, in double precision. */

/** Functions under the name that both dialects know; `log` there is to base 10 in one and natural in the other. */
const FUNCTIONS: Readonly<Record<string, string>> = { sqrt: 'sqrt', min: 'least', max: 'greatest', exp: 'exp', log: 'ln', asin: 'asin' };
const TOKEN = /\s*(\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|\p{L}[\p{L}\p{N}]*|[-+*/^(),])\s*/uy;

/** A number as a double: the exponent keeps it from being read as a decimal fraction. All digits that it needs to be the same double. */
export function literal(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`no literal for ${value}`);
  const [digits, exponent = '0'] = String(Math.abs(value)).split('e');
  const text = `${digits}e${exponent.replace('+', '')}`;
  return value < 0 ? `(-${text})` : text;
}

/**
 * @param expression + - * / ^ ( ) and sqrt min max exp log asin over numbers and symbols
 * @param name SQL of a symbol
 * @throws Error for anything else: formulas are ours, so it is a programmer's error
 */
export function toSql(expression: string, name: (symbol: string) => string): string {
  const tokens = tokensOf(expression);
  let at = 0;
  const fail = (): never => {
    throw new Error(`no SQL for "${expression}" at ${tokens[at] ?? 'its end'}`);
  };
  const next = (): string => tokens[at++] ?? fail();
  const take = (wanted: string): void => void (tokens[at] === wanted ? at++ : fail());

  /** Operators of one rank, from left to right. */
  const chain = (signs: string, operand: () => string) => (): string => {
    let sql = operand();
    while (at < tokens.length && signs.includes(tokens[at]!)) sql += ` ${next()} ${operand()}`;
    return sql;
  };
  // A minus binds looser than a power and closer than a product: -a^2 is -(a^2).
  const signed = (): string => {
    if (tokens[at] !== '-') return power();
    at++;
    return `(-${signed()})`;
  };
  const product = chain('*/', signed);
  const sum = chain('+-', product);
  // From right to left: a^b^c is a^(b^c).
  const power = (): string => {
    const base = atom();
    if (tokens[at] !== '^') return base;
    at++;
    return `power(${base}, ${signed()})`;
  };
  const atom = (): string => {
    const token = next();
    if (token === '(') {
      const sql = `(${sum()})`;
      take(')');
      return sql;
    }
    if (/^\d/.test(token)) return literal(Number(token));
    if (!/^\p{L}/u.test(token)) at--, fail();
    if (tokens[at] !== '(') return name(token);
    if (!Object.hasOwn(FUNCTIONS, token)) fail();
    at++;
    const values = [sum()];
    while (tokens[at] === ',') at++, values.push(sum());
    take(')');
    return `${FUNCTIONS[token]}(${values.join(', ')})`;
  };

  const sql = sum();
  return at === tokens.length ? sql : fail();
}

function tokensOf(expression: string): string[] {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  while (TOKEN.lastIndex < expression.length) {
    const from = TOKEN.lastIndex;
    const found = TOKEN.exec(expression);
    if (!found) throw new Error(`no SQL for "${expression}" at ${expression.slice(from)}`);
    tokens.push(found[1]!);
  }
  return tokens;
}

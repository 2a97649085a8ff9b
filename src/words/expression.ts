/** Formulas as the trade writes them, from the engine's plain arithmetic. Names and signs only: nothing is reordered. */

const SUBSCRIPT = '₀₁₂₃₄₅₆₇₈₉';

/** q1 → q₁, TRV0 → TRV₀: digits at the end of a symbol stand below the line. */
export const prettySymbol = (symbol: string): string => symbol.replace(/(?<=\p{L})\d+$/u, (d) => [...d].map((c) => SUBSCRIPT[Number(c)]).join(''));

const TOKEN = /\d+(?:\.\d+)?|[\p{L}][\p{L}\p{N}]*|\S/gu;

/** Functions under the name that a reader expects. */
const FUNCTIONS: Readonly<Record<string, string>> = { sqrt: '√', log: 'ln', es: 'eₛ' };
const PI = '3.141592653589793';

/**
 * Writes an expression, each symbol through `name`.
 * @param times sign of multiplication
 */
function write(expression: string, name: (symbol: string) => string, times: string): string {
  const tokens = expression.match(TOKEN) ?? [];
  let out = '';
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!;
    if (t === '*') out += times;
    else if (t === '/') out += ' / ';
    else if (t === '^') {
      const power = tokens[i + 1];
      if (power === '2' || power === '3') {
        out += power === '2' ? '²' : '³';
        i++;
      } else out += '^';
    } else if (t === '-') out += sign(tokens[i - 1]) ? '−' : ' − ';
    else if (t === '+') out += ' + ';
    else if (t === '=') out += ' = ';
    else if (t === ',') out += ', ';
    else if (t === PI) out += 'π';
    else if (/^\p{L}/u.test(t)) {
      const word = tokens[i + 1] === '(' ? (FUNCTIONS[t] ?? t) : name(t);
      // Two words in a row, as in "Tw where es(Tw)".
      out += (/[\p{L}\p{N}]$/u.test(out) ? ' ' : '') + word;
      if (/^\p{L}/u.test(tokens[i + 1] ?? '')) out += ' ';
    } else out += /^\d{5,}$/.test(t) ? t.replace(/\B(?=(\d{3})+$)/g, '\u202f') : t;
  }
  return out.replace(/ {2,}/g, ' ');
}

/** A minus after one of these belongs to the number behind it. */
const sign = (before: string | undefined): boolean => before === undefined || /^[(,*/^+=-]$/.test(before);

/** "600 * Q / (v * B)" → "600·Q / (v·B)" */
export const prettyExpression = (expression: string): string => write(expression, prettySymbol, '·');

/** The same with the values put in: "600 × 14.2 / (5 × 4)"; symbols without a value stand. */
export const filledExpression = (expression: string, values: Readonly<Record<string, string>>): string =>
  write(
    expression,
    (symbol) => {
      const value = Object.hasOwn(values, symbol) ? values[symbol]! : undefined;
      if (value === undefined) return prettySymbol(symbol);
      return value.startsWith('−') ? `(${value})` : value;
    },
    ' × '
  );

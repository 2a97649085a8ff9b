/** 10⁰ … 10¹⁵, all exact in double precision. */
const TEN = Array.from({ length: 16 }, (_, n) => 10 ** n);
const LONG = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d{1,4})?$/;

/**
 * The decimal number in `text[from…to)`, correctly rounded; NaN where no number stands. The point may be a comma when `comma`.
 * Up to 15 digits are read without making a text of them: a whole number below 2⁵³ divided by an exact power of ten is
 * rounded once, so it is the same double that the language's own conversion gives (Clinger 1990).
 */
export function parseNumber(text: string, from: number, to: number, comma: boolean): number {
  let i = from;
  let sign = 1;
  let c = text.charCodeAt(i);
  if (c === 45 || c === 43) {
    if (c === 45) sign = -1;
    i++;
  }
  let whole = 0;
  let digits = 0;
  let point = -1;
  for (; i < to; i++) {
    c = text.charCodeAt(i);
    if (c >= 48 && c <= 57) {
      whole = whole * 10 + (c - 48);
      digits++;
    } else if ((c === 46 || (comma && c === 44)) && point < 0) point = digits;
    else return parseLong(text.slice(from, to), comma);
  }
  if (digits === 0 || digits > 15) return parseLong(text.slice(from, to), comma);
  return (sign * whole) / (point < 0 ? 1 : TEN[digits - point]!);
}

/** Many digits, or an exponent. An overflow is infinite, which every range refuses. */
function parseLong(text: string, comma: boolean): number {
  const point = comma ? text.replace(',', '.') : text;
  return LONG.test(point) ? Number(point) : NaN;
}

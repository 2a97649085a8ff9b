/** Widths in drawing.css are multiples of one stroke; programs that read SVG seldom reckon. */
const PRODUCT = /calc\((-?[\d.]+)px \* ([\d.]+)\)/g;
const NAMES = /var\((--[\w-]+)\)/g;

/** The page trusts no text as markup; a drawing of ours is parsed only to see which rules match it, and is never put into the page. */
interface Trust {
  createPolicy(name: string, rules: { createHTML(text: string): string }): { createHTML(text: string): unknown };
}
const policy = (globalThis as { trustedTypes?: Trust }).trustedTypes?.createPolicy('rowtailor-drawing', { createHTML: (text) => text });

/**
 * The rules of the page's own style sheets that the drawing uses, with the theme's values put in, so that the file looks as the screen
 * does and stands alone. What the page hides or fades stays behind: only rules that match an element of the drawing are taken.
 */
export function styleFor(svg: string): string {
  const drawing = new DOMParser().parseFromString((policy?.createHTML(svg) ?? svg) as string, 'image/svg+xml').documentElement;
  const rules = [...document.styleSheets].flatMap((sheet) => [...sheet.cssRules]).filter((r) => r instanceof CSSStyleRule);
  const used = rules.filter((r) => /\.|svg/.test(r.selectorText) && drawing.querySelector(r.selectorText)).map((r) => r.cssText);
  const values = getComputedStyle(document.documentElement);
  return `svg{background:${values.getPropertyValue('--paper').trim()}}${used.join('')}`
    .replaceAll(NAMES, (_, name: string) => values.getPropertyValue(name).trim())
    .replaceAll(PRODUCT, (_, a: string, b: string) => `${Number((Number(a) * Number(b)).toFixed(3))}px`);
}

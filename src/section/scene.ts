/** One mark of a drawing: an SVG element as plain data, so that one builder serves screen, file and test. */
export interface Mark {
  readonly tag: 'g' | 'path' | 'line' | 'rect' | 'circle' | 'text';
  /** Class names; the look lives in the style sheet. */
  readonly cls?: string;
  /** Stable identity among its siblings. */
  readonly key?: string;
  readonly attrs?: Readonly<Record<string, string | number>>;
  readonly text?: string;
  readonly children?: readonly Mark[];
}

/** A value on the drawing that can be dragged, stepped by key and spoken. */
export interface Handle {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Change of the value per pixel dragged right and down. A turning handle has `pivot` instead. */
  readonly perX: number;
  readonly perY: number;
  readonly pivot?: { readonly x: number; readonly y: number; readonly mirrored: boolean };
  readonly value: number;
}

/** Where a measurement is typed: the dimension's own label. */
export interface Field {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

/** Nozzle on the drawing, for tapping. */
export interface Spot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
}

export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  readonly handles: readonly Handle[];
  readonly fields: readonly Field[];
  readonly spots: readonly Spot[];
}

/** Two decimals at the most: a hundredth of a pixel is enough, and goldens stay readable. */
export const px = (v: number): number => Math.round(v * 100) / 100;

export const mark = (tag: Mark['tag'], cls: string, attrs: Mark['attrs'] = {}, more: Pick<Mark, 'key' | 'text' | 'children'> = {}): Mark => ({
  tag,
  cls,
  attrs,
  ...more
});
/** Marks that come and go have a key, so that those after them are not made anew. */
const keyed = (key: string | undefined) => (key === undefined ? {} : { key });
export const group = (cls: string, children: readonly Mark[], attrs: Mark['attrs'] = {}, key?: string): Mark => ({ tag: 'g', cls, attrs, children, ...keyed(key) });
export const label = (cls: string, x: number, y: number, text: string, attrs: Mark['attrs'] = {}, key?: string): Mark =>
  mark('text', cls, { x: px(x), y: px(y), ...attrs }, { text, ...keyed(key) });
export const line = (cls: string, x1: number, y1: number, x2: number, y2: number, key?: string): Mark =>
  mark('line', cls, { x1: px(x1), y1: px(y1), x2: px(x2), y2: px(y2) }, keyed(key));

/** Characters that no XML file may hold (XML 1.0, 2.2): half of a pair, most controls, two that are none. */
const UNFIT = /[^\t\n\r -\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;
const escape = (s: string): string => s.replace(UNFIT, '\ufffd').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

function element(m: Mark, indent: string): string {
  const attrs = [...(m.cls ? [['class', m.cls] as const] : []), ...Object.entries(m.attrs ?? {})].map(([k, v]) => ` ${k}="${escape(String(v))}"`).join('');
  if (m.text !== undefined) return `${indent}<${m.tag}${attrs}>${escape(m.text)}</${m.tag}>`;
  if (!m.children?.length) return `${indent}<${m.tag}${attrs}/>`;
  return `${indent}<${m.tag}${attrs}>\n${m.children.map((c) => element(c, `${indent}  `)).join('\n')}\n${indent}</${m.tag}>`;
}

/** The drawing as SVG text. `style` is put inside so that the file stands alone. */
export function toSvg(scene: Scene, title: string, style = ''): string {
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${scene.width} ${scene.height}" width="${scene.width}" height="${scene.height}" role="img">`;
  return [head, `  <title>${escape(title)}</title>`, ...(style ? [`  <style>${style}</style>`] : []), ...scene.marks.map((m) => element(m, '  ')), '</svg>', ''].join('\n');
}

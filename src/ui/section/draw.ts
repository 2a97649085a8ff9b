import type { Mark } from '#section/scene.ts';

/** A mark and the element that shows it. */
interface Drawn {
  mark: Mark;
  readonly element: SVGElement;
  children: readonly Drawn[];
}
/** What a layer shows now. */
export type Drawing = readonly Drawn[];

const SVG = 'http://www.w3.org/2000/svg';

function made(mark: Mark): Drawn {
  const element = document.createElementNS(SVG, mark.tag);
  if (mark.cls !== undefined) element.setAttribute('class', mark.cls);
  for (const name in mark.attrs) element.setAttribute(name, String(mark.attrs[name]));
  if (mark.text !== undefined) element.textContent = mark.text;
  return { mark, element, children: mark.children ? draw(element, [], mark.children) : [] };
}

function change(drawn: Drawn, mark: Mark): void {
  const { element, mark: before } = drawn;
  if (mark === before) return;
  if (mark.cls === undefined) element.removeAttribute('class');
  else if (mark.cls !== before.cls) element.setAttribute('class', mark.cls);
  for (const name in mark.attrs) if (mark.attrs[name] !== before.attrs?.[name]) element.setAttribute(name, String(mark.attrs[name]));
  for (const name in before.attrs) if (mark.attrs?.[name] === undefined) element.removeAttribute(name);
  if (mark.text !== before.text) element.textContent = mark.text ?? '';
  if (mark.children || before.children) drawn.children = draw(element, drawn.children, mark.children ?? []);
  drawn.mark = mark;
}

const alike = (a: Mark, b: Mark): boolean => a.key === b.key && a.tag === b.tag;

/**
 * Brings what `parent` shows from `before` to `marks` and touches only what differs: a drag changes a few numbers of some hundred
 * elements, sixty times a second. Marks are the same by key, or by place where they have none.
 */
export function draw(parent: SVGElement, before: Drawing, marks: readonly Mark[]): Drawing {
  if (before.length === marks.length && before.every((d, i) => alike(d.mark, marks[i]!))) {
    for (let i = 0; i < marks.length; i++) change(before[i]!, marks[i]!);
    return before;
  }
  const left = new Map(before.map((d, i) => [d.mark.key ?? i, d]));
  const now = marks.map((mark, i) => {
    const old = left.get(mark.key ?? i);
    if (!old || !alike(old.mark, mark)) return made(mark);
    left.delete(mark.key ?? i);
    change(old, mark);
    return old;
  });
  for (const { element } of left.values()) element.remove();
  let next: SVGElement | null = null;
  for (const { element } of now.toReversed()) {
    if (element.parentNode !== parent || element.nextSibling !== next) parent.insertBefore(element, next);
    next = element;
  }
  return now;
}

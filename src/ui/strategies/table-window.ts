/** Browsers lay nothing out beyond some tens of millions of px; longer tables are scrolled through faster than they are high. */
const MOST_PX = 8_000_000;

/** What of a long list is to be seen. */
export interface Window {
  /** Height of what is scrolled, px. */
  readonly height: number;
  readonly first: number;
  readonly last: number;
  /** Where the first line stands in what is scrolled, px. */
  readonly top: number;
}

/**
 * The lines that a view shows, with some beyond its edges.
 * @param scrolled px scrolled; `view` px of the view; `line` px of a line; `beyond` lines drawn outside the view
 */
export function windowOf(count: number, scrolled: number, view: number, line: number, beyond = 4): Window {
  const whole = count * line;
  const height = Math.min(whole, MOST_PX);
  const most = Math.max(height - view, 0);
  const at = Math.min(Math.max(scrolled, 0), most);
  // Px of the whole list above the view: the same as what is scrolled wherever the list has its own height.
  const above = height === whole || most === 0 ? at : (at / most) * (whole - view);
  const first = Math.max(Math.floor(above / line) - beyond, 0);
  const last = Math.min(Math.ceil((above + view) / line) + beyond, count);
  return { height, first, last, top: at - (above - first * line) };
}

/** How far to scroll so that a line is in view; what is scrolled now where it already is. */
export function scrolledTo(index: number, count: number, scrolled: number, view: number, line: number): number {
  const whole = count * line;
  const height = Math.min(whole, MOST_PX);
  const most = Math.max(height - view, 0);
  const stretch = height === whole || most === 0 ? 1 : (whole - view) / most;
  const above = Math.min(Math.max(scrolled, 0), most) * stretch;
  const wanted = index * line < above ? index * line : (index + 1) * line > above + view ? (index + 1) * line - view : above;
  return wanted / stretch;
}

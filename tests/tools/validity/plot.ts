/** Small plots as SVG text: axes, lines, ranges, points. Light and dark by the reader's own scheme. */

const WIDTH = 720;
const STYLE = `
svg{font:13px system-ui,sans-serif;fill:#222}
.paper{fill:#fff}.grid{stroke:#ddd}.axis{stroke:#666}.model{stroke:#0b6e8f;fill:none;stroke-width:2}.dot{fill:#0b6e8f}.half{stroke:#0b6e8f;stroke-width:10;stroke-opacity:.28}.band{stroke:#0b6e8f;stroke-width:1.5}
.said{stroke:#b4400a;stroke-width:4;fill:none}.point{fill:#b4400a}.quiet{fill:#555}.soft{stroke-dasharray:7 4}.fine{stroke-dasharray:2 3}
@media(prefers-color-scheme:dark){svg{fill:#e8e8e8}.paper{fill:#16181a}.grid{stroke:#3a3d40}.axis{stroke:#999}.model,.band{stroke:#5cc4e6}.dot{fill:#5cc4e6}.half{stroke:#5cc4e6}.said{stroke:#ff9a5c}.point{fill:#ff9a5c}.quiet{fill:#b5b5b5}}
`.trim();

/** A coordinate as it is written: a tenth of a pixel is more than a screen shows, and hides the last bits of a sum. */
const at = (v: number): string => String(Math.round(v * 10) / 10 + 0);
const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');

export interface Axis {
  readonly from: number;
  readonly to: number;
  readonly ticks: readonly number[];
  readonly label: string;
  readonly unit?: string;
}
export type Place = readonly [x: number, y: number];

const text = (x: number, y: number, said: string, anchor: 'start' | 'middle' | 'end' = 'start', kind = ''): string =>
  `<text x="${at(x)}" y="${at(y)}"${anchor === 'start' ? '' : ` text-anchor="${anchor}"`}${kind ? ` class="${kind}"` : ''}>${escaped(said)}</text>`;

const whole = (title: string, description: string, height: number, marks: readonly string[]): string =>
  [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${at(height)}" width="${WIDTH}" height="${at(height)}" role="img" aria-labelledby="t d">`,
    `<title id="t">${escaped(title)}</title>`,
    `<desc id="d">${escaped(description)}</desc>`,
    `<style>${STYLE}</style>`,
    `<rect class="paper" width="${WIDTH}" height="${at(height)}"/>`,
    ...marks,
    '</svg>\n'
  ].join('\n');

const place = ({ from, to }: Axis, low: number, high: number) => (v: number) => low + ((v - from) / (to - from)) * (high - low);
const tick = (v: number, unit = ''): string => `${String(v).replace('-', '−')}${unit}`;

/** One line of the model. */
export interface Line {
  readonly points: readonly Place[];
  readonly kind: 'model' | 'model soft' | 'model fine';
  /** Written at the line's end, one line of text for each. */
  readonly label: readonly string[];
  /** Pixels by which the label is moved, where two would meet. */
  readonly shift?: number;
}

/** What was published of it. */
export interface Said {
  readonly points?: readonly Place[];
  /** An upright range. */
  readonly range?: { readonly x: number; readonly y: Place; readonly label: readonly string[] };
}

const LINE_HEIGHT = 16;

/** Lines of the model over two axes, with what was published. */
export function lines(title: string, description: string, x: Axis, y: Axis, drawn: readonly Line[], said: Said): string {
  const [left, right, top, bottom] = [64, 176, 62, 48];
  const height = 380;
  const px = place(x, left, WIDTH - right);
  const py = place(y, height - bottom, top);
  const path = (points: readonly Place[]): string => 'M' + points.map((p) => `${at(px(p[0]))} ${at(py(p[1]))}`).join('L');
  const label = (l: Line): string[] => {
    const [ex, ey] = l.points.at(-1)!;
    return l.label.map((said, i) => text(px(ex) + 8, py(ey) + 4 + (l.shift ?? 0) + i * LINE_HEIGHT, said));
  };
  const { range, points = [] } = said;
  return whole(title, description, height, [
    text(12, 22, title),
    text(12, top - 20, y.label, 'start', 'quiet'),
    ...y.ticks.flatMap((t) => [`<path class="grid" d="M${left} ${at(py(t))}H${WIDTH - right}"/>`, text(left - 8, py(t) + 4, tick(t, y.unit), 'end', 'quiet')]),
    ...x.ticks.map((t) => text(px(t), height - bottom + 18, tick(t, x.unit), 'middle', 'quiet')),
    `<path class="axis" d="M${left} ${height - bottom}H${WIDTH - right}"/>`,
    text((left + WIDTH - right) / 2, height - 8, x.label, 'middle', 'quiet'),
    ...(range ? [`<path class="said" d="M${at(px(range.x))} ${at(py(range.y[0]))}V${at(py(range.y[1]))}"/>`, ...range.label.map((l, i) => text(px(range.x) + 10, py(range.y[0]) - (range.label.length - 1 - i) * LINE_HEIGHT, l, 'start', 'point'))] : []),
    ...drawn.map((l) => `<path class="${l.kind}" d="${path(l.points)}"/>`),
    ...drawn.flatMap(label),
    ...points.map((p) => `<circle class="point" cx="${at(px(p[0]))}" cy="${at(py(p[1]))}" r="5"/>`)
  ]);
}

/** One row of a plot of ranges. */
export interface RangeRow {
  readonly name: string;
  readonly published: Place;
  readonly value: number;
  /** Over what was guessed, and with the model's own band. */
  readonly over?: Place;
  readonly band?: Place;
  /** Written at the right. */
  readonly note?: string;
}

/** Ranges one below the other over one axis: published above, model below. What lies beyond the axis ends at its end. */
export function ranges(title: string, description: string, x: Axis, rows: readonly RangeRow[], key: string): string {
  const [left, right, top, row] = [190, 118, 68, 40];
  const bottom = top + row * rows.length;
  const px = place(x, left, WIDTH - right);
  const inside = (v: number): number => px(Math.min(x.to, Math.max(x.from, v)));
  const across = (kind: string, [a, b]: Place, y: number): string => `<path class="${kind}" d="M${at(inside(a))} ${at(y)}H${at(inside(b))}"/>`;
  return whole(title, description, bottom + 52, [
    text(12, 22, title),
    text(12, 44, key, 'start', 'quiet'),
    ...x.ticks.flatMap((t) => [`<path class="grid" d="M${at(px(t))} ${top - 6}V${bottom}"/>`, text(px(t), bottom + 18, tick(t, x.unit), 'middle', 'quiet')]),
    text((left + WIDTH - right) / 2, bottom + 40, x.label, 'middle', 'quiet'),
    ...rows.flatMap((r, i) => {
      const y = top + row * (i + 0.5);
      const [a, b] = r.published;
      return [
        text(left - 10, y + 4, r.name, 'end'),
        a === b ? `<circle class="point" cx="${at(inside(a))}" cy="${at(y - 8)}" r="5"/>` : across('said', r.published, y - 8),
        ...(r.band ? [across('band', r.band, y + 7)] : []),
        ...(r.over ? [across('half', r.over, y + 7)] : []),
        `<circle class="dot" cx="${at(inside(r.value))}" cy="${at(y + 7)}" r="5"/>`,
        ...(r.note ? [text(WIDTH - right + 10, y + 4, r.note, 'start', 'quiet')] : [])
      ];
    })
  ]);
}

import { converted, entered, type UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import type { Frame } from './frame.ts';
import { group, label, mark, px, type Mark, type Scene } from './scene.ts';
import { sectionScene, type SectionWords } from './section.ts';
import { sprayOver, sprayUnder, type SprayDrawn, type SprayRoom, type SprayWords } from './spray-layer.ts';

/** Words that stand on the sheet alone. */
export interface SheetWords {
  readonly section: SectionWords;
  readonly spray: SprayWords;
  /** A measurement by the id of its place in the drawing: its name and its amount. */
  readonly measure: (id: string, value: number) => readonly [name: string, amount: string];
  /** Length of the scale bar. */
  readonly length: (metres: number) => string;
  /** Lines under the drawing. */
  readonly caption: readonly string[];
}

/** The same layout whatever the screen. */
const WIDTH = 1200;
const HEIGHT = 720;
const MARGIN = 20;
const LINE = 20;
/** Of the drawing as it is on the screen: what a straight line tells of the nozzles is not what the model tells. */
const LEFT_OUT = new Set(['rays', 'bars', 'bars-title', 'verdict-lost', 'verdict-quiet', 'verdict-under']);

/** The section with the spray as a sheet that stands alone: measurements written out, a scale bar, a caption. */
export function spraySheet(result: Result, ghost: Result | null, drawn: SprayDrawn, room: SprayRoom, system: UnitSystem, words: SheetWords): Scene {
  const scene = sectionScene(result, { width: WIDTH, height: HEIGHT, system, words: words.section, ghost });
  const { frame, marks, under } = scene;
  const keep = (all: readonly Mark[]) => all.filter((m) => !LEFT_OUT.has(m.key ?? ''));
  const cls = drawn.alone === null ? 'spray-layer' : 'spray-layer alone';
  const height = HEIGHT + LINE * words.caption.length + MARGIN;
  return {
    ...scene,
    height,
    handles: [],
    fields: [],
    spots: [],
    marks: [
      mark('rect', 'sheet', { x: 0, y: 0, width: WIDTH, height }),
      ...keep(marks.slice(0, under)),
      group(`${cls} under`, sprayUnder(drawn, room.widthM, words.spray, frame)),
      ...keep(marks.slice(under)),
      group(`${cls} over`, sprayOver(drawn, room, words.spray, frame)),
      ...scene.fields.flatMap(({ id, x, y }) => {
        const [name, amount] = words.measure(id, scene.handles.find((h) => h.id === id)!.value);
        return [label('sheet-name', x, y + 20, name), label('sheet-amount', x, y + 42, amount)];
      }),
      scaleBar(frame, system, words.length),
      ...words.caption.map((text, i) => label(i === 0 ? 'sheet-title' : 'sheet-line', MARGIN, HEIGHT + LINE * (i + 0.5), text))
    ]
  };
}

/** One metre, or three feet, in two tones. */
function scaleBar(frame: Frame, system: UnitSystem, length: (metres: number) => string): Mark {
  const metres = entered(converted('m', system) ? 3 : 1, 'm', system);
  const half = (metres * frame.scale) / 2;
  const y = frame.groundY + 50;
  return group('scale-bar', [
    mark('rect', 'scale-dark', { x: MARGIN, y: px(y), width: px(half), height: 7 }),
    mark('rect', 'scale-light', { x: px(MARGIN + half), y: px(y), width: px(half), height: 7 }),
    label('sheet-name', MARGIN + 2 * half + 7, y + 8, length(metres))
  ]);
}

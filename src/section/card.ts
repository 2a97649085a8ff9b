import type { NozzleState, SprayerState } from '#core/sprayer/sprayer.ts';
import type { Frame } from './frame.ts';
import { bodyReach, silhouette } from './machine.ts';
import { nozzleColour } from './palette.ts';
import { group, label, line, mark, px, type Mark, type Scene } from './scene.ts';

/** Words that stand in the diagram of a cab card. */
export interface CardWords {
  readonly left: string;
  readonly right: string;
  /** Where one looks from, and what left and right mean. */
  readonly behind: string;
  readonly facing: string;
  readonly shut: string;
  /** Open, but on a side that does not spray in this way of driving. */
  readonly sideOff: string;
  readonly noSize: string;
  readonly colour: (name: string) => string;
  /** E.g. "up 10°"; degrees above 0 turn it up. */
  readonly turned: (degrees: number) => string;
}

/** Where the lines of the nozzles stand: beside the machine, led to their places; or, on a phone, under it. */
interface Layout {
  readonly width: number;
  /** Words of one side. */
  readonly column: number;
  /** Height of one nozzle's line, and of the room above the lines. */
  readonly row: number;
  readonly head: number;
  readonly foot: number;
  readonly beside: boolean;
}
const BESIDE: Layout = { width: 1100, column: 400, row: 40, head: 44, foot: 40, beside: true };
const UNDER: Layout = { width: 640, column: 300, row: 62, head: 300, foot: 10, beside: false };
const LEAST_ROWS = 7;
const DOT = 12;
const CONE = 46;
/** From the start of a line to its marker and to its words. */
const TO_MARKER = 92;
const TO_WORDS = 116;
const MOST_CHARACTERS = { id: 5, size: 11, more: 22 } as const;

/**
 * The machine from behind, as the driver finds it when walking up to it: the driver's left is on the left. Each nozzle has a line of
 * its own, in the order of the heights; open ones carry a cone in the direction they point to, shut ones a barred box. Drawn for
 * print in black: colour fills only what a word names as well.
 */
export function cardScene(sprayer: SprayerState, words: CardWords, narrow = false): Scene {
  const layout = narrow ? UNDER : BESIDE;
  const { width, row, head, foot, beside } = layout;
  const { machine, nozzles } = sprayer;
  const side = (which: 'left' | 'right') => nozzles.filter((n) => n.position.side === which).sort((a, b) => b.position.heightM - a.position.heightM || a.position.offsetM - b.position.offsetM);
  const [left, right] = [side('left'), side('right')];
  const rows = Math.max(left.length, right.length, beside ? LEAST_ROWS : 1);
  const height = head + rows * row + foot;
  const frame = frameOf(sprayer, layout, height);
  const nameY = beside ? 30 : head - 14;
  const lines = (all: readonly NozzleState[], sign: -1 | 1) => all.flatMap((n, i) => nozzleMarks(n, head + (i + (beside ? (rows - all.length) / 2 : 0) + 0.5) * row, sign, frame, layout, words));
  const marks: Mark[] = [
    label('card-side', 0, nameY, words.left),
    label('card-side', width - layout.column, nameY, words.right),
    ...(beside ? [`${words.behind} ${words.facing}`] : [words.behind, words.facing]).map((text, i) => label('card-behind', width / 2, beside ? height - 6 : 22 + i * 25, text, { 'text-anchor': 'middle' })),
    line('card-ground', width / 2 - 150, frame.groundY, width / 2 + 150, frame.groundY),
    silhouette(machine.outlet, machine.bodyWidthM, Math.min(...nozzles.map((n) => n.position.offsetM)), frame),
    ...lines(left, -1),
    ...lines(right, 1)
  ];
  return { width, height, marks, handles: [], fields: [], spots: [] };
}

/** True to scale, as large as the room for the machine lets it be. */
function frameOf({ machine, nozzles }: SprayerState, layout: Layout, height: number): Frame {
  const { width, column, head, foot, beside } = layout;
  // The cones at the sides need their room as well.
  const room = (beside ? width - 2 * column : width) - 2 * CONE - 40;
  const top = beside ? head : 60;
  const groundY = beside ? height - foot : head - 52;
  const reach = bodyReach(machine.outlet);
  const halfM = Math.max(machine.bodyWidthM / 2, reach.halfM, ...nozzles.map((n) => n.position.offsetM), 0.3);
  const topM = Math.max(...nozzles.map((n) => n.position.heightM), reach.topM);
  const scale = Math.min(room / (2 * halfM), (groundY - top - CONE) / topM);
  const x = (m: number) => width / 2 + m * scale;
  const z = (m: number) => groundY - m * scale;
  return { width, height, scale, x, z, compact: !beside, left: column, right: width - column, top, groundY, ceilingM: topM };
}

function nozzleMarks(n: NozzleState, y: number, sign: -1 | 1, frame: Frame, layout: Layout, words: CardWords): Mark[] {
  const at = { x: frame.x(sign * n.position.offsetM), y: frame.z(n.position.heightM) };
  const start = sign < 0 ? 0 : layout.width - layout.column;
  const state = n.spraying ? 'open' : n.open ? 'off' : 'shut';
  const said = state === 'shut' ? words.shut : state === 'off' ? words.sideOff : (n.size?.id ?? words.noSize);
  const more = state === 'open' ? [...(n.size?.colour === undefined ? [] : [words.colour(n.size.colour)]), ...(n.swivelDeg === 0 ? [] : [words.turned(n.swivelDeg)])].join(', ') : '';
  // Beside the machine one line holds it all, under it a second line does. A leader begins about where the words end: there is no font here to measure.
  const size = short(said, MOST_CHARACTERS.size);
  const beyond = TO_WORDS + 17 * size.length + 8;
  const place = layout.beside ? { size: 10, x: beyond, y: 9 } : { size: more === '' ? 10 : -3, x: TO_WORDS, y: 25 };
  return [
    group(`card-nozzle ${state}`, [
      ...(layout.beside ? [line('card-leader', sign < 0 ? start + beyond + 13 * short(more, MOST_CHARACTERS.more).length + 8 : start - 14, y, at.x, at.y)] : []),
      ...(state === 'open' ? [cone(at, sign, n.angle.value)] : []),
      marker(state, at.x, at.y, undefined),
      label('card-id', start, y + 10, short(n.position.id, MOST_CHARACTERS.id)),
      marker(state, start + TO_MARKER, y, n.size?.colour),
      label('card-said', start + TO_WORDS, y + place.size, size),
      ...(more === '' ? [] : [label('card-more', start + place.x, y + place.y, short(more, MOST_CHARACTERS.more))])
    ])
  ];
}

/** Names of the user's own machines and tables may be long; the line is not. */
const short = (text: string, most: number): string => (text.length > most ? `${text.slice(0, most - 1)}…` : text);

/** Open: a ring, filled with the nozzle's colour where one is named. Shut, or its side off: a box crossed out by bars. */
function marker(state: 'open' | 'off' | 'shut', x: number, y: number, colour: string | undefined): Mark {
  if (state === 'open') return mark('circle', 'card-open', { cx: px(x), cy: px(y), r: DOT, fill: colour === undefined ? '#fff' : nozzleColour(colour) });
  const [left, right, top, bottom] = [px(x - DOT), px(x + DOT), px(y - DOT), px(y + DOT)];
  return group('card-shut', [
    mark('rect', 'card-box', { x: left, y: top, width: 2 * DOT, height: 2 * DOT }),
    mark('path', 'card-bars', { d: `M${left} ${px(y)}L${px(x)} ${top}M${left} ${bottom}L${right} ${top}M${px(x)} ${bottom}L${right} ${px(y)}` })
  ]);
}

/** A short cone where the nozzle points, so that a turned one is seen. */
function cone(at: { readonly x: number; readonly y: number }, sign: -1 | 1, angleDeg: number): Mark {
  const point = (far: number, turn: number) => {
    const a = ((angleDeg + turn) * Math.PI) / 180;
    return `${px(at.x + sign * far * Math.cos(a))} ${px(at.y - far * Math.sin(a))}`;
  };
  return mark('path', 'card-cone', { d: `M${point(DOT, 0)}L${point(CONE, 10)}L${point(CONE, -10)}Z` });
}

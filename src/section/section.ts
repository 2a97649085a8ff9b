import { stretchedTo } from '#core/canopy/outline.ts';
import type { UnitSystem } from '#core/quantity/units.ts';
import type { Result } from '#core/setting/result.ts';
import { valueOf } from '#core/working/answer.ts';
import { frameFor, type Extent, type Frame } from './frame.ts';
import { bodyReach, nozzleDots, silhouette } from './machine.ts';
import { ground, heightRule, profileBars, spacingDimension } from './measures.ts';
import { group, label, line, mark, px, type Field, type Handle, type Mark, type Scene } from './scene.ts';
import { spray } from './spray.ts';
import { outlinePath, trees } from './tree.ts';

/** Words that stand in the drawing. */
export interface SectionWords {
  readonly bars: string;
  readonly shutNozzles: (ids: readonly string[]) => string;
  readonly over: (ids: readonly string[], share: string, short: boolean) => string;
  readonly under: (ids: readonly string[], share: string, short: boolean) => string;
  readonly ghost: (name: string) => string;
  readonly tallest: string;
  readonly percent: (share: number) => string;
  /** A figure of the height rule, with the language's decimal mark. */
  readonly figure?: (value: number) => string;
}

export interface SectionOptions {
  readonly width: number;
  readonly height: number;
  readonly system: UnitSystem;
  readonly words: SectionWords;
  /** Another rung of the same block, drawn dashed. */
  readonly ghost?: Result | null;
  /** Nozzle position whose swivel handle is shown. */
  readonly selected?: string | null;
  /** Extent to keep to while something is dragged. */
  readonly hold?: Extent | null;
}

/** The drawing with its measure, for what is laid into it. */
export interface SectionScene extends Scene {
  readonly frame: Frame;
  /** How many marks, trees and ghost, lie under what is laid in. */
  readonly under: number;
}

/** What must fit into the picture: the canopy, the ghost's and the machine. */
export function extentOf(result: Result, ghost: Result | null): Extent {
  const { figures, aimTopM } = result.canopy;
  return {
    rowSpacingM: figures.R.value,
    widthM: Math.max(figures.W.value, ghost?.canopy.figures.W.value ?? 0, 0.6),
    heightM: Math.max(aimTopM, ghost?.canopy.aimTopM ?? 0, bodyReach(result.machine.outlet).topM, ...result.machine.nozzles.map((n) => n.heightM + 0.15))
  };
}

/** The section: machine in the middle, a half row and more on each side, as marks, handles and places for the fields. */
export function sectionScene(result: Result, options: SectionOptions): SectionScene {
  const { system, words, selected = null } = options;
  const ghost = options.ghost ?? null;
  const { canopy, sprayer, machine } = result;
  const { H, W, R } = canopy.figures;
  const ghostCanopy = ghost?.canopy;
  const frame = frameFor(options.width, options.height, options.hold ?? extentOf(result, ghost));
  const trunkX = R.value / 2;
  const aimed = stretchedTo(canopy.outline, canopy.aimTopM);
  const lad = valueOf(canopy.figures.LAD) ?? 0;

  const rays = sprayer.nozzles.map((n) => spray(n, trunkX, aimed, frame)).filter((m) => m !== null);
  const dots = nozzleDots(sprayer, selected, frame);
  const ruleX = frame.compact ? frame.left : frame.x(-trunkX) - (Math.max(W.value, ghostCanopy?.figures.W.value ?? 0) / 2) * frame.scale - 16;
  const handles = handlesOf(result, frame, selected);
  const marks: Mark[] = [
    ground(frame),
    heightRule(Math.max(canopy.aimTopM, 1), ruleX, system, frame, words.figure),
    ...trees(canopy.outline, lad, H.value, frame, trunkX),
    ...tallest(result, trunkX, frame, words),
    ...(ghost ? [ghostOf(ghost, canopy.aimTopM, trunkX, frame, words)] : []),
    group('rays', [...rays.filter((r) => r.cls?.includes('shut')), ...rays.filter((r) => !r.cls?.includes('shut'))], {}, 'rays'),
    silhouette(machine.outlet, machine.bodyWidthM, Math.min(...machine.nozzles.map((n) => n.offsetM)), frame),
    group('nozzles', dots.marks, {}, 'nozzles'),
    spacingDimension(trunkX, frame),
    ...verdictLabels(result, frame, words),
    ...leaders(handles, frame),
    ...(frame.compact
      ? []
      : [label('bars-title', 8, 16, words.bars, {}, 'bars-title'), profileBars(sprayer.bands, 8, Math.max(Math.min(ruleX - 8 - 78, 70), 20), words.percent, frame)])
  ];
  return { width: options.width, height: options.height, marks, handles, fields: fieldsOf(handles, frame), spots: dots.spots, frame, under: marks.findIndex((m) => m.key === 'rays') };
}

/** Handles: top, skirt and width of the right-hand tree (on a phone the skirt's is on the left one), and the chosen nozzle's swivel. */
function handlesOf({ canopy, sprayer }: Result, frame: Frame, selected: string | null): Handle[] {
  const { H, Hs, W, R } = canopy.figures;
  const trunk = R.value / 2;
  const widest = canopy.outline.reduce((a, b) => (b.widthM > a.widthM ? b : a), canopy.outline[0] ?? { heightM: (H.value + Hs.value) / 2, widthM: W.value });
  const handles: Handle[] = [
    { id: 'height', x: px(frame.x(trunk)), y: px(frame.z(H.value)), perX: 0, perY: -1 / frame.scale, value: H.value },
    { id: 'width', x: px(frame.x(trunk + W.value / 2)), y: px(frame.z(widest.heightM)), perX: 2 / frame.scale, perY: 0, value: W.value },
    { id: 'skirt', x: px(frame.x(frame.compact ? -trunk : trunk)), y: px(frame.z(Hs.value)), perX: 0, perY: -1 / frame.scale, value: Hs.value },
    { id: 'spacing', x: px(frame.x(trunk)), y: px(frame.groundY + (frame.compact ? 18 : 34)), perX: 2 / frame.scale, perY: 0, value: R.value }
  ];
  const n = sprayer.nozzles.find((each) => each.position.id === selected);
  if (n) {
    const mirrored = n.position.side === 'left';
    const sign = mirrored ? -1 : 1;
    const pivot = { x: px(frame.x(sign * n.position.offsetM)), y: px(frame.z(n.position.heightM)), mirrored };
    const arm = Math.max(0.55 * frame.scale, 52);
    const a = (n.angle.value * Math.PI) / 180;
    handles.push({ id: 'swivel', x: px(pivot.x + sign * arm * Math.cos(a)), y: px(pivot.y - arm * Math.sin(a)), perX: 0, perY: 0, pivot, value: n.swivelDeg });
  }
  return handles;
}

/** Places of the four typed measurements. */
function fieldsOf(handles: readonly Handle[], frame: Frame): Field[] {
  const at = (id: string) => handles.find((h) => h.id === id)!;
  if (frame.compact) {
    const y = frame.groundY + 30;
    const each = (frame.width - 8) / 4;
    return ['skirt', 'height', 'spacing', 'width'].map((id, i) => ({ id, x: px(6 + i * each), y }));
  }
  const x = frame.width - 122;
  // The fields keep clear of each other and of the paper's edge even where the handles do not.
  const tall = 64;
  const apart = tall + 4;
  const lowest = frame.groundY - tall + 24;
  const beside = (id: string, least: number, most: number) => Math.max(Math.min(at(id).y - tall / 2, most), least);
  const top = beside('height', 4, lowest - 2 * apart);
  const width = beside('width', top + apart, lowest - apart);
  const skirt = beside('skirt', width + apart, lowest);
  return [
    { id: 'height', x, y: px(top) },
    { id: 'width', x, y: px(width) },
    { id: 'skirt', x, y: px(skirt) },
    { id: 'spacing', x: px(frame.x(0) - 56), y: px(frame.groundY + 8) }
  ];
}

function leaders(handles: readonly Handle[], frame: Frame): Mark[] {
  const fields = fieldsOf(handles, frame);
  return fields
    .filter((f) => f.id !== 'spacing' && !(frame.compact && f.id === 'height'))
    .map((f) => {
      const h = handles.find((each) => each.id === f.id)!;
      const end = frame.compact ? { x: f.x + 40, y: f.y + 2 } : { x: f.x - 4, y: f.y + 42 };
      return line('leader', h.x, h.y, end.x, end.y, `leader-${f.id}`);
    });
}

/** Dashed top of the tallest tenth, where nozzles are aimed. */
function tallest({ canopy }: Result, trunkX: number, frame: Frame, words: SectionWords): Mark[] {
  if (!(canopy.aimTopM > canopy.figures.H.value * 1.02) || canopy.outline.length === 0) return [];
  const y = frame.z(canopy.aimTopM);
  const half = Math.max(0.2, canopy.figures.W.value / 4) * frame.scale;
  return [line('tallest', frame.x(trunkX) - half / 4, y, frame.x(trunkX) + half, y, 'tallest'), ...(frame.compact ? [] : [label('tallest-label', frame.x(trunkX) + 6, y - 5, words.tallest, {}, 'tallest-label')])];
}

function ghostOf(ghost: Result, nowTopM: number, trunkX: number, frame: Frame, words: SectionWords): Mark {
  const d = outlinePath(ghost.canopy.outline, frame);
  const at = (x: number, key: string) => mark('path', 'ghost', { d, transform: `translate(${px(frame.x(x))} 0)` }, { key });
  return group('ghosts', [
    at(-trunkX, 'ghost-left'),
    at(trunkX, 'ghost-right'),
    // On a phone there is no room for its name, which stands right above, in the strip of rungs.
    ...(frame.compact ? [] : [label('ghost-label', frame.x(-trunkX) - 6, frame.z(Math.max(ghost.canopy.aimTopM, nowTopM)) - 5, words.ghost(ghost.rung.name), { 'text-anchor': 'end' })])
  ], {}, 'ghosts');
}

/** What is lost and what is shut, written where the eye looks: over the machine, and at the skirt. */
function verdictLabels({ sprayer, canopy }: Result, frame: Frame, words: SectionWords): Mark[] {
  const out: Mark[] = [];
  const ids = (pick: (n: Result['sprayer']['nozzles'][number]) => boolean) => sprayer.nozzles.filter(pick).map((n) => n.position.id);
  const over = ids((n) => n.verdict === 'over-top' && n.spraying);
  const under = ids((n) => n.verdict === 'under-skirt' && n.spraying);
  const shut = ids((n) => !n.open);
  const machineTop = Math.max(...sprayer.nozzles.map((n) => n.position.heightM), 0);
  const y = Math.min(frame.z(Math.max(canopy.aimTopM, machineTop + 0.4)) + 4, frame.z(machineTop) - 46);
  const line1 = (cls: string, text: string, row: number) => out.push(label(`verdict-label ${cls}`, frame.x(0), y + row * 17, text, { 'text-anchor': 'middle' }, `verdict-${cls}`));
  const share = (a: Result['sprayer']['overTop']) => words.percent(valueOf(a) ?? 0);
  let row = 0;
  if (over.length > 0) line1('lost', words.over(over, share(sprayer.overTop), frame.compact), row++);
  if (shut.length > 0) line1('quiet', words.shutNozzles(shut), row++);
  if (under.length > 0) out.push(label('verdict-label lost', frame.x(0), frame.groundY - 8, words.under(under, share(sprayer.underSkirt), frame.compact), { 'text-anchor': 'middle' }, 'verdict-under'));
  return out;
}

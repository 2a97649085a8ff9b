import { converted, display, entered, shown, type UnitSystem } from '#core/quantity/units.ts';
import type { Band } from '#core/sprayer/profile.ts';
import type { Frame } from './frame.ts';
import { group, label, line, mark, px, type Mark } from './scene.ts';

/** Ground line with hatched soil. */
export function ground(frame: Frame): Mark {
  const from = frame.compact ? 0 : 20;
  const to = frame.width - from;
  const y = frame.groundY;
  let hatch = '';
  for (let x = from; x < to; x += 12) hatch += `M${px(x + 9)} ${px(y)}l-9 12`;
  return group('ground', [mark('path', 'soil', { d: hatch }), line('ground-line', from, y, to, y)], {}, 'ground');
}

/** Height rule beside the left row: every 0.5 m or 2 ft, labelled. */
export function heightRule(topM: number, x: number, system: UnitSystem, frame: Frame, written: (value: number) => string = String): Mark {
  const step = converted('m', system) ? 2 : frame.scale < 45 ? 1 : 0.5;
  const minor = converted('m', system) ? 4 : 5;
  const last = Math.max(Math.ceil(shown(topM, 'm', system) / step - 1e-9), 1);
  const at = (n: number) => frame.z(entered(n, 'm', system));
  const marks: Mark[] = [line('rule-line', x, at(0), x, at(last * step))];
  let fine = '';
  for (let i = 0; i < last * minor; i++) if (i % minor !== 0 && !frame.compact) fine += `M${px(x)} ${px(at((i * step) / minor))}h-4`;
  if (fine) marks.push(mark('path', 'rule-fine', { d: fine }));
  for (let i = 0; i <= last; i++) {
    marks.push(line('rule-tick', x, at(i * step), x - 8, at(i * step)));
    // The unit stands once, at the head of the rule.
    const figure = written(Number((i * step).toFixed(1)));
    if (!frame.compact || i > 0) marks.push(label('rule-figure', x - 11, at(i * step) + (i === 0 ? -1 : 4), i === last ? `${figure} ${display('m', system).symbol}` : figure, { 'text-anchor': 'end' }));
  }
  return group('rule', marks, {}, 'rule');
}

/** Dimension between the trunk lines, below the ground. */
export function spacingDimension(halfM: number, frame: Frame): Mark {
  const y = frame.groundY + (frame.compact ? 18 : 34);
  const [a, b] = [frame.x(-halfM), frame.x(halfM)];
  return group('dimension', [
    line('extension', a, frame.groundY + 3, a, y + 8),
    line('extension', b, frame.groundY + 3, b, y + 8),
    line('dimension-line', a, y, b, y),
    mark('path', 'arrow', { d: `M${px(a)} ${px(y)}l9 -3.5v7ZM${px(b)} ${px(y)}l-9 -3.5v7Z` })
  ], {}, 'dimension');
}

/** Aimed flow (filled) against leaf (outlined) by height, as paired bars on the drawing's own heights. */
export function profileBars(bands: readonly Band[], x: number, width: number, percent: (share: number) => string, frame: Frame): Mark {
  const most = Math.max(...bands.map((b) => Math.max(b.aimed, b.leaf)), 0.01);
  return group(
    'bars',
    bands.flatMap((b, i) => {
      const top = frame.z(b.toM);
      const height = frame.z(b.fromM) - top;
      const thick = Math.min(height * 0.62, 26);
      const y = top + (height - thick) / 2;
      const [aimed, leaf] = [(b.aimed / most) * width, (b.leaf / most) * width];
      return [
        mark('rect', 'bar-aimed', { x: px(x), y: px(y + 3), width: px(aimed), height: px(Math.max(thick - 6, 1)) }, { key: `a${i}` }),
        mark('rect', 'bar-leaf', { x: px(x), y: px(y), width: px(leaf), height: px(thick) }, { key: `l${i}` }),
        ...(thick >= 11 ? [label('bar-figure', x + Math.max(aimed, leaf) + 5, y + thick / 2 + 4, percent(b.aimed))] : [])
      ];
    }),
    {},
    'bars'
  );
}

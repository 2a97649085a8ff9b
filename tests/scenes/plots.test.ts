import { readFileSync, writeFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { histogramScene, intervalsScene, tornadoScene } from '#section/plots/bars.ts';
import { curvesLayout, curvesScene, nearestPoint, neighbourCurve, type CurvesInput, type PlotCurve } from '#section/plots/curves.ts';
import { dodged } from '#section/plots/dodge.ts';
import { HATCH_STEPS, hatchPath, hatchStep } from '#section/plots/hatch.ts';
import { matrixScene } from '#section/plots/matrix.ts';
import { MOST_POINTS, nearestRow, scatterLayout, scatterScene, type ScatterInput } from '#section/plots/scatter.ts';
import { toSvg, type Mark, type Scene } from '#section/scene.ts';

const words = (x: string, y: string) => ({ x: { title: x, tick: String }, y: { title: y, tick: (v: number) => v.toFixed(1) } });
const curve = (id: string, name: string, family: PlotCurve['family'], ys: readonly (number | null)[], more: Partial<PlotCurve> = {}): PlotCurve => ({
  id, name, family, chosen: false, own: false, here: ys[2] ?? null, points: ys.map((y, i) => ({ x: 4000 + 2000 * i, y })), ...more
});
/** By hand: a constant, a line through nothing, one that keeps a share, one without an answer at first. */
const CURVES: readonly PlotCurve[] = [
  curve('ground', 'Per hectare', 'none', [1, 1, 1, 1, 1]),
  curve('volume', 'Row volume', 'volume', [0.4, 0.6, 0.8, 1, 1.2], { chosen: true }),
  curve('keeps', 'Keeps half', 'volume', [0.7, 0.8, 0.9, 1, 1.1]),
  curve('wall', 'Leaf wall', 'wall', [0.5, 0.65, 0.8, 0.95, 1.1]),
  curve('mine', 'My own', 'leaf', [null, null, 0.5, 0.9, 1.3], { own: true })
];
const input = (width: number, more: Partial<CurvesInput> = {}): CurvesInput => ({
  width, height: 400, curves: CURVES, here: { x: 8000, label: 'this block' }, words: words('tree-row volume, m³/ha', 'dose index'), picked: null, ...more
});
const scatter: ScatterInput = {
  width: 600, height: 400, words: words('leaf wall, m²/ha', 'dose index'),
  x: Float64Array.of(10_000, 12_000, 15_000, 18_000, NaN), y: Float64Array.of(0.5, 0.9, 1.2, 1.4, 1), rows: Uint32Array.of(0, 1, 2, 3, 4)
};
const NAMES = ['Per hectare', 'Row volume', 'US volume'];
const INDICES = [1, 1.2, 0.35];

const SCENES: Readonly<Record<string, () => Scene>> = {
  'plot-curves': () => curvesScene(input(640)),
  'plot-curves-read': () => curvesScene(input(640, { picked: { id: 'wall', index: 3, text: 'Leaf wall: 0.95 at 10 000 m³/ha' } })),
  'plot-curves-phone': () => curvesScene(input(230)),
  'plot-matrix': () => matrixScene({ names: NAMES, difference: (i, j) => INDICES[i]! - INDICES[j]!, figure: (d) => d.toFixed(2) }),
  'plot-intervals': () =>
    intervalsScene(
      [
        { id: 'a', name: 'Row volume', value: 1.2, analytic: { low: 1.1, high: 1.3 }, drawn: { low: 1.09, high: 1.32, mean: 1.205 }, chosen: true },
        { id: 'b', name: 'Per hectare', value: 1, analytic: null, drawn: null, chosen: false }
      ],
      620,
      { title: 'dose index', tick: String }
    ),
  'plot-histogram': () =>
    histogramScene({
      width: 620, height: 380, bins: { from: 1, width: 0.1, counts: [2, 30, 55, 12, 1] }, value: 1.22, analytic: { low: 1.05, high: 1.4 }, drawn: { low: 1.06, high: 1.42, mean: 1.23 },
      words: words('dose index', ''), names: { analytic: 'reckoned', drawn: 'drawn', value: 'now' }
    }),
  'plot-tornado': () =>
    tornadoScene(
      [
        { id: 'small', name: 'skirt height', kind: 'measured', low: 1.22, high: 1.18, from: '0.3 m', to: '0.6 m' },
        { id: 'wide', name: 'water per volume', kind: 'assumed', low: 0.9, high: 1.5, from: '0.07 L/m³', to: '0.13 L/m³' }
      ],
      1.2, 'now', 700, { title: 'dose index', tick: String }
    ),
  'plot-scatter': () => scatterScene(scatter)
};
const flat = (marks: readonly Mark[]): Mark[] => marks.flatMap((m) => [m, ...flat(m.children ?? [])]);
const find = (scene: Scene, cls: string) => flat(scene.marks).filter((m) => m.cls?.split(' ').includes(cls));
const numberOf = (m: Mark, name: string) => Number(m.attrs![name]);

describe('the plots as text', () => {
  it.each(Object.entries(SCENES))('%s', (name, make) => {
    const text = toSvg(make(), name);
    const file = `tests/scenes/golden/${name}.svg.txt`;
    if (process.env['UPDATE_GOLDEN'] === '1') writeFileSync(file, text);
    expect(text).toBe(readFileSync(file, 'utf8'));
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('curves', () => {
  it('names each curve where it ends, in the order of the ends, none on another', () => {
    const names = find(SCENES['plot-curves']!(), 'name');
    expect(names.map((m) => m.text).sort()).toEqual(CURVES.map((c) => c.name).sort());
    const byHeight = [...names].sort((a, b) => numberOf(a, 'y') - numberOf(b, 'y'));
    expect(byHeight[0]!.text).toBe('My own');
    expect(byHeight.at(-1)!.text).toBe('Per hectare');
    for (let i = 1; i < byHeight.length; i++) expect(numberOf(byHeight[i]!, 'y') - numberOf(byHeight[i - 1]!, 'y')).toBeGreaterThan(14);
  });
  it('leaves the names out where there is no room for them', () => expect(find(SCENES['plot-curves-phone']!(), 'name')).toEqual([]));
  it('begins a curve where its strategy has an answer', () => {
    const mine = find(SCENES['plot-curves']!(), 'leaf')[0]!;
    const d = String(flat([mine]).find((m) => m.cls === 'curve-line')!.attrs!['d']);
    expect(d.match(/[ML]/g)).toEqual(['M', 'L', 'L']);
  });
  it('marks the block on every curve that has an answer there, and one’s own by a rhomb', () => {
    const dots = find(SCENES['plot-curves']!(), 'here-dot');
    expect(dots.map((m) => m.tag).sort()).toEqual(['circle', 'circle', 'circle', 'circle', 'path']);
  });
  it('finds the point under the pointer', () => {
    const layout = curvesLayout(input(640));
    const at = (id: string, i: number) => {
      const p = CURVES.find((c) => c.id === id)!.points[i]!;
      return nearestPoint(layout, CURVES, layout.x(p.x) + 2, layout.y(p.y!) - 1);
    };
    expect(at('keeps', 1)).toEqual({ id: 'keeps', index: 1 });
    expect(at('mine', 4)).toEqual({ id: 'mine', index: 4 });
    expect(nearestPoint(layout, [], 10, 10)).toBeNull();
  });
  it('goes to the next curve above and below; curves on each other are passed one by one', () => {
    // At the third step: mine 0.5, volume and wall 0.8, keeps 0.9, ground 1.
    const walk = (id: string, up: boolean, steps: number) => {
      let now = { id, index: 2 };
      const passed = [];
      for (let i = 0; i < steps; i++) passed.push((now = neighbourCurve(CURVES, now, up)).id);
      return passed;
    };
    expect(walk('mine', true, 5)).toEqual(['volume', 'wall', 'keeps', 'ground', 'ground']);
    expect(walk('ground', false, 5)).toEqual(['keeps', 'wall', 'volume', 'mine', 'mine']);
    expect(neighbourCurve(CURVES, { id: 'volume', index: 0 }, false).id).toBe('volume');
  });
  it('half the dose looks like half of it: the axis begins at nothing', () => {
    const { y, room } = curvesLayout(input(640));
    expect(y(0)).toBeCloseTo(room.bottom, 6);
    expect(y(0) - y(1)).toBeCloseTo(2 * (y(0) - y(0.5)), 6);
  });
});

describe('labels that are moved apart', () => {
  const wishes = fc.array(fc.double({ min: 0, max: 300, noNaN: true }), { minLength: 1, maxLength: 20 });
  it('keep their order, their distance and the edges, and stay where they want where they can', () => {
    fc.assert(
      fc.property(wishes, (wanted) => {
        const places = dodged(wanted, 15, 0, 300);
        const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
        for (let n = 1; n < order.length; n++) expect(places[order[n]!]! - places[order[n - 1]!]!).toBeGreaterThan(15 - 1e-6);
        for (const p of places) expect(p).toBeGreaterThan(-1e-6), expect(p).toBeLessThan(300 + 1e-6);
        const alone = order.every((i, n) => n === 0 || wanted[i]! - wanted[order[n - 1]!]! > 15);
        if (alone) places.forEach((p, i) => expect(p).toBeCloseTo(wanted[i]!, 6));
      })
    );
  });
  it('stand closer, evenly, where there is no room', () => expect(dodged([5, 5, 5], 15, 0, 20)).toEqual([0, 10, 20]));
});

describe('hatching', () => {
  it('is denser the larger a difference is, whatever its sign', () => {
    expect([0, 0.04, 0.05, -0.05, 0.149, 0.15, -0.3, 0.59, 0.6, 5].map(hatchStep)).toEqual([0, 0, 1, 1, 1, 2, 3, 3, 4, 4]);
    expect(HATCH_STEPS[0]).toBe(0);
  });
  it('stays inside its rectangle, and falls where it does not rise', () => {
    for (const rising of [true, false]) {
      const ends = [...hatchPath(10, 20, 30, 12, 4, rising).matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g)].map((m) => m.slice(1).map(Number));
      expect(ends.length).toBeGreaterThan(4);
      for (const [x1, y1, x2, y2] of ends as [number, number, number, number][]) {
        for (const x of [x1, x2]) expect(x).toBeGreaterThanOrEqual(10), expect(x).toBeLessThanOrEqual(40);
        for (const y of [y1, y2]) expect(y).toBeGreaterThanOrEqual(20), expect(y).toBeLessThanOrEqual(32);
        // Downwards on the screen is falling: y grows with x.
        if (x1 !== x2) expect(Math.sign((y2 - y1) / (x2 - x1))).toBe(rising ? -1 : 1);
      }
    }
  });
});

describe('the stair', () => {
  it('has a cell for each pair, hatched where the two differ enough', () => {
    const scene = SCENES['plot-matrix']!();
    expect(find(scene, 'matrix-figure').map((m) => m.text)).toEqual(['0.20', '-0.65', '-0.85']);
    expect(find(scene, 'matrix-hatch')).toHaveLength(3);
    expect(find(matrixScene({ names: NAMES, difference: () => null, figure: String }), 'matrix-hatch')).toEqual([]);
  });
});

describe('bars', () => {
  it('of the input that moves most stand first; those of assumptions are hatched', () => {
    const scene = SCENES['plot-tornado']!();
    expect(find(scene, 'name').map((m) => m.text)).toEqual(['water per volume', 'skirt height']);
    const hatched = find(scene, 'sway').filter((g) => flat([g]).some((m) => m.cls === 'span-hatch'));
    expect(hatched.map((g) => g.key)).toEqual(['wide']);
  });
  it('where a higher input lowers the result its upper end stands at the left', () => {
    const small = find(SCENES['plot-tornado']!(), 'sway').find((g) => g.key === 'small')!;
    expect(flat([small]).filter((m) => m.cls === 'sway-end').map((m) => m.text)).toEqual(['0.6 m', '0.3 m']);
  });
  it('of the draws are as high as their counts', () => {
    const bins = find(SCENES['plot-histogram']!(), 'bin').map((m) => numberOf(m, 'height'));
    expect(bins[2]! / bins[1]!).toBeCloseTo(55 / 30, 1);
    expect(bins).toHaveLength(5);
  });
});

describe('points', () => {
  it('that have no figure are left out; the nearest is found within reach', () => {
    const layout = scatterLayout(scatter);
    expect(String(find(SCENES['plot-scatter']!(), 'points')[0]!.attrs!['d']).match(/h0/g)).toHaveLength(4);
    expect(nearestRow(scatter, layout, layout.x(15_000) + 5, layout.y(1.2) - 5)).toBe(2);
    expect(nearestRow(scatter, layout, 0, 0)).toBeNull();
  });
  it('beyond what can be told apart become lines of equal crowding', () => {
    const n = MOST_POINTS + 1;
    const many: ScatterInput = { ...scatter, x: Float64Array.from({ length: n }, (_, i) => i % 97), y: Float64Array.from({ length: n }, (_, i) => (i % 89) / 50), rows: Uint32Array.from({ length: n }, (_, i) => i) };
    const scene = scatterScene(many);
    expect(find(scene, 'points')).toEqual([]);
    expect(find(scene, 'crowd').length).toBeGreaterThan(2);
    expect(toSvg(scene, 'x')).not.toMatch(/NaN/);
  });
});

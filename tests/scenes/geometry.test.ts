import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { RANGES } from '#job/limits.ts';
import { toSvg, type Mark, type Scene } from '#section/scene.ts';
import { sectionScene, type SectionOptions } from '#section/section.ts';
import { sectionWords as words } from '#words/en/section.ts';
import { arcNozzles, document, machineA, onlyOpen, result } from '../support/sample.ts';

/** What stands in the picture, measured in it with a ruler: nothing here uses the code's own scale. */
const laptop = { width: 960, height: 560, system: 'metric', words } as const satisfies SectionOptions;
const phone = { ...laptop, width: 390, height: 384 } as const;

type Point = readonly [x: number, y: number];
interface Placed {
  readonly mark: Mark;
  /** Class names of the groups around it. */
  readonly within: readonly string[];
  readonly dx: number;
  readonly flip: number;
}

function placed(marks: readonly Mark[], within: readonly string[] = [], dx = 0, flip = 1): Placed[] {
  return marks.flatMap((mark) => {
    const transform = String(mark.attrs?.['transform'] ?? '');
    const moved = dx + flip * Number(/translate\((-?[\d.]+) /.exec(transform)?.[1] ?? 0);
    const turned = transform.includes('scale(-1 1)') ? -flip : flip;
    return [{ mark, within, dx: moved, flip: turned }, ...placed(mark.children ?? [], [...within, mark.cls ?? ''], moved, turned)];
  });
}
const all = (scene: Scene, cls: string): Placed[] => placed(scene.marks).filter((p) => p.mark.cls?.split(' ').includes(cls));

/** Corners of a path made of absolute moves, lines and curves, on the paper. */
function points({ mark, dx, flip }: Placed): Point[] {
  const numbers = (String(mark.attrs?.['d'] ?? '').match(/-?\d+(\.\d+)?(e-?\d+)?/g) ?? []).map(Number);
  return Array.from({ length: numbers.length / 2 }, (_, i) => [dx + flip * numbers[2 * i]!, numbers[2 * i + 1]!] as const);
}
const span = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
/** The dimension line is as long as the rows are apart: that makes it the ruler. */
function ruler(scene: Scene, rowSpacingM: number) {
  const { x1, x2 } = all(scene, 'dimension-line')[0]!.mark.attrs as { x1: number; x2: number };
  const ground = Number(all(scene, 'ground-line')[0]!.mark.attrs!['y1']);
  const perM = (x2 - x1) / rowSpacingM;
  return { perM, left: x1, right: x2, middle: (x1 + x2) / 2, up: (y: number) => (ground - y) / perM };
}

describe.each([['laptop', laptop], ['phone', phone]] as const)('measured on the paper of a %s', (_, options) => {
  const canopy = { heightM: 3.1, skirtM: 0.7, widthM: 1.3 };

  it('the crown is as wide, as high and as far above the ground as it was measured, on both sides', () => {
    for (const shape of ['box', 'wall', 'spindle', 'ellipse'] as const) {
      const scene = sectionScene(result({ canopy: { ...canopy, shape } }), options);
      const r = ruler(scene, 4);
      const crowns = all(scene, 'crown').map(points);
      expect(crowns).toHaveLength(2);
      for (const crown of crowns) {
        expect(span(crown.map(([x]) => x)) / r.perM).toBeCloseTo(1.3, 1);
        expect(r.up(Math.max(...crown.map(([, y]) => y)))).toBeCloseTo(0.7, 2);
        expect(r.up(Math.min(...crown.map(([, y]) => y)))).toBeCloseTo(3.1, 2);
      }
    }
  });

  it('trunk lines stand at the ends of the dimension of the row spacing', () => {
    const scene = sectionScene(result({ canopy }), options);
    const r = ruler(scene, 4);
    const middles = all(scene, 'trunk').map((t) => { const xs = points(t).map(([x]) => x); return (Math.min(...xs) + Math.max(...xs)) / 2; });
    expect(middles[0]).toBeCloseTo(r.left, 1);
    expect(middles[1]).toBeCloseTo(r.right, 1);
  });

  it('every nozzle sits where the machine has it', () => {
    const scene = sectionScene(result({ canopy }), options);
    const r = ruler(scene, 4);
    for (const n of arcNozzles()) {
      const spot = scene.spots.find((s) => s.id === n.id)!;
      expect((spot.x - r.middle) / r.perM).toBeCloseTo((n.side === 'left' ? -1 : 1) * n.offsetM, 1);
      expect(r.up(spot.y)).toBeCloseTo(n.heightM, 1);
    }
  });

  it('both sides mirror each other about the middle', () => {
    const scene = sectionScene(result({ canopy }), options);
    const { middle } = ruler(scene, 4);
    const corners = (side: string) => all(scene, 'spray').filter((p) => p.mark.key?.startsWith(`ray-${side}`)).flatMap((g) => (g.mark.children ?? []).flatMap((mark) => points({ ...g, mark })));
    const left = corners('L');
    const right = corners('R');
    expect(left.length).toBeGreaterThan(50);
    expect(left).toHaveLength(right.length);
    left.forEach(([x, y], i) => {
      expect(x - middle).toBeCloseTo(middle - right[i]![0], 1);
      expect(y).toBeCloseTo(right[i]![1], 1);
    });
  });

  it('spray in leaf ends at the trunk line or before, never beyond; a level ray at mid height ends on it', () => {
    const scene = sectionScene(result({ canopy: { ...canopy, shape: 'box' } }), options);
    const r = ruler(scene, 4);
    const xs = all(scene, 'in-leaf').filter((p) => p.within.includes('spray')).flatMap((p) => points(p).map(([x]) => x));
    expect(Math.max(...xs)).toBeLessThanOrEqual(r.right + 0.02);
    expect(Math.min(...xs)).toBeGreaterThanOrEqual(r.left - 0.02);
    expect(Math.max(...xs)).toBeCloseTo(r.right, 1);
  });

  it('a ray leaves its nozzle in its own direction: 45° goes as far out as up', () => {
    const nozzles = [{ ...arcNozzles()[8]!, id: 'R1', angleDeg: 45, coneAngleDeg: 20, heightM: 1, offsetM: 0.5 }];
    const scene = sectionScene(result({ canopy, machine: { nozzles } }), options);
    const r = ruler(scene, 4);
    const [origin, ...edge] = points(all(scene, 'ray')[0]!);
    const angles = edge.map(([x, y]) => (Math.atan2(origin![1] - y, x - origin![0]) * 180) / Math.PI);
    expect(Math.min(...angles)).toBeGreaterThan(34.8);
    const whole = all(scene, 'ray').flatMap((p) => points(p).slice(1)).map(([x, y]) => (Math.atan2(origin![1] - y, x - origin![0]) * 180) / Math.PI);
    expect(Math.min(...whole)).toBeCloseTo(35, 0);
    expect(Math.max(...whole)).toBeCloseTo(55, 0);
    expect(r.up(origin![1])).toBeCloseTo(1, 1);
  });

  it('a nozzle that sprays wholly over the tree is drawn as lost, one that meets leaf as met', () => {
    const scene = sectionScene(result({ canopy: { ...canopy, heightM: 1.5 }, setting: { nozzles: onlyOpen('R2', 'R8') } }), options);
    const of = (id: string) => all(scene, 'spray').find((p) => p.mark.key === `ray-${id}`)!.mark.children!.map((m) => m.cls);
    expect(of('R8')).toEqual(['ray over-top']);
    expect(of('R2')).toContain('ray in-leaf');
  });
});

it('twice the leaf area density is twice the leaves; the same leaf stays in its place', () => {
  const leaves = (ladM2PerM3: number) => all(sectionScene(result({ canopy: { ladM2PerM3 } }), laptop), 'leaf').slice(0, 3).map((p) => String(p.mark.attrs!['d']));
  const [thin, thick] = [leaves(1), leaves(2)];
  const count = (paths: readonly string[]) => paths.join('').split('M').length - 1;
  expect(count(thick) / count(thin)).toBeCloseTo(2, 1);
  thin.forEach((d, i) => expect(thick[i]!.startsWith(d)).toBe(true));
});

it('leaves stand inside the crown that they belong to', () => {
  const scene = sectionScene(result({ canopy: { heightM: 3, skirtM: 1, widthM: 2, shape: 'box', ladM2PerM3: 3 } }), laptop);
  const r = ruler(scene, 4);
  for (const leaf of all(scene, 'leaf').slice(0, 3))
    for (const [, x, y] of String(leaf.mark.attrs!['d']).matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)) {
      expect(Math.abs(Number(x)) / r.perM).toBeLessThanOrEqual(1);
      expect(r.up(Number(y))).toBeGreaterThanOrEqual(0.99);
      expect(r.up(Number(y))).toBeLessThanOrEqual(3.01);
    }
});

it('a name from a file is written as text', () => {
  const evil = '"><script>alert(1)</script>';
  const ghost = result({ rung: { name: evil } });
  const svg = toSvg(sectionScene(result(), { ...laptop, ghost }), evil);
  expect(svg).not.toContain('<script');
  expect(svg).toContain('&lt;script');
});

describe('whatever a document may hold', () => {
  const within = (range: { readonly least: number; readonly most: number }) => fc.double({ min: range.least, max: range.most, noNaN: true });
  const canopies = fc.record({
    heightM: within(RANGES.canopy.heightM),
    widthM: within(RANGES.canopy.widthM),
    skirtM: within(RANGES.canopy.skirtM),
    tallestTenthM: within(RANGES.canopy.tallestTenthM),
    ladM2PerM3: within(RANGES.canopy.ladM2PerM3),
    shape: fc.constantFrom('box', 'wall', 'spindle', 'ellipse') as fc.Arbitrary<'box'>
  });
  const places = fc.array(
    fc.record({
      side: fc.constantFrom('left', 'right') as fc.Arbitrary<'left'>,
      heightM: within(RANGES.nozzles.heightM),
      offsetM: within(RANGES.nozzles.offsetM),
      angleDeg: within(RANGES.nozzles.angleDeg),
      coneAngleDeg: within(RANGES.nozzles.coneAngleDeg),
      open: fc.boolean()
    }),
    { minLength: 1, maxLength: 12 }
  );
  const outlets = fc.oneof(
    fc.constant(machineA().outlet),
    fc.record({
      kind: fc.constant('spouts' as const),
      diameterM: within(RANGES.outlet.diameterM),
      spouts: fc.array(fc.record({ heightM: within(RANGES.spouts.heightM), offsetM: within(RANGES.spouts.offsetM), angleDeg: within(RANGES.spouts.angleDeg) }), { minLength: 1, maxLength: 12 })
    })
  );
  const scenes = fc.record({ canopy: canopies, outlet: outlets, rowSpacingM: within(RANGES.blocks.rowSpacingM), places, width: fc.integer({ min: 200, max: 2400 }), height: fc.integer({ min: 200, max: 1600 }), us: fc.boolean() });

  it('every number of the drawing is finite, every field and handle has its place, no field leaves the paper', () => {
    fc.assert(
      fc.property(scenes, ({ canopy, outlet, rowSpacingM, places: list, width, height, us }) => {
        const nozzles = list.map(({ open: _, ...n }, i) => ({ ...arcNozzles()[0]!, ...n, id: `N${i}` }));
        const doc: Document = document({ canopy, block: { rowSpacingM }, machine: { nozzles, outlet }, setting: { nozzles: list.map((n, i) => ({ position: `N${i}`, open: n.open })) } });
        const r = evaluate(doc, 'block', 'now') as Result;
        const scene = sectionScene(r, { width, height, system: us ? 'us' : 'metric', words, ghost: r, selected: 'N0' });
        expect(toSvg(scene, 'x')).not.toMatch(/NaN|Infinity|undefined/);
        for (const h of scene.handles) for (const v of [h.x, h.y, h.perX, h.perY, h.value]) expect(Number.isFinite(v)).toBe(true);
        expect(scene.handles.map((h) => h.id)).toEqual(['height', 'width', 'skirt', 'spacing', 'swivel']);
        expect(scene.fields.map((f) => f.id).sort()).toEqual(['height', 'skirt', 'spacing', 'width']);
        for (const f of scene.fields) {
          expect(f.x).toBeGreaterThanOrEqual(0);
          expect(f.x).toBeLessThanOrEqual(width);
          expect(Number.isFinite(f.y)).toBe(true);
        }
      }),
      { numRuns: 300 }
    );
  });

  it('on the screen’s own sizes the fields never lie on each other', () => {
    fc.assert(
      fc.property(scenes, fc.constantFrom([1000, 610] as const, [728, 476] as const, [1000, 420] as const), ({ canopy, rowSpacingM }, [width, height]) => {
        const scene = sectionScene(result({ canopy, block: { rowSpacingM } }), { ...laptop, width, height });
        const ys = ['height', 'width', 'skirt'].map((id) => scene.fields.find((f) => f.id === id)!.y);
        expect(ys[0]).toBeGreaterThanOrEqual(0);
        // Name and box are 62 px high.
        expect(ys[1]! - ys[0]!).toBeGreaterThanOrEqual(62);
        expect(ys[2]! - ys[1]!).toBeGreaterThanOrEqual(62);
        expect(ys[2]! + 62).toBeLessThanOrEqual(height);
      }),
      { numRuns: 200 }
    );
  });
});

it('the demo blocks fit their paper at every rung: nothing but the spray that is lost touches the upper edge', () => {
  for (const name of ['lower-bench', 'citrus-globes', 'cherry-wall']) {
    const doc = JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')) as Document;
    for (const block of doc.blocks)
      for (const rung of block.rungs)
        for (const options of [laptop, phone]) {
          const scene = sectionScene(evaluate(doc, block.id, rung.id) as Result, options);
          for (const crown of all(scene, 'crown'))
            for (const [x, y] of points(crown)) {
              expect(x).toBeGreaterThanOrEqual(0);
              expect(x).toBeLessThanOrEqual(options.width);
              expect(y).toBeGreaterThan(10);
            }
        }
  }
});

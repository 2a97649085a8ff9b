import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Document } from '#core/setting/document.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { toSvg, type Mark, type Scene } from '#section/scene.ts';
import { sectionScene, type SectionOptions } from '#section/section.ts';
import { sectionWords as words } from '#words/en/section.ts';
import { machineA, onlyOpen, result } from '../support/sample.ts';

const demo = (name: string): Document => JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')) as Document;
const at = (doc: Document, block = 0, rung = -1): Result => evaluate(doc, doc.blocks[block]!.id, doc.blocks[block]!.rungs.at(rung)!.id) as Result;
const laptop = { width: 960, height: 560, system: 'metric', words } as const satisfies SectionOptions;
const phone = { ...laptop, width: 390, height: 384 };
const apple = demo('lower-bench');
/** The cherry wall before its machine with round spouts. */
const spouts = (): Result => {
  const doc = demo('cherry-wall');
  return at({ ...doc, blocks: doc.blocks.map((b) => ({ ...b, machine: 'spouts-6' })) });
};

const SCENES: Readonly<Record<string, () => Scene>> = {
  'apple-full-leaf': () => sectionScene(at(apple), laptop),
  'apple-spring-with-ghost': () => sectionScene(at(apple, 0, 0), { ...laptop, ghost: at(apple) }),
  'apple-phone': () => sectionScene(at(apple), phone),
  'citrus-us-units': () => sectionScene(at(demo('citrus-globes')), { ...laptop, system: 'us' }),
  'cherry-tower-selected': () => {
    const r = at(demo('cherry-wall'));
    return sectionScene(r, { ...laptop, selected: r.machine.nozzles[2]!.id });
  },
  'cherry-spouts': () => sectionScene(spouts(), laptop),
  'skirt-above-top': () => sectionScene(result({ canopy: { skirtM: 3.5 } }), laptop),
  'rows-too-narrow': () => sectionScene(result({ block: { rowSpacingM: 1.1 } }), laptop),
  'nothing-open': () => sectionScene(result({ setting: { nozzles: machineA().nozzles.map((n) => ({ position: n.id, open: false })) } }), laptop)
};

/** Leaves are hundreds of strokes; a golden tells their number and where the first ones stand. */
const shortened = (svg: string): string => svg.replace(/(class="leaf[^>]*? d=")([^"]*)"/g, (_, head: string, d: string) => `${head}${d.slice(0, 60)}… ${d.split('M').length - 1} leaves"`);

const flat = (marks: readonly Mark[]): Mark[] => marks.flatMap((m) => [m, ...flat(m.children ?? [])]);

describe('the drawing as text', () => {
  it.each(Object.entries(SCENES))('%s', (name, make) => {
    const text = shortened(toSvg(make(), name));
    const file = `tests/scenes/golden/${name}.svg.txt`;
    if (process.env['UPDATE_GOLDEN'] === '1') {
      mkdirSync('tests/scenes/golden', { recursive: true });
      writeFileSync(file, text);
    }
    expect(text).toBe(readFileSync(file, 'utf8'));
  });

  it.each(Object.entries(SCENES))('%s holds no number that is none', (_, make) => {
    expect(toSvg(make(), '')).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe('the drawing is to scale', () => {
  const handle = (scene: Scene, id: string) => scene.handles.find((h) => h.id === id)!;
  it('puts a 3 m top three times as far above the ground as 1 m of width is wide', () => {
    const scene = sectionScene(result({ canopy: { heightM: 3, widthM: 1, skirtM: 0 } }), laptop);
    const [top, skirt, width] = ['height', 'skirt', 'width'].map((id) => handle(scene, id));
    const tall = skirt!.y - top!.y;
    const half = width!.x - top!.x;
    expect(tall / (2 * half)).toBeCloseTo(3, 2);
  });
  it('draws both sides alike', () => {
    const scene = sectionScene(result(), laptop);
    const centre = 2 * scene.spots.find((s) => s.id === 'L3')!.x;
    for (const s of scene.spots.filter((each) => each.id.startsWith('L'))) {
      const mate = scene.spots.find((each) => each.id === s.id.replace('L', 'R'))!;
      expect(mate.y).toBe(s.y);
      expect(mate.x + s.x).toBeCloseTo(scene.spots[0]!.x + scene.spots.find((e) => e.id === 'R1')!.x, 1);
    }
    expect(centre).toBeLessThan(scene.width * 1.5);
  });
  it('a drag of one metre in pixels is one metre of the value', () => {
    const scene = sectionScene(result({ canopy: { heightM: 3, skirtM: 1 } }), laptop);
    const metre = (handle(scene, 'skirt').y - handle(scene, 'height').y) / 2;
    expect(handle(scene, 'height').perY * -metre).toBeCloseTo(1, 2);
    expect(handle(scene, 'width').perX * metre).toBeCloseTo(2, 2);
  });
  it('draws no crown for a contradictory canopy, and still the machine', () => {
    const marks = flat(SCENES['skirt-above-top']!().marks);
    expect(marks.filter((m) => m.cls === 'crown').every((m) => m.attrs?.['d'] === '')).toBe(true);
    expect(marks.some((m) => m.cls === 'machine')).toBe(true);
  });
  it('draws each round spout on both sides with its mouth as wide, as high, as far out and turned as it is', () => {
    const r = spouts();
    const scene = sectionScene(r, laptop);
    const o = r.machine.outlet;
    if (o.kind !== 'spouts') throw new Error('other outlet');
    const spot = (id: string) => scene.spots.find((s) => s.id === id)!;
    // The nozzles sit in the mouths: two of them are the ruler.
    const metre = (spot('R1').y - spot('R5').y) / (2 - 0.6);
    const middle = (spot('L1').x + spot('R1').x) / 2;
    const mouths = String(flat(scene.marks).find((m) => m.cls === 'mouth')!.attrs!['d']).split('M').slice(1).map((d) => d.split('L').map((p) => p.split(' ').map(Number) as [number, number]));
    expect(mouths).toHaveLength(2 * o.spouts.length);
    for (const side of [-1, 1])
      o.spouts.forEach((spout, i) => {
        const [a, b] = mouths[i + (side > 0 ? o.spouts.length : 0)]!;
        expect(Math.hypot(a![0] - b![0], a![1] - b![1]) / metre).toBeCloseTo(o.diameterM, 2);
        expect((side * ((a![0] + b![0]) / 2 - middle)) / metre).toBeCloseTo(spout.offsetM, 2);
        expect((spot('R1').y - (a![1] + b![1]) / 2) / metre + 0.6).toBeCloseTo(spout.heightM, 2);
        // Upper end first: a spout that points up has it further in.
        expect((Math.atan2(side * (b![0] - a![0]), b![1] - a![1]) * 180) / Math.PI).toBeCloseTo(spout.angleDeg, 0);
      });
  });
  it('draws spray of open nozzles alone, and bars over the shut', () => {
    const marks = flat(sectionScene(result({ setting: { nozzles: machineA().nozzles.map((n) => ({ position: n.id, open: onlyOpen('L3').length > 0 && n.id === 'L3' })) } }), laptop).marks);
    expect(marks.filter((m) => m.cls === 'spray')).toHaveLength(1);
    expect(marks.filter((m) => m.cls === 'bar')).toHaveLength(15);
  });
});

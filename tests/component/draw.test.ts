import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Document } from '../../src/core/setting/document.ts';
import type { Mark } from '../../src/section/scene.ts';
import { sectionScene } from '../../src/section/section.ts';
import { draw, type Drawing } from '../../src/ui/section/draw.ts';
import { sectionWords as words } from '../../src/words/en/section.ts';
import { Workspace } from '../../src/workspace/workspace.svelte.ts';
import demo from '../../demo-data/lower-bench.json';

const layer = () => document.createElementNS('http://www.w3.org/2000/svg', 'g');
const fresh = (marks: readonly Mark[]): string => {
  const g = layer();
  draw(g, [], marks);
  return g.innerHTML;
};
/** Attributes in the order in which they were first set are no difference. */
const plain = (g: Element): unknown => [
  g.tagName,
  Object.fromEntries([...g.attributes].map((a) => [a.name, a.value]).sort()),
  g.children.length > 0 ? [...g.children].map(plain) : g.textContent
];

const leaf: fc.Arbitrary<Mark> = fc.record(
  { tag: fc.constantFrom('path', 'line', 'text') as fc.Arbitrary<Mark['tag']>, cls: fc.constantFrom('a', 'b'), attrs: fc.dictionary(fc.constantFrom('x', 'y', 'd'), fc.integer({ min: 0, max: 3 })), text: fc.constantFrom('', 'one', '<b>&"') },
  { requiredKeys: ['tag'] }
);
const keyed = (marks: readonly Mark[], keys: readonly (string | null)[]): Mark[] => {
  const used = new Set<string>();
  return marks.map((m, i) => {
    const key = keys[i];
    if (!key || used.has(key)) return m;
    used.add(key);
    return { ...m, key };
  });
};
const list = (of: fc.Arbitrary<Mark>) => fc.tuple(fc.array(of, { maxLength: 5 }), fc.array(fc.constantFrom(null, 'p', 'q', 'r', 's'), { minLength: 5, maxLength: 5 })).map(([m, k]) => keyed(m, k));
const branch: fc.Arbitrary<Mark> = fc.oneof(leaf, list(leaf).map((children) => ({ tag: 'g' as const, cls: 'c', children })));

describe('marks on the screen', () => {
  it('one drawing brought to another is that other, whatever came and went', () => {
    fc.assert(
      fc.property(fc.array(list(branch), { minLength: 2, maxLength: 5 }), (steps) => {
        const g = layer();
        let drawing: Drawing = [];
        for (const marks of steps) {
          drawing = draw(g, drawing, marks);
          const other = layer();
          draw(other, [], marks);
          expect(plain(g)).toEqual(plain(other));
        }
      }),
      { numRuns: 300 }
    );
  });

  it('elements that stay are the same elements', () => {
    const g = layer();
    const a: Mark[] = [{ tag: 'path', key: 'tree', attrs: { d: 'M0 0' } }, { tag: 'line', key: 'rule' }];
    const drawing = draw(g, [], a);
    const [tree, rule] = [...g.children];
    draw(g, drawing, [{ tag: 'text', key: 'new', text: 'x' }, { tag: 'line', key: 'rule' }, { tag: 'path', key: 'tree', attrs: { d: 'M1 1' } }]);
    expect([...g.children].slice(1)).toEqual([rule, tree]);
    expect(tree!.getAttribute('d')).toBe('M1 1');
  });

  it('names from a file are text, never markup', () => {
    expect(fresh([{ tag: 'text', text: '<img src=x onerror=alert(1)>' }])).toBe('<text>&lt;img src=x onerror=alert(1)&gt;</text>');
  });

  it('a whole session of the section, step by step, is what a fresh drawing would be', () => {
    const w = new Workspace(demo as unknown as Document);
    const scene = () => sectionScene(w.result, { width: 960, height: 560, system: 'metric', words, ghost: w.ghost, selected: w.selected }).marks;
    const g = layer();
    let drawing = draw(g, [], scene());
    const steps: (() => void)[] = [
      () => w.editCanopy({ heightM: 4.2 }),
      () => w.setOpen('L8', false),
      () => (w.selected = 'L7'),
      () => w.editCanopy({ skirtM: 9 }),
      () => w.undo(),
      () => w.setGhost(null),
      () => w.goTo('upper-shelf'),
      () => w.goTo('lower-bench'),
      () => w.editBlock({ rowSpacingM: 1 })
    ];
    for (const step of steps) {
      step();
      const marks = scene();
      drawing = draw(g, drawing, marks);
      const other = layer();
      draw(other, [], marks);
      expect(plain(g)).toEqual(plain(other));
    }
  });
});

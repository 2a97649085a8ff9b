import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applied, difference, type Change, type Plain } from '#workspace/keep/patch.ts';
import demo from '../../../../demo-data/lower-bench.json';

const state = demo as unknown as Plain;
const { tree: plain } = fc.letrec<{ tree: Plain }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    fc.constantFrom<Plain>(null, true, 0, 1, 'a', ''),
    fc.array(tie('tree'), { maxLength: 4 }),
    fc.dictionary(fc.constantFrom('a', 'b', 'c', 'd'), tie('tree'), { maxKeys: 4, noNullPrototype: true })
  )
}));

describe('a patch', () => {
  it('makes the one state of the other, and back, whatever they are', () => {
    fc.assert(
      fc.property(plain, plain, (a, b) => {
        // By way of text, as it is kept.
        const way = JSON.parse(JSON.stringify(difference(a, b))) as Change[];
        expect(applied(a, way)).toEqual(b);
        expect(applied(b, difference(b, a))).toEqual(a);
      }),
      { numRuns: 500 }
    );
  });
  it('is nothing where nothing changed, and does not look into what is one and the same', () => {
    expect(difference(state, state)).toEqual([]);
    const trap = new Proxy({}, { ownKeys: () => { throw new Error('looked into'); } });
    expect(difference({ a: trap, b: 1 }, { a: trap, b: 2 })).toEqual([['set', ['b'], 2]]);
  });
  it('of an edit in a document is short, and leaves the rest the same objects', () => {
    const blocks = demo.blocks.map((b, i) => (i === 0 ? { ...b, rowSpacingM: 5 } : b));
    const next = { ...demo, blocks } as unknown as Plain;
    const way = difference(state, next);
    expect(way).toEqual([['set', ['blocks', 0, 'rowSpacingM'], 5]]);
    const after = applied(state, way) as unknown as typeof demo;
    expect(after.blocks[1]).toBe(demo.blocks[1]);
    expect(after.machines).toBe(demo.machines);
  });
  it('of a list that grew or shrank tells only what came and went', () => {
    const [a, b, c, d] = [{ n: 1 }, { n: 2 }, { n: 3 }, { n: 4 }];
    expect(difference([a, b, c], [a, d, b, c])).toEqual([['splice', [], 1, 0, [d]]]);
    expect(difference([a, b, c], [a, c])).toEqual([['splice', [], 1, 1, []]]);
  });
  it.each<[string, Plain, Change[]]>([
    ['a member of nothing', { a: 1 }, [['set', ['b', 'c'], 1]]],
    ['a place behind the end of a list', [1], [['set', [3], 1]]],
    ['a stretch that is not there', [1], [['splice', [], 0, 2, []]]],
    ['a stretch of no list', { a: 1 }, [['splice', ['a'], 0, 0, [1]]]],
    ['a member that is not there', { a: 1 }, [['out', ['b']]]],
    ['the machinery of the language', {}, [['set', ['__proto__', 'x'], 1]]]
  ])('that does not fit is refused: %s', (_, to, way) => {
    expect(() => applied(to, way)).toThrow(RangeError);
    expect(({} as Record<string, unknown>)['x']).toBeUndefined();
  });
});

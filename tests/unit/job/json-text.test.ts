import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseJson } from '#job/json-text.ts';

/** The language's own parser is the judge of what JSON is. */
const native = (text: string): unknown => {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return undefined;
  }
};
const judge = (text: string): void => {
  const mine = parseJson(text);
  const theirs = native(text);
  if (text.trim() === '') {
    expect(mine.problems[0]?.code).toBe('empty');
    return;
  }
  expect(mine.readable).toBe(theirs !== undefined);
  if (theirs) expect({ value: mine.value }).toEqual(theirs);
};

it('takes what JSON.parse takes and nothing else: sound texts, in any layout', () => {
  fc.assert(fc.property(fc.json({ maxDepth: 6 }), fc.constantFrom(undefined, 1, '\t', ' \n'), (t, space) => judge(JSON.stringify(JSON.parse(t), null, space))));
});

it('takes what JSON.parse takes and nothing else: texts with a few characters changed', () => {
  const bit = fc.constantFrom('"', '\\', '{', '}', '[', ']', ',', ':', '0', '-', '.', 'e', '1', 'true', 'nul', '\n', '\u0000', '\u00a0', '\\u12', ' ');
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), fc.nat(), fc.nat(3), bit, (t, at, cut, put) => {
      const i = at % (t.length + 1);
      judge(t.slice(0, i) + put + t.slice(i + cut));
    }),
    { numRuns: 3000 }
  );
});

it.each(['01', '1.', '.5', '-', '+1', '1e', '1e+', '- 1', '"\t"', '"\\x"', '"\\u12g4"', '[1,]', '{"a":1,}', '{a:1}', "{'a':1}", '[', '"', 'tru', '[1 2]', '{"a" 1}', '1 1', '\u00a01'])(
  'refuses %j',
  (t) => judge(t)
);
it.each(['-0', '1e5', '1E-2', '"\\ud83c\\udf33"', '[]', '{}', ' [ ] ', '{"":{"":[]}}', '"\u2028"', '"\u007f"'])('takes %j', (t) => judge(t));

it('tells line and column from one, wherever the text breaks', () => {
  expect(parseJson('{\n\n  "a": 1,\n  b').problems[0]?.parameters).toEqual({ line: 4, column: 3 });
  expect(parseJson('[1').problems[0]?.parameters).toEqual({ line: 1, column: 3 });
});

it('tells every key that stands twice with its place', () => {
  const { problems } = parseJson('{"a":1,\n"a":2,"b":[{"c":1,"c":2}],\n"a":3}');
  expect(problems.map((p) => [p.path, p.parameters['line']])).toEqual([
    ['/a', 2],
    ['/b/0/c', 2],
    ['/a', 3]
  ]);
});

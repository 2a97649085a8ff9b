import { expect, it } from 'vitest';
import { migrated } from '#job/migrations.ts';

const steps = [
  { from: 1, step: (d: Readonly<Record<string, unknown>>) => ({ ...d, b: d['a'] }) },
  { from: 2, step: (d: Readonly<Record<string, unknown>>) => ({ ...d, c: d['b'] }) }
];

it('lifts a document step by step and leaves the old one as it was', () => {
  const old = { version: 1, a: 7 };
  expect(migrated(old, 1, steps, 3)).toEqual({ version: 3, a: 7, b: 7, c: 7 });
  expect(migrated({ version: 2, b: 5 }, 2, steps, 3)).toEqual({ version: 3, b: 5, c: 5 });
  expect(old).toEqual({ version: 1, a: 7 });
});
it('leaves the newest alone', () => expect(migrated({ version: 1 }, 1)).toEqual({ version: 1 }));
it('has no gap', () => expect(() => migrated({}, 1, steps.slice(1), 3)).toThrow('version 1'));

import { expect, it } from 'vitest';
import { balance } from '#core/spray/balance.ts';
import { transport } from '#core/spray/transport.ts';
import { warm } from '#core/spray/warm.ts';
import { sprayCase } from '#core/spray/case.ts';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Result } from '#core/setting/result.ts';
import { document } from '../../../support/sample.ts';

it('warming up leaves nothing behind in what is flown next, nor do lists that are used again', () => {
  const d = document({});
  const c = sprayCase(d, evaluate(d, 'block', 'now') as Result);
  if ('kind' in c) throw new Error(c.code);
  const cold = balance(c, transport(c));
  warm();
  const lower = { ...c, canopy: { ...c.canopy, outline: c.canopy.outline.map((p) => ({ ...p, heightM: p.heightM * 0.9 })) } };
  const other = transport(lower);
  expect(balance(lower, other).onTrees).not.toBe(cold.onTrees);
  expect(balance(c, transport(c, other))).toEqual(cold);
});

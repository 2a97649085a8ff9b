import { expect, it } from 'vitest';
import { nozzleNames } from '#words/index.ts';

it.each([
  [['L7', 'R7'], 'L7 and R7'],
  [['L1', 'L2', 'L3', 'R1', 'R2', 'R3'], 'L1–L3 and R1–R3'],
  [['L1', 'L2', 'R1', 'R2'], 'L1, L2, R1 and R2'],
  [['L1', 'L2', 'L3', 'L5'], 'L1–L3 and L5'],
  [['L9', 'L10', 'L11'], 'L9–L11'],
  [['L3', 'L2', 'L1'], 'L3, L2 and L1'],
  [['top', 'low'], 'top and low'],
  [['R8'], 'R8'],
  [[], '']
])('names %j as "%s"', (ids, text) => expect(nozzleNames(ids)).toBe(text));

import type { Result } from '../setting/result.ts';
import { WORK_RATE } from '../sprayer/volume.ts';
import { given, isRefused, refused, type Answer, type Given } from '../working/answer.ts';
import type { Assumptions } from '../working/assumption.ts';
import { derive } from '../working/figure.ts';
import { FACE_FLOW, FACES_MIX, FIELD_EFFICIENCY, RATE_EFFECTIVE, SPARE_SHARE, TIME_FILLING, TIME_IN_ALL, TIME_OUTER, TIME_SPRAYING, TIME_TURNING, WAY } from './formulas.ts';
import { passesOf } from './passes.ts';
import type { RowPasses, Work } from './state.ts';
import type { Mix } from './types.ts';

const counted = (value: number): Given => given(value, '1', 'derived', { sources: ['geometry'] });

/** Passes over the whole block; null where rows or their length are not known, and for a swath, which has no rows. */
export function rowPasses(result: Result, V: Answer, v: Answer, outer: RowPasses['outer']): RowPasses | null {
  const { block, pattern, pass } = result;
  if (block.rows === undefined || block.rowLengthM === undefined) return null;
  const passes = passesOf(pattern, block.rows);
  if (!passes) return null;
  const L = given(block.rowLengthM, 'm', 'measured', { path: 'rowLengthM' });
  const faceFlow = derive(FACE_FLOW, { V, v, B: pass.width, i: counted(passes.facesPerPass) });
  const onFaces = (F: number): Answer => derive(FACES_MIX, { F: counted(F), L, qf: faceFlow, v });
  return {
    passes,
    outer,
    way: derive(WAY, { p: counted(passes.passes), L }),
    faceFlow,
    mix: onFaces(passes.faces),
    spare: onFaces(passes.spare),
    spareShare: derive(SPARE_SHARE, { Fs: counted(passes.spare), F: counted(passes.faces) })
  };
}

interface Day {
  readonly result: Result;
  readonly mix: Mix;
  readonly area: Answer;
  readonly speed: Answer;
  readonly count: Answer;
  readonly rows: RowPasses | null;
  /** Share of the block that is treated; NaN where the block's own area is not known. */
  readonly whole: number;
  readonly assumptions: Assumptions;
}

/** Hours of the treatment. Turns need the rows; outer passes that serve one row are counted where their length is known. */
export function workOf({ result, mix, area, speed, count, rows, whole, assumptions }: Day): Work {
  const { block, pattern, pass } = result;
  const theoretical = derive(WORK_RATE, { v: speed, B: pass.width });
  const passes = block.rows === undefined ? null : passesOf(pattern, block.rows);
  const driven = passes && Number.isFinite(whole) ? Math.ceil(passes.passes * whole - 1e-9) : null;
  const spraying = derive(TIME_SPRAYING, { A: area, C: theoretical });
  const outer = rows && whole === 1 ? derive(TIME_OUTER, { X: rows.way, A: area, B: pass.width, v: speed }) : given(0, 'h', 'assumed', { path: 'rowLengthM' });
  const turning = derive(TIME_TURNING, {
    j: driven === null ? refused('no-rows', 'rows') : counted(Math.max(driven - 1, 0)),
    T1: mix.turnSeconds === undefined ? assumptions.take('mix.turn') : given(mix.turnSeconds, 's', 'stated', { path: 'mix.turnSeconds' })
  });
  const filling = derive(TIME_FILLING, {
    Nl: count,
    T2: mix.fillMinutes === undefined ? assumptions.take('mix.fill') : given(mix.fillMinutes, 'min', 'stated', { path: 'mix.fillMinutes' })
  });
  const total = derive(TIME_IN_ALL, { ts: spraying, to: outer, tt: turning, tf: filling });
  const effective = derive(RATE_EFFECTIVE, { A: area, t: total });
  return { theoretical, spraying, outer, turning, filling, total, effective, efficiency: isRefused(effective) ? effective : derive(FIELD_EFFICIENCY, { Ce: effective, C: theoretical }) };
}

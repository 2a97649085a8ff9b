import { group, label, line, mark, px, type Mark, type Scene } from '../scene.ts';
import { plot, textWidth } from './axes.ts';
import { HATCH_GAPS, hatchPath, hatchStep } from './hatch.ts';

export interface MatrixInput {
  readonly names: readonly string[];
  /** Row less column; null where one of them has no answer. */
  readonly difference: (row: number, column: number) => number | null;
  readonly figure: (difference: number) => string;
}

const CELL = { width: 54, height: 30 };

/** Differences of every pair as a stair: hatched the denser the further apart, rising where the row is above the column, falling where below. */
export function matrixScene({ names, difference, figure }: MatrixInput): Scene {
  const left = Math.max(...names.map((n) => textWidth(n, 13.5)), 40) + 10;
  const n = names.length;
  const marks: Mark[] = [];
  for (let i = 0; i < n; i++) {
    const y = i * CELL.height;
    marks.push(label('matrix-name', left - 8, y + 20, names[i]!, { 'text-anchor': 'end' }, `name${i}`));
    for (let j = 0; j < i; j++) {
      const x = left + j * CELL.width;
      const d = difference(i, j);
      const gap = d === null ? 0 : HATCH_GAPS[hatchStep(d)];
      marks.push(
        group('matrix-cell', [
          mark('rect', 'matrix-box', { x: px(x), y: px(y), width: CELL.width, height: CELL.height }, { key: 'box' }),
          ...(gap > 0 ? [mark('path', 'matrix-hatch', { d: hatchPath(x, y, CELL.width, CELL.height, gap, d! > 0) }, { key: 'hatch' })] : []),
          mark('rect', 'matrix-plate', { x: px(x + 6), y: px(y + 6), width: CELL.width - 12, height: CELL.height - 12 }, { key: 'plate' }),
          label('matrix-figure', x + CELL.width / 2, y + 19.5, d === null ? '–' : figure(d), { 'text-anchor': 'middle' }, 'figure')
        ], {}, `${i}-${j}`)
      );
    }
    // The name of the column stands where its stair begins.
    marks.push(label('matrix-name', left + i * CELL.width + 6, y + 20, names[i]!, {}, `column${i}`), line('matrix-step', left + i * CELL.width, y, left + i * CELL.width, y + CELL.height, `step${i}`));
  }
  const width = left + (n - 1) * CELL.width + Math.max(...names.map((s) => textWidth(s, 13.5))) + 14;
  return plot(Math.ceil(width), n * CELL.height + 4, marks);
}

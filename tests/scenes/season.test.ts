import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { evaluate } from '#core/setting/evaluate.ts';
import type { Document } from '#core/setting/document.ts';
import type { Result } from '#core/setting/result.ts';
import { toSvg, type Mark } from '#section/scene.ts';
import { seasonRoom, seasonScene } from '#section/season.ts';

const demo = (name: string) => JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')) as Document;
const results = (name: string): Result[] => {
  const d = demo(name);
  return d.blocks[0]!.rungs.map((r) => evaluate(d, d.blocks[0]!.id, r.id) as Result);
};
const TICKS = [1, 2, 3, 4, 5].map((m) => ({ heightM: m, text: `${m} m` }));
const all = (marks: readonly Mark[]): Mark[] => marks.flatMap((m) => [m, ...all(m.children ?? [])]);

describe.each(['lower-bench', 'cherry-wall', 'citrus-globes'])('%s', (name) => {
  const list = results(name);
  const room = seasonRoom(list);
  const scenes = list.map((r) => seasonScene(r, room, TICKS));

  it('all rungs have the one scale and room, and nothing of them lies outside', () => {
    expect(new Set(scenes.map((s) => `${s.width} ${s.height}`)).size).toBe(1);
    for (const { marks, width, height } of scenes)
      for (const m of all(marks)) for (const [key, most] of [['x1', width], ['x2', width], ['cx', width], ['y1', height], ['y2', height], ['cy', height]] as const) {
        const v = m.attrs?.[key];
        if (typeof v === 'number') expect(v >= 0 && v <= most, `${m.cls} ${key} ${v}`).toBe(true);
      }
  });
  it('an open nozzle has a dot and a stroke, a shut one a bar and neither', () => {
    list.forEach((r, i) => {
      const marks = all(scenes[i]!.marks);
      const open = r.sprayer.nozzles.filter((n) => n.open).length;
      expect(marks.filter((m) => m.cls === 'season-dot')).toHaveLength(open);
      expect(marks.filter((m) => m.cls === 'season-stroke')).toHaveLength(open);
      expect(marks.filter((m) => m.cls === 'season-bar')).toHaveLength(r.sprayer.nozzles.length - open);
    });
  });
  it('more leaf has more strokes', () => {
    const leaves = (i: number) => all(scenes[i]!.marks).filter((m) => m.cls?.startsWith('leaf ')).reduce((n, m) => n + String(m.attrs!['d']).split('M').length - 1, 0);
    const lai = (i: number) => list[i]!.canopy.figures.LAD.kind === 'refused' ? 0 : (list[i]!.canopy.figures.LAD as { value: number }).value * (list[i]!.canopy.figures.A as { value: number }).value;
    list.forEach((_, i) => list.forEach((__, j) => lai(i) > lai(j) * 1.02 && expect(leaves(i)).toBeGreaterThan(leaves(j))));
  });
});

it('the apple in spring, as drawn', async () => {
  const list = results('lower-bench');
  await expect(toSvg(seasonScene(list[0]!, seasonRoom(list), TICKS), 'Mouse-ear')).toMatchFileSnapshot('golden/season-mouse-ear.svg.txt');
});
